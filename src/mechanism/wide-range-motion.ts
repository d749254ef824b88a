import type Fraction from "fraction.js";
import { refuse } from "../number/errors.ts";
import { isPositive, type Ratio } from "../number/ratio.ts";
import type { SmallMove } from "../setting/setting.ts";
import { type Act, byCrank, type Motion, still } from "./act.ts";
import { exactNumber, holes } from "./turns.ts";

/** A move of both cranks of a wide range head. */
export interface BothMove {
  readonly wormRatio: Ratio | null;
  readonly circle: number | null;
  readonly small?: Pick<SmallMove, "ratio" | "turns" | "spaces" | "circle"> | undefined;
}

/** Two acts: the large crank over its plate, then the small one over its own, which turns the worm that many times slower. */
export function wideRangeMotion({ wormRatio, circle, small }: BothMove, pin: Fraction): Motion {
  const { ratio, turns, spaces, circle: ofSmall } = small as NonNullable<BothMove["small"]>;
  const travel = holes(turns, 1, "small.turns").add(holes(spaces, ofSmall, "small.spaces"));
  if (!isPositive(travel)) refuse("out-of-range", "setting.small", "turns and spaces of 0 are no move; give a move above 0");
  const worm = travel.div(exactNumber(String(ratio), "small.ratio"));
  const act: Act = { ...byCrank(wormRatio, worm), crank: still, small: travel };
  return {
    acts: isPositive(pin) ? [byCrank(wormRatio, pin), act] : [act],
    pin,
    pins: [
      { at: "index-pin", circle },
      { at: "small-pin", circle: ofSmall },
    ],
  };
}
