import { describe, expect, it } from "vitest";
import { defineHead, exactSettings } from "../../src/index.ts";
import { settingKey } from "../support/setting-key.ts";

describe("a worm ratio with a factor below the line that no gear has", () => {
  it("7/3 with gears 8 and 8: the third of a turn cancels against the spaces, not against the gears", () => {
    const head = defineHead({ wormRatio: "7/3", plates: [{ name: "1", circles: [2] }], gears: [8, 8] });
    const settings = [...exactSettings(head, { divisions: 4 }, { teethPerMove: 3, methods: ["differential"] })];
    expect(settings.map(settingKey)).toEqual([
      "differential, 3 per move, null/null, 1 + 0/null, with 8 : 8",
      "differential, 3 per move, 1/null, 2 + 1/2, against 8 : 8",
    ]);
  });
});
