import type Fraction from "fraction.js";
import type { Head } from "../head/head.ts";
import { fromExact, lcmOf } from "../number/ratio.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import type { Act, Motion, Pin } from "./motion.ts";

/*
 * The head on the bench, in one frame: crank, plate and spindle stand at angles against the bench,
 * and the holes are where they are drilled in the plate that the setting names. The holes of a move
 * are not counted here: a pin drops or it does not.
 */

/** Where the parts stand, in the whole parts of a turn that all their angles are made of. */
interface Standing {
  crank: bigint;
  plate: bigint;
  spindle: bigint;
}

/** How a part of the frame is looked at by a pin: the angle from the first hole of its circle to the pin. */
const seenBy: Readonly<Record<Pin["at"], (standing: Standing) => bigint>> = {
  // The index pin goes round with the crank, over a plate that may turn.
  "index-pin": ({ crank, plate }) => crank - plate,
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
  const isCranked = acts.some(({ crank }) => crank.n !== 0n);
  if (isCranked && !fromExact(setting.wormRatio).equals(fromExact(head.wormRatio))) return false;
  const circles = pins.map((pin) => ({ ...pin, drilled: drilledFor(pin, setting, head) }));
  if (circles.some(({ drilled }) => drilled === null)) return false;
  const perTurn = acts
    .flatMap(({ crank, plate, spindle }) => [crank.d, plate.d, spindle.d])
    .concat(wanted.d, ...circles.map(({ drilled }) => BigInt(drilled ?? 1)))
    .reduce(lcmOf);
  const steps = acts.map((act) => stepOf(act, perTurn));
  const holesApart = circles.map(({ drilled }) => perTurn / BigInt(drilled ?? 1));
  const division = perTurn / wanted.d;
  const reached = new Uint8Array(Number(wanted.d));
  const standing: Standing = { crank: 0n, plate: 0n, spindle: 0n };
  for (let move = 0; move < reached.length; move += 1) {
    if (standing.spindle % division !== 0n) return false;
    const place = Number((standing.spindle / division) % wanted.d);
    reached[place] = (reached[place] ?? 0) + 1;
    for (const step of steps) {
      standing.crank += step.crank;
      standing.plate += step.plate;
      standing.spindle += step.spindle;
      if (!circles.every(({ at }, index) => seenBy[at](standing) % (holesApart[index] ?? 1n) === 0n)) return false;
    }
    if (setting.plateStopPin === "in" && standing.plate !== 0n) return false;
  }
  return standing.spindle === division * wanted.n * wanted.d && reached.every((times) => times === 1);
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
    case "rear-pin":
      return head.rearPin ? onFace() : [];
    case "spindle-pin":
      return head.directPlates.filter(({ name }) => name === plate).map(({ holes }) => holes);
    case "dial":
      return head.dial === null ? [] : [head.dial.marksPerTurn * head.dial.vernierLines];
  }
}

function stepOf({ crank, plate, spindle }: Act, perTurn: bigint): Standing {
  const parts = ({ s, n, d }: Fraction) => s * n * (perTurn / d);
  return { crank: parts(crank), plate: parts(plate), spindle: parts(spindle) };
}
