import {
  type FaultCode,
  type Head,
  InputError,
  type Place,
  type PlannedJob,
  planJob,
  type RepairOnHead,
} from "../../src/index.ts";

/**
 * The job of a repair, once it is known to be one for this head: a sheet that names one head and
 * prints the moves of another would spoil the gear.
 *
 * @throws {@link InputError} when the head is another, has not what the way takes, or reads otherwise;
 * or when the head can do none of it.
 */
export function plannedOn({ job, head: { id, name, wormRatio } }: RepairOnHead, head: Head): PlannedJob {
  if (head.id !== id || head.name !== name || head.wormRatio !== wormRatio) {
    throw refusal("conflict", `is not the one that the repair was worked out for, ${JSON.stringify(name)}; give that one`);
  }
  if (!job.planned) throw refusal("cannot-be-made", "cannot do this repair, not even nearly; work it out for another");
  if (!readsAlike(job.places, placesOn(head, job))) {
    throw refusal("conflict", "has another ring or dial than that of the repair; work the repair out for this one");
  }
  return job;
}

/** The same places planned anew; what the head has not is refused. */
function placesOn(head: Head, { target, way, start, places }: PlannedJob): readonly Place[] {
  const again = planJob(head, target, {
    setting: way.setting,
    teeth: places.map(({ tooth }) => tooth),
    startTooth: start.tooth,
    startAngle: start.angle,
    side: (start.ring ?? start.dial)?.side,
  });
  return again.planned ? again.places : [];
}

function readsAlike(printed: readonly Place[], own: readonly Place[]): boolean {
  const shown = (places: readonly Place[]) => JSON.stringify(places.map(({ dial, ring }) => [dial, ring]));
  return shown(printed) === shown(own);
}

function refusal(code: FaultCode, problem: string): InputError {
  return new InputError([{ code, place: "head", problem }]);
}
