import type { WholeDepthRule } from "../../gear/spur-gear.ts";

/** The rule of a depth in the person's system: `"2.25 m"`, `"2.157/DP"`, `"2.2/DP + 0.002 in"`, `"1.8/DP, stub"`. */
export function depthRuleWords(from: WholeDepthRule): string {
  if (from.code === "depth-as-given") return "as given";
  const unit = from.system === "module" ? " m" : "/DP";
  switch (from.rule) {
    case "1.8-stub":
      return `1.8${unit}, stub`;
    case "2.2+0.002in":
      return `2.2${unit} + 0.002 in`;
    case "2.25":
    case "2.157":
    case "2.167":
    case "2.4":
      return `${from.rule}${unit}`;
  }
}
