import { describe, expect, it } from "vitest";
import { type Head, indexDivisions, type PlanOptions } from "../../src/index.ts";
import {
  headLine,
  holesUsedWords,
  nearItems,
  orderItems,
  placeColumns,
  reasonItems,
  routeItems,
  triedWords,
  wayFigures,
  wayItems,
} from "../../src/words/index.ts";
import { allTold } from "../support/all-told.ts";
import { planned } from "../support/jobs.ts";
import { byDegrees, byGears, byRing } from "../support/without-crank.ts";

const ofCranks = /\b(?:crank|worm|handwheel|index plate|stop pin|arms?)\b/i;

describe("what is said of a job on a head without a crank", () => {
  it.each<[string, Head, number, PlanOptions]>([
    ["a plate with a row of holes", byDegrees, 40, {}],
    ["a plate without it", byDegrees, 12, {}],
    ["the nearest place", byDegrees, 7, { by: "nearest-direct" }],
    ["the ring", byDegrees, 7, { by: "ring" }],
    ["a ring alone", byRing, 7, {}],
    ["a gear", byGears, 7, {}],
    ["a collar", byGears, 8, {}],
    ["detents", byGears, 9, {}],
    ["the nearest tooth space", byGears, 11, { by: "nearest-direct" }],
  ])("%s: nothing of a crank, and all of it", (_, head, divisions, options) => {
    const told = allTold(planned(head, { divisions }, options), head);
    const all = Object.values(told).flat();
    expect(all.filter((line) => ofCranks.test(line))).toEqual([]);
    expect(all.filter((line) => /undefined|null|NaN/.test(line))).toEqual([]);
    expect(told.setUp.length).toBeGreaterThan(0);
  });

  it("names what it is set by", () => {
    const setUp = (head: Head, divisions: number, options: PlanOptions = {}) =>
      allTold(planned(head, { divisions }, options), head).setUp;
    expect(setUp(byGears, 7).slice(0, 2)).toEqual(["Gear: small, 56 teeth", "Move: 8 spaces"]);
    expect(setUp(byGears, 8)[0]).toBe("Collar: collar, 24 notches");
    expect(setUp(byGears, 9)[0]).toBe("Detents: five, 72 detents");
    expect(setUp(byDegrees, 40).slice(0, 4)).toEqual([
      "Direct plate: body, 36 holes",
      "Row of holes: 10, each 1/10 of a space on",
      "Move: 0 spaces + 9 of the row",
      "Each place: turn to its hole, then on until the pin drops through its hole of the row",
    ]);
    expect(setUp(byDegrees, 7, { by: "nearest-direct" })[0]).toBe("Plate: 36 with a row of 10 on the direct plate body");
  });

  it("its figures, large enough to be read from the machine", () => {
    const figures = (head: Head, divisions: number, options: PlanOptions = {}) =>
      wayFigures(planned(head, { divisions }, options).way, head).map(
        ({ head: over, figure, under }) => `${over} ${figure} ${under}`,
      );
    expect(figures(byDegrees, 40)).toEqual(["CIRCLE 36 plate body", "SPACES 0 of 36", "ROW 9 of 10"]);
    expect(figures(byGears, 7)).toEqual(["CIRCLE 56 plate small", "SPACES 8 of 56"]);
    expect(figures(byDegrees, 7, { by: "nearest-direct" })).toEqual(["CIRCLE 36 plate body: nearest holes"]);
  });

  it("lists each place by its hole and that of the row", () => {
    const { legend, places } = allTold(planned(byDegrees, { divisions: 40 }), byDegrees);
    expect(legend.slice(1, 3)).toEqual(["GO ON TO hole of 36", "GO ON TO of the row of 10"]);
    expect(legend[0]).toContain("Holes are numbered from 0, where the pin starts, the way the work goes.");
    expect(places.find((line) => line.startsWith("0 | 9 | "))).toBeDefined();
  });

  it("names the hole of the plate and that of the row together, so that no line ends between them", () => {
    const { places, way } = planned(byDegrees, { divisions: 5 });
    expect(holesUsedWords(places, way)).toBe("0+0, 7+2, 14+4, 21+6, 28+8; 0 is the hole that the pin starts in");
  });

  it("says why not and what would help without a word of cranks", () => {
    const answer = indexDivisions(byDegrees, 7);
    const lines = [
      ...reasonItems(answer.impossible?.reasons ?? [], byDegrees),
      ...routeItems(answer),
      ...answer.near.flatMap((setting) => nearItems(setting, 7, null)),
    ].map(({ term, text }) => `${term}: ${text}`);
    expect(lines.filter((line) => ofCranks.test(line))).toEqual([]);
    expect(lines[0]).toBe("Direct: needs a direct plate whose holes are a multiple of 7; yours: 360");
    expect(lines[1]).toBe("Add a plate: of 7 holes, or a gear of as many teeth, or of a multiple");
    expect(triedWords(answer)).toBe("");
    expect(headLine(byDegrees)).toBe("Degree indexer");
  });

  it("an order of its own costs no turns of a crank", () => {
    const job = planned(byGears, { divisions: 8 }, { teeth: [1, 4, 7, 2, 5, 8, 3, 6] });
    expect(orderItems(job, byGears).map(({ text }) => text)).toEqual([
      "the work goes round 3 times. Go on by what each line says, not by the move of one place above. What was cut first has cooled and settled by then.",
    ]);
  });

  it("what the hand sets is told strongly: the hole and that of the row, or the spaces", () => {
    const columns = (head: Head, divisions: number) =>
      placeColumns(planned(head, { divisions }), head).map(({ key, sets }) => `${key} ${sets}`);
    expect(columns(byDegrees, 40).slice(0, 2)).toEqual(["hole true", "row-hole true"]);
    expect(columns(byGears, 7).slice(0, 2)).toEqual(["go-spaces true", "hole false"]);
    const inFigures = (head: Head, divisions: number, options: PlanOptions = {}) =>
      wayItems(planned(head, { divisions }, options).way, head).flatMap(({ term, inFigures: are }) => (are ? term : []));
    expect(inFigures(byDegrees, 40)).toEqual(["Direct plate", "Row of holes", "Move"]);
    expect(inFigures(byGears, 7)).toEqual(["Gear", "Move"]);
    expect(inFigures(byGears, 11, { by: "nearest-direct" })).toEqual(["Plate"]);
  });

  it("the nearest of a plate without a row, by that plate alone", () => {
    const job = planned(byGears, { divisions: 11 }, { by: "nearest-direct" });
    expect(allTold(job, byGears).title).toEqual([
      "THE NEAREST DETENTS",
      "nearest place",
      "the nearest of 72 on the detents five",
    ]);
    expect(wayFigures(job.way, byGears)).toEqual([{ head: "CIRCLE", figure: "72", under: "plate five: nearest detents" }]);
  });

  it("a plate to add is told where it would fit, and no larger one", () => {
    const kinds = (count: number) => indexDivisions(byGears, count).routes.map(({ kind }) => kind);
    expect(kinds(11)).toContain("direct-plate");
    expect(kinds(199)).toContain("direct-plate");
    expect(kinds(200)).toContain("direct-plate");
    expect(kinds(201)).not.toContain("direct-plate");
    const [route] = indexDivisions(byGears, 11).routes;
    expect(route).toMatchObject({ kind: "direct-plate", holes: 11, setting: { spaces: 1, circle: 11, plate: "new" } });
  });
});
