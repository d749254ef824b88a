import type { Ratio } from "../number/ratio.ts";

/** Why a method cannot do a target on a head: a part that is missing, a number that no part has, or a search that failed. */
export type WhyNot =
  | {
      readonly code: "without";
      readonly part: "crank" | "small-crank" | "direct-plate" | "index-plate" | "rear-pin" | "dial" | "gearing" | "change-gears";
    }
  | {
      readonly code: "no-multiple";
      /** What would have to be a multiple of one of these. */
      readonly of: "direct-plate" | "circle" | "two-cranks" | "two-circles" | "dial";
      readonly multiplesOf: readonly number[];
      /** What is owned of it, where that is short to say; else empty. */
      readonly owned: readonly number[];
    }
  | {
      /** The head is so large that not every pair of circles, or not every train, was tried. */
      readonly code: "not-all-tried";
    }
  | {
      /** Every circle, train of one and two pairs and number of teeth per move was tried. */
      readonly code: "no-train";
      readonly teethPerMove: number;
      readonly greatestPlateRatio: Ratio;
    };
