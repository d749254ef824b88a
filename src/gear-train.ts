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
  readonly mayFoul: string | null;
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
  let best = { drivers: [driver1, driver2], driven: [driven1, driven2] };
  let bestRoom = Number.NEGATIVE_INFINITY;
  for (const drivers of [
    [driver1, driver2],
    [driver2, driver1],
  ] as const) {
    for (const driven of [
      [driven1, driven2],
      [driven2, driven1],
    ] as const) {
      const room = Math.min(drivers[0] + driven[0] - drivers[1], drivers[1] + driven[1] - driven[0]);
      if (room > bestRoom) {
        best = { drivers: [...drivers], driven: [...driven] };
        bestRoom = room;
      }
    }
  }
  return { ...best, mayFoul: foulingOf(best.drivers, best.driven) };
}

function foulingOf(drivers: readonly number[], driven: readonly number[]): string | null {
  const [spindle = 0, studDriver = 0] = drivers;
  const [studDriven = 0, worm = 0] = driven;
  if (spindle + studDriven < studDriver + shaftRoom) {
    return `the stud's ${studDriver} may reach the spindle: ${spindle} + ${studDriven} is less than ${studDriver} + ${shaftRoom}`;
  }
  if (studDriver + worm < studDriven + shaftRoom) {
    return `the stud's ${studDriven} may reach the worm shaft: ${studDriver} + ${worm} is less than ${studDriven} + ${shaftRoom}`;
  }
  return null;
}
