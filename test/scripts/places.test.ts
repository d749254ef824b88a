import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { said } from "../../scripts/command.ts";

const ungeared = "ratio-40-plates-15-49-ungeared";
const table90 = fileURLToPath(new URL("../../booklet/heads/table-90-with-dial.json", import.meta.url));
const secondHand = fileURLToPath(new URL("../../booklet/heads/second-hand-40.json", import.meta.url));

const words = async (...asked: string[]) => (await said(asked)).text;
const oneLine = async (...asked: string[]) => (await words(...asked)).replace(/\s+/g, " ");
const json = async (...asked: string[]) => JSON.parse(await words(...asked, "--json"));

/** Arc-seconds of the work for a part of a crank turn on a 40:1 head. */
const secondsAt40 = (numerator: number, denominator: number) => (numerator / denominator / 40) * 1_296_000;

interface Printed {
  readonly tooth: number;
  readonly move?: number;
  readonly turns?: number;
  readonly hole?: number;
  readonly rearHole?: number;
  readonly errorArcSeconds: number;
}

/*
 * Worked apart: 97 teeth on a 40:1 head want 40/97 of a turn a tooth. On plate 3 nothing closes, and a
 * search by hand over all pairs of its circles and 1 to 12 teeth per move gives as the nearest
 *   one tooth: 2/43 + 15/41 = 727/1763, short of 40/97 by 1/171011 of a turn, which is 0.189″ of the work;
 *   five teeth: 1 4/47 + 42/43 = 4167/2021, short of 200/97 by 1/196037, which is 0.165″.
 */
const shortPerMove = { one: secondsAt40(1, 171_011), five: secondsAt40(1, 196_037) };

describe("positions follow the near move where nothing closes", () => {
  it("97 by compound, teeth 2, 3 and 4: each 0.19″ more short than the last", async () => {
    const { positions, plan } = await json("97", "--head", ungeared, "--method", "compound", "--teeth", "2,3,4");
    expect(plan.way).toMatchObject({
      by: "moves",
      setting: { method: "compound", circle: 43, spaces: 2, second: { circle: 41, spaces: 15 } },
    });
    expect(plan.places).toBeUndefined();
    positions.forEach((place: Printed, index: number) => {
      const moves = index + 1;
      expect(place).toMatchObject({ tooth: 1 + moves, move: moves, turns: 0, hole: 2 * moves, rearHole: (15 * moves) % 41 });
      expect(place.errorArcSeconds).toBeCloseTo(-moves * shortPerMove.one, 9);
    });
    const told = await words("97", "--head", ungeared, "--method", "compound", "--teeth", "2,3,4");
    expect(told).toMatch(/^ +2 {2}0 \+ 2\/43, both on 15\/41 +0 +2 +15 +−0\.2″ +4°$/m);
    expect(told).toMatch(/^ +4 {2}0 \+ 2\/43, both on 15\/41 +0 +6 +4 +−0\.6″ +11°$/m);
    expect(told).toContain("no position listed over 0.6″\n");
  });

  it("97 after tooth 90: what is left of the moves of five teeth, each with its own error", async () => {
    const { positions, plan } = await json("97", "--head", ungeared, "--after", "90");
    expect(plan.way.setting).toMatchObject({ method: "compound", teethPerMove: 5, circle: 47, turns: 1, spaces: 4 });
    // Tooth 90 is 89 on from tooth 1, and 76 moves of 5 teeth are 380 = 3·97 + 89.
    expect(positions.map(({ move }: Printed) => move)).toEqual(Array.from({ length: 20 }, (_, index) => 77 + index));
    for (const { tooth, move = 0, turns, hole, rearHole, errorArcSeconds } of positions as readonly Printed[]) {
      expect(tooth).toBe(1 + ((5 * move) % 97));
      expect([turns, hole, rearHole]).toEqual([Math.floor((51 * move) / 47), (51 * move) % 47, (42 * move) % 43]);
      expect(errorArcSeconds).toBeCloseTo(-move * shortPerMove.five, 9);
    }
    const told = await oneLine("97", "--head", ungeared, "--after", "90");
    expect(told).toContain("WHAT IS LEFT AFTER TOOTH 90: NEAR ONLY, NOT EXACT COMPOUND INDEXING, 5 TEETH PER MOVE");
    expect(told).toContain("the first goes on from tooth 90");
    // 97 moves come 16.03″ short of the start.
    expect(told).toContain("Back at start after 97 moves in all, hole 12, rear pin in hole 32, 0° 00′ 00.0″, −16.0″ off");
  });

  it("all of them are judged over the whole round, some over themselves alone", async () => {
    const all = await json("97", "--head", ungeared, "--teeth", "all");
    expect(all.plan.way.setting.teethPerMove).toBe(5);
    expect(all.positions).toHaveLength(97);
    expect(all.plan.worstArcSeconds).toBeCloseTo(96 * shortPerMove.five, 9);
    const some = await json("97", "--head", ungeared, "--teeth", "2,3,4");
    expect(some.plan.way.setting.teethPerMove).toBe(1);
    expect(some.plan.worstArcSeconds).toBeCloseTo(3 * shortPerMove.one, 9);
  });

  it("another way can be chosen, and the others say how far off they are over the same teeth", async () => {
    const chosen = ["97", "--head", ungeared, "--teeth", "2,3,4", "--by"];
    const ring = await json(...chosen, "ring");
    expect(ring.plan.way.by).toBe("ring");
    // The true places are 3° 42′ 40.8″, 7° 25′ 21.6″ and 11° 08′ 02.5″.
    expect(ring.positions.map(({ errorArcSeconds }: Printed) => Math.round(errorArcSeconds))).toEqual([1039, -1522, -482]);
    const told = await oneLine(...chosen, "ring");
    expect(told).toContain("BY THE RING");
    expect(told).toContain("compound 0 + 2 of 43 + 15 of 41 (plate 3): up to 0.6″ off");
    expect(told).toContain("--by moves, --by nearest-hole take them");
    const holes = await json(...chosen, "nearest-hole");
    const { circle } = holes.plan.way.setting;
    for (const { tooth, turns = 0, hole = 0, errorArcSeconds } of holes.positions as readonly Printed[]) {
      expect(turns * circle + hole).toBe(Math.round((40 * circle * (tooth - 1)) / 97));
      expect(errorArcSeconds).toBeCloseTo(secondsAt40(turns * circle + hole, circle) - ((tooth - 1) / 97) * 1_296_000, 6);
    }
  });

  it("an exact setting is named where a near way is asked for beside it", async () => {
    const told = await oneLine("127", "--teeth", "2,3", "--by", "nearest-hole");
    expect(told).toContain("The setting above has no error at all: leave --by out to follow it.");
  });

  it("what a dial shows is set before how far it is off", async () => {
    const told = await words("97", "--head", table90, "--teeth", "12,90");
    expect(told).toMatch(/tooth +dial +off by +ring +true angle/);
    expect(told).toMatch(/^ +12 {2}10 t \+ 0° 49′ 30″ {3}\+0\.9″ +41° +≈ 40° 49′ 29\.1″$/m);
  });
});

