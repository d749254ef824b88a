import type { Head } from "../head/head.ts";
import type { Check } from "../machine/checks.ts";
import type { Way } from "../machine/way.ts";
import { formatAngle } from "../number/angle.ts";
import type { Item } from "./item.ts";
import { counted, signedArc } from "./numbers.ts";
import { holeStands } from "./place-words.ts";
import { scalesStand } from "./reading-words.ts";

const names: Readonly<Record<Check["at"], string>> = {
  quarter: "A quarter",
  half: "Half",
  "three-quarters": "Three quarters",
  close: "Back at start",
};

/** How a check is told. */
export interface CheckTelling {
  /** What the places are; left out, teeth. */
  readonly noun?: string;
  /** Given, what its ring and dial then show is told too. */
  readonly head?: Head;
}

/** A check on the way: `Half`, and `after 63 moves in all, tooth 64, hole 9, 178° 34′ 57.6″`. */
export function checkItem({ at, place }: Check, way: Way, { noun = "tooth", head }: CheckTelling = {}): Item {
  const hole = holeStands(place, way);
  const off = place.errorArcSeconds === 0 ? "" : `, ${signedArc(place.errorArcSeconds)} off`;
  const tooth = at === "close" ? "" : `, ${noun} ${place.tooth}`;
  const scales = head === undefined ? [] : scalesStand(place, head).map((each) => `, ${each}`);
  return {
    term: names[at],
    text: `after ${counted(place.move, "move")} in all${tooth}${hole === "" ? "" : `, ${hole}`}${scales.join("")}, ${formatAngle(place.angle, 1)}${off}`,
  };
}
