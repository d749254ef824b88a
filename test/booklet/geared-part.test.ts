import { describe, expect, it } from "vitest";
import { fromExact, ratio } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { manyTurns } from "./heads.ts";
import { printedRows } from "./printed-rows.ts";
import { readBack } from "./read-back.ts";

const usual = ready("ratio-40-plates-15-49");

describe("counts that need gears", () => {
  it.each([
    [40, usual],
    [4000, manyTurns],
  ] as const)("say on %i:1 what the crank alone would give, and where that is no count", async (wormRatio, head) => {
    const pages = await readBack(head, { from: 51, to: 200, parts: ["geared"] });
    const geared = printedRows(pages, ratio(wormRatio), head).filter(({ mark }) => mark === "G");
    expect(geared.length).toBeGreaterThan(20);
    for (const { setting, rest } of geared) {
      const [, about = "", said = ""] = /(?:without the gears |^)(≈ )?([\d.]+)(?:\||$)/.exec(rest) ?? [];
      const { turns = 0, spaces = 0, circle, teethPerMove = 1 } = setting ?? {};
      const holes = circle ?? 1;
      const alone = fromExact(`${wormRatio * holes * teethPerMove}/${turns * holes + spaces}`);
      expect({ about, whole: /^\d+$/.test(said) }).toEqual(
        alone.d === 1n ? { about: "", whole: true } : { about: "≈ ", whole: false },
      );
      expect(Math.abs(Number(said) - alone.valueOf())).toBeLessThanOrEqual(alone.d === 1n ? 0 : 0.005);
      expect(Number.isInteger(Number(said))).toBe(alone.d === 1n);
    }
  });
});
