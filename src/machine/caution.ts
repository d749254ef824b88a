import { handOf } from "../head/hand.ts";
import type { Head } from "../head/head.ts";
import type { Pin } from "../mechanism/act.ts";
import { motionOf } from "../mechanism/motion.ts";
import { gearsForgotten, type MoveGives } from "../mechanism/reverse.ts";
import type { Fouling } from "../setting/setting.ts";
import type { Repeated } from "./by-moves.ts";
import type { Way } from "./way.ts";

/** What to mind on the way through a job, as a code with its values; the most needful first. */
export type Caution =
  /** The hand's one way of turning, and what it comes up to. */
  | { readonly code: "one-way"; readonly hand: "crank" | "handwheel" | "spindle"; readonly to: "hole" | "place" | "mark" }
  /** Lock to cut, unlock to move; keep from the cutter; the machine's manual comes first. */
  | { readonly code: "lock-spindle" }
  | { readonly code: "stop-cutter" }
  | { readonly code: "manual-first" }
  | { readonly code: "worm-out-of-mesh" }
  | { readonly code: "stop-pin"; readonly stands: "in" | "out" }
  /** Two parts to each move, and which comes first. */
  | { readonly code: "two-parts"; readonly first: "crank" | "both" | "large" }
  /** What the move gives without its gears. */
  | { readonly code: "gears-forgotten"; readonly gives: MoveGives }
  /** Not with the spindle tilted out of line, nor while the same gears cut a helix. */
  | { readonly code: "gears-limits" }
  | { readonly code: "may-foul"; readonly fouling: Fouling }
  /** The work goes round as often as there are teeth in a move. */
  | { readonly code: "several-teeth"; readonly teethPerMove: number }
  /** A near move: its error grows with every move from the start. */
  | { readonly code: "error-grows" }
  /** From zero: one rounded step is never added to the last. */
  | { readonly code: "never-add-steps" }
  /** From hole to hole: each move is another, and none is made over and over. */
  | { readonly code: "moves-differ" }
  /** The same, where no arms are set. */
  | { readonly code: "places-differ" };

/**
 * What to mind on a way. A head without index plates has neither stop pin nor holes.
 *
 * @example
 * ```ts
 * cautionsFor(planJob(readyHead("ratio-90-dial"), { divisions: 97 }).way, readyHead("ratio-90-dial"))[0].code; // "never-add-steps"
 * ```
 */
export function cautionsFor(way: Way, head: Pick<Head, "plates" | "wormRatio">): readonly Caution[] {
  const hand = handOf(head);
  const always: Caution[] = [{ code: "lock-spindle" }, { code: "stop-cutter" }, { code: "manual-first" }];
  switch (way.by) {
    case "moves":
      return [...byMoves(way.setting, hand, head.wormRatio !== null), ...always];
    case "nearest-hole":
      return [{ code: "stop-pin", stands: "in" }, { code: "moves-differ" }, { code: "one-way", hand, to: "hole" }, ...always];
    case "both-cranks":
      return [
        { code: "stop-pin", stands: "in" },
        { code: "two-parts", first: "large" },
        { code: "places-differ" },
        { code: "one-way", hand, to: "hole" },
        ...always,
      ];
    case "nearest-direct":
      return [{ code: "places-differ" }, { code: "one-way", hand, to: onSpindle(way.setting) }, ...always];
    case "dial":
    case "ring":
      return [{ code: "never-add-steps" }, { code: "one-way", hand, to: "mark" }, ...always];
  }
}

/** What one comes up to on the spindle's own plate: what has no holes has notches, detents or teeth. */
function onSpindle(setting: Way["setting"]): "hole" | "place" {
  return "form" in setting ? "place" : "hole";
}

/** What the pin of a setting comes up to, where there is a plate for it. */
const places = {
  "index-pin": "hole",
  "small-pin": "hole",
  "rear-pin": "hole",
  "spindle-pin": "hole",
  dial: "mark",
} as const satisfies Record<Pin["at"], "hole" | "mark">;

/** Said by what the setting has, and not by its method: whatever is geared can have its gears forgotten. */
function byMoves(setting: Repeated, hand: ReturnType<typeof handOf>, hasWorm: boolean): readonly Caution[] {
  const at = motionOf(setting).pins[0]?.at ?? "index-pin";
  const bySpindle = at === "spindle-pin";
  const hasPlate = bySpindle || hand === "crank";
  const cautions: Caution[] = [];
  if (bySpindle && hasWorm) cautions.push({ code: "worm-out-of-mesh" });
  if (setting.plateStopPin !== null && hasPlate) cautions.push({ code: "stop-pin", stands: setting.plateStopPin });
  if ("second" in setting) cautions.push({ code: "two-parts", first: setting.second.direction === "against" ? "both" : "crank" });
  if ("small" in setting) cautions.push({ code: "two-parts", first: "large" });
  if ("gears" in setting) {
    const gives = gearsForgotten(setting);
    if (gives !== null) cautions.push({ code: "gears-forgotten", gives });
    if (setting.gears.mayFoul !== null) cautions.push({ code: "may-foul", fouling: setting.gears.mayFoul });
    cautions.push({ code: "gears-limits" });
  }
  if (setting.teethPerMove > 1) cautions.push({ code: "several-teeth", teethPerMove: setting.teethPerMove });
  if (!setting.exact) cautions.push({ code: "error-grows" });
  cautions.push({
    code: "one-way",
    hand: bySpindle ? "spindle" : hand,
    to: bySpindle ? onSpindle(setting) : hasPlate ? places[at] : "mark",
  });
  return cautions;
}
