/**
 * Hands in what the types forbid, as a caller without TypeScript or a hand at the bench can. The one
 * cast of the tests: what is wrong is to be seen where it is called.
 */
export function wrong<T>(given: unknown): T {
  return given as T;
}
