import { type Fault, InputError } from "../../src/index.ts";

/** The faults for which something is refused; none where it is not refused. */
export function refusal(act: () => unknown): readonly Fault[] {
  try {
    act();
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  return [];
}

/** The same as lines of `place: problem`. */
export function refusalLines(act: () => unknown): string[] {
  return refusal(act).map(({ place, problem }) => `${place}: ${problem}`);
}

/** The kind and the place of each fault, for a program to act on. */
export function refusalKinds(act: () => unknown): string[] {
  return refusal(act).map(({ code, place }) => `${code} ${place}`);
}
