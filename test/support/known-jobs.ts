import {
  defineHead,
  type Head,
  indexDivisions,
  type PlanOptions,
  parseAngle,
  type Setting,
  type Target,
} from "../../src/index.ts";
import { ready } from "./ready.ts";
import { head40, secondHand } from "./settings.ts";
import { byDegrees, byGears } from "./without-crank.ts";

/** A job that is known to be done one certain way. */
export interface KnownJob {
  readonly name: string;
  readonly head: Head;
  readonly target: Target;
  readonly options: PlanOptions;
  /** Method, teeth per move, exact or near. */
  readonly way: string;
}

const oddRatio = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [15, 18, 20, 27] }] });
/** A fractional ratio with a dial: after one turn of the work the dial is half a turn from where it was. */
export const oddDial: Head = defineHead({ wormRatio: "81/2", dial: { marksPerTurn: 17 } });
export const ungeared: Head = ready("ratio-40-plates-15-49-ungeared");
const oneCircle = defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [20] }] });

const job = (divisions: number, way: string, head: Head = head40, options: PlanOptions = {}): KnownJob => ({
  name: `${divisions}, ${way}`,
  head,
  target: { divisions },
  options,
  way,
});

/** 69 by 14 of 21 less 2 of 23: a second part that goes back. */
export const backwards69: Setting = (() => {
  const { settings } = indexDivisions(head40, 69, { methods: ["compound"], all: true });
  const found = settings.find((each) => each.method === "compound" && each.circle === 21 && each.second.direction === "against");
  if (found === undefined) throw new Error("69 is not found with a second part that goes back");
  return found;
})();

/** 40 × 100 turns: two faces of circles for the large crank, two circles for the small one. */
export const wideHead: Head = defineHead({
  id: "wide-range-40-100",
  name: "40:1 head, small crank of 100",
  wormRatio: 40,
  plates: [
    {
      name: "L",
      faces: [
        { name: "one", circles: [24, 28, 30, 34, 37, 38, 39, 41, 42, 43, 100] },
        { name: "other", circles: [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66] },
      ],
    },
  ],
  smallCrank: { ratio: 100, circles: [54, 100] },
  ring: { marksPerTurn: 360 },
});

/** Jobs by moves: one of every kind, exact and near. */
export const jobsByMoves: readonly KnownJob[] = [
  job(86, "simple, exact"),
  job(8, "simple in whole turns, exact"),
  job(127, "differential with 2 gears, exact"),
  job(1000, "differential with 4 gears, exact"),
  job(383, "differential with 4 gears, 4 teeth per move, exact"),
  job(96, "compound with, exact", head40, { methods: ["compound"] }),
  job(69, "compound against, exact", head40, { setting: backwards69 }),
  job(8, "direct, exact", secondHand),
  job(126, "wide-range, exact", wideHead),
  job(128, "wide-range in whole turns, exact", wideHead),
  job(97, "wide-range, near", wideHead, { by: "moves" }),
  job(7, "direct, exact", byGears),
  job(40, "direct, exact", byDegrees),
  job(48, "dial, exact", ready("ratio-60-dial")),
  job(17, "dial, 2 teeth per move, exact", oddDial),
  job(27, "simple, exact", oddRatio),
  job(1, "simple in whole turns, exact"),
  { ...job(124, "compound with, exact"), name: "2°54'", target: { angle: parseAngle("2°54'") } },
  job(97, "compound with, 5 teeth per move, near", ungeared, { by: "moves" }),
  job(19, "simple, 9 teeth per move, near", oneCircle, { by: "moves" }),
  job(787, "differential with 4 gears, near", head40, { by: "moves", teethPerMove: 1, methods: ["differential"] }),
];

/** Jobs whose every place is set by itself. */
export const jobsFromZero: readonly KnownJob[] = [
  job(97, "nearest-hole", ungeared, { by: "nearest-hole" }),
  job(97, "ring", ungeared, { by: "ring" }),
  job(97, "dial", ready("ratio-90-dial"), { by: "dial" }),
  job(53, "nearest-hole", oddRatio, { by: "nearest-hole" }),
  job(53, "dial", oddDial, { by: "dial" }),
  job(127, "both-cranks", wideHead, { by: "both-cranks" }),
  job(11, "nearest-direct", byGears, { by: "nearest-direct" }),
];

/** Gears that only go together with the stud's second one close to the spindle. */
export const cramped: Head = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 20] }],
  gears: [90, 90, 9, 100],
  gearing: { greatestPlateRatio: 100 },
});

/** A rotary table without plates. */
export const bareTable: Head = ready("ratio-60-dial");

/** Jobs of every method, every kind and every way. */
export const everyJob: readonly KnownJob[] = [
  ...jobsByMoves,
  ...jobsFromZero,
  job(12, "whole turns of a handwheel, exact", bareTable),
  job(28, "gears that may foul, exact", cramped, { methods: ["differential"], teethPerMove: 1 }),
];
