import { floorMod } from "../../number/ratio.ts";
import type { SpurGear } from "../spur-gear.ts";
import { chordOf } from "../tooth-thickness.ts";
import type { RecutPlan } from "./damaged-teeth.ts";
import { acrossAtBlade, overPinsBetween, type PinnedSpace, spanBetween, toothWithLoss } from "./mixed-teeth.ts";

/**
 * Under which condition a limit judges the teeth that it names: that a tooth's loss is shared by its
 * two flanks; that the rebuilt teeth on both sides have lost alike. Where it does not hold, the
 * measure across the tooth decides.
 */
export type CheckCondition = "loss-shared" | "teeth-alike";

/** What a measure of a rebuilt tooth may be, in mm, both ends right. */
export interface CheckLimits {
  /** That of a tooth of full thickness. */
  readonly most: number;
  /** That of a tooth that has lost all it may; null where no backlash was given. */
  readonly least: number | null;
  /** Empty where the measure judges a tooth by itself. */
  readonly holdsIf: readonly CheckCondition[];
}

/** A span to measure on the finished gear: from a sound flank to a rebuilt one. */
export interface SpanToCheck {
  readonly fromTooth: number;
  readonly toTooth: number;
  /** The damaged tooth whose flank one jaw rests on. */
  readonly rebuiltTooth: number;
}

/** Two spaces to put pins in: a recut one, and a sound one as nearly opposite as there is. */
export interface PinsToCheck {
  readonly toothSpace: number;
  readonly opposite: number;
  /** The damaged teeth whose flanks the first pin rests on. */
  readonly rebuilt: readonly number[];
}

/** One way to measure the rebuilt teeth, with what it may show. `code` tells which. Lengths in mm. */
export type RebuiltCheck =
  /** Across the tooth by a caliper, its blade set once for all. */
  | (CheckLimits & { readonly code: "across"; readonly blade: number; readonly teeth: readonly number[] })
  /** Over so many teeth, from a rebuilt tooth to a sound one. */
  | (CheckLimits & { readonly code: "span"; readonly teeth: number; readonly spans: readonly SpanToCheck[] })
  /** Over two pins, one in the recut space between such teeth. */
  | (CheckLimits & {
      readonly code: "over-pins";
      readonly pinDiameter: number;
      readonly between: "rebuilt-and-sound" | "rebuilt-teeth";
      readonly places: readonly PinsToCheck[];
    });

/**
 * What to measure on the rebuilt teeth of a gear, and what each measure may be: from that of a full
 * tooth to that of one that has lost all it may, each flank that is touched being reckoned by its
 * own tooth.
 *
 * @param mayLose - What a rebuilt tooth may lose along the reference circle, in mm; null where it is not known.
 * @param setTo - The size that a caliper's blade and a pin can be had in, in mm, nearest to one that
 * is wanted; left out, that itself. The limits are those of the size that is had.
 */
export function rebuiltChecks(
  gear: SpurGear,
  plan: RecutPlan,
  mayLose: number | null,
  setTo: (mm: number) => number = (mm) => mm,
): readonly RebuiltCheck[] {
  const wanted = chordOf(toothWithLoss(gear, 0), gear.referenceDiameter).addendum;
  return [
    ...acrossCheck(gear, plan, mayLose, setTo(wanted)),
    ...spanCheck(gear, plan, mayLose),
    ...pinChecks(gear, plan, mayLose, setTo(gear.usualPinDiameter)),
  ];
}

/** Both ends of what a measure may be; null where it cannot be taken on all the teeth that are right. */
function limitsOf(
  mayLose: number | null,
  measure: (loss: number) => number | null,
): { readonly most: number; readonly least: number | null } | null {
  const most = measure(0);
  const least = mayLose === null ? null : measure(mayLose);
  return most === null || (mayLose !== null && least === null) ? null : { most, least };
}

function acrossCheck(gear: SpurGear, { damaged }: RecutPlan, mayLose: number | null, blade: number): RebuiltCheck[] {
  const limits = limitsOf(mayLose, (loss) => acrossAtBlade(gear, loss, blade));
  return blade < 0 || limits === null ? [] : [{ code: "across", blade, teeth: damaged, ...limits, holdsIf: [] }];
}

