import type { Source } from "./source.ts";

const gaging: Source = {
  title: "Precision Measuring and Gaging, OD1642, Lesson 1/Task 2",
  publisher: "US Army, Ordnance correspondence course",
  year: "not shown on the page read",
  place: "figs. 48-49",
};

const longVernier: Source = {
  title: "The least count of a vernier bevel protractor",
  publisher: "a teaching page, published on the web",
  year: "not shown",
  place: "the whole page",
};

const treatise = {
  title: "Practical Treatise on Milling and Milling Machines",
  publisher: "Brown & Sharpe Mfg. Co., Providence R.I.",
  year: "not shown on the pages read",
} as const;

const problems: Source = {
  title: "Problemas de Tecnologia de la Fresadora",
  publisher: "a trade school",
  year: "not shown",
  place: "formulas 9 and 10",
};

const diary: Source = {
  title: "Observation of a rotary table (in Japanese)",
  publisher: "a workshop diary, published on the web",
  year: "2004",
  place: "2004-11-06",
};

/** The zero of a protractor stands past 12°, and the tenth line of its vernier, of 5′ each, is in line. */
export const reading = { source: gaging, past: "12°", line: 10, minutesPerLine: 5, reads: "12°50'" } as const;

/** One space of a vernier of so many spaces over so many degrees. */
export const space = { source: longVernier, spaces: 12, over: 23, is: "1°55'" } as const;

/** The scales of a machine's table. How many spaces the vernier has is not printed; 25 follow from the two figures. */
export const tableScale = {
  source: { ...treatise, place: "p. 87" },
  main: "127/200",
  spaces: 25,
  readsToInches: 0.001,
} as const;

/** As many spaces as m′ − 1 of the main scale make m′: a vernier reads to one over m′ of a space. Travel of a mark: lead over marks. */
export const rule = { source: problems, formula: "m′ spaces coincide with m′ − 1; 1/m′ of a space" } as const;

/** A dial of 5′ whose vernier divides it by five. */
export const dialOfTable = { source: diary, minutes: 5, spaces: 5, readsToMinutes: 1 } as const;

/** A head geared to the screw of the table, spindle to screw by equal gears: travel for a turn of the crank. */
export const gearedToScrew = {
  source: { ...treatise, place: "p. 183" },
  leadInches: "127/20",
  wormRatio: 40,
  travelInches: 0.00625,
} as const;
