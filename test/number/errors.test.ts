import { describe, expect, it } from "vitest";
import { InputError, invariant, numberFault, quoted, refuse, wholeNumberFault } from "../../src/number/errors.ts";
import { refusal } from "../support/refusal.ts";

describe("InputError", () => {
  it("says every fault in one sentence, each after its place", () => {
    const error = new InputError([
      { code: "missing", place: "wormRatio", problem: "is missing" },
      { code: "too-many", place: "", problem: "and 3 more faults" },
    ]);
    expect(error.message).toBe("wormRatio: is missing; and 3 more faults");
    expect(error).toBeInstanceOf(RangeError);
    expect(error.name).toBe("InputError");
    expect(Object.isFrozen(error.faults)).toBe(true);
  });

  it("names twelve faults, says how many more there are, and has them all", () => {
    const told = (many: number) => {
      const faults = Array.from({ length: many }, (_, index) => ({
        code: "missing" as const,
        place: String(index),
        problem: "is missing",
      }));
      const { message, faults: all } = new InputError(faults);
      expect(all).toHaveLength(many);
      return message.split("; ").slice(11);
    };
    expect(told(12)).toEqual(["11: is missing"]);
    expect(told(13)).toEqual(["11: is missing", "and 1 more fault"]);
    expect(told(14)).toEqual(["11: is missing", "and 2 more faults"]);
  });

  it("refuse throws one fault", () => {
    const faults = refusal(() => refuse("conflict", "to", "9 is below 10"));
    expect(faults).toEqual([{ code: "conflict", place: "to", problem: "9 is below 10" }]);
  });

  it.each([
    [10, "out-of-range", "out-of-range"],
    [2.5, "out-of-range", "unreadable"],
    [Number.POSITIVE_INFINITY, "out-of-range", "unreadable"],
    [Number.NaN, "unreadable", "unreadable"],
    ["10", "unreadable", "unreadable"],
    [undefined, "unreadable", "unreadable"],
  ])("%s that is refused is %s as a number and %s as a whole number", (value, asNumber, asWhole) => {
    expect([numberFault(value), wholeNumberFault(value)]).toEqual([asNumber, asWhole]);
  });
});

it("invariant stops on our own mistake only", () => {
  expect(() => invariant(true, () => "never said")).not.toThrow();
  expect(() => invariant(false, () => "2 is odd")).toThrow("turns-and-holes is at fault, please report it: 2 is odd");
});

describe("quoted", () => {
  it.each([
    [12, "12"],
    [Number.NaN, "NaN"],
    [12n, "12"],
    [null, "null"],
    [undefined, "undefined"],
    ["12", '"12"'],
    ['a "quoted" word', '"a \\"quoted\\" word"'],
    [[1, 2], "a list"],
    [{ a: 1 }, "an object"],
    [false, "false"],
    [() => 12, "a function"],
    [Symbol("x"), "Symbol(x)"],
    ["x".repeat(58), `"${"x".repeat(58)}"`],
    ["x".repeat(59), `"${"x".repeat(56)}…`],
  ])("%s is shown as %s", (value, text) => {
    expect(quoted(value)).toBe(text);
  });
});
