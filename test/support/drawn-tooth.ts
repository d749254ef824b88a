/**
 * A gear tooth drawn point by point, to measure as one would measure the metal: with jaws, pins and
 * dividers. It knows the definition of an involute (a string unwound from the base circle) and the
 * rack that makes the tooth, and none of the library's formulas.
 */
export interface Drawn {
  readonly teeth: number;
  readonly module: number;
  /** In degrees. */
  readonly pressureAngle: number;
  readonly profileShift: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

const halvings = 100;

/** Where a rising function passes zero, by halving. */
export function zeroOf(rising: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Where a function with one trough is least, by thirds. */
export function leastOf(value: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 2 * halvings; step += 1) {
    const third = (high - low) / 3;
    if (value(low + third) < value(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
}

const radius = ({ x, y }: Point) => Math.hypot(x, y);
export const turn = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});

const base = ({ teeth, module, pressureAngle }: Drawn) => (teeth * module * Math.cos((pressureAngle * Math.PI) / 180)) / 2;

/** The end of a string unwound by `roll` radians from the base circle, which it left at (r, 0). */
function stringEnd(baseRadius: number, roll: number): Point {
  return {
    x: baseRadius * (Math.cos(roll) + roll * Math.sin(roll)),
    y: baseRadius * (Math.sin(roll) - roll * Math.cos(roll)),
  };
}

/**
 * The right flank of the tooth that stands on the y axis, as a function of the roll of the string.
 * Going out it leans to the left, as the string's end does. It is turned until it passes through the point that the rack makes on its reference line.
 */
export function rightFlank(gear: Drawn): (roll: number) => Point {
  const baseRadius = base(gear);
  const made = rackPoint(gear, 0);
  if (made === null) throw new Error("the rack undercuts this tooth at its reference line");
  const roll = zeroOf((at) => radius(stringEnd(baseRadius, at)) - radius(made), 0, 20);
  const end = stringEnd(baseRadius, roll);
  const offset = Math.atan2(made.y, made.x) - Math.atan2(end.y, end.x);
  return (at) => turn(stringEnd(baseRadius, at), offset);
}

/**
 * A point that the basic rack makes on the right flank of the tooth on the y axis, for a travel of
 * the rack to the right by `travel` mm.
 *
 * The rack's reference line stands x·m above the pitch line y = z·m/2; on that line its spaces are
 * half a pitch wide. It touches the tooth where the line square to its flank passes through the
 * pitch point; the gear is then turned back by the angle it has rolled. Past the place where that
 * line touches the base circle the rack would cut away what it has made: null.
 */
export function rackPoint({ teeth, module, pressureAngle, profileShift }: Drawn, travel: number): Point | null {
  const pitchRadius = (teeth * module) / 2;
  const slope = (pressureAngle * Math.PI) / 180;
  // On the pitch line the rack's space has widened by the shift: right flank of the gear's tooth here.
  const atPitchLine = (Math.PI * module) / 4 + profileShift * module * Math.tan(slope) + travel;
  // Flank of the rack: direction leaning inward going up; foot of the perpendicular from (0, pitch point).
  const along = { x: -Math.sin(slope), y: Math.cos(slope) };
  const reach = -atPitchLine * along.x;
  const touch = { x: atPitchLine + reach * along.x, y: pitchRadius + reach * along.y };
  return touch.y < pitchRadius * Math.cos(slope) ** 2 ? null : turn(touch, travel / pitchRadius);
}

/** The roll at which the flank reaches a radius. */
export function rollAt(gear: Drawn, at: number): number {
  return zeroOf((roll) => radius(stringEnd(base(gear), roll)) - at, 0, 20);
}

/** The right flank at a diameter. */
export function flankPoint(gear: Drawn, diameter: number): Point {
  return rightFlank(gear)(rollAt(gear, diameter / 2));
}

/** Thickness along the arc at a diameter, by the angle from the tooth's middle. */
export function drawnThickness(gear: Drawn, diameter: number): number {
  const { x, y } = flankPoint(gear, diameter);
  return diameter * Math.atan2(x, y);
}

/** The distance between flat jaws over some teeth: how far the outer flank bulges from the middle, twice. */
export function drawnSpan(gear: Drawn, teeth: number): { length: number; contactDiameter: number } {
  const flank = rightFlank(gear);
  const outer = (roll: number) => turn(flank(roll), (-(teeth - 1) * Math.PI) / gear.teeth);
  const roll = leastOf((at) => -outer(at).x, 0, Math.PI);
  return { length: 2 * outer(roll).x, contactDiameter: 2 * radius(outer(roll)) };
}

/** The measure over two pins dropped into spaces as nearly opposite as there are, with where they touch. */
export function drawnOverPins(gear: Drawn, pin: number, tipDiameter: number): number {
  const flank = rightFlank(gear);
  // The space to the right of the tooth, turned upright: its left wall is this flank.
  const wall = (roll: number) => turn(flank(roll), Math.PI / gear.teeth);
  const gap = (height: number) => {
    const toWall = (roll: number) => Math.hypot(wall(roll).x, wall(roll).y - height);
    return toWall(leastOf(toWall, 0, rollAt(gear, tipDiameter / 2)));
  };
  // Drawn on inwards, the walls of a large gear cross; a pin lies above that place.
  const crossing = wall(0).x <= 0 ? base(gear) : wall(zeroOf((roll) => -wall(roll).x, 0, rollAt(gear, tipDiameter / 2))).y;
  const height = zeroOf((at) => gap(at) - pin / 2, crossing, tipDiameter + pin);
  const other = turn({ x: 0, y: height }, (Math.floor(gear.teeth / 2) * 2 * Math.PI) / gear.teeth);
  return Math.hypot(other.x, other.y - height) + pin;
}
