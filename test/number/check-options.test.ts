import { describe, expect, it } from "vitest";
import { checkKeys, keysOf, oneOf } from "../../src/number/check-options.ts";
import { refusal } from "../support/refusal.ts";

describe("the keys of options", () => {
  const keys = keysOf<{ readonly side?: string; readonly startAngle?: string }>({ side: true, startAngle: true });

  it.each([[{}], [{ side: "plus" }], [{ side: undefined, startAngle: "0" }]])("%j has none but its own", (options) => {
    expect(() => checkKeys(options, keys, "options")).not.toThrow();
  });

  it("a single one that is none of them is refused", () => {
    expect(refusal(() => checkKeys({ Side: "plus" }, keys, "options"))).toHaveLength(1);
  });

  it("each that is none of them is refused, with those there are", () => {
    expect(refusal(() => checkKeys({ Side: "plus", side: "plus", start: 1 }, keys, "options"))).toEqual([
      { code: "unknown-key", place: "options", problem: 'there is no key "Side"; the keys are side, startAngle' },
      { code: "unknown-key", place: "options", problem: 'there is no key "start"; the keys are side, startAngle' },
    ]);
  });

  it.each([
    [null, "null"],
    ["plus", '"plus"'],
    [["side"], "a list"],
    [12, "12"],
  ])("%j is no options at all", (options, shown) => {
    expect(refusal(() => checkKeys(options, keys, "options"))).toEqual([
      { code: "unreadable", place: "options", problem: `${shown} is not an object; its keys may be side, startAngle` },
    ]);
  });

  it("an option left out of the list is an error of types", () => {
    // @ts-expect-error `side` is missing.
    expect(keysOf<{ side: string; startAngle: string }>({ startAngle: true })).toEqual(["startAngle"]);
  });
});

describe("a word of a list", () => {
  it("is taken as it is", () => {
    expect(oneOf("minus", ["plus", "minus"], "side")).toBe("minus");
  });

  it.each(["Plus", " plus", "", "toString", undefined, null, 1])("%j is neither of two", (word) => {
    const [fault, ...others] = refusal(() => oneOf(word, ["plus", "minus"], "side"));
    expect(fault).toMatchObject({ code: "unknown-word", place: "side" });
    expect(fault?.problem).toMatch(/ is neither "plus" nor "minus"$/);
    expect(others).toEqual([]);
  });

  it("is none of three", () => {
    expect(refusal(() => oneOf("d", ["a", "b", "c"], "letter"))).toEqual([
      { code: "unknown-word", place: "letter", problem: '"d" is none of a, b, c' },
    ]);
  });
});
