import { InputError, quoted } from "../number/errors.ts";
import type { UnprovedSetting } from "../setting/setting.ts";

/** The kinds of setting, told apart as the order of preference does. */
export type Kind = "direct" | "simple" | "one-pair" | "two-pair" | "compound" | "block" | "dial" | "may-foul";

/**
 * The order in which settings are preferred: least work and least to go wrong first.
 *
 * `block` is differential indexing with more than one tooth per move. `may-foul` is any
 * differential setting whose two-pair train may not go together: every setting that fits is
 * preferred to it.
 */
export const orderOfPreference: readonly Kind[] = Object.freeze([
  "direct",
  "simple",
  "one-pair",
  "two-pair",
  "compound",
  "block",
  "dial",
  "may-foul",
]);

/** The kind of a setting. */
export function kindOf({ method, teethPerMove, gears }: Pick<UnprovedSetting, "method" | "teethPerMove" | "gears">): Kind {
  if (method !== "differential" || gears === undefined) return method as Exclude<typeof method, "differential">;
  if (gears.mayFoul !== null) return "may-foul";
  if (teethPerMove > 1) return "block";
  return gears.drivers.length === 1 ? "one-pair" : "two-pair";
}

/** The order asked for: the kinds named come first, the rest follow as usual. */
export function preferenceFrom(asked: readonly Kind[]): readonly Kind[] {
  const unknown = asked.filter((kind) => !orderOfPreference.includes(kind));
  if (unknown.length > 0) {
    throw new InputError(
      unknown.map((kind) => ({
        code: "unknown-word",
        place: "prefer",
        problem: `there is no kind ${quoted(kind)}; the kinds are ${orderOfPreference.join(", ")}`,
      })),
    );
  }
  return [...new Set([...asked, ...orderOfPreference])];
}

type Handled = Pick<UnprovedSetting, "turns" | "spaces" | "circle" | "plate" | "second">;

/**
 * Orders settings of one kind and one number of teeth per move by how they handle: the plate
 * already mounted, fewer spaces to miscount (both parts of a compound move count), the larger
 * circle, fewer turns.
 */
export function byHandling(mounted: string | null): (a: Handled, b: Handled) => number {
  const onMounted = ({ plate }: Handled) => (plate === null || plate === mounted ? 0 : 1);
  const spaces = ({ spaces, second }: Handled) => spaces + (second?.spaces ?? 0);
  return (a, b) => onMounted(a) - onMounted(b) || spaces(a) - spaces(b) || (b.circle ?? 0) - (a.circle ?? 0) || a.turns - b.turns;
}
