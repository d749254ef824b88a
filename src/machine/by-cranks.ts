import { wormRatioOf } from "../head/head.ts";
import type { NearBy } from "../setting/near-setting.ts";
import { angleAt, placesWanted } from "./from-zero.ts";
import type { PlaceByCranks } from "./place.ts";
import { holesReader, scalesReader } from "./scale-reader.ts";
import type { Work } from "./work.ts";

/** Every tooth by both cranks, each by itself from the start: the large one to the hole below, the small one from there. */
export function placesByCranks(
  work: Work,
  { placesPerTurn, circle, small }: NearBy<"both-cranks">,
  teeth: readonly number[],
  before?: number,
): readonly PlaceByCranks[] {
  const reader = holesReader(placesPerTurn, wormRatioOf(work.head));
  const scalesShow = scalesReader(work.head, work.zero);
  const perHole = placesPerTurn / (circle ?? 1);
  return placesWanted(work, teeth, before).map(({ tooth, turned }) => {
    const { turns, mark, errorArcSeconds } = reader.read(turned);
    const spaces = mark % perHole;
    return {
      by: "both-cranks",
      tooth,
      angle: angleAt(work, turned),
      errorArcSeconds,
      turns,
      hole: circle === null ? null : (work.startHole + Math.floor(mark / perHole)) % circle,
      smallTurns: Math.floor(spaces / small.circle),
      smallHole: spaces % small.circle,
      ...scalesShow(reader.set(turned)),
    };
  });
}
