import { describe, expect, it } from "vitest";
import { answerLines } from "../../scripts/answer-lines.ts";
import { type Answer, indexDivisions, type NotPossible, type Untried } from "../../src/index.ts";
import { answerWithWhys, isShownImpossible, untriedWords } from "../../src/words/index.ts";
import { threePlates } from "../support/ready.ts";

const codes: readonly Untried["code"][] = ["settings", "near", "nearest-counts", "gears-to-add"];
const telling = { head: threePlates, mounted: null, radius: null, near: "told", proof: true, limit: null } as const;
const told = (answer: Answer) => answerLines(answer, telling).join("\n");

const shown = indexDivisions(threePlates, 787) as NotPossible;
const cut: NotPossible = {
  ...shown,
  complete: false,
  untried: [{ code: "settings" }, { code: "near" }],
  impossible: {
    ...shown.impossible,
    reasons: shown.impossible.reasons.map((reason) =>
      reason.method === "differential" ? { method: "differential", code: "not-all-tried" } : reason,
    ),
  },
};

describe("what was left untried", () => {
  it("is nothing to say where everything was tried", () => {
    expect(untriedWords([])).toBe("");
    expect(told(shown)).not.toContain("not everything was tried");
  });

  it("is one sentence for each part, and no two alike", () => {
    const said = codes.map((code) => untriedWords([{ code }]));
    for (const each of said) expect(each).toMatch(/^This head has so many circles or gears .+\.$/);
    expect(new Set(said).size).toBe(codes.length);
    expect(untriedWords([{ code: "settings" }, { code: "near" }])).toMatch(/of: settings, near settings\.$/);
  });

  it("is never told as impossible, nor as shown", () => {
    expect([isShownImpossible(shown.impossible), isShownImpossible(cut.impossible)]).toEqual([true, false]);
    expect(told(shown)).toContain("NOT POSSIBLE exactly");
    expect(told(shown)).toContain("Shown, and not merely not found");
    expect(told(cut)).not.toContain("NOT POSSIBLE");
    expect(told(cut)).toContain("NONE FOUND that is exact, and not everything was tried");
    expect(told(cut)).not.toContain("Shown, and not merely not found");
    expect(told(cut).replace(/\s+/g, " ")).toContain("There may be others, and better ones, of: settings, near settings.");
  });

  it("stands in words beside its code in JSON, and so does the reason", () => {
    const json = answerWithWhys(cut) as Answer;
    expect(json.untried).toEqual(cut.untried.map((each) => ({ ...each, why: untriedWords([each]) })));
    const [reason] = json.impossible?.reasons.filter(({ code }) => code === "not-all-tried") ?? [];
    expect(reason).toMatchObject({ method: "differential", why: expect.stringContaining("not everything was tried") });
  });

  it("is not told as settings that a greater limit would list", () => {
    const found = indexDivisions(threePlates, 9, { all: true, limit: 3 });
    expect(told(found)).toContain("a greater --limit lists them");
    expect(told({ ...found, untried: [{ code: "settings" }] } as Answer)).not.toContain("a greater --limit lists them");
  });
});
