import type { Scale } from "../head/scale.ts";
import type { NearestTooth } from "../machine/tooth-at.ts";
import { formatAngle } from "../number/angle.ts";
import { revolutions } from "../number/exact.ts";
import type { Item } from "./item.ts";

/**
 * Where the work stands by the ring.
 *
 * @param at - The tooth that was read.
 * @param ring - The ring that was read; null where the head has none of its own.
 * @param noun - What the places are: teeth, or places of an angle.
 * @param pin - Where the pin should be at that tooth, as {@link holeStands} says it; empty where no hole tells.
 */
export function standingItems(at: NearestTooth, ring: Scale | null, noun: "tooth" | "place", pin: string): readonly Item[] {
  const where = `${at.sure ? "" : "about "}${noun} ${at.tooth}, ${pastWords(at)}`;
  const says = { term: "The ring says", text: pin === "" ? where : `${where}; the pin should be in ${pin}` };
  return at.sure ? [says] : [says, { term: "NOT SURE", text: doubtWords(at, ring, noun) }];
}

function pastWords({ past, sure }: NearestTooth): string {
  if (past === "0") return sure ? "exactly" : "as read";
  return past.startsWith("-") ? `${formatAngle(revolutions(past.slice(1)), 1)} short of it` : `${formatAngle(past, 1)} past it`;
}

function doubtWords({ alike }: NearestTooth, ring: Scale | null, noun: "tooth" | "place"): string {
  if (ring === null)
    return "that is over a quarter of the way to the next: check the zero of the ring, its side, and what was asked for; or the ring is too coarse for it";
  if (alike === null)
    return `no ${noun} reads so on this ring: check its zero, its side, and what was asked for, and that nothing has moved since`;
  const all = { tooth: "teeth", place: "places" }[noun];
  return `${all} ${alike.first} to ${alike.last} read the same on this ring, which is too coarse for them: find the ${noun} by the pin's hole, or count`;
}