describe("positions of an exact setting", () => {
  it("keep the keys of the first edition", async () => {
    const { positions } = await json("86", "--teeth", "3,4,31,60");
    for (const place of positions) {
      expect(place).toMatchObject({
        tooth: expect.any(Number),
        move: expect.any(Number),
        angle: expect.any(String),
        turns: expect.any(Number),
        hole: expect.any(Number),
        dial: null,
        ring: { mark: expect.any(Number), figure: expect.any(String) },
        from: { direction: "forward", moves: expect.any(Number), turns: expect.any(Number), spaces: expect.any(Number) },
      });
    }
    // 20 of 43 a tooth: tooth 31 is 600 spaces on, 13 turns and 41 holes.
    expect(positions[2]).toMatchObject({ tooth: 31, move: 30, turns: 13, hole: 41, angle: "15/43", errorArcSeconds: 0 });
  });

  it("all of them come with checks on the way, and named ones do not", async () => {
    const all = await oneLine("127", "--teeth", "all");
    for (const check of [
      "A quarter after 31 moves",
      "Half after 63 moves",
      "Three quarters after 95 moves",
      "Back at start after 127 moves",
    ])
      expect(all).toContain(check);
    expect(await words("127", "--teeth", "4,5")).not.toContain("A quarter");
  });

  it("the pin is in another hole the second time round: 42 1/3 turns over 15 holes leave it in hole 5", async () => {
    expect(await oneLine("127", "--teeth", "4,5")).toContain(
      "A second time round the holes are others, as the pin then starts from hole 5",
    );
    expect(await oneLine("127", "--teeth", "4,5", "--start-hole", "12")).toContain("starts from hole 2;");
    expect(await words("86", "--teeth", "4,5")).not.toContain("second time round");
  });

  it("nothing is left after the last", async () => {
    expect((await json("97", "--head", table90, "--after", "97")).positions).toEqual([]);
    expect((await json("86", "--after", "86")).positions).toEqual([]);
    expect(await words("86", "--after", "86")).toContain("That was the last: nothing is left to do.");
  });

  it("no line is wider than 80, whatever the way", async () => {
    for (const asked of [
      ["127", "--teeth", "all"],
      ["97", "--head", ungeared, "--teeth", "all"],
      ["96", "--head", ungeared, "--teeth", "all"],
      ["97", "--head", secondHand, "--method", "compound", "--teeth", "all", "--nearer", "--start-hole", "3"].filter(
        (word) => word !== "--nearer",
      ),
      ["97", "--head", table90, "--teeth", "all"],
      ["97", "--head", "ratio-90-table-15-49", "--teeth", "all"],
      ["24", "--head", secondHand, "--teeth", "all"],
    ]) {
      const text = await words(...asked);
      expect(
        text.split("\n").filter((line) => line.length > 80),
        asked.join(" "),
      ).toEqual([]);
    }
  });
});

