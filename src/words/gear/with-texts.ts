import type { Residual } from "../../gear/identify/gear-evidence.ts";
import type { GearCandidate, Identification } from "../../gear/identify/identify-gear.ts";
import type { RepairOnHead } from "../../gear/repair/repair-on-head.ts";
import type { SpurGear } from "../../gear/spur-gear.ts";
import { planWithWhys } from "../json.ts";
import { lengthsIn } from "../lengths.ts";
import { depthRuleWords } from "./depth-rule.ts";
import { findingWords, measuresNoteWords } from "./finding-words.ts";
import { measureWords } from "./measure-words.ts";
import { noteWords } from "./note-words.ts";

/** A code with its sentence beside it. Data are in millimetres, and so are their sentences. */
export type WithText<Note> = Note & { readonly text: string };

const length = lengthsIn("mm");

function withText<Note>(note: Note, words: (note: Note, lengths: typeof length) => string): WithText<Note> {
  return { ...note, text: words(note, length) };
}

/** A gear as JSON shows it: every code with its sentence. */
export function gearWithTexts(gear: SpurGear): object {
  return {
    ...gear,
    wholeDepthRule: withText(gear.wholeDepthRule, depthRuleWords),
    warnings: gear.warnings.map((note) => withText(note, noteWords)),
  };
}

/** What a gear could be, as JSON shows it. */
export function identificationWithTexts(identification: Identification): object {
  return {
    ...identification,
    byMeasure: identification.byMeasure.map((each) => ({ ...each, measure: withText(each.measure, measureWords) })),
    candidates: identification.candidates.map(candidateWithTexts),
    warnings: identification.warnings.map((note) => withText(note, measuresNoteWords)),
  };
}

function candidateWithTexts(candidate: GearCandidate): object {
  return {
    ...candidate,
    residuals: candidate.residuals.map((residual: Residual) => ({
      ...residual,
      measure: withText(residual.measure, measureWords),
    })),
    findings: candidate.findings.map((finding) => ({
      ...withText(finding, findingWords),
      ...(finding.code === "misfit" && { measure: withText(finding.measure, measureWords) }),
    })),
  };
}

/** A repair on a head, as JSON shows it; the places of its job stand in `moves`. */
export function repairWithTexts(repaired: RepairOnHead): object {
  const { gear, repair, job } = repaired;
  return {
    ...repaired,
    gear: gearWithTexts(gear),
    job: planWithWhys(job),
    repair: {
      ...repair,
      saw: { ...repair.saw, warnings: repair.saw.warnings.map((note) => withText(note, noteWords)) },
      warnings: repair.warnings.map((note) => withText(note, noteWords)),
    },
  };
}
