import type { Job } from "../booklet/index.ts";
import { InputError, type Target } from "../src/index.ts";
import type { jobOptions } from "./booklet-options.ts";
import { budgetRead } from "./budget-asked.ts";
import { budgetOptions } from "./budget-options.ts";
import { fault, radiusAsked } from "./command-line.ts";
import { targetAsked } from "./look-up.ts";
import { numbersListed } from "./number-list.ts";
import type { Given } from "./read-options.ts";
import { everyAsked, searchAsked, startAsked, wayAsked } from "./shared-options.ts";

/** Reads the job of a job sheet, and how it is to be done. */
export function jobAsked(job: string, given: Given<typeof jobOptions>): Job {
  const target = jobTarget(job);
  return {
    ...target,
    ...searchAsked(given),
    ...startAsked(given),
    ...(given.by !== undefined && { by: wayAsked(given.by) }),
    ...(given.teeth !== undefined && { teeth: numbersListed(given.teeth, "--teeth") }),
    ...(given.every !== undefined && { teeth: everyOf(target, given) }),
    ...budgetOf(given),
  };
}

const ofBudget = [...Object.keys(budgetOptions).filter((name) => name !== "budget"), "radius"];

/** What is given with `--budget`. */
function budgetOf(given: Given<typeof jobOptions>): Pick<Job, "budget"> {
  const alone = ofBudget.find((name) => Object.hasOwn(given, name));
  const radius = radiusAsked(given);
  if (given.budget === true && radius !== null) return { budget: { ...budgetRead(radius, given), unit: radius.unit } };
  if (given.budget === true) throw fault("missing", "--budget", "needs the radius of the work; add --radius 50");
  if (alone === undefined) return {};
  throw fault("no-effect", `--${alone}`, `has no effect without --budget; add it, or leave --${alone} out`);
}

/** What is given with `--every`, for a count alone. */
function everyOf(target: Target, { every = "", teeth }: Given<typeof jobOptions>): readonly number[] {
  if (teeth !== undefined) throw fault("conflict", "--every", "is given beside --teeth; give one of the two");
  if ("divisions" in target) return everyAsked(target.divisions, every);
  throw fault("no-effect", "--every", "goes with a count and has no effect on an angle; leave it out");
}

function jobTarget(job: string): Target {
  const target = named(() => targetAsked(job));
  if ("angle" in target || target.divisions > 1) return target;
  throw fault(
    "out-of-range",
    "--job",
    `${JSON.stringify(job)} is not a count to divide by; give a whole number of 2 or more, or an angle`,
  );
}

/** What is wrong with the question is wrong with the option that holds it. */
function named(read: () => Target): Target {
  try {
    return read();
  } catch (error) {
    if (error instanceof InputError) throw new InputError(error.faults.map((each) => ({ ...each, place: "--job" })));
    throw error;
  }
}

/** What a job is called in the name of its file: `127`, `2-54`. */
export function jobInName(job: string): string {
  return job
    .replace(/[^0-9a-z.]+/gi, " ")
    .trim()
    .replaceAll(" ", "-");
}
