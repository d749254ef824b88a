import type { Source } from "./source.ts";

const workshopCalculation: Source = {
  title: "Karmashala Parikalan (Workshop Calculation, in Hindi), Gurubachansingh Narang",
  publisher: "Hariyana Sahitya Academy, Chandigarh",
  year: "not shown on the pages read",
  place: "pp. 108–109",
};

const memory: Source = {
  title: "old shop tables of compound indexing, 40:1",
  publisher: "from memory",
  year: "not known",
  place: "from memory",
};

/** 40/N turns by two circles of one face: the crank over the first, crank and plate over the second. */
export const settings = [
  {
    divisions: 69,
    spaces: 21,
    circle: 23,
    direction: "against",
    second: { spaces: 11, circle: 33 },
    source: workshopCalculation,
  },
  { divisions: 51, spaces: 10, circle: 15, direction: "with", second: { spaces: 2, circle: 17 }, source: memory },
  { divisions: 77, spaces: 9, circle: 21, direction: "with", second: { spaces: 3, circle: 33 }, source: memory },
  { divisions: 91, spaces: 6, circle: 39, direction: "with", second: { spaces: 14, circle: 49 }, source: memory },
  { divisions: 93, spaces: 3, circle: 31, direction: "with", second: { spaces: 11, circle: 33 }, source: memory },
] as const;

/** The steps by which the book finds 69. */
export const stepsFor69 = { unreduced: ["44/23", "44/33"], turns: "40/69", source: workshopCalculation } as const;