function spanCheck(gear: SpurGear, plan: RecutPlan, mayLose: number | null): RebuiltCheck[] {
  const spans = spansToCheck(gear, plan);
  const teeth = gear.span?.teeth ?? 0;
  const limits = limitsOf(mayLose, (loss) => spanBetween(gear, teeth, [loss, gear.thinning]));
  return spans.length === 0 || limits === null ? [] : [{ code: "span", teeth, spans, ...limits, holdsIf: ["loss-shared"] }];
}

/**
 * For each rebuilt tooth the spans, over the gear's usual count, with one jaw on its flank and the
 * other on a sound tooth: a span from rebuilt to rebuilt proves nothing of where they stand.
 */
export function spansToCheck({ span, teeth }: SpurGear, { damaged }: RecutPlan): readonly SpanToCheck[] {
  if (span === null) return [];
  const built = new Set(damaged);
  return damaged.flatMap((rebuiltTooth) => {
    const before = numberFrom(rebuiltTooth, 1 - span.teeth, teeth);
    const after = numberFrom(rebuiltTooth, span.teeth - 1, teeth);
    return [
      ...(built.has(before) ? [] : [{ fromTooth: before, toTooth: rebuiltTooth, rebuiltTooth }]),
      ...(built.has(after) ? [] : [{ fromTooth: rebuiltTooth, toTooth: after, rebuiltTooth }]),
    ];
  });
}

/** How two pins stand to the rebuilt tooth: the shorter way to the opposite space is over it, or over the sound one; or both are rebuilt. */
type Pinned = "over-rebuilt" | "over-sound" | "both-rebuilt";

const pinnedLosses: Readonly<Record<Pinned, (rebuilt: number, sound: number) => PinnedSpace>> = {
  "over-rebuilt": (rebuilt, sound) => ({ near: rebuilt, far: sound }),
  "over-sound": (rebuilt, sound) => ({ near: sound, far: rebuilt }),
  "both-rebuilt": (rebuilt) => ({ near: rebuilt, far: rebuilt }),
};

function pinChecks(gear: SpurGear, plan: RecutPlan, mayLose: number | null, pinDiameter: number): RebuiltCheck[] {
  const pins = pinsToCheck(plan);
  return (["over-rebuilt", "over-sound", "both-rebuilt"] as const).flatMap((pinned) => {
    const places = pins.filter((pin) => pin.pinned === pinned).map(({ place }) => place);
    const limits = limitsOf(mayLose, (loss) => overPinsBetween(gear, pinDiameter, pinnedLosses[pinned](loss, gear.thinning)));
    if (places.length === 0 || limits === null) return [];
    const both = pinned === "both-rebuilt";
    return [
      {
        code: "over-pins",
        pinDiameter,
        between: both ? "rebuilt-teeth" : "rebuilt-and-sound",
        places,
        ...limits,
        holdsIf: both ? ["loss-shared", "teeth-alike"] : ["loss-shared"],
      },
    ];
  });
}

/**
 * Each recut space with a sound one as nearly opposite as there is. Of an odd count two are; the one
 * that is taken, where it is sound, is reached the shorter way over the rebuilt tooth, where the
 * measure feels a loss most.
 */
function pinsToCheck({ teeth, spaces }: RecutPlan): readonly { readonly pinned: Pinned; readonly place: PinsToCheck }[] {
  const recut = new Set(spaces.map(({ toothSpace }) => toothSpace));
  const half = Math.floor(teeth / 2);
  return spaces.flatMap(({ toothSpace, flanks }) => {
    const rebuilt = flanks.filter(({ state }) => state === "built up").map(({ tooth }) => tooth);
    const overRebuilt = flanks[0].state === "built up" ? -half : half;
    const opposite = [overRebuilt, -overRebuilt].map((further) => numberFrom(toothSpace, further, teeth));
    const sound = opposite.find((space) => !recut.has(space));
    if (sound === undefined) return [];
    const alone = sound === opposite[0] ? "over-rebuilt" : "over-sound";
    const pinned = rebuilt.length === 2 ? "both-rebuilt" : alone;
    return [{ pinned, place: { toothSpace, opposite: sound, rebuilt } } as const];
  });
}

/** The number of the tooth or space so many further on. */
function numberFrom(number: number, further: number, teeth: number): number {
  return floorMod(number + further - 1, teeth) + 1;
}
