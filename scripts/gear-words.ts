import { cutterItems, gearItems, type Item, pitchName } from "../booklet/content/gear-items.ts";
import { fixed, type LengthWords, plain } from "../booklet/content/length-words.ts";
import type { GearCandidate, Identification, SpurGear } from "../src/index.ts";
import { table } from "./table.ts";
import { line, paragraph } from "./words.ts";

/** The measures of a gear in words. */
export function gearLines(gear: SpurGear, length: LengthWords): string[] {
  return [
    `GEAR OF ${gear.teeth} TEETH, ${pitchName(gear)}`,
    "",
    ...itemLines([...gearItems(gear, length), ...cutterItems(gear)]),
    ...noteLines(gear.warnings),
  ];
}

/** Terms with what is said of them, line by line. */
export function itemLines(items: readonly Item[]): string[] {
  return items.map(({ term, text }) => line(term, text));
}

/** What the person should know, set apart. */
export function noteLines(notes: readonly string[]): string[] {
  return notes.length === 0 ? [] : ["", ...notes.map((note) => line("TAKE CARE", note))];
}

/** What gear it could be, in words. */
export function candidateLines(teeth: number, { measured, candidates, warnings }: Identification, length: LengthWords): string[] {
  const about = candidates.flatMap((candidate, index) => aboutCandidate(candidate, index + 1, length));
  return [
    `WHAT GEAR IS IT? ${teeth} TEETH`,
    "",
    line(
      "As measured",
      `module ${plain(measured.module)} mm, ${plain(measured.diametralPitch)} DP, circular pitch ${length(measured.circularPitch)}, if the teeth are full depth and the tips unworn`,
    ),
    "",
    ...table([
      { head: "", cells: candidates.map((_, index) => `${index + 1}`) },
      { head: "pitch", cells: candidates.map(pitchAndForm) },
      { head: "module", cells: candidates.map(({ module }) => fixed(module, 3)) },
      { head: "DP", cells: candidates.map(({ diametralPitch }) => fixed(diametralPitch, 2)) },
      { head: "circ. pitch", cells: candidates.map(({ circularPitch }) => fixed(circularPitch, 3)) },
      { head: "tip off by", cells: candidates.map(({ residuals }) => signed(residuals[0]?.difference ?? 0, 3)) },
      { head: "per cent", cells: candidates.map(({ residuals }) => signed(residuals[0]?.percent ?? 0, 2)) },
      { head: "fit", cells: candidates.map(({ fit }) => fit) },
    ]),
    ...(about.length === 0 ? [] : ["", ...about]),
    ...noteLines(warnings),
    "",
    paragraph(
      "Close: every measure fits a plain gear. Explained: it fits with wear or a profile shift. Before cutting, lay a known gear or rack of that pitch into a sound space.",
    ),
  ];
}

/** The pitch's name, short enough for a column. */
function pitchAndForm({ name, form }: GearCandidate): string {
  const short = name.replace(" circular pitch", " circ.");
  return form === "stub" ? `${short}, stub` : short;
}

function signed(value: number, places: number): string {
  const text = fixed(value, places);
  return Number(text.replace("−", "-")) > 0 ? `+${text}` : text;
}

/** What the measures say of a candidate, and what it is easily taken for. */
function aboutCandidate(candidate: GearCandidate, place: number, length: LengthWords): string[] {
  const { residuals, findings, pressureAngle } = candidate;
  const told = [
    ...(pressureAngle === null ? [] : [`pressure angle ${plain(pressureAngle)}° by the span`]),
    ...(place > 1 ? [] : residuals.slice(1).map((residual) => residualWords(residual, length))),
    ...findings,
    ...(place > 1 ? [] : candidate.lookAlikes.map((other) => lookAlikeWords(other, length))),
  ];
  return told.map((text, index) => line(index === 0 ? `Candidate ${place}` : "", text));
}

function residualWords(
  { measure, measured, difference, percent }: GearCandidate["residuals"][number],
  length: LengthWords,
): string {
  return `${measure} ${length(measured)}: off by ${signed(difference, 3)} mm, ${signed(percent, 2)} per cent`;
}

function lookAlikeWords({ name, percent, tipDifference }: GearCandidate["lookAlikes"][number], length: LengthWords): string {
  const way = tipDifference > 0 ? "larger" : "smaller";
  return `${name} looks alike: ${fixed(Math.abs(percent), 1)} per cent ${percent > 0 ? "coarser" : "finer"}, its tips ${length(Math.abs(tipDifference))} ${way}`;
}
