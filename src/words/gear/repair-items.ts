import { flankDisplacement } from "../../gear/repair/flank-displacement.ts";
import type { RepairOnHead } from "../../gear/repair/repair-on-head.ts";
import type { ToothRepair } from "../../gear/repair/tooth-repair.ts";
import type { SpurGear } from "../../gear/spur-gear.ts";
import type { Item } from "../item.ts";
import type { LengthWords, Unit } from "../lengths.ts";
import { arcUpTo } from "../numbers.ts";

/** The blank: what to turn before anything is cut. */
export function blankItems({ blankDiameter, depth }: ToothRepair, length: LengthWords): readonly Item[] {
  return [
    {
      term: "Blank",
      text: `turn the built-up teeth down to the sound tips, reckoned as ${length(blankDiameter)}; cut ${length(depth)} deep`,
    },
  ];
}

/** The slitting saw, and what it leaves. */
export function sawItems({ saw }: ToothRepair, length: LengthWords, given: boolean): readonly Item[] {
  const { width, greatestWidth, depth, leftOnFlank, leftAtRoot } = saw;
  const widest = `${length.downTo(greatestWidth, 2)} wide at most`;
  const thinner = leftOnFlank.atBottom < leastToFile && !given ? ", better thinner" : "";
  return [
    { term: "Saw", text: `${widest}${thinner}, ${length.downTo(depth)} deep at most, set central` },
    {
      term: "It leaves",
      text: `with ${given ? `a saw of ${length(width, 2)}` : "the widest"}, on each flank ${length(leftOnFlank.atBottom)} at the bottom of the cut, ${length(leftOnFlank.atReference)} at the pitch circle; ${length(leftAtRoot)} under it; form cutter or file take the rest, the sound teeth being the guide`,
    },
  ];
}

/** In mm: less than this on a flank is nothing to file; our own choice. */
const leastToFile = 0.05;

/** One minute of the work, and a tenth of a millimetre or five thousandths of an inch of the cutter: what they do at the flanks. */
const sampleMinute = 60;
const sampleOffCentre: Readonly<Record<Unit, number>> = { mm: 0.1, in: 0.127 };

/** How true the work and the cutter must be set. */
export function centringItems({ gear, repair, settingError }: RepairOnHead, length: LengthWords): readonly Item[] {
  const offCentre = sampleOffCentre[length.unit];
  const { byAngle, byCentring } = flankDisplacement(gear, { arcSeconds: sampleMinute, offCentre });
  const { together } = repair.displacement;
  const yours = [
    ...(settingError.arcSeconds > 0 ? [`${arcUpTo(settingError.arcSeconds)} of the work`] : []),
    ...(settingError.offCentre > 0 ? [`a cutter ${length(settingError.offCentre)} off centre`] : []),
  ];
  return [
    {
      term: "Centring",
      text: `each minute that the work is off moves a flank ${length(byAngle)} at the pitch circle; each ${length(offCentre, 1)} that the cutter is off centre, ${length(byCentring)}`,
    },
    ...(yours.length === 0
      ? []
      : [
          {
            term: "Together",
            text: `${yours.join(" and ")} put a flank up to ${length.upTo(together, 4)} off: a tooth beside a sound one as much too thin or thick`,
          },
        ]),
  ];
}

/** An error at the pitch circle: `0.8″, 0.0004 mm at the pitch circle`. */
export function errorAtPitch(arcSeconds: number, gear: SpurGear, length: LengthWords): string {
  const { byAngle } = flankDisplacement(gear, { arcSeconds });
  return `${arcUpTo(arcSeconds)}, ${length.upTo(byAngle, 4)} at the pitch circle`;
}

/** How thin is too thin, in a sentence. */
export function thinItems({ check }: ToothRepair, length: LengthWords): readonly Item[] {
  if (check === null) return [{ term: "Too thin", text: "not known without the backlash that the pair may have" }];
  return [
    {
      term: "Too thin",
      text: `more than ${length.downTo(check.mayLose)} lost along the pitch circle gives more backlash than was allowed`,
    },
  ];
}

/** The last check, before the pair goes to work. */
export const withTheMate: Item = Object.freeze({
  term: "With the mate",
  text: "turn both slowly by hand all round, the drive locked off; blue the flanks and dress what marks hard",
});

/** A count of teeth in words: `tooth 31`, `teeth 31, 32 and 33`. */
export function teethInRuns(teeth: readonly number[]): string {
  const runs = runsOf(teeth).map(([from, to]) =>
    from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}–${to}`,
  );
  return `${teeth.length === 1 ? "tooth" : "teeth"} ${runs.join(", ")}`;
}

/** Runs of numbers that follow each other, as first and last. */
export function runsOf(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const open = runs.at(-1);
    if (open && open[1] === number - 1) open[1] = number;
    else runs.push([number, number]);
  }
  return runs;
}

/** The sense in which teeth and spaces are numbered. */
export const numbering = "Number the teeth in the order in which they come to the cutter; space n follows tooth n. Mark tooth 1.";
