import { describe, expect, it } from "vitest";
import { identifyGear } from "../../../src/gear/identify/identify-gear.ts";
import { repairOnHead } from "../../../src/gear/repair/repair-on-head.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { gearWithTexts, identificationWithTexts, repairWithTexts } from "../../../src/words/gear/with-texts.ts";
import { ready } from "../../support/ready.ts";

/** Every object with a code in some data. */
function coded(data: unknown): { readonly code: string; readonly text?: string }[] {
  if (typeof data !== "object" || data === null) return [];
  const own = "code" in data && typeof data.code === "string" ? [data as { code: string }] : [];
  return [...own, ...Object.values(data).flatMap(coded)];
}

/** The same without the texts. */
function bare(data: unknown): unknown {
  return JSON.parse(JSON.stringify(data, (key, value) => (key === "text" ? undefined : value)));
}

describe("what the command prints as JSON is what the library returns, with a sentence beside each code", () => {
  const gear = spurGear({ teeth: 9, module: 2, tipDiameter: 20, wholeDepth: 4.2, thinning: 0.06 });
  const measures = { teeth: 41, tipDiameter: 84.3, wholeDepth: 4.4, spans: [{ teeth: 5, length: 27.6 }] };
  const identification = identifyGear(measures, { limit: 20 });

  it("a gear and what it could be", () => {
    for (const [data, withTexts] of [
      [gear, gearWithTexts(gear)],
      [identification, identificationWithTexts(identification)],
    ]) {
      expect(bare(withTexts)).toEqual(bare(data));
      expect(coded(data).length).toBeGreaterThan(1);
      const notes = coded(withTexts);
      for (const { code, text } of notes) expect(text ?? "", code).toMatch(/\w/);
    }
  });

  it("a repair, its places in its moves alone", () => {
    const repaired = repairOnHead(ready("ratio-40-plates-15-49"), gear, { damaged: [3], backlash: 0.1, saw: { depth: 4.2 } });
    const { job, ...withTexts } = repairWithTexts(repaired) as ReturnType<typeof repairOnHead>;
    const { job: planned, ...rest } = repaired;
    expect(bare(withTexts)).toEqual(bare(rest));
    expect(job).toMatchObject({ planned: true, way: { setting: { method: "simple" } } });
    expect([Object.keys(job).includes("places"), planned.planned]).toEqual([false, true]);
    const { repair } = withTexts;
    for (const note of repair.warnings as readonly { text?: string }[]) expect(note.text).toMatch(/\.$/);
    expect(repair.warnings.length).toBeGreaterThan(2);
    expect(coded(repair.saw).map(({ text }) => text)).toEqual([expect.stringMatching(/may notch the fillets/)]);
  });
});
