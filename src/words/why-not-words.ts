import type { WhyNot } from "../methods/why-not.ts";
import { groupDigits } from "../number/ratio.ts";

const parts: Readonly<Record<Extract<WhyNot, { code: "without" }>["part"], string>> = {
  crank: "no crank turns the spindle of this head",
  "small-crank": "the head has no small crank",
  "direct-plate": "the head has no direct plate",
  "index-plate": "the head has no index plate",
  "rear-pin": "the head has no rear pin to hold the plate by a second circle",
  dial: "the head has no dial",
  gearing: "the plate of this head cannot be geared to its spindle",
  "change-gears": "no change gears are listed for this head",
};

const multiples: Readonly<
  Record<Extract<WhyNot, { code: "no-multiple" }>["of"], (of: string, owned: readonly number[]) => string>
> = {
  "direct-plate": (of, owned) => `needs a direct plate whose holes are a multiple of ${of}; yours: ${owned.join(", ")}`,
  circle: (of) => `needs a circle whose holes are a multiple of ${of}; no circle of yours is`,
  "two-cranks": (of) => `needs two circles, one of each crank, that make a multiple of ${of} together; no two of yours do`,
  "two-circles": (of) => `needs two circles on one face whose least common multiple is a multiple of ${of}; no two of yours are`,
  dial: (of) => `needs a dial whose marks and vernier lines in a turn are a multiple of ${of}; yours is not`,
};

/** Why a method cannot do a target. */
export function whyNotWords(why: WhyNot): string {
  switch (why.code) {
    case "without":
      return parts[why.part];
    case "no-multiple":
      return multiples[why.of](why.multiplesOf.map(groupDigits).join(" or "), why.owned);
    case "not-all-tried":
      return "not everything was tried: this head has so many circles or gears that it would take too long";
    case "no-train": {
      const teeth = why.teethPerMove === 1 ? "" : ` and 1 to ${why.teethPerMove} teeth per move`;
      return `every circle, every train of one and two pairs${teeth} was tried, the plate turning at most ${why.greatestPlateRatio} times for one spindle turn; none closes`;
    }
  }
}
