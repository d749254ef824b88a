import type { Head, PlannedJob } from "../../src/index.ts";
import { holeStands, type Item, scalesStand } from "../../src/words/index.ts";

/**
 * Where everything stands before the first of what is no tooth.
 *
 * @param first - What it is: `hole 0 of the new plate`.
 */
export function startAt(first: string, { start, way }: Pick<PlannedJob, "start" | "way">, head: Head): Item {
  const hole = holeStands(start, way);
  const stands = [...(hole === "" ? [] : [`pin in ${hole}`]), ...scalesStand(start, head)];
  const falls = (start.ring ?? start.dial)?.side === "minus" ? "; the figures FALL from there" : "";
  return { term: "Start", text: `at ${first}${stands.length === 0 ? "" : `: ${stands.join(", ")}${falls}`}` };
}
