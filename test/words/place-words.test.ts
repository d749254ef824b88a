import { describe, expect, it } from "vitest";
import type { Place, PlannedJob } from "../../src/index.ts";
import type { MoveBetween } from "../../src/machine/place.ts";
import { goesBy, goOnWords, holeStands, moveWords } from "../../src/words/index.ts";
import { bareTable } from "../support/known-jobs.ts";
import { threePlates } from "../support/ready.ts";
import {
  backJob,
  compoundJob,
  dialJob,
  directJob,
  holesJob,
  planOf,
  ringJob,
  simpleJob,
  wholeJob,
} from "../support/told-jobs.ts";

describe("what the hand goes by", () => {
  it("holes of a plate, holes of the spindle's own, or marks", () => {
    expect([simpleJob, wholeJob, compoundJob, holesJob].map(({ way }) => goesBy(way))).toEqual(Array(4).fill("index-holes"));
    expect([directJob, ringJob, dialJob].map(({ way }) => goesBy(way))).toEqual(["spindle-holes", "marks", "marks"]);
  });

  it("whole turns on a head without plates come back to a mark, on one with plates to a hole", () => {
    const turns = planOf(bareTable, 12).way;
    expect([goesBy(turns), goesBy(turns, bareTable), goesBy(wholeJob.way, threePlates)]).toEqual([
      "index-holes",
      "marks",
      "index-holes",
    ]);
  });
});

describe("a move between two places", () => {
  const from = (more: Partial<MoveBetween>): MoveBetween => ({ direction: "forward", moves: 1, turns: 0, spaces: 6, ...more });
  const on = { direction: "with", spaces: 2, circle: 43, turns: 0 } as const;
  const against = { ...on, direction: "against" } as const;

  it.each([
    ["0 + 6/15", from({}), 15, "index-holes"],
    ["BACK 0 + 6/15", from({ direction: "back" }), 15, "index-holes"],
    ["2 + 0", from({ turns: 2, spaces: 0 }), null, "index-holes"],
    ["stay", from({ moves: 0, spaces: 0 }), 15, "index-holes"],
    ["6/24", from({}), 24, "spindle-holes"],
    ["1 + 6/24", from({ turns: 1 }), 24, "spindle-holes"],
    ["0 + 6/15, both on 2/43", from({ second: on }), 15, "index-holes"],
    ["0 + 6/15, both on 3 + 2/43", from({ second: { ...on, turns: 3 } }), 15, "index-holes"],
    ["0 + 6/15, both on 1 + 2/43", from({ second: { ...on, turns: 1 } }), 15, "index-holes"],
    ["both back 2/43, 0 + 6/15", from({ second: against }), 15, "index-holes"],
    ["BACK 0 + 6/15, both on 2/43", from({ direction: "back", second: against }), 15, "index-holes"],
    ["BACK 0 + 6/15, both back 2/43", from({ direction: "back", second: on }), 15, "index-holes"],
  ] as const)("%s", (words, move, circle, by) => {
    expect(moveWords(move, circle, by)).toBe(words);
  });

  it("from hole to hole, and nothing where marks are set", () => {
    const at = (more: object): Place =>
      ({ ...holesJob.places[1], from: { direction: "forward", turns: 0, spaces: 20, ...more } }) as Place;
    const said = (more: object) => goOnWords(at(more), holesJob.way).replace(String(holesJob.way.setting.circle), "C");
    expect(said({})).toBe("0 + 20/C");
    expect(said({ direction: "back", turns: 1 })).toBe("BACK 1 + 20/C");
    expect([said({ spaces: 0 }), said({ turns: 2, spaces: 0 })]).toEqual(["stay", "2 + 0/C"]);
    for (const { places, way } of [ringJob, dialJob]) expect(goOnWords(places[1] as Place, way)).toBe("");
  });
});

describe("where the pin stands", () => {
  it("by its hole, and by the rear pin's; nothing where any hole serves or marks are set", () => {
    const stands = ({ places, way }: PlannedJob, index = 1) => holeStands(places[index] as Place, way);
    // 40/86 is 20/43; 69 is 14/21 − 2/23.
    expect([stands(simpleJob), stands(backJob)]).toEqual(["hole 20", "hole 14, rear pin in hole 21"]);
    expect([stands(wholeJob), stands(ringJob), stands(dialJob), stands(holesJob, 0)]).toEqual(["", "", "", "hole 0"]);
  });
});
