import { InputError, quoted } from "./errors.ts";

/**
 * Refuses keys of an options object that are none of its own: a misspelt option would be passed over
 * in silence.
 */
export function checkKeys(options: object, keys: readonly string[], place: string): void {
  const unknown = Object.keys(options).filter((key) => !keys.includes(key));
  if (unknown.length === 0) return;
  throw new InputError(
    unknown.map((key) => ({
      code: "unknown-key",
      place,
      problem: `there is no key ${quoted(key)}; the keys are ${keys.join(", ")}`,
    })),
  );
}
