import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Answer, type Head, indexAngle, indexDivisions, prove, type Route, revolutions } from "../../src/index.ts";
import { counts, heads, teethPerMove } from "../support/arbitraries.ts";
import { canBeSetUp, closesOnBench } from "../support/mechanism.ts";
import { threePlates as geared, ready } from "../support/ready.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");
const table = ready("ratio-90-table-15-49");

const kinds = (answer: Answer) => {
  const routes: readonly Route[] = answer.routes;
  return routes.map(({ kind }) => kind);
};

/** The head with what a route asks for. */
function changed(head: Head, route: Route): Head {
  switch (route.kind) {
    case "gears":
      return { ...head, gears: [...head.gears, ...route.add] };
    case "circle":
      return { ...head, plates: [{ name: "new", faces: [{ name: null, circles: route.circles }] }] };
    case "direct-plate":
      return { ...head, directPlates: [{ name: "new", holes: route.holes }] };
    case "method":
    case "count":
    case "near":
      return head;
  }
}

describe("routes", () => {
  it("are there just where nothing closes", () => {
    fc.assert(
      fc.property(heads(), counts, (head, divisions) => {
        const answer = indexDivisions(head, divisions);
        if (answer.exact) expect(answer.routes).toEqual([]);
        else if (divisions < 200) expect(answer.routes.length).toBeGreaterThan(0);
      }),
    );
  });

  it("each close where they say they are exact, walked through on the head so changed", () => {
    fc.assert(
      fc.property(heads(), counts, teethPerMove, (owned, divisions, most) => {
        for (const route of indexDivisions(owned, divisions, { teethPerMove: most }).routes) {
          if (route.kind === "near") {
            expect(route.setting.exact).toBe(false);
            continue;
          }
          const { setting } = route;
          const head = changed(owned, route);
          expect(setting.exact).toBe(true);
          expect(prove(setting, { walkOn: head })).toMatchObject({
            closes: true,
            moves: route.kind === "count" ? route.divisions : divisions,
          });
          expect([canBeSetUp(setting, head), closesOnBench(setting, head)]).toEqual([true, true]);
        }
      }),
    );
  });

  it("come in order of effort, a circle too large for a common plate last", () => {
    expect(kinds(indexDivisions(geared, 787))).toEqual(["gears", "gears", "gears", "count", "count", "near", "circle"]);
    expect(kinds(indexDivisions(ungeared, 127))).toEqual(["gears", "gears", "gears", "circle", "count", "count", "near"]);
    expect(kinds(indexDivisions(table, 127))).toEqual(["circle", "count", "count", "near"]);
  });

  it("begin with what is owned but was not asked for", () => {
    const [first] = indexDivisions(geared, 96, { methods: ["simple"] }).routes;
    expect(first).toMatchObject({ kind: "method", setting: { method: "differential", exact: true } });
    const [more] = indexDivisions(geared, 383, { teethPerMove: 1 }).routes;
    expect(more).toMatchObject({ kind: "method", setting: { method: "differential", exact: true } });
    expect(kinds(indexDivisions(geared, 787, { methods: ["simple", "compound"] }))).not.toContain("method");
  });

  it("name for 96 by simple indexing the circles that are multiples of 12", () => {
    const routes: readonly Route[] = indexDivisions(ungeared, 96, { methods: ["simple"] }).routes;
    const by12 = routes.find(({ kind }) => kind === "circle");
    expect(by12).toMatchObject({ circles: [12, 24, 36, 48, 60, 72], setting: { circle: 12, turns: 0, spaces: 5 } });
  });

  it("of an angle name no counts", () => {
    const answer = indexAngle(ungeared, revolutions("29/3601"));
    expect(answer.exact).toBe(false);
    expect(kinds(answer)).toContain("near");
    expect(kinds(answer)).not.toContain("count");
  });

  it("go through JSON unchanged", () => {
    const { routes } = indexDivisions(geared, 787);
    expect(JSON.parse(JSON.stringify(routes))).toEqual(routes);
  });
});
