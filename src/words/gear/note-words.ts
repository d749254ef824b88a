import type { GearNote } from "../../gear/gear-notes.ts";
import type { RepairNote } from "../../gear/repair/repair-notes.ts";
import type { LengthWords } from "../lengths.ts";
import { plain, roundedUp } from "../numbers.ts";

/** A sentence or two on a gear, its saw or its repair: what the person at the machine should know. */
export function noteWords(note: RepairNote, length: LengthWords): string {
  switch (note.code) {
    case "undercut":
    case "thin-tip":
    case "tip-far-from-rule":
    case "no-span":
    case "no-chord":
      return gearNoteWords(note, length);
    case "saw-in-fillets":
      return "The saw reaches below the mate's teeth, where the original root is filleted: its corners may notch the fillets.";
    case "no-form-cutter":
      return `No form cutter of the usual sets is made for ${note.teeth} teeth; they begin at ${note.fewestTeeth}. File to a template of a sound space, or grind a fly cutter to it.`;
    case "form-cutters-unshifted":
      return "Form cutters are made for teeth without profile shift: this gear's spaces have another form. Grind a fly cutter to a sound space, or file to a template of one.";
    case "sound-teeth-thin":
      return `The sound teeth have lost ${length(note.thinning)}, more than the ${length.downTo(note.mayLose)} that a rebuilt one may lose: with them alone the pair has more backlash than was allowed.`;
    case "errors-over-loss":
      return `The errors of setting can take ${length.upTo(note.together)} off one side of a tooth, more than the ${length.downTo(note.mayLose)} it may lose: set closer, or leave the last of the metal for the file.`;
    case "errors-over-saw":
      return `The errors of setting, ${length.upTo(note.together)}, are more than the saw leaves on a flank, ${length.downTo(note.leftOnFlank)}: take a thinner saw.`;
  }
}

function gearNoteWords(note: GearNote, length: LengthWords): string {
  switch (note.code) {
    case "undercut":
      return `A rack or hob undercuts ${note.teeth} teeth at ${plain(note.pressureAngle)}° with a profile shift of ${shift(note.profileShift)}: from ${note.fewestTeeth} teeth, or from a shift of ${shift(roundedUp(note.leastShift, 3))}, it does not. A form cutter does not undercut; below the base circle its flanks depart from the original's, so copy a sound space.`;
    case "thin-tip":
      return `The tooth is only ${length(note.thickness)} thick at the tip, under ${note.usualLeast} of the module; such tips chip easily.`;
    case "tip-far-from-rule":
      return `The tip diameter given, ${length(note.tipDiameter)}, is far from the rule's ${length(note.byRule)}; check the pitch and the profile shift.`;
    case "no-span":
      return `No span over whole teeth rests on the flanks of ${note.teeth} teeth of this form.`;
    case "no-chord":
      return `The tip circle is below the reference circle, ${length(note.referenceDiameter)}: there is no chord to measure there.`;
  }
}

/** A profile shift in modules without needless decimals, with a true minus. */
function shift(modules: number): string {
  return plain(modules).replace("-", "−");
}
