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

/** A depth rule by its figures alone: where it is from stands beside the list of them, in `depth-rules`. */
export type Depth = Omit<DepthRule, "source">;

/** The figures of each rule, the commonest first. */
const figures: Readonly<Record<DepthRuleName, Omit<Depth, "name">>> = {
  "2.25": { addendum: 1, dedendum: 1.25, added: 0 },
  "2.157": { addendum: 1, dedendum: 1.157, added: 0 },
  "2.167": { addendum: 1, dedendum: 1 + 1 / 6, added: 0 },
  "2.4": { addendum: 1, dedendum: 1.4, added: 0 },
  "2.2+0.002in": { addendum: 1, dedendum: 1.2, added: 0.002 * mmPerInch },
  "1.8-stub": { addendum: 0.8, dedendum: 1, added: 0 },
};

/** The names of the depth rules, the commonest first. */
export const depthRuleNames: readonly DepthRuleName[] = Object.keys(figures) as DepthRuleName[];

/**
 * The rule taken when none is given: 2.157/DP for 14½° in diametral pitch, as the older inch
 * cutters are made; 2.25 for all else.
 */
export function usualDepthRule(system: "module" | "diametral pitch", pressureAngle: number): DepthRuleName {
  return system === "diametral pitch" && pressureAngle === 14.5 ? "2.157" : "2.25";
}

/** The rule of a name. */
export function depthRule(name: DepthRuleName): Depth {
  return { name, ...figures[name] };
}
