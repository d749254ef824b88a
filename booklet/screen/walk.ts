import {
  type Check,
  cuttingOrder,
  type Place,
  type PlannedJob,
  type PreparedHead,
  planJob,
  prepare,
  type RepairOnHead,
  type RepairPurpose,
  repairOnHead,
  spurGear,
  type Target,
} from "../../src/index.ts";
import { betweenWords, noPlaces, placeNoun, targetWords, teethInRuns, wayShort } from "../../src/words/index.ts";
import type { GearTyped, Job, Teeth } from "./job.ts";
import { refuseTyped } from "./numbers-typed.ts";
import { wayNamed } from "./ways.ts";

/** One place of a walk through a job. */
export interface Step {
  readonly place: Place;
  /** Of a repair: what is done there, and between which teeth. */
  readonly repair: { readonly purpose: RepairPurpose; readonly between: string } | null;
  /** What to look at when the work stands here. */
  readonly check: Check | null;
}

/** A job planned, to be gone through place by place. */
export interface Walk {
  /** With its way named, so that no later plan takes another. */
  readonly job: Job;
  readonly title: string;
  /** What its places are called. */
  readonly noun: "tooth" | "place" | "space";
  readonly plan: PlannedJob;
  readonly steps: readonly Step[];
  /** What the work must show when it is back at its start; null where it does not come back. */
  readonly close: Check | null;
}

/**
 * Plans a job to be gone through. Every position is the plan's own.
 *
 * @throws {@link InputError} where the head can do none of it, the way is not there, or the job is not allowed.
 */
export function walkOf(job: Job): Walk {
  const head = prepare(job.head);
  const walk = job.work.kind === "repair" ? repairWalk(head, job, job.work.gear) : divideWalk(head, job, job.work);
  if (job.done > walk.steps.length)
    refuseTyped("done", `${job.done} places cannot be done of a job that has ${walk.steps.length}; copy the whole link again`);
  return { ...walk, job: { ...job, way: wayShort(walk.plan.way) } };
}

type Planned = Omit<Walk, "job">;

function inOrder(teeth: NonNullable<Teeth>, target: Target): readonly number[] {
  if (!("step" in teeth)) return teeth;
  return "divisions" in target ? cuttingOrder(target.divisions, teeth.step) : refuseTyped("every", "needs a count");
}

function divideWalk(head: PreparedHead, job: Job, { target, teeth }: Extract<Job["work"], { kind: "divide" }>): Planned {
  const options = { startAngle: job.startAngle, side: job.side, ...(teeth === null ? {} : { teeth: inOrder(teeth, target) }) };
  const best = job.way === null && job.startHole > 0 ? null : planJob(head, target, { ...options, startHole: 0 });
  const ways = best?.planned ? [best.way, ...best.others] : [];
  const setting = job.way === null ? undefined : wayNamed(head, target, job.way, ways).setting;
  const plan = planJob(head, target, { ...options, startHole: job.startHole, setting });
  if (!plan.planned) refuseTyped("job", noPlaces.possible);
  const checks = plan.checks.filter(({ at }) => at !== "close");
  return {
    title: targetWords(target),
    noun: placeNoun(target),
    plan,
    steps: plan.places.map((place) => ({
      place,
      repair: null,
      check: checks.find((check) => check.place.tooth === place.tooth) ?? null,
    })),
    close: plan.checks.find(({ at }) => at === "close") ?? null,
  };
}

function repairWalk(head: PreparedHead, job: Job, gear: GearTyped): Planned {
  const places = { startAngle: job.startAngle, side: job.side };
  const best = repairPlanned(head, gear, places);
  const ways = best.job.planned ? [best.job.way, ...best.job.others] : [];
  const setting = job.way === null ? undefined : wayNamed(head, { divisions: gear.teeth }, job.way, ways).setting;
  const { job: plan, moves, repair } = repairPlanned(head, gear, { ...places, startHole: job.startHole, setting });
  if (!plan.planned) refuseTyped("job", noPlaces.possible);
  return {
    title: `REPAIR: ${teethInRuns(repair.plan.damaged)} of ${gear.teeth}`,
    noun: "space",
    plan,
    steps: moves.map(({ position, purpose, toothSpace }) => ({
      place: position,
      repair: { purpose, between: betweenWords(toothSpace, repair.plan) },
      check: null,
    })),
    close: null,
  };
}

/** The repair of a gear as it was typed. */
export function repairPlanned(
  head: PreparedHead,
  { teeth, pitch, system, pressureAngle, damaged, backlash }: GearTyped,
  places: Parameters<typeof repairOnHead>[2]["places"] = {},
): RepairOnHead {
  const gear = spurGear({ teeth, pressureAngle, ...(system === "module" ? { module: pitch } : { diametralPitch: pitch }) });
  return repairOnHead(head, gear, { damaged, places, ...(backlash === null ? {} : { backlash }) });
}
