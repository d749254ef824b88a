import { wormRatioOf } from "../../src/head/head.ts";
import type { Head, Method, Ratio } from "../../src/index.ts";
import { capital, handOf } from "../../src/words/index.ts";
import { spindleNouns } from "./spindle-nouns.ts";

/** How the rows are done under which a rule is to stand. */
export interface RuleFor {
  readonly method: Method;
  /** Whether a move goes on by several teeth. */
  readonly several?: boolean;
  /** Whether what is set is an angle, and no count. */
  readonly angle?: boolean;
  /** Whether the rows are nearly right only: the rule then says what they are near to. */
  readonly near?: boolean;
}

/** The rule at the foot of a page, true of every row above it. */
export function footRule(head: Pick<Head, "wormRatio" | "plates" | "directPlates" | "smallCrank">, rows: RuleFor): string {
  const { wormRatio } = head;
  const smallRatio = head.smallCrank?.ratio ?? 1;
  if (wormRatio === null && (rows.method !== "direct" || head.directPlates.length === 0))
    return `Angle of one division = 360° ${shareOf(rows)}`;
  switch (rows.method) {
    case "direct":
      return `${rows.near ? `True spaces of ${moved(rows)}` : "Spaces of a move"} = ${spindleNouns(head).places} ${shareOf(rows)}`;
    case "differential":
      return `Pin ± plate turns = ${wormRatio} for each round of the work`;
    case "compound":
      return `Crank ± both = ${wormRatio} turns for each round of the work`;
    case "wide-range":
      if (rows.near) return turnsRule(wormRatioOf(head), "large crank", rows);
      return `Large crank turns + small crank turns ÷ ${smallRatio} = ${wormRatio} ${shareOf(rows)}`;
    case "simple":
    case "dial":
      return turnsRule(wormRatioOf(head), handOf(head), rows);
  }
}

function turnsRule(wormRatio: Ratio, hand: string, rows: RuleFor): string {
  const said = `${rows.near ? "true " : ""}${hand} turns of ${moved(rows)}`;
  return `${capital(said)} = ${wormRatio} ${shareOf(rows)}`;
}

function moved({ several = false, angle = false }: RuleFor): string {
  return several ? "a move" : angle ? "the angle" : "one division";
}

function shareOf({ several = false, angle = false }: RuleFor): string {
  const teeth = several ? "× teeth a move " : "";
  return angle ? `${teeth}× angle ÷ 360°` : `${teeth}÷ count`;
}
