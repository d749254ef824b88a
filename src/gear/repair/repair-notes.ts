import { type FormCutters, fewestFormCutTeeth } from "../form-cutter.ts";
import type { GearNote } from "../gear-notes.ts";
import type { SpurGear } from "../spur-gear.ts";
import type { SawCut, SawNote } from "./slitting-saw.ts";
import type { ThicknessCheck } from "./thickness-check.ts";

/** What the person should know of a repair, its gear and its saw. Lengths in mm. */
export type RepairNote =
  | GearNote
  | SawNote
  /** The sets of form cutters begin at more teeth. */
  | { readonly code: "no-form-cutter"; readonly teeth: number; readonly fewestTeeth: number }
  /** Form cutters are made for teeth without profile shift, and this gear has one. */
  | { readonly code: "form-cutters-unshifted" }
  /** The sound teeth have lost more than a rebuilt one may, so that the pair has too much backlash already. */
  | { readonly code: "sound-teeth-thin"; readonly thinning: number; readonly mayLose: number }
  /** The errors of setting can take more off one side of a tooth than it may lose. */
  | { readonly code: "errors-over-loss"; readonly together: number; readonly mayLose: number }
  /** The errors of setting are more than the saw leaves on a flank. */
  | { readonly code: "errors-over-saw"; readonly together: number; readonly leftOnFlank: number };

/** In mm: what adding and taking off again may leave. */
const roundingError = 1e-9;
/** What is to be said of a repair beside what its gear and its saw say; `together` is what the errors of setting come to. */
export function repairNotes(
  gear: SpurGear,
  cutters: FormCutters | null,
  together: number,
  check: ThicknessCheck | null,
  { leftOnFlank }: SawCut,
): readonly RepairNote[] {
  const notes: RepairNote[] = [];
  if (cutters === null) notes.push({ code: "no-form-cutter", teeth: gear.teeth, fewestTeeth: fewestFormCutTeeth });
  else if (gear.profileShift !== 0) notes.push({ code: "form-cutters-unshifted" });
  if (check !== null && gear.thinning - check.mayLose > roundingError) {
    notes.push({ code: "sound-teeth-thin", thinning: gear.thinning, mayLose: check.mayLose });
  }
  if (check !== null && together > check.mayLose) {
    notes.push({ code: "errors-over-loss", together, mayLose: check.mayLose });
  }
  if (together - leftOnFlank.atBottom > roundingError) {
    notes.push({ code: "errors-over-saw", together, leftOnFlank: leftOnFlank.atBottom });
  }
  return notes;
}
