import { describe, expect, it } from "vitest";
import { checkItem } from "../../src/words/index.ts";
import { threePlates } from "../support/ready.ts";
import { simpleJob, wholeJob } from "../support/told-jobs.ts";

describe("a check on the way", () => {
  const { checks, way } = simpleJob;
  const at = (which: string) => {
    const check = checks.find((each) => each.at === which);
    if (check === undefined) throw new Error(`no check ${which}`);
    return check;
  };

  // Half of 86 moves of 20/43 are 43, 20 turns of the pin: tooth 44 in hole 0, half round.
  it("says after how many moves, at which tooth and hole, and what the ring shows", () => {
    expect(checkItem(at("half"), way)).toEqual({
      term: "Half",
      text: "after 43 moves in all, tooth 44, hole 0, 180° 00′ 00.0″",
    });
    expect(checkItem(at("half"), way, { noun: "place", head: threePlates }).text).toBe(
      "after 43 moves in all, place 44, hole 0, ring 180°, 180° 00′ 00.0″",
    );
    expect(checkItem(at("close"), way).text).toBe("after 86 moves in all, hole 0, 0° 00′ 00.0″");
  });

  it("of whole turns names no hole, and of a near way how far it is off", () => {
    expect(checkItem({ at: "half", place: wholeJob.places[4] as never }, wholeJob.way).text).toBe(
      "after 4 moves in all, tooth 5, 180° 00′ 00.0″",
    );
    const off = { ...at("half").place, errorArcSeconds: -0.5 };
    expect(checkItem({ at: "half", place: off }, way).text).toMatch(/180° 00′ 00\.0″, −0\.5″ off$/);
  });
});
