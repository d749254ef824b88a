import fc from "fast-check";
import {
  defineHead,
  exactSettings,
  type Head,
  type NearSetting,
  nearSettings,
  type PlannedJob,
  type PlanOptions,
  planJob,
  revolutions,
  type Setting,
  type Target,
} from "../../src/index.ts";
import { headSpecs, small } from "./arbitraries.ts";
import { type Bench, teethOf } from "./hand-moves.ts";

/** A head with a target, and one of the settings that do it or nearly do it. */
export interface Chosen {
  readonly head: Head;
  readonly target: Target;
  readonly setting: Setting | NearSetting;
}

const figures = fc.constantFrom("marks" as const, "angle" as const);
const scales = fc.record(
  {
    ring: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 90 }), vernierLines: fc.integer({ min: 1, max: 4 }), figures }),
    dial: fc.record({ marksPerTurn: fc.integer({ min: 2, max: 24 }), vernierLines: fc.integer({ min: 1, max: 3 }), figures }),
  },
  { requiredKeys: [] },
);

/** Heads of every sort, small enough for the bench, with and without scales. */
export const benchHeads: fc.Arbitrary<Head> = fc
  .tuple(headSpecs(small), scales)
  .map(([spec, more]) => defineHead({ ...spec, ...more }));

const anAngle = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }))
  .map(([n, d]): Target => ({ angle: revolutions(n, d) }));
const aCount = fc.integer({ min: 1, max: 60 }).map((divisions): Target => ({ divisions }));

/** What is asked of a head. */
export const targets: fc.Arbitrary<Target> = fc.oneof({ weight: 3, arbitrary: aCount }, { weight: 1, arbitrary: anAngle });

/** The settings of a head for a target, some exact ones and all that come near. */
export function settingsFor(head: Head, target: Target): readonly (Setting | NearSetting)[] {
  const found: (Setting | NearSetting)[] = [];
  for (const setting of exactSettings(head, target, { teethPerMove: 4 })) {
    if (found.length === 24) break;
    found.push(setting);
  }
  return [...found, ...nearSettings(head, target, { teethPerMove: 4 })];
}

/** Settings of every kind and method that heads give, exact and near. */
export const chosen: fc.Arbitrary<Chosen> = fc
  .tuple(benchHeads, targets, fc.nat())
  .map(([head, target, which]) => {
    const found = settingsFor(head, target);
    return { head, target, setting: found[which % Math.max(1, found.length)] };
  })
  .filter((job): job is Chosen => job.setting !== undefined);

/** How a job is laid out. The teeth are numbers to be taken round the count, the hole round the circle. */
export interface LaidOut {
  readonly teeth: readonly number[] | null;
  readonly order: "given" | "moves";
  readonly startTooth: number;
  readonly startHole: number;
  readonly startAngle: [number, number];
  readonly side: "plus" | "minus";
  readonly direction: "forward" | "nearer";
}

export const laidOut: fc.Arbitrary<LaidOut> = fc.record({
  teeth: fc.option(fc.array(fc.nat(), { minLength: 1, maxLength: 12 })),
  order: fc.constantFrom("given", "moves"),
  startTooth: fc.oneof(fc.constant(0), fc.nat()),
  startHole: fc.nat(),
  startAngle: fc.oneof(
    fc.constant<[number, number]>([0, 1]),
    fc.tuple(fc.integer({ min: 0, max: 719 }), fc.integer({ min: 1, max: 720 })),
  ),
  side: fc.constantFrom("plus", "minus"),
  direction: fc.constantFrom("forward", "nearer"),
});

/** The options of a layout on a job: its numbers brought within the count and the circle. */
export function optionsOf({ target, setting }: Chosen, how: LaidOut): PlanOptions & Omit<Bench, "head" | "target"> {
  const count = teethOf(target);
  const { circle, method } = setting;
  const holes = circle === null || method === "dial" ? 1 : circle;
  return {
    setting,
    ...(how.teeth !== null && { teeth: how.teeth.map((tooth) => 1 + (tooth % count)), order: how.order }),
    startTooth: 1 + (how.startTooth % count),
    startHole: how.startHole % holes,
    startAngle: revolutions(...how.startAngle),
    side: how.side,
    direction: how.direction,
  };
}

/** A plan that is known to be one. */
export function planned(head: Head, target: Target, options: PlanOptions = {}): PlannedJob {
  const plan = planJob(head, target, options);
  if (!plan.planned) throw new Error("the head can do none of it");
  return plan;
}
