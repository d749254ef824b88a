import { expect, it } from "vitest";
import { circlesOf, plateName, plateShort, plateWithCircles } from "../../src/words/index.ts";

it("a plate is named with its face where it has two, and any where any serves", () => {
  const [plain, faced, none] = [
    { plate: "1", face: null },
    { plate: "1", face: "front" },
    { plate: null, face: null },
  ];
  expect([plain, faced, none].map(plateName)).toEqual(["1", "1, front face", "any"]);
  expect([plain, faced, none].map(plateShort)).toEqual(["1", "1 front", "any"]);
});

it("a plate is told with all its circles, face by face", () => {
  const face = (name: string | null, ...circles: readonly number[]) => ({ name, circles });
  expect(circlesOf(face(null, 15, 16))).toBe("15 16");
  expect(plateWithCircles({ name: "1", faces: [face(null, 15, 16)] })).toBe("1: 15 16");
  expect(plateWithCircles({ name: "A", faces: [face("front", 24, 25), face("back", 46)] })).toBe("A: front 24 25 / back 46");
});
