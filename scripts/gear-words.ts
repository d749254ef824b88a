import type { GearCandidate, Identification, SpurGear } from "../src/index.ts";
import {
  candidateItems,
  cutterItems,
  fitExplained,
  fixed,
  gearItems,
  isOfTips,
  type LengthWords,
  type MarksCounted,
  marksItems,
  measuredItems,
  measuresNoteWords,
  noteWords,
  pitchAndForm,
  pitchName,
  withPlus,
} from "../src/words/index.ts";
import { type Column, table } from "./table.ts";
import { itemLines, line, paragraph } from "./words.ts";

/** The measures of a gear in words. */
export function gearLines(gear: SpurGear, length: LengthWords): string[] {
  return [
    `GEAR OF ${gear.teeth} TEETH, ${pitchName(gear)}`,
    "",
    ...itemLines([...gearItems(gear, length), ...cutterItems(gear)]),
    ...noteLines(gear.warnings.map((note) => noteWords(note, length))),
  ];
}

/** What the person should know, set apart. */
export function noteLines(notes: readonly string[]): string[] {
  return notes.length === 0 ? [] : ["", ...notes.map((note) => line("TAKE CARE", note))];
}

/** What gear it could be, in words. */
export function candidateLines(teeth: number | null, identification: Identification, length: LengthWords): string[] {
  const { candidates, warnings } = identification;
  const about = candidateItems(candidates, length);
  return [
    teeth === null ? "WHAT GEAR IS IT?" : `WHAT GEAR IS IT? ${teeth} TEETH`,
    "",
    ...itemLines(measuredItems(identification)),
    "",
    ...table([
      { head: "", cells: candidates.map((_, index) => `${index + 1}`) },
      ...(teeth === null ? [{ head: "teeth", cells: candidates.map((each) => String(each.teeth)) }] : []),
      { head: "pitch", cells: candidates.map(pitchAndForm) },
      { head: "module", cells: candidates.map(({ module }) => fixed(module, 3)) },
      { head: "DP", cells: candidates.map(({ diametralPitch }) => fixed(diametralPitch, 2)) },
      { head: "circ. pitch", cells: candidates.map(({ circularPitch }) => length.bare(circularPitch)) },
      ...offColumns(candidates, length, teeth === null),
      { head: "fit", cells: candidates.map(({ fit }) => fit) },
    ]),
    ...(about.length === 0 ? [] : ["", ...itemLines(about)]),
    ...noteLines(warnings.map((note) => measuresNoteWords(note, length))),
    "",
    paragraph(fitExplained),
  ];
}

/** What the tips are off by; where they were not measured, whatever is off the most. */
function offColumns(candidates: readonly GearCandidate[], length: LengthWords, withCounts: boolean): readonly Column[] {
  const isByTips = candidates.every(({ residuals }) => isOfTips(residuals[0]));
  const worst = ({ residuals }: GearCandidate) =>
    residuals.reduce((most, each) => (Math.abs(each.percent) > Math.abs(most) ? each.percent : most), 0);
  if (!isByTips) return [{ head: "worst, per cent", cells: candidates.map((each) => withPlus(fixed(worst(each), 2))) }];
  const off = {
    head: "tip off by",
    cells: candidates.map(({ residuals }) => withPlus(length.bare(residuals[0]?.difference ?? 0))),
  };
  // Beside a column of counts there is no room for it.
  if (withCounts) return [off];
  return [off, { head: "per cent", cells: candidates.map(({ residuals }) => withPlus(fixed(residuals[0]?.percent ?? 0, 2))) }];
}

/** How many teeth a gear has, from marks that met again. */
export function marksLines(counts: readonly number[], marks: MarksCounted): string[] {
  return ["HOW MANY TEETH?", "", ...itemLines(marksItems(counts, marks))];
}
