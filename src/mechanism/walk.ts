import type Fraction from "fraction.js";
import { placesOf } from "../head/direct-plate.ts";
import type { Head } from "../head/head.ts";
import { fromExact } from "../number/ratio.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { type Act, type Motion, type Pin, still } from "./act.ts";

/*
 * The head on the bench, in one frame: crank, plate and spindle stand at angles against the bench,
 * and the holes are where they are drilled in the plate that the setting names. The holes of a move
 * are not counted here: a pin drops or it does not.
 */

/** How a part of the frame is looked at by a pin: the angle from the first hole of its circle to the pin. */
const seenBy: Readonly<Record<Pin["at"], (standing: Act) => Fraction>> = {
  // The index pin goes round with the crank, over a plate that may turn.
  "index-pin": ({ crank, plate }) => crank.sub(plate),
  "small-pin": ({ small }) => small,
  // The rear pin stands still at the back of the plate, which turns past it.
  "rear-pin": ({ plate }) => plate,
  "spindle-pin": ({ spindle }) => spindle,
  dial: ({ crank }) => crank,
};

/**
 * Makes every move of a setting on a head: after each, every pin must find a hole that is drilled
 * in its circle of the plate named, each division must be reached once, and the work must come
 * round as often as wanted. A plate whose stop pin is in must not have moved. The crank must drive
 * the worm that the setting is for: on another the same move turns the work by another angle.
 */
export function walk(setting: UnprovedSetting, { acts, pins }: Motion, wanted: Fraction, head: Head): boolean {
  const isCranked = acts.some(({ crank, small }) => crank.n !== 0n || small.n !== 0n);
  if ("small" in setting && setting.small.ratio !== head.smallCrank?.ratio) return false;
  if (isCranked && !isSameWorm(setting, head)) return false;
  const circles = pins.map((pin) => ({ at: pin.at, drilled: drilledFor(pin, setting, head) }));
  let standing: Act = { crank: still, small: still, plate: still, spindle: still };
  // Every move begins with all pins in holes, as the first does: what they find in one they find in all.
  for (const act of acts) {
    standing = {
      crank: standing.crank.add(act.crank),
      small: standing.small.add(act.small),
      plate: standing.plate.add(act.plate),
      spindle: standing.spindle.add(act.spindle),
    };
    if (!circles.every(({ at, drilled }) => drilled !== null && isAtHole(seenBy[at](standing), drilled))) return false;
  }
  if (setting.plateStopPin === "in" && standing.plate.n !== 0n) return false;
  return goesRound(standing.spindle, wanted);
}

function isSameWorm({ wormRatio }: UnprovedSetting, { wormRatio: owned }: Head): boolean {
  return wormRatio !== null && owned !== null && fromExact(wormRatio).equals(fromExact(owned));
}

function isAtHole(angle: Fraction, drilled: number): boolean {
  return angle.mul(drilled).d === 1n;
}

/** Moves the work on until it must be back, from division to division. */
function goesRound(move: Fraction, wanted: Fraction): boolean {
  const step = move.mul(wanted.d);
  if (step.d !== 1n || !step.equals(wanted.n)) return false;
  const reached = new Uint8Array(Number(wanted.d));
  const by = Number(step.n % wanted.d);
  let place = 0;
  for (let moves = 0; moves < reached.length; moves += 1) {
    reached[place] = (reached[place] ?? 0) + 1;
    place = (place + by) % reached.length;
  }
  return place === 0 && reached.every((times) => times === 1);
}

/**
 * How many holes the head has drilled where a pin is to drop; null where it has not as many as are
 * counted, or no such plate, pin or dial.
 */
function drilledFor({ at, circle }: Pin, { plate, face }: UnprovedSetting, head: Head): number | null {
  // Whole turns come back to the hole they started from, whichever it is.
  if (circle === null) return 1;
  return drilledAt(at, plate, face, head).find((holes) => holes === circle) ?? null;
}

function drilledAt(at: Pin["at"], plate: string | null, face: string | null, head: Head): readonly number[] {
  const onFace = () => head.plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face)?.circles ?? [];
  switch (at) {
    case "index-pin":
      return onFace();
    case "small-pin":
      return head.smallCrank?.circles ?? [];
    case "rear-pin":
      return head.rearPin ? onFace() : [];
    case "spindle-pin":
      return head.directPlates.filter(({ name }) => name === plate).flatMap((owned) => [owned.holes, placesOf(owned)]);
    case "dial":
      return head.dial === null ? [] : [head.dial.marksPerTurn * head.dial.vernierLines];
  }
}
