import type { Measure, Residual } from "../../gear/identify/gear-evidence.ts";
import type { GearCandidate, Identification } from "../../gear/identify/identify-gear.ts";
import type { LookAlike } from "../../gear/standard-pitch.ts";
import type { Item } from "../item.ts";
import { type LengthWords, lengthsIn } from "../lengths.ts";
import { counted, fixed, plain, withPlus } from "../numbers.ts";
import { findingWords } from "./finding-words.ts";
import { measureWords } from "./measure-words.ts";

/** The pitch that the tips alone would mean; where they were not measured, what each of the other measures would. */
export function measuredItems({ byMeasure }: Identification): readonly Item[] {
  const [first] = byMeasure;
  const told = first?.measure.code === "tip-diameter" ? [first] : byMeasure;
  return told.map(({ measure, pressureAngle, module, diametralPitch, circularPitch }, index) => ({
    term: index === 0 ? "As measured" : "",
    text: `module ${plain(module)}, ${plain(diametralPitch)} DP, circular pitch ${circularWords(circularPitch)}, by the ${measureWords(measure)}${supposing(measure, pressureAngle)}`,
  }));
}

/** In mm and in inches: older gears are of either. */
function circularWords(circularPitch: number): string {
  return `${lengthsIn("mm")(circularPitch)} (${lengthsIn("in")(circularPitch)})`;
}

/** What must be so for a measure to mean what it says. */
function supposing({ code }: Measure, pressureAngle: number | null): string {
  if (pressureAngle !== null) return `, if the pressure angle is ${plain(pressureAngle)}°`;
  return code === "centre-distance" ? ", if neither gear is shifted" : ", if the teeth are full depth and the tips unworn";
}

/** The pitch's name, short enough for a column. */
export function pitchAndForm({ name, form }: GearCandidate): string {
  const short = name.replace(" circular pitch", " circ.");
  return form === "stub" ? `${short}, stub` : short;
}

/** What the measures say of each candidate, and what the first is easily taken for. */
export function candidateItems(candidates: readonly GearCandidate[], length: LengthWords): readonly Item[] {
  return candidates.flatMap((candidate, index) => {
    const { residuals, findings, pressureAngle } = candidate;
    const first = index === 0;
    const told = [
      ...(first ? [`circular pitch ${circularWords(candidate.circularPitch)}`] : []),
      ...(pressureAngle === null ? [] : [`pressure angle ${plain(pressureAngle)}° by the span`]),
      ...(first ? residuals.slice(isOfTips(residuals[0]) ? 1 : 0).map((residual) => residualWords(residual, length)) : []),
      ...findings.map((finding) => findingWords(finding, length)),
      ...(first ? candidate.lookAlikes.map((other) => lookAlikeWords(other, length)) : []),
    ];
    return told.map((text, line) => ({ term: line === 0 ? `Candidate ${index + 1}` : "", text }));
  });
}

/** Whether it stands in the table as what the tip is off by. */
export function isOfTips(residual: Residual | undefined): boolean {
  return residual?.measure.code === "tip-diameter" || residual?.measure.code === "chord";
}

function residualWords({ measure, measured, difference, percent }: Residual, length: LengthWords): string {
  return `${measureWords(measure)} ${length(measured)}: off by ${withPlus(length(difference))}, ${withPlus(fixed(percent, 2))} per cent`;
}

function lookAlikeWords(
  { name, percent, tipDifference }: LookAlike & { readonly tipDifference: number },
  length: LengthWords,
): string {
  const way = tipDifference > 0 ? "larger" : "smaller";
  return `${name} looks alike: ${fixed(Math.abs(percent), 1)} per cent ${percent > 0 ? "coarser" : "finer"}, its tips ${length(Math.abs(tipDifference))} ${way}`;
}

/** What *close* and *explained* mean, and what to do before cutting. */
export const fitExplained =
  "Close: every measure fits a plain gear. Explained: it fits with wear or a profile shift. Before cutting, lay a known gear or rack of that pitch into a sound space.";

/** Marks that met again, as they were counted, and the most teeth that were looked among. */
export interface MarksCounted {
  readonly mateTeeth: number;
  readonly turns?: number;
  readonly mateTurns?: number;
  readonly most: number;
}

const mostCounts = 20;

/** The counts that marks which meet again could mean. */
export function marksItems(counts: readonly number[], { turns, mateTurns, mateTeeth, most }: MarksCounted): readonly Item[] {
  const after = [
    ...(turns === undefined ? [] : [`${counted(turns, "turn")} of the gear`]),
    ...(mateTurns === undefined ? [] : [`${counted(mateTurns, "turn")} of the mate`]),
  ].join(" and ");
  const listed =
    counts.length > mostCounts
      ? `${counts.slice(0, mostCounts).join(", ")} and ${counts.length - mostCounts} more`
      : counts.join(" or ");
  return [
    { term: "Marks meet again", text: `after ${after}, the mate having ${mateTeeth} teeth` },
    {
      term: "It could have",
      text: counts.length === 0 ? `no count up to ${most}: count the turns again, or the mate's teeth` : `${listed} teeth`,
    },
    ...(counts.length > 1 ? [{ term: "To tell apart", text: "count the turns of both, to the first meeting" }] : []),
  ];
}
