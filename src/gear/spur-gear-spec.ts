import { type Problem, quoted, refuse } from "../number/errors.ts";
import { type FaultList, faultList } from "../number/fault-list.ts";
import { mmPerInch } from "../number/length-unit.ts";
import { type Depth, type DepthRuleName, depthRule, depthRuleNames, usualDepthRule } from "./depth-rule.ts";
import { lengthBounds, readIfGiven, readMeasured } from "./measured.ts";

/** A spur gear as it is asked for: a count of teeth, a pitch, and what departs from the usual. */
export interface SpurGearSpec {
  /** 4 to 10,000. */
  readonly teeth: number;
  /** Reference diameter over teeth, in mm. Give this or `diametralPitch`. */
  readonly module?: number | undefined;
  /** Teeth to the inch of reference diameter. */
  readonly diametralPitch?: number | undefined;
  /** In degrees; left out, 20. */
  readonly pressureAngle?: number | undefined;
  /** In modules, + away from the axis, as on an enlarged pinion; left out, 0. */
  readonly profileShift?: number | undefined;
  /** Left out, 2.157 for 14½° in diametral pitch, 2.25 for all else. */
  readonly depthRule?: DepthRuleName | undefined;
  /** A tip (outside) diameter to take in place of the rule's, in mm. */
  readonly tipDiameter?: number | undefined;
  /** A depth from tip to root to take in place of the rule's, in mm. */
  readonly wholeDepth?: number | undefined;
  /** How much thinner than the full thickness the teeth are cut, in mm along the reference circle; left out, 0. */
  readonly thinning?: number | undefined;
}

/** A checked spec with all the usual filled in. */
export interface CheckedSpec {
  readonly teeth: number;
  readonly module: number;
  readonly system: "module" | "diametral pitch";
  readonly pressureAngle: number;
  readonly profileShift: number;
  readonly rule: Depth;
  readonly tipDiameter: number | undefined;
  readonly wholeDepth: number | undefined;
  readonly thinning: number;
}

const keys = [
  "teeth",
  "module",
  "diametralPitch",
  "pressureAngle",
  "profileShift",
  "depthRule",
  "tipDiameter",
  "wholeDepth",
  "thinning",
];
const countBounds = { least: 4, most: 10_000 };
const moduleBounds = { what: "a module", least: 0.02, most: 200, unit: "mm" } as const;
const diametralPitchBounds = { what: "a diametral pitch", least: mmPerInch / 200, most: mmPerInch / 0.02 };
const pressureAngleBounds = { what: "a pressure angle", least: 10, most: 35, unit: "degrees" } as const;
const profileShiftBounds = { what: "a profile shift in modules", least: -5, most: 5 };
const thinningBounds = { what: "a thinning of the teeth", least: 0, most: 1000, unit: "length" } as const;

/**
 * Checks a spec.
 *
 * @throws {@link InputError} that lists every fault.
 */
export function checkSpec(value: unknown): CheckedSpec {
  const faults = faultList();
  const spec = faults.object(value, "", keys) ?? {};
  const pitch = readPitch(spec, faults);
  const pressureAngle = readMeasured(spec.pressureAngle ?? 20, "pressureAngle", pressureAngleBounds, faults);
  const lengthOf = (what: string) => ({ what, ...lengthBounds });
  const checked = {
    ...pitch,
    teeth: readTeeth(spec.teeth, "teeth", faults),
    pressureAngle,
    profileShift: readMeasured(spec.profileShift ?? 0, "profileShift", profileShiftBounds, faults),
    rule: readRule(spec.depthRule ?? usualDepthRule(pitch.system, pressureAngle), faults),
    tipDiameter: readIfGiven(spec.tipDiameter, "tipDiameter", lengthOf("a tip diameter"), faults),
    wholeDepth: readIfGiven(spec.wholeDepth, "wholeDepth", lengthOf("a whole depth"), faults),
    thinning: readMeasured(spec.thinning ?? 0, "thinning", thinningBounds, faults),
  };
  faults.throwIfAny();
  return checked;
}

/** Reads a count of teeth. */
export function readTeeth(value: unknown, place: string, faults: FaultList): number {
  return faults.wholeNumber(value, place, countBounds.least, countBounds.most);
}

function readPitch({ module, diametralPitch }: Readonly<Record<string, unknown>>, faults: FaultList) {
  if ((module === undefined) === (diametralPitch === undefined)) {
    const given = module === undefined ? "no pitch is given" : "a module and a diametral pitch are both given";
    faults.add(
      module === undefined ? "missing" : "conflict",
      "module",
      `${given}; give one of module (mm) and diametralPitch (teeth to the inch)`,
    );
    return { system: "module", module: 1 } as const;
  }
  return module === undefined
    ? ({
        system: "diametral pitch",
        module: mmPerInch / readMeasured(diametralPitch, "diametralPitch", diametralPitchBounds, faults),
      } as const)
    : ({ system: "module", module: readMeasured(module, "module", moduleBounds, faults) } as const);
}

function readRule(value: unknown, faults: FaultList): Depth {
  const names: readonly string[] = depthRuleNames;
  if (typeof value === "string" && names.includes(value)) return depthRule(value as DepthRuleName);
  faults.add("unknown-word", "depthRule", `${quoted(value)} is not a depth rule; give one of ${names.join(", ")}`);
  return depthRule("2.25");
}

/** Refuses a gear whose parts contradict one another: `problem` is a whole sentence. */
export function refuseGear(problem: Problem): never {
  refuse("cannot-be-made", "", problem);
}
