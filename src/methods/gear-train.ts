import type { Fouling } from "../setting/setting.ts";

/**
 * A train from the spindle to the plate: one pair (`drivers` and `driven` of one gear each) or
 * two pairs on a stud. `drivers[0]` sits on the spindle and meshes `driven[0]`; in two pairs
 * `driven[0]` and `drivers[1]` are fast together on the stud, and `drivers[1]` meshes `driven[1]`
 * on the worm shaft, which turns the plate.
 */
export interface GearTrain {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  /** Why the train may not go together, or null where it fits. */
  readonly mayFoul: Fouling | null;
}

/**
 * How many teeth of room a shaft with its nut takes beside a gear, in the check for fouling.
 * Common practice for change gears, no source.
 */
export const shaftRoom = 15;

/**
 * Puts the drivers and the driven gears in the order that leaves most room beside the shafts.
 *
 * Either driver may go on the spindle and either driven gear on the worm shaft: the ratio is the
 * same. Shafts of meshing gears a and b stand (a + b)/2 teeth-modules apart, so the stud's driver
 * clears the spindle when a + b is more than its own teeth by the room that a shaft takes, and
 * likewise its driven gear at the worm shaft.
 */
export function arrange([driver1, driver2]: readonly [number, number], [driven1, driven2]: readonly [number, number]): GearTrain {
  const orders: readonly Order[] = [
    { drivers: [driver1, driver2], driven: [driven1, driven2] },
    { drivers: [driver1, driver2], driven: [driven2, driven1] },
    { drivers: [driver2, driver1], driven: [driven1, driven2] },
    { drivers: [driver2, driver1], driven: [driven2, driven1] },
  ];
  const { drivers, driven } = orders.reduce((best, order) => (roomIn(order) > roomIn(best) ? order : best));
  return { drivers, driven, mayFoul: foulingOf({ drivers, driven }) };
}

interface Order {
  readonly drivers: readonly [number, number];
  readonly driven: readonly [number, number];
}

function roomIn({ drivers: [spindle, studDriver], driven: [studDriven, worm] }: Order): number {
  return Math.min(spindle + studDriven - studDriver, studDriver + worm - studDriven);
}

function foulingOf({ drivers: [spindle, studDriver], driven: [studDriven, worm] }: Order): Fouling | null {
  if (spindle + studDriven < studDriver + shaftRoom) {
    return { code: "stud-driver-at-spindle", gear: studDriver, meshing: [spindle, studDriven], room: shaftRoom };
  }
  if (studDriver + worm < studDriven + shaftRoom) {
    return { code: "stud-driven-at-worm-shaft", gear: studDriven, meshing: [studDriver, worm], room: shaftRoom };
  }
  return null;
}
