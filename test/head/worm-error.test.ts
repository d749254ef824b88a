import { describe, expect, it } from "vitest";
import { checkIsHead } from "../../src/head/check-is-head.ts";
import { defineHead, type HeadSpec } from "../../src/index.ts";
import { refusalKinds, refusalLines } from "../support/refusal.ts";

const spec: HeadSpec = { wormRatio: 40, plates: [{ name: "1", circles: [15] }] };

describe("what worm and wheel are off by", () => {
  it.each([0, 20, 12.5, 3600])("is a part of the head where its file states it: %s", (wormErrorArcSeconds) => {
    const head = defineHead({ ...spec, wormErrorArcSeconds });
    expect(head.wormErrorArcSeconds).toBe(wormErrorArcSeconds);
    expect(defineHead(JSON.parse(JSON.stringify(head)))).toEqual(head);
    expect(() => checkIsHead(head)).not.toThrow();
  });

  it("is no part of it where nothing is stated, so that a head is the same data as before", () => {
    expect(defineHead(spec)).not.toHaveProperty("wormErrorArcSeconds");
    expect(defineHead({ ...spec, wormErrorArcSeconds: undefined })).not.toHaveProperty("wormErrorArcSeconds");
  });

  it.each([-1, 3600.1, "20", null, Number.NaN])("is refused where it is none: %s", (wormErrorArcSeconds) => {
    const wrong = { ...spec, wormErrorArcSeconds } as HeadSpec;
    expect(refusalLines(() => defineHead(wrong)).join()).toContain("is not a number from 0 to 3,600 arc-seconds");
    expect(refusalKinds(() => checkIsHead({ ...defineHead(spec), wormErrorArcSeconds }))).toEqual(["unreadable head"]);
  });
});
