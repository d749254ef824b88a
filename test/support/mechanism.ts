import { type Head, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { add, divided, holes, plateTurns, type Turns, times, turnsOf, turnsText, withinTurn, workTurned } from "./bench.ts";

/*
 * A second mechanism, to judge the library's by: the hand counts the holes that are drilled in the
 * head it has before it, in whole numbers. It shares nothing with src/ but the shapes of a head and
 * of a setting: not how a move is found, nor how the library makes it.
 */

/**
 * How far the work turns in one move of a setting on a head; null where the head has not the holes
 * or the worm that the setting names, where the stop pin holds a plate that is to turn, or where the
 * gears jam.
 */
export function workPerMove(setting: UnprovedSetting, head: Head): Turns | null {
  const drilled = holesUnderPin(setting, head);
  if (drilled === null) return null;
  const pin = holes(setting.turns, setting.spaces, drilled);
  if (setting.method === "direct") return pin;
  const worm = turnsOf(wormRatioOf(head));
  if (turnsText(worm) !== turnsText(turnsOf(setting.wormRatio))) return null;
  switch (setting.method) {
    case "simple":
    case "dial":
      return workTurned(pin, turnsOf("0"), worm);
    case "wide-range": {
      const { ratio, turns, spaces, circle } = setting.small;
      const drilled = head.smallCrank?.ratio === ratio && head.smallCrank.circles.includes(circle);
      return drilled ? workTurned(add(pin, divided(holes(turns, spaces, circle), ratio)), turnsOf("0"), worm) : null;
    }
    case "compound": {
      const { circle, spaces, direction } = setting.second;
      if (!head.rearPin || isHeld(setting) || !circlesAt(setting, head).includes(circle)) return null;
      return workTurned(add(pin, times(direction === "with" ? 1n : -1n, holes(0, spaces, circle))), turnsOf("0"), worm);
    }
    case "differential": {
      const plate = plateTurns(setting);
      const net = add(worm, times(-1n, plate));
      return net.n <= 0n || isHeld(setting) ? null : workTurned(pin, plate, worm);
    }
  }
}

/**
 * Whether a setting, made over and over on a head, reaches every division of its count once and then
 * the start, having gone round as often as it says: k/N of a turn a move is k rounds in N moves.
 */
export function closesOnBench(setting: UnprovedSetting, head: Head): boolean {
  const perMove = workPerMove(setting, head);
  if (perMove === null) return false;
  const wanted = turnsOf(setting.spindlePerMove);
  const reached = new Set<string>();
  let work = turnsOf("0");
  for (let move = 0n; move < wanted.d; move += 1n) {
    const place = withinTurn(work);
    if (wanted.d % place.d !== 0n) return false;
    reached.add(turnsText(place));
    work = add(work, perMove);
  }
  return BigInt(reached.size) === wanted.d && work.d === 1n && work.n === wanted.n;
}

/** Whether a head has all that a setting takes, its idlers turning the plate the way that it says. */
export function canBeSetUp(setting: UnprovedSetting, head: Head): boolean {
  if (setting.wormRatio !== head.wormRatio || holesUnderPin(setting, head) === null) return false;
  switch (setting.method) {
    case "direct":
    case "dial":
    case "simple":
      return true;
    case "wide-range":
      return head.smallCrank?.ratio === setting.small.ratio && head.smallCrank.circles.includes(setting.small.circle);
    case "compound":
      return head.rearPin && circlesAt(setting, head).includes(setting.second.circle);
    case "differential": {
      const { drivers, driven, idlers, direction, platePerSpindle } = setting.gears;
      const left = leftInBox([...drivers, ...driven], head.gears);
      if (head.gearing === null || left === null) return false;
      // Any gear that fits between will do for an idler; where the owner has not said, there are enough.
      if (head.idlers !== null && head.idlers.length + left.length < idlers) return false;
      const { onePair, twoPairs } = head.gearing.idlersWithCrank;
      let turnsWith = true;
      for (let idler = drivers.length === 1 ? onePair : twoPairs; idler !== idlers; idler += idler < idlers ? 1 : -1) {
        turnsWith = !turnsWith;
      }
      return turnsWith === (direction === "with") && turnsText(plateTurns(setting)) === platePerSpindle;
    }
  }
}

/** What is in the box when gears are taken out of it one by one; null where one is not there. */
function leftInBox(wanted: readonly number[], owned: readonly number[]): readonly number[] | null {
  const box = [...owned];
  for (const teeth of wanted) {
    const at = box.indexOf(teeth);
    if (at < 0) return null;
    box.splice(at, 1);
  }
  return box;
}

function isHeld({ plateStopPin }: UnprovedSetting): boolean {
  return plateStopPin === "in";
}

function circlesAt({ plate, face }: UnprovedSetting, { plates }: Head): readonly number[] {
  const faces = plates.filter(({ name }) => name === plate).flatMap((each) => each.faces);
  return faces.filter(({ name }) => name === face).flatMap(({ circles }) => circles);
}

/** The holes or places in a turn where the pin of a setting goes; null where the head has not what it names. */
function holesUnderPin(setting: UnprovedSetting, head: Head): number | null {
  // Whole turns come back to the same hole of any circle.
  return setting.circle === null ? 1 : (holesAt(setting, head).find((holes) => holes === setting.circle) ?? null);
}

function holesAt(setting: UnprovedSetting, head: Head): readonly number[] {
  const { directPlates, dial } = head;
  if (setting.method === "direct") return directPlates.filter(({ name }) => name === setting.plate).map(({ holes }) => holes);
  if (setting.method === "dial") return dial === null ? [] : [dial.marksPerTurn * dial.vernierLines];
  return circlesAt(setting, head);
}
