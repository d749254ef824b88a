import { expect, it } from "vitest";
import { checkListed } from "../../src/machine/listed.ts";
import { refusal } from "../support/refusal.ts";

it("fifty thousand places are listed, and not one more", () => {
  expect(refusal(() => checkListed(50_000, "teeth"))).toEqual([]);
  expect(refusal(() => checkListed(50_001, "teeth"))).toEqual([
    { code: "too-many", place: "teeth", problem: "50,001 places are too many to list; give at most 50,000" },
  ]);
});
