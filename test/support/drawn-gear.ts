/**
 * A gear drawn tooth by tooth, each flank of which may have lost metal, measured as one would
 * measure the gear itself: by a tooth caliper, by flat jaws, by two pins. It turns the flanks that
 * {@link rightFlank} draws and knows none of the library's formulas.
 *
 * Tooth n stands n pitches clockwise; its flank *after* is on the clockwise side, and space n
 * follows tooth n.
 */
import { type Drawn, leastOf, type Point, rightFlank, rollAt, turn, zeroOf } from "./drawn-tooth.ts";

/** What the two flanks of a tooth have lost, in mm along the reference circle. */
export interface Lost {
  readonly before: number;
  readonly after: number;
}

export interface DrawnGear extends Drawn {
  readonly tipDiameter: number;
  readonly lost: (tooth: number) => Lost;
}

/** A loss taken off both flanks alike. */
export const shared = (loss: number): Lost => ({ before: loss / 2, after: loss / 2 });

const referenceRadius = ({ teeth, module }: Drawn) => (teeth * module) / 2;
const mirrored = ({ x, y }: Point): Point => ({ x: -x, y });

/** The right flank of a tooth on the y axis, moved along the reference circle towards the tooth's middle. */
function wornFlank(gear: DrawnGear, loss: number): (roll: number) => Point {
  const flank = rightFlank(gear);
  return (roll) => turn(flank(roll), loss / referenceRadius(gear));
}

/** Across a tooth, at a depth below its tip: the caliper's blade rests on the middle of the crest. */
export function measuredAcross(gear: DrawnGear, tooth: number, blade: number): number {
  const { before, after } = gear.lost(tooth);
  const flank = wornFlank(gear, (before + after) / 2);
  const height = gear.tipDiameter / 2 - blade;
  const tip = rollAt(gear, gear.tipDiameter / 2);
  return 2 * flank(zeroOf((roll) => flank(roll).y - height, 0, tip)).x;
}

/** Between flat jaws, from the outer flank of one tooth to the outer flank of another after it. */
export function measuredSpan(gear: DrawnGear, from: number, to: number): number {
  const spanned = ((to - from + gear.teeth) % gear.teeth) + 1;
  const reach = (loss: number) => {
    const flank = wornFlank(gear, loss);
    const outer = (roll: number) => turn(flank(roll), (-(spanned - 1) * Math.PI) / gear.teeth);
    return outer(leastOf((roll) => -outer(roll).x, 0, Math.PI)).x;
  };
  return reach(gear.lost(from).before) + reach(gear.lost(to).after);
}

/** Over two pins that rest in two spaces. */
export function measuredOverPins(gear: DrawnGear, pin: number, first: number, second: number): number {
  const [one, other] = [first, second].map((space) => turn(pinCentre(gear, pin, space), (-2 * Math.PI * space) / gear.teeth));
  if (one === undefined || other === undefined) throw new Error("two spaces");
  return Math.hypot(one.x - other.x, one.y - other.y) + pin;
}

/** The centre of a pin that touches both walls of a space whose middle stands on the y axis: both distances are its radius. */
function pinCentre(gear: DrawnGear, pin: number, space: number): Point {
  const next = (space % gear.teeth) + 1;
  const [leftFlank, rightOfMirror] = [wornFlank(gear, gear.lost(space).after), wornFlank(gear, gear.lost(next).before)];
  const left = (roll: number) => turn(leftFlank(roll), Math.PI / gear.teeth);
  const right = (roll: number) => mirrored(turn(rightOfMirror(roll), Math.PI / gear.teeth));
  const tip = rollAt(gear, gear.tipDiameter / 2);
  let centre: Point = { x: 0, y: (gear.tipDiameter + pin) / 2 };
  for (let step = 0; step < 40; step += 1) {
    const [a, b] = [left, right].map((wall) => gapTo(wall, centre, tip, pin / 2));
    if (a === undefined || b === undefined) throw new Error("two walls");
    // Moving the centre changes each gap by the way's part square to the wall.
    const across = a.normal.x * b.normal.y - a.normal.y * b.normal.x;
    centre = {
      x: centre.x - (a.gap * b.normal.y - b.gap * a.normal.y) / across,
      y: centre.y - (b.gap * a.normal.x - a.gap * b.normal.x) / across,
    };
    if (Math.abs(a.gap) + Math.abs(b.gap) < 1e-12 * gear.tipDiameter) return centre;
  }
  throw new Error("the pin finds no rest");
}

function gapTo(wall: (roll: number) => Point, centre: Point, tip: number, radius: number) {
  const toWall = (roll: number) => Math.hypot(wall(roll).x - centre.x, wall(roll).y - centre.y);
  const nearest = wall(leastOf(toWall, 0, tip));
  const distance = Math.hypot(nearest.x - centre.x, nearest.y - centre.y);
  return { gap: distance - radius, normal: { x: (centre.x - nearest.x) / distance, y: (centre.y - nearest.y) / distance } };
}
