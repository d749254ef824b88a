import { describe, expect, it } from "vitest";
import { indexDivisions, indexTable, nearSettings, planJob } from "../../src/index.ts";
import {
  moveWords,
  nearItems,
  passedOverItems,
  placeColumns,
  positionColumns,
  reasonItems,
  tableColumns,
  wayFigures,
  wayItems,
} from "../../src/words/index.ts";
import { allTold } from "../support/all-told.ts";
import { planned } from "../support/jobs.ts";
import { wideHead } from "../support/known-jobs.ts";
import { refusalLines } from "../support/refusal.ts";

const told = (divisions: number, by?: "both-cranks" | "moves") =>
  allTold(planned(wideHead, { divisions }, by === undefined ? {} : { by }), wideHead);

describe("what is said of both cranks", () => {
  it("how they are set up, in the order of work", () => {
    const { title, setUp, cautions } = told(126);
    expect(title).toEqual([
      "WIDE RANGE INDEXING, both cranks",
      "two cranks",
      "two cranks 0 + 11 of 42 (plate L, one face), then small crank 5 + 30 of 54",
    ]);
    expect(setUp.slice(0, 6)).toEqual([
      "Plate: L, one face, circle of 42 holes",
      "Crank: 0 turns + 11 spaces",
      "Sector arms: enclose 12 holes, the pin's own among them",
      "Plate stop pin: IN",
      "Small crank: then 5 turns + 30 spaces of its 54",
      "Its arms: enclose 31 holes, the pin's own among them",
    ]);
    expect(cautions.join("\n")).toContain("first the large crank, until its pin is home, then the small one");
  });

  it("that the large crank stays where it is", () => {
    expect(told(128).setUp[0]).toBe("Large crank: stays where it is, its pin in a hole of any circle");
    expect(told(128).title[2]).toBe("two cranks small crank 31 + 25 of 100");
  });

  it("where both stand, by moves and each place by itself", () => {
    const { legend, places } = told(126);
    expect(legend.slice(1, 7)).toEqual([
      "GO ON BY turns",
      "GO ON BY spaces of 42",
      "THEN SMALL CRANK turns + spaces of 54",
      "THEN AT turns",
      "THEN AT hole of 42",
      "THEN AT small of 54",
    ]);
    expect(places.some((line) => line.startsWith("0 | 11 | 5 + 30 | 0 | 11 | 30 | "))).toBe(true);
    const each = told(127, "both-cranks");
    expect(each.setUp[0]).toBe("Circles: 100 (plate L, one face) and 100 of the small crank");
    expect(each.legend.slice(1, 4)).toEqual(["SET TO turns", "SET TO hole of 100", "SET TO small of 100"]);
    expect(each.legend[0]).toContain("the way the crank goes");
    expect(each.places.some((line) => line.startsWith("0 | 31 | 50 | +1.3″ | "))).toBe(true);
  });

  it("its figures, of a move and of each place by itself", () => {
    const figures = (divisions: number, by?: "both-cranks") =>
      wayFigures(planned(wideHead, { divisions }, by === undefined ? {} : { by }).way, wideHead).map(
        ({ head, figure }) => `${head} ${figure}`,
      );
    expect(figures(126)).toEqual(["CIRCLE 42", "TURNS 0", "SPACES 11", "ARMS ENCLOSE 12", "SMALL TURNS 5", "SMALL SPACES 30"]);
    expect(figures(128)).toEqual(["SMALL TURNS 31", "SMALL SPACES 25"]);
    expect(figures(127, "both-cranks")).toEqual(["CIRCLE 100", "SMALL CIRCLE 100"]);
  });

  it("a move back, why not, and what comes near", () => {
    expect(
      moveWords(
        { direction: "back", moves: 1, turns: 0, spaces: 11, small: { turns: 5, spaces: 30, circle: 54 } },
        42,
        "index-holes",
      ),
    ).toBe("BACK 0 + 11/42, small 5 + 30/54");
    const answer = indexDivisions(wideHead, 127);
    expect(reasonItems(answer.impossible?.reasons ?? [], wideHead)[1]).toEqual({
      term: "Two cranks",
      text: "needs two circles, one of each crank, that make a multiple of 127 together; no two of yours do",
    });
    expect(passedOverItems(indexDivisions(wideHead, 126), wideHead).map(({ term }) => term)).toEqual(["Not simple"]);
    const near = nearSettings(wideHead, { divisions: 127 }).find(({ kind }) => kind === "both-cranks");
    if (near === undefined) throw new Error("127 is not near");
    expect(nearItems(near, 127, null)[0]).toEqual({
      term: "~ Both cranks",
      text: "100 (plate L, one face) and 100 of the small crank, every position by itself from one zero",
    });
  });

  it("as columns, a value a cell", () => {
    const heads = (columns: readonly { readonly head: string }[]) => columns.map(({ head }) => head);
    expect(heads(tableColumns(indexTable(wideHead, { from: 126, to: 126 })))).toEqual(
      expect.arrayContaining(["small circle", "small turns", "small spaces"]),
    );
    expect(heads(positionColumns(planned(wideHead, { divisions: 126 }).places))).toEqual(
      expect.arrayContaining(["small turns", "small spaces", "small hole"]),
    );
    expect(heads(positionColumns(planned(wideHead, { divisions: 127 }, { by: "both-cranks" }).places))).toEqual(
      expect.arrayContaining(["turns", "hole", "small hole"]),
    );
  });

  it("a way by both cranks that was tampered with is refused", () => {
    const near = nearSettings(wideHead, { divisions: 127 }).find(({ kind }) => kind === "both-cranks");
    const asked = (changed: object) =>
      refusalLines(() => planJob(wideHead, { divisions: 127 }, { setting: { ...near, ...changed } as never }));
    expect(asked({})).toEqual([]);
    expect(asked({ placesPerTurn: 100 })).toEqual(["setting: has 100 places in a turn by circles of 100 and 100"]);
    expect(asked({ small: { ratio: 100, circle: 49 }, placesPerTurn: 4900 })[0]).toMatch(
      /^setting: needs a circle of 49 for the small crank/,
    );
  });

  it("where no circle of the large crank is among the places it goes by whole turns, and the small one's are counted", () => {
    const head = { ...wideHead, plates: [{ name: "p", faces: [{ name: null, circles: [49] }] }] };
    const job = planned(head, { divisions: 127 }, { by: "both-cranks" });
    const { legend, places, setUp, title } = allTold(job, head);
    expect(job.way.setting.circle).toBeNull();
    expect(setUp[0]).toBe("Circles: whole turns and 100 of the small crank");
    expect(title[2]).toBe("the nearest holes of whole turns and 100 of the small crank");
    expect(legend.slice(1, 4)).toEqual(["SET TO turns", "SET TO small turns", "SET TO small of 100"]);
    expect(wayFigures(job.way, head).map(({ head: over }) => over)).toEqual(["SMALL CIRCLE"]);
    // 40 ÷ 127 of a turn are 31 turns of the small crank and 50 of its holes, as near as it comes.
    expect(places.some((line) => line.startsWith("0 | 31 | 50 | "))).toBe(true);
    expect(positionColumns(job.places).map(({ head: over }) => over)).toContain("small turns");
  });

  it("what the hand sets is told strongly, and what it stands at is not, but where that is what it sets", () => {
    const sets = (divisions: number, by?: "both-cranks") =>
      placeColumns(planned(wideHead, { divisions }, by === undefined ? {} : { by }), wideHead).map(
        ({ key, sets: strong }) => `${key} ${strong}`,
      );
    expect(sets(126).slice(0, 6)).toEqual([
      "go-turns true",
      "go-spaces true",
      "go-small true",
      "turns false",
      "hole false",
      "small-hole false",
    ]);
    expect(sets(128).slice(0, 5)).toEqual([
      "go-turns true",
      "go-spaces true",
      "go-small true",
      "turns false",
      "small-hole false",
    ]);
    expect(sets(127, "both-cranks").slice(0, 3)).toEqual(["turns true", "hole true", "small-hole true"]);
    const inFigures = (divisions: number, by?: "both-cranks") =>
      wayItems(planned(wideHead, { divisions }, by === undefined ? {} : { by }).way, wideHead).flatMap(
        ({ term, inFigures: are }) => (are ? term : []),
      );
    expect(inFigures(126)).toEqual(["Plate", "Crank", "Sector arms", "Small crank", "Its arms"]);
    expect(inFigures(127, "both-cranks")).toEqual(["Circles"]);
  });
});
