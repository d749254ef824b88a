import { expect, it } from "vitest";
import { cautionItem, cautionItemsBesides, cautionsBesides } from "../../src/words/index.ts";

it("one way: a spindle goes well back, a crank half a turn, and comes up again to hole or mark", () => {
  const said = (hand: "crank" | "handwheel" | "spindle", to: "hole" | "mark") => cautionItem({ code: "one-way", hand, to }).text;
  expect(said("crank", "hole")).toBe(
    "Turn the crank one way only. Past the hole: go back half a turn or more and come up to it again.",
  );
  expect(said("spindle", "mark")).toBe("Turn the spindle one way only. Past the mark: go well back and come up to it again.");
});

it("what the set-up says already is not told again besides", () => {
  const cautions = [
    { code: "stop-pin", stands: "in" },
    { code: "several-teeth", teethPerMove: 3 },
    { code: "gears-limits" },
    { code: "stop-cutter" },
    { code: "lock-spindle" },
  ] as const;
  expect(cautionItemsBesides(cautions).map(({ term }) => term)).toEqual(["Cutter", "Lock"]);
  expect(cautionsBesides(cautions)).toBe(
    "No hand near the cutter until it stands. Unlock the spindle to move, lock it before every cut.",
  );
});
