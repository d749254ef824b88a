import type { Head, PlannedJob, PlanOptions } from "../../src/index.ts";
import { planned } from "./jobs.ts";
import { backwards69, ungeared } from "./known-jobs.ts";
import { ready, threePlates } from "./ready.ts";
import { secondHand } from "./settings.ts";

/** A count planned on a head. */
export function planOf(head: Head, divisions: number, options: PlanOptions = {}): PlannedJob {
  return planned(head, { divisions }, options);
}

/** 86 by 20 of 43. */
export const simpleJob: PlannedJob = planOf(threePlates, 86);

/** 8 by five turns. */
export const wholeJob: PlannedJob = planOf(threePlates, 8);

/** 8 by the plate of the spindle. */
export const directJob: PlannedJob = planOf(secondHand, 8);

/** 96 by two pins, both on. */
export const compoundJob: PlannedJob = planOf(threePlates, 96, { methods: ["compound"] });

/** 69 by two pins, 14 of 21 less 2 of 23. */
export const backJob: PlannedJob = planOf(threePlates, 69, { setting: backwards69 });

/** 97, each at its nearest hole. */
export const holesJob: PlannedJob = planOf(ungeared, 97, { by: "nearest-hole" });

/** 97 by the ring. */
export const ringJob: PlannedJob = planOf(ungeared, 97, { by: "ring" });

/** 48 by the dial. */
export const dialJob: PlannedJob = planOf(ready("ratio-60-dial"), 48);
