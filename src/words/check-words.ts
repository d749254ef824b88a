import type { Check } from "../machine/checks.ts";
import type { Way } from "../machine/way.ts";
import { formatAngle } from "../number/angle.ts";
import { counted, signedArc } from "./numbers.ts";
import { holeStands } from "./place-words.ts";

const names: Readonly<Record<Check["at"], string>> = {
  quarter: "A quarter",
  half: "Half",
  "three-quarters": "Three quarters",
  close: "Back at the start",
};

/** A check on the way: `Half: after 63 moves, tooth 64, hole 9, 178° 34′ 57.6″`. */
export function checkWords({ at, place }: Check, way: Way): string {
  const hole = holeStands(place, way);
  const off = place.errorArcSeconds === 0 ? "" : `, ${signedArc(place.errorArcSeconds)} off`;
  const tooth = at === "close" ? "" : `, tooth ${place.tooth}`;
  return `${names[at]}: after ${counted(place.move, "move")} in all${tooth}${hole === "" ? "" : `, ${hole}`}, ${formatAngle(place.angle, 1)}${off}`;
}
