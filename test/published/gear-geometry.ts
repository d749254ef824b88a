import type { Source } from "./source.ts";

const technicalText = (place: string): Source => ({
  title: "Gears (technical handbook text)",
  publisher: "tandwiel.info",
  year: "not shown",
  place,
});

/**
 * No page was at hand, and every row is what the formula gives to its last digit: so it is taken for reckoned, not
 * read. The formulas themselves are held to teeth drawn point by point in `test/gear/drawn-gear.test.ts`.
 */
const reckoned = (title: string): Source => ({
  title,
  publisher: "our arithmetic",
  year: "not printed",
  place: "our arithmetic; tables of this kind are printed, none was at hand",
});

/**
 * Circular pitch, thickness, depth with a clearance of 0.16 m, base pitch at 14°30′ and 20°: all in mm.
 * The fourth row is printed as module 0.3528 and 72 DP, and follows the latter.
 */
export const basePitches = {
  source: technicalText("pitch, module, … base pitch: pitch and base-pitch table; page not shown"),
  rows: [
    { p: "0.62831", m: 0.2, S: "0.3142", h: "0.432", pb1430: "0.6083", pb20: "0.5904" },
    { p: "0.94248", m: 0.3, S: "0.4712", h: "0.648", pb1430: "0.9125", pb20: "0.8856" },
    { p: "1.00531", m: 0.32, S: "0.5027", h: "0.691", pb1430: "0.9733", pb20: "0.9447" },
    { p: "1.10828", m: 25.4 / 72, S: "0.5541", h: "0.762", pb1430: "1.0730", pb20: "1.0414" },
    { p: "1.25664", m: 0.4, S: "0.6283", h: "0.864", pb1430: "1.2166", pb20: "1.1809" },
  ],
} as const;

/** A tooth of 1 DP in inches. */
export const navyTooth = {
  source: {
    title: "Training manual, document 14345 (title not shown on the pages read)",
    publisher: "US Navy",
    year: "not shown",
    place: "appendix of gear formulas",
  } satisfies Source,
  addendum: "1.000",
  dedendum: "1.1570",
  wholeDepth: "2.1570",
  circularThickness: "1.5708",
  /** Whole depth as a part of the circular pitch. */
  wholeDepthOfPitch: "0.6866",
} as const;

/** Pin diameters in modules for external gears. */
export const usualPins = {
  source: technicalText("measurement with pins or balls; page not shown"),
  rows: [
    { pressureAngle: 20, modules: 1.75 },
    { pressureAngle: 14.5, modules: 1.7 },
  ],
} as const;

/** Over pins of 1.728 in on gears of 1 DP, in inches. */
export const overPins1728 = {
  source: reckoned("checking external spur gears over wires of 1.728/DP"),
  rows: [
    { teeth: 6, at1430: "8.2846", at20: "8.3032" },
    { teeth: 8, at1430: "10.3160", at20: "10.3271" },
    { teeth: 10, at1430: "12.3399", at20: "12.3445" },
    { teeth: 12, at1430: "14.3590", at20: "14.3578" },
    { teeth: 20, at1430: "22.4087", at20: "22.3900" },
  ],
} as const;

/** Base tangent lengths for module 1 at 20°, in mm. */
export const spans20 = {
  source: reckoned("base tangent lengths for module 1, 20°"),
  rows: [
    { teeth: 10, over: 2, length: "4.5683" },
    { teeth: 12, over: 2, length: "4.5963" },
    { teeth: 17, over: 2, length: "4.6663" },
    { teeth: 20, over: 3, length: "7.6604" },
    { teeth: 30, over: 4, length: "10.7526" },
    { teeth: 40, over: 5, length: "13.8448" },
    { teeth: 50, over: 6, length: "16.9370" },
  ],
} as const;

/** Chordal thickness and chordal addendum of a tooth of 1 DP, in inches. */
export const chords = {
  source: reckoned("chordal thickness for 1 DP"),
  rows: [
    { teeth: 10, thickness: "1.5643", addendum: "1.0616" },
    { teeth: 12, thickness: "1.5663", addendum: "1.0513" },
    { teeth: 17, thickness: "1.5686", addendum: "1.0363" },
    { teeth: 20, thickness: "1.5692", addendum: "1.0308" },
  ],
} as const;

/** The involute of an angle in degrees, tan α − α. */
export const involutes = {
  source: reckoned("involute functions"),
  rows: [
    { angle: 14.5, printed: "0.005545" },
    { angle: 20, printed: "0.014904" },
    { angle: 25, printed: "0.029975" },
    { angle: 30, printed: "0.053751" },
  ],
} as const;
