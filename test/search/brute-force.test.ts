import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineHead, exactSettings, type Head, indexTable, type Method, readyHeads } from "../../src/index.ts";
import { heads, small } from "../support/arbitraries.ts";
import { countsThatClose, everyMove, type Found } from "../support/brute-force.ts";
import { settingKey } from "../support/setting-key.ts";
import { runs } from "../support/sweep.ts";

/** What the library documents that it leaves out of all that can be made. */
function worthReturning(all: readonly Found[]): string[] {
  const of = (method: Method) => all.filter((found) => found.method === method);
  const fewestTeeth = (list: readonly Found[]) => {
    const fewest = Math.min(...list.map(({ teeth }) => teeth));
    return list.filter(({ teeth }) => teeth === fewest);
  };
  // Where one circle of a pair serves alone, that is simple indexing.
  const needsBoth = ({ teeth, circle, second }: Found) =>
    !of("simple").some((simple) => simple.teeth === teeth && [null, circle, second].includes(simple.circle));
  return [
    ...of("direct").filter(({ teeth }) => teeth === 1),
    ...fewestTeeth(of("simple")),
    ...fewestTeeth(of("compound").filter(needsBoth)),
    ...of("differential"),
    ...fewestTeeth(of("dial")),
  ].map(({ key }) => key);
}

describe("against every move that a head can make", () => {
  const divisionsTo = 40;

  it("finds exactly the settings that making every move finds, each once", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 4 }), (head, teethTo) => {
        const made = everyMove(head, { divisionsTo, teethTo });
        for (let divisions = 1; divisions <= divisionsTo; divisions += 1) {
          const settings = [...exactSettings(head, { divisions }, { teethPerMove: teethTo })];
          expect(settings.map(settingKey).sort()).toEqual(worthReturning(made.get(divisions) ?? []).sort());
        }
      }),
      runs(200),
    );
  });
});

describe("against every circle, pair and train tried for every count", () => {
  const geared = (id: string): Head => readyHeads.find((head) => head.id === id) ?? defineHead({ wormRatio: 1 });
  const unlike: readonly [string, Head, number][] = [
    ["40:1, three plates, twelve gears", geared("ratio-40-plates-15-49"), 3],
    ["40:1, two faces, nineteen gears", geared("ratio-40-faces-24-66"), 1],
    ["90:1 table, no pin, no gears", geared("ratio-90-table-15-49"), 3],
    [
      "5:1, a direct plate, one small plate, a few odd gears",
      defineHead({
        wormRatio: 5,
        plates: [{ name: "A", circles: [24, 30, 36] }],
        directPlates: [{ name: "nose", holes: 24 }],
        rearPin: true,
        gears: [20, 25, 30, 30, 35, 47],
        gearing: { greatestPlateRatio: 3 },
      }),
      4,
    ],
    [
      "81/2:1, one plate and four gears",
      defineHead({
        wormRatio: "81/2",
        plates: [{ name: "A", circles: [17, 20, 23, 29] }],
        rearPin: true,
        gears: [24, 28, 40, 56],
      }),
      4,
    ],
  ];

  it.each(unlike)("%s: the same counts of 1 to 400", (_, head, teethTo) => {
    const rows = indexTable(head, { from: 1, to: 400, teethPerMove: teethTo });
    const closing = rows.filter(({ setting }) => setting !== null).map(({ divisions }) => divisions);
    expect(closing).toEqual(countsThatClose(head, { divisionsTo: 400, teethTo }));
  });
});
