import { InputError, quoted, refuse } from "./errors.ts";

/**
 * Names the keys of an options object. The compiler says which is missing, so that an option added
 * to the type cannot be refused as unknown.
 */
export function keysOf<Options>(keys: Readonly<Record<keyof Options, true>>): readonly string[] {
  return Object.keys(keys);
}

/**
 * Refuses keys of an options object that are none of its own: a misspelt option would be passed over
 * in silence.
 *
 * @throws {@link InputError} that lists every such key, or says that it is no object.
 */
export function checkKeys(options: unknown, keys: readonly string[], place: string): void {
  if (typeof options !== "object" || options === null || Array.isArray(options)) {
    refuse("unreadable", place, `${quoted(options)} is not an object; its keys may be ${keys.join(", ")}`);
  }
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

/**
 * A word that must be one of those allowed.
 *
 * @throws {@link InputError} that names them.
 */
export function oneOf<Word extends string>(value: unknown, words: readonly Word[], place: string): Word {
  const found = words.find((word) => word === value);
  const [first, ...others] = words.map((word) => JSON.stringify(word));
  const none = others.length === 1 ? `is neither ${first} nor ${others[0]}` : `is none of ${words.join(", ")}`;
  return found ?? refuse("unknown-word", place, `${quoted(value)} ${none}`);
}
