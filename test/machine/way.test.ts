import { describe, expect, it } from "vitest";
import { type NearSetting, nearSettings, type PlaceByMoves } from "../../src/index.ts";
import { placesByMoves } from "../../src/machine/by-moves.ts";
import { workFrom } from "../../src/machine/plan-options.ts";
import { wayOf } from "../../src/machine/way.ts";
import { planned, settingsFor } from "../support/jobs.ts";
import { oddDial, ungeared } from "../support/known-jobs.ts";
import { threePlates } from "../support/ready.ts";

const count97 = { divisions: 97 } as const;
const near97 = nearSettings(ungeared, count97);

describe("the way of a setting", () => {
  it("is by moves where one is made over and over, exact or near, and else by what each place is set to", () => {
    for (const head of [ungeared, threePlates]) {
      for (const setting of settingsFor(head, count97)) {
        const by = setting.exact || setting.moves === "equal" ? "moves" : setting.kind;
        expect(wayOf(setting)).toEqual({ by, setting });
      }
    }
  });
});

describe("places of turns 0 and no hole for every tooth are nothing that can be made", () => {
  it("the compiler takes no setting from zero where moves are made over and over", () => {
    const work = workFrom(ungeared, count97, {});
    const first = near97.find((near) => near.moves === "from-zero") as Extract<NearSetting, { moves: "from-zero" }>;
    // @ts-expect-error: it has no turns and spaces to repeat.
    const act = () => placesByMoves(work, first, [1, 2]);
    expect(act).toBeTypeOf("function");
  });

  it("a setting from zero gives each tooth its own place", () => {
    for (const kind of ["nearest-hole", "ring"] as const) {
      const { places } = planned(ungeared, count97, { by: kind });
      expect(places.every(({ by }) => by === kind)).toBe(true);
      const stands = places.map((place) =>
        JSON.stringify([(place as Partial<PlaceByMoves>).turns, (place as Partial<PlaceByMoves>).hole, place.ring]),
      );
      expect(new Set(stands).size).toBe(97);
    }
    const dialPlaces = planned(oddDial, { divisions: 53 }, { by: "dial" }).places;
    expect(new Set(dialPlaces.map(({ dial }) => JSON.stringify(dial))).size).toBe(53);
  });
});
