import { revolutions } from "../../src/index.ts";
import { counted, shortAngle } from "../../src/words/index.ts";

/** What the arms are set to: `arms enclose 14 holes: 120° of the plate`. */
export function armsInWords({ circle, spaces }: { readonly circle: number; readonly spaces: number }): string {
  return `arms enclose ${counted(spaces + 1, "hole")}: ${shortAngle(revolutions(spaces, circle))} of the plate`;
}
