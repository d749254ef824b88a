import type { Finding, MeasuresNote } from "../../gear/identify/gear-findings.ts";
import type { LengthWords } from "../lengths.ts";
import { fixed } from "../numbers.ts";
import { measureWords } from "./measure-words.ts";

/** A sentence on what the measures say of one candidate. */
export function findingWords(finding: Finding, length: LengthWords): string {
  switch (finding.code) {
    case "tip-worn":
      return `${tipReads(finding, length)}: worn or turned down, if it is this pitch.`;
    case "tip-reduced":
      return `${tipReads(finding, length)}: reduced by ${shiftOf(finding)}, as the mate of an enlarged pinion is, if it is this pitch.`;
    case "tip-measure-again":
      return `${tipReads(finding, length)}: measure it again; if it is this pitch, it has ${shiftOf(finding)}.`;
    case "tip-enlarged":
      return `${tipReads(finding, length)}: an enlarged pinion with ${shiftOf(finding)}, if it is this pitch.`;
    case "shifted-by-spans":
      return `The spans show ${shiftOf(finding)}, if it is this pitch: a${finding.profileShift > 0 ? "n enlarged" : " reduced"} gear.`;
    case "misfit":
      return `The ${measureWords(finding.measure)} does not fit: it is ${length(Math.abs(finding.difference))} too ${finding.difference < 0 ? "small" : "large"}.`;
    case "stub-if-deep":
      return `Stub teeth, if they are ${length(finding.wholeDepth)} deep: measure the depth.`;
    case "thin-teeth":
      return `The spans show teeth ${length(finding.thinning)} thinner than drawn, along the reference circle: backlash and wear.`;
  }
}

function tipReads({ difference }: { readonly difference: number }, length: LengthWords): string {
  return `The tip reads ${length(Math.abs(difference))} ${difference < 0 ? "small" : "large"}`;
}

function shiftOf({ profileShift }: { readonly profileShift: number }): string {
  return `a profile shift of about ${fixed(profileShift, 2)}`;
}

/** A sentence or two on the measures as a whole. */
export function measuresNoteWords(note: MeasuresNote, length: LengthWords): string {
  switch (note.code) {
    case "odd-count":
      return `An odd count has no tooth opposite a tooth: flat jaws across this gear read up to ${length.upTo(note.readsSmall)} small. Measure from the bore to a tip, and double.`;
    case "tips-not-measured":
      return "Nothing was measured over the tips: stub teeth would read the same. Take the outside diameter and the depth of the new teeth from the mate and its clearance, or from a sound part of the gear.";
    case "one-span":
      return "One span hardly tells the pressure angle, as thin teeth read like another angle: measure over one tooth more as well.";
    case "nothing-fits":
      return "No standard pitch fits all the measures: count the teeth again, and measure again.";
  }
}
