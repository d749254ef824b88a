import { type Revolutions, toothAt } from "../../src/index.ts";
import { holeStands, type Item, standingItems } from "../../src/words/index.ts";
import { angleTyped, wholeTyped } from "./numbers-typed.ts";
import type { Walk } from "./walk.ts";

/** What is read at the machine, as it was typed; what was not read is empty. */
export interface ReadAtMachine {
  readonly ring: string;
  readonly hole: string;
  readonly turns: string;
}

/** The places of a walk that agree with what was read, by their index, and what the ring says. */
export interface FoundPlaces {
  readonly indices: readonly number[];
  readonly items: readonly Item[];
}

/**
 * Finds where a job stands from what ring, pin and count of turns say.
 *
 * @throws {@link InputError} where a reading is none.
 */
export function placesFound(walk: Walk, read: ReadAtMachine): FoundPlaces {
  const hole = read.hole.trim() === "" ? null : wholeTyped(read.hole, "hole");
  const turns = read.turns.trim() === "" ? null : wholeTyped(read.turns, "turns");
  const ring = read.ring.trim() === "" ? null : byRing(walk, angleTyped(read.ring, "ring"));
  const indices = walk.steps.flatMap(({ place }, index) => {
    const fits =
      (hole === null || ("hole" in place && place.hole === hole)) &&
      (turns === null || ("turns" in place && place.turns === turns)) &&
      (ring === null || ring.teeth.includes(place.tooth));
    return fits && (hole !== null || turns !== null || ring !== null) ? [index] : [];
  });
  return { indices, items: ring?.items ?? [] };
}

function byRing({ job, plan, steps, noun }: Walk, angle: Revolutions) {
  const { ring } = job.head;
  const { count, from } = numbering(plan);
  // The ring is read as from tooth 1; a job that starts at another tooth counts on from there.
  const named = (tooth: number) => ((tooth + from - 2) % count) + 1;
  const at = toothAt(plan.way.setting, angle, { ring, startAngle: job.startAngle, side: job.side });
  const tooth = named(at.tooth);
  const alike = at.alike && { ...at.alike, first: named(at.alike.first), last: named(at.alike.last) };
  const place = steps.find((step) => step.place.tooth === tooth)?.place;
  const pin = place === undefined ? "" : holeStands(place, plan.way);
  const first = at.alike?.first ?? at.tooth;
  const many = at.alike?.count ?? 1;
  return {
    teeth: Array.from({ length: many }, (_, index) => named(((first + index - 1) % count) + 1)),
    items: standingItems({ ...at, tooth, alike }, ring, noun === "space" ? "tooth" : noun, pin),
  };
}

function numbering({ target, start }: Walk["plan"]): { readonly count: number; readonly from: number } {
  const count = "divisions" in target ? target.divisions : Number(target.angle.split("/")[1] ?? 1);
  return { count, from: start.tooth };
}
