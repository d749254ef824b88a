import { mmPerInch } from "../number/length-unit.ts";

/**
 * A rule for the depth of a tooth, named by its whole depth in modules (or over the diametral
 * pitch: 2.157 m and 2.157/DP are the same depth).
 */
export type DepthRuleName = "2.25" | "2.157" | "2.167" | "2.4" | "2.2+0.002in" | "1.8-stub";

/** The parts of a tooth above and below the reference line of its rack. */
export interface DepthRule {
  readonly name: DepthRuleName;
  /** Addendum in modules. */
  readonly addendum: number;
  /** Dedendum in modules. */
  readonly dedendum: number;
  /** What the rule adds to the dedendum whatever the pitch, in mm. */
  readonly added: number;
  readonly source: string;
}

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
  (
    [
      {
        name: "2.25",
        addendum: 1,
        dedendum: 1.25,
        added: 0,
        source: "ISO 53, profile A; the same coarse-pitch 20° in the inch system (from memory)",
      },
      {
        name: "2.157",
        addendum: 1,
        dedendum: 1.157,
        added: 0,
        source: "US Navy training manual, tpub document 14345, appendix of gear formulas: whole depth 2.157/DP",
      },
      { name: "2.167", addendum: 1, dedendum: 1 + 1 / 6, added: 0, source: "older metric practice, clearance m/6 (from memory)" },
      { name: "2.4", addendum: 1, dedendum: 1.4, added: 0, source: "ISO 53, profile D (from memory); finer modules" },
      {
        name: "2.2+0.002in",
        addendum: 1,
        dedendum: 1.2,
        added: 0.002 * mmPerInch,
        source: "fine pitch in the inch system, 20 DP and finer (from memory)",
      },
      { name: "1.8-stub", addendum: 0.8, dedendum: 1, added: 0, source: "20° stub tooth in the inch system (from memory)" },
    ] satisfies DepthRule[]
  ).map((rule) => Object.freeze(rule)),
);

/**
 * The rule taken when none is given: 2.157/DP for 14½° in diametral pitch, as the older inch
 * cutters are made; 2.25 for all else.
 */
export function usualDepthRule(system: "module" | "diametral pitch", pressureAngle: number): DepthRuleName {
  return system === "diametral pitch" && pressureAngle === 14.5 ? "2.157" : "2.25";
}

/** The rule of a name. */
export function depthRule(name: DepthRuleName): DepthRule {
  // biome-ignore lint/style/noNonNullAssertion: the list holds each name of the type
  return depthRules.find((rule) => rule.name === name)!;
}