describe("the scales at tooth 1", () => {
  it("a ring that stands at 124° at tooth 1 falls from there on the minus side", async () => {
    const told = await words("90", "--teeth", "1,2,3", "--minus", "--start-angle", "124");
    for (const [tooth, degrees] of [
      [1, 124],
      [2, 120],
      [3, 116],
    ])
      expect(told).toMatch(new RegExp(`^ +${tooth} .* ${degrees}° +${degrees}° 00′ 00\\.0″$`, "m"));
    expect(told.replace(/\s+/g, " ")).toContain("The scales stand at 124° at tooth 1 and fall from there.");
    expect(await words("90", "--minus", "--start-angle", "124", "--ring", "120")).toContain("tooth 2, exactly");
  });
});

describe("where the ring stands", () => {
  it("what a ring cannot tell apart is said to read the same", async () => {
    const told = await oneLine("1000", "--ring", "180");
    expect(told).toContain("NOT SURE teeth 500 to 502 read the same on this ring");
    expect(told).not.toContain("exactly the");
    expect(told).not.toContain("--after");
    expect(await oneLine("10", "--ring", "40")).toContain("no tooth reads so on this ring");
  });

  it("the pin's hole is told, and by which way where nothing closes", async () => {
    // 11 moves of 20 spaces are 220, five rounds of 43 and 5 more.
    expect(await oneLine("86", "--ring", "46.5")).toContain("tooth 12, ≈ 0° 27′ 12.6″ past it; the pin should be in hole 5");
    expect(await oneLine("97", "--head", ungeared, "--ring", "37.1")).toContain(
      "the pin should be in hole 8, rear pin in hole 41 by the near way that leads, compound 1 + 4 of 47 + 42 of 43",
    );
  });
});

describe("an order of cutting", () => {
  it("is every so many-th tooth, each once, and says what it costs", async () => {
    const { positions } = await json("60", "--every", "7");
    expect(positions.map(({ tooth }: Printed) => tooth).slice(0, 10)).toEqual([1, 8, 15, 22, 29, 36, 43, 50, 57, 4]);
    expect(new Set(positions.map(({ tooth }: Printed) => tooth)).size).toBe(60);
    expect(await oneLine("60", "--every", "7")).toContain("the work goes round 7 times: 280 turns of the crank, not 40.");
  });

  it("lets the error of a move add up over all its rounds, as it does", async () => {
    const { positions } = await json("97", "--head", ungeared, "--every", "7", "--method", "compound");
    positions.forEach(({ errorArcSeconds }: Printed, index: number) => {
      expect(errorArcSeconds).toBeCloseTo(-7 * index * shortPerMove.one, 8);
    });
  });

  it("counts no rounds where the list goes back", async () => {
    const told = await words("60", "--every", "59", "--nearer");
    expect(told).toContain("BACK");
    expect(told).not.toContain("In this order");
  });

  it("says nothing of it where all is as usual, or only some teeth are named", async () => {
    expect(await words("60", "--every", "1")).not.toContain("In this order");
    expect(await words("60", "--teeth", "1,31,2")).not.toContain("In this order");
  });

  it.each([
    [["60", "--every", "60"], "--every: 60 is not a step from tooth to tooth; give 1 to 59"],
    [["60", "--every", "7", "--teeth", "3"], "--every: is given beside --teeth"],
    [["2.9°", "--every", "7"], "--every: goes with a count and has no effect on an angle"],
    [["booklet", "--job", "60", "--every", "7", "--teeth", "1"], "--every: is given beside --teeth; give one of the two"],
    [["booklet", "--job", "2.9°", "--every", "7"], "--every: goes with a count and has no effect on an angle"],
    [["booklet", "--every", "7"], "--every: goes with --job"],
  ])("refuses %j", async (asked, why) => {
    await expect(said(asked)).rejects.toThrow(why);
  });
});
