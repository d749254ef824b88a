import { type DepthRule, type DepthRuleName, depthRule, depthRuleNames } from "./depth-rule.ts";

const sources: Readonly<Record<DepthRuleName, string>> = {
  "2.25": "ISO 53, profile A; the same coarse-pitch 20° in the inch system (from memory)",
  "2.157": "US Navy training manual, tpub document 14345, appendix of gear formulas: whole depth 2.157/DP",
  "2.167": "older metric practice, clearance m/6 (from memory)",
  "2.4": "ISO 53, profile D (from memory); finer modules",
  "2.2+0.002in": "fine pitch in the inch system, 20 DP and finer (from memory)",
  "1.8-stub": "20° stub tooth in the inch system (from memory)",
};

/**
 * The depth rules, the commonest first.
 *
 * Addendum and dedendum in modules, what is added in mm.
 *
 * @example
 * ```ts
 * depthRules.find(({ name }) => name === "2.157")?.dedendum; // 1.157
 * ```
 */
export const depthRules: readonly DepthRule[] = Object.freeze(
  depthRuleNames.map((name) => Object.freeze({ ...depthRule(name), source: sources[name] })),
);
