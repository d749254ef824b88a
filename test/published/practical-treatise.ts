import type { Source } from "./source.ts";

const treatise = {
  title: "Practical Treatise on Milling and Milling Machines",
  publisher: "Brown & Sharpe Mfg. Co., Providence R.I.",
  year: "not shown on the pages read",
} as const;

const at = (place: string): Source => ({ ...treatise, place });

/** What the plates and gears furnished with a 40:1 head reach. The circles are not listed on these pages. */
export const reach = {
  plain: {
    source: at("p. 52"),
    statement: "every number to 50, the even numbers to 100 except 96, many multiples of 5 to 380",
    allTo: 50,
    evenTo: 100,
    except: [96],
  },
  geared: {
    source: at("p. 52"),
    statement: "every division from 1 to 382, and many beyond, by plain or differential indexing",
    allTo: 382,
  },
} as const;

/** Angles in degrees with their moves, 40:1. */
export const angles = [
  { degrees: "1", turns: 0, spaces: 2, circle: 18, source: at("p. 57") },
  { degrees: "2/3", turns: 0, spaces: 2, circle: 27, source: at("p. 57") },
  { degrees: "1/2", turns: 0, spaces: 1, circle: 18, source: at("p. 57") },
  { degrees: "1/3", turns: 0, spaces: 1, circle: 27, source: at("p. 57") },
] as const;

/** A quarter of a degree cannot be had by simple indexing with the three plates; it can by gearing (p. 57). */
export const quarterDegree = { degrees: "1/4", source: at("p. 54") } as const;

/**
 * Differential settings, 40:1, of which the whole train is printed. The spindle gear drives the second
 * gear on the stud, the first gear on the stud drives the gear on the worm.
 */
export const geared = [
  {
    divisions: 319,
    turns: 0,
    spaces: 4,
    circle: 29,
    spindle: 72,
    secondOnStud: 24,
    firstOnStud: 64,
    worm: 48,
    idlers: 1,
    direction: "against",
    platePerSpindle: "-4",
    source: at("p. 57"),
  },
  {
    divisions: 1440,
    turns: 0,
    spaces: 1,
    circle: 33,
    spindle: 100,
    secondOnStud: 40,
    firstOnStud: 64,
    worm: 44,
    idlers: 1,
    direction: "against",
    platePerSpindle: "-40/11",
    source: at("p. 57"),
  },
] as const;

/** A differential setting of which the gears are on a page not read; the ratio follows from the assumed count, 280. */
export const gearedByRatio = {
  divisions: 271,
  assumed: 280,
  turns: 0,
  spaces: 3,
  circle: 21,
  pairs: 1,
  idlers: 1,
  direction: "with",
  platePerSpindle: "9/7",
  source: at("p. 57"),
} as const;

/** Counts of the ratchet index plates of the triple centres. */
export const ratchetPlates = {
  divisions: [2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 20, 24],
  source: at("on index centres"),
} as const;

/** Direct indexing by the spindle gear itself, the train swung out of mesh. */
export const spindleGear = { teeth: 72, divisions: 9, advance: 8, source: at("p. 63") } as const;
