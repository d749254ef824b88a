import { describe, expect, it } from "vitest";
import { countsFromAngle, parseAngle, ratio, type SetMove, whatMoveGives } from "../../src/index.ts";
import { countsByEyeItems, moveGivesItems } from "../../src/words/backwards-words.ts";

const told = (angle: string, either: string) =>
  countsByEyeItems(countsFromAngle(parseAngle(angle), parseAngle(either)), either).map(({ term, text }) => `${term}: ${text}`);

describe("what counts an angle read by eye could mean", () => {
  it("one alone: 90° to a few minutes is 4", () => {
    expect(told("90°", "0°05'")).toEqual(["It could be: 4 divisions"]);
  });

  it("none: no whole count is between 360/100.5 and 360/100.6", () => {
    // 360°/100.55 is 3.58031°, a hundredth of the way to 100.54.
    expect(told("3.58031°", "0.0001°")).toEqual(["It could be: no whole count; read it again over more teeth"]);
  });

  it("several, and over how many teeth to read again to tell them apart", () => {
    const [could, apart] = told("2.9°", "0.05°");
    // 360/2.95 = 122.03 and 360/2.85 = 126.3.
    expect(could).toBe("It could be: 123 or 124 or 125 or 126 divisions");
    // To tell N from N + 1 takes over 2 · 0.05/360 · N · (N + 1) teeth: 4.2 for 123 and 124, 4.4 for 125 and 126.
    expect(apart).toBe(
      'To tell apart: read the angle over 5 teeth or more, as finely, and ask again with "ANGLE ± 0.05° over 5"; of the counts above, the one that it names again is the right one',
    );
  });

  it("so many that not even the whole wheel tells all of them apart", () => {
    // 360/140 = 2.57 and 360/60 = 6: of 3 to 6 the last two are 12° apart, read to 40° however many are spanned.
    const [, apart] = told("100°", "40°");
    expect(apart).toBe(
      "To tell apart: not all of them even over the whole wheel, read like this: count the teeth, or read more finely",
    );
  });

  it("takes as many teeth as the two that are hardest to tell apart need", () => {
    // 2 · 0.5/360 · N · (N + 1): 18.3 for 80 and 81, 24.4 for 93 and 94; the last stands beside none.
    const counts = [
      { divisions: 80, teethToTellFromNext: 19 },
      { divisions: 93, teethToTellFromNext: 25 },
      { divisions: 94, teethToTellFromNext: null },
    ];
    expect(
      countsByEyeItems(
        [
          { divisions: 80, teethToTellFromNext: 19 },
          { divisions: 81, teethToTellFromNext: null },
        ],
        "0.5°",
      )[1]?.text,
    ).toMatch(/^read the angle over 19 teeth/);
    expect(countsByEyeItems(counts, "0.5°")[1]?.text).toMatch(/^read the angle over 25 teeth or more, .* over 25";/);
  });

  it("twenty are named, and of more the first and the last", () => {
    const counts = (many: number) =>
      countsByEyeItems(
        Array.from({ length: many }, (_, index) => ({ divisions: 101 + index, teethToTellFromNext: 30 })),
        "1°",
      )[0]?.text;
    expect(counts(20)).toMatch(/^101 or 102 or .* or 119 or 120 divisions$/);
    expect(counts(21)).toBe("101 to 121 divisions");
  });
});

describe("a move, and what it gives", () => {
  const said = (move: Omit<SetMove, "wormRatio">, teethPerMove = 1) =>
    moveGivesItems(
      { wormRatio: ratio(40), ...move },
      whatMoveGives({ wormRatio: ratio(40), ...move }, teethPerMove),
      teethPerMove,
    ).map(({ term, text }) => `${term}: ${text}`);

  it("a count: 22 of 33 is two thirds of a turn, a sixtieth of the work", () => {
    expect(said({ turns: 0, spaces: 22, circle: 33 })).toEqual([
      "Move: 0 turns + 22 spaces of 33",
      "This gives: 60 divisions exactly",
      "Each move: 6° 00′ 00.0″ of the work",
    ]);
  });

  it("one division, and whole turns on no circle", () => {
    expect(said({ turns: 40, spaces: 0, circle: null })).toEqual([
      "Move: 40 turns + 0 spaces",
      "This gives: 1 division exactly",
      "Each move: 360° 00′ 00.0″ of the work",
    ]);
  });

  it("two parts, on and back: 10/15 + 2/17 is 40/51, 21/23 − 11/33 is 40/69", () => {
    expect(said({ turns: 0, spaces: 10, circle: 15, second: { spaces: 2, circle: 17, direction: "with" } }).slice(0, 2)).toEqual([
      "Move: 0 turns + 10 spaces of 15, then on 2 spaces of 17",
      "This gives: 51 divisions exactly",
    ]);
    const back = { turns: 0, spaces: 21, circle: 23, second: { spaces: 11, circle: 33, direction: "against" } } as const;
    expect(said(back).slice(0, 2)).toEqual([
      "Move: 0 turns + 21 spaces of 23, then back 11 spaces of 33",
      "This gives: 69 divisions exactly",
    ]);
  });

  it("gears, driver by driver: 40 − 319 · 4/29 is −4, as 72 · 64 to 24 · 48", () => {
    const gears = { drivers: [72, 64], driven: [24, 48], direction: "against" } as const;
    expect(said({ turns: 0, spaces: 4, circle: 29, gears }).slice(0, 2)).toEqual([
      "Move: 0 turns + 4 spaces of 29; gears 72 × 64 to 24 × 48, plate against the crank",
      "This gives: 319 divisions exactly",
    ]);
  });

  it("several teeth to a move, and a count in thousands", () => {
    // 40 · 3/7 = 17 + 3/21; 40/1500 = 4/150.
    expect(said({ turns: 17, spaces: 3, circle: 21 }, 3)[1]).toBe("This gives: 7 divisions exactly, 3 teeth per move");
    expect(said({ turns: 0, spaces: 4, circle: 150 })[1]).toBe("This gives: 1,500 divisions exactly");
  });

  it("comes back with teeth left out: 5 turns are an eighth, two teeth of 16", () => {
    expect(said({ turns: 5, spaces: 0, circle: null }, 2)[1]).toBe(
      "This gives: no whole count: 2 teeth per move of 16 come back to the start with teeth left out",
    );
  });

  it("no count, and how far out it closes: 3 × 13/40 is 9° short, 3 × 14/40 18° too far", () => {
    expect(said({ turns: 13, spaces: 0, circle: null }).slice(1)).toEqual([
      "This gives: no whole count; nearest is 3",
      "At the close: the work is 9.00° short",
      "Each move: 117° 00′ 00.0″ of the work",
    ]);
    expect(said({ turns: 14, spaces: 0, circle: null })[2]).toBe("At the close: the work is 18.00° too far");
    // 100 · 0.4000001/40 of a turn is 0.324″ over one.
    expect(said({ turns: 0, spaces: 4_000_001, circle: 10_000_000 })[2]).toBe("At the close: the work is 0.3″ too far");
    // 2 · 40/1.01 is 79.2.
    expect(said({ turns: 1, spaces: 1, circle: 100 }, 2)[1]).toMatch(/nearest is 79, 2 teeth per move$/);
  });
});
