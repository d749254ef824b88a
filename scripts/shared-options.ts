import { cuttingOrder, type PlanOptions, type SearchOptions, type Way, waysBy } from "../src/index.ts";
import { angleFromZero, fault, wholeNumber } from "./command-line.ts";
import { withOptionNames } from "./read-options.ts";

/** Options that say which settings to look for. */
interface SearchGiven {
  readonly method?: string;
  readonly mounted?: string;
  readonly "teeth-per-move"?: string;
}

/** Reads which settings to look for; the library checks the names. */
export function searchAsked({ method, mounted, "teeth-per-move": teeth }: SearchGiven): SearchOptions {
  const methods = method?.split(",").map((each) => each.trim()) as SearchOptions["methods"] & object;
  return {
    ...(method !== undefined && { methods }),
    ...(mounted !== undefined && { mounted }),
    ...(teeth !== undefined && { teethPerMove: wholeNumber(teeth, "--teeth-per-move") }),
  };
}

/** Options that say where pin and scales stand at the start. */
interface StartGiven {
  readonly "start-hole"?: string;
  readonly "start-angle"?: string;
  readonly minus?: boolean;
}

/** Reads where pin and scales stand at the start. */
export function startAsked({
  "start-hole": hole,
  "start-angle": angle,
  minus,
}: StartGiven): Pick<PlanOptions, "side" | "startHole" | "startAngle"> {
  return {
    side: minus === true ? "minus" : "plus",
    ...(hole !== undefined && { startHole: wholeNumber(hole, "--start-hole") }),
    ...(angle !== undefined && { startAngle: angleFromZero(angle, "--start-angle") }),
  };
}

/** Reads the way that a job is to be done. */
export function wayAsked(by: string): Way["by"] {
  const way = waysBy.find((each) => each === by.trim());
  if (way !== undefined) return way;
  throw fault("unknown-word", "--by", `there is no way "${by.slice(0, 40)}"; the ways are ${waysBy.join(", ")}`);
}

/** All teeth of a count, every so many-th first. */
export function everyAsked(divisions: number, every: string): readonly number[] {
  const step = wholeNumber(every, "--every");
  return withOptionNames({ divisions: "", step: "--every" }, () => cuttingOrder(divisions, step));
}
