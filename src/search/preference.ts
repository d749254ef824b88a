import { orderOfPreference } from "../methods/registry.ts";
import { InputError, quoted } from "../number/errors.ts";
import type { Kind } from "../setting/kind.ts";

/** The order asked for: the kinds named come first, the rest follow as usual. */
export function preferenceFrom(asked: readonly Kind[]): readonly Kind[] {
  if (asked.length === 0) return orderOfPreference;
  const unknown = asked.filter((kind) => !orderOfPreference.includes(kind));
  if (unknown.length > 0) {
    throw new InputError(
      unknown.map((kind) => ({
        code: "unknown-word" as const,
        place: "prefer",
        problem: `there is no kind ${quoted(kind)}; the kinds are ${orderOfPreference.join(", ")}`,
      })),
    );
  }
  return [...new Set([...asked, ...orderOfPreference])];
}
