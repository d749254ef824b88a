import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexAngle, indexDivisions, indexTable, nearSettings, prepare, revolutions } from "../../src/index.ts";
import { counts, heads, small, teethPerMove } from "../support/arbitraries.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

describe("a prepared head answers what its head answers", () => {
  it("asked many times, in any order, with any plate on it", () => {
    const asked = fc.array(fc.tuple(counts, teethPerMove, fc.boolean()), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(heads(small), asked, (head, questions) => {
        const prepared = prepare(head);
        for (const [divisions, teeth, isMounted] of questions) {
          const mounted = isMounted ? head.plates.at(-1)?.name : undefined;
          const options = { teethPerMove: teeth, near: true, all: true, limit: 60, mounted };
          expect(indexDivisions(prepared, divisions, options)).toEqual(indexDivisions(head, divisions, options));
        }
      }),
      runs(60),
    );
  });

  it("of angles, tables and near settings too", () => {
    const prepared = prepare(threePlates);
    const angle = revolutions("29/3600");
    expect(indexAngle(prepared, angle)).toEqual(indexAngle(threePlates, angle));
    expect(indexTable(prepared, { from: 50, to: 70 })).toEqual(indexTable(threePlates, { from: 50, to: 70 }));
    expect(nearSettings(prepared, { divisions: 787 })).toEqual(nearSettings(threePlates, { divisions: 787 }));
  });

  it("keeps the head as it was given", () => {
    expect(prepare(threePlates).head).toBe(threePlates);
  });

  it("refuses a plate that the head has not, as the head does", () => {
    const line = 'mounted: this head has no plate "9"; its plates are 1, 2, 3';
    for (const on of [threePlates, prepare(threePlates)]) {
      expect(refusalLines(() => indexDivisions(on, 7, { mounted: "9" }))).toEqual([line]);
    }
  });
});
