import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadHead } from "../../booklet/head-file.ts";
import {
  chord,
  coordinates,
  countsFromAngle,
  type Head,
  indexAngle,
  indexDivisions,
  parseAngle,
  positions,
  positionsAfter,
  readyHeads,
  type Setting,
  toothAt,
  whatMoveGives,
} from "../../src/index.ts";
import { run } from "../support/command.ts";

const head40 = readyHeads[0] as Head;
const secondHand = fileURLToPath(new URL("../../booklet/heads/second-hand-40.json", import.meta.url));
const table90 = fileURLToPath(new URL("../../booklet/heads/table-90-with-dial.json", import.meta.url));

const json = async (...words: string[]) => {
  const { stdout } = await run([...words, "--json"]);
  expect(stdout.trimEnd()).not.toContain("\n");
  return JSON.parse(stdout);
};

describe("the words of an answer", () => {
  it.each([
    { asked: "127", words: ["127"], code: 0 },
    { asked: "96 without gears", words: ["96", "--head", "ratio-40-plates-15-49-ungeared"], code: 0 },
    { asked: "8", words: ["8"], code: 0 },
    { asked: "6", words: ["6"], code: 0 },
    { asked: "383, four teeth per move", words: ["383"], code: 0 },
    { asked: "2 degrees 54 minutes", words: ["2°54'"], code: 0 },
    { asked: "787, impossible", words: ["787"], code: 1 },
    { asked: "8 by the direct plate", words: ["8", "--head", secondHand], code: 0 },
    { asked: "teeth 3, 4, 31 and 60 of 86", words: ["86", "--teeth", "3,4,31,60"], code: 0 },
    { asked: "what comes after tooth 80 of 86", words: ["86", "--after", "80"], code: 0 },
    { asked: "where the ring stands", words: ["86", "--ring", "46.5"], code: 0 },
    {
      asked: "gears past the start, one tooth back",
      words: ["127", "--teeth", "127,2", "--nearer", "--start-hole", "3"],
      code: 0,
    },
    { asked: "97 by the dial", words: ["97", "--head", table90, "--teeth", "1,2,97"], code: 1 },
    { asked: "what 22 of 33 gives", words: ["gives", "0 + 22/33"], code: 0 },
    { asked: "what a compound move gives", words: ["gives", "1 + 7/39 + 29/41", "--teeth-per-move", "5"], code: 0 },
    { asked: "what a move with gears gives", words: ["gives", "5/15", "--gears", "56/24", "--plate", "against"], code: 0 },
    { asked: "an angle read by eye", words: ["2.9° ± 0.05°"], code: 0 },
    { asked: "coordinates of 5", words: ["5", "--coordinates", "--radius", "40"], code: 0 },
  ])("$asked", async ({ words, code }) => {
    const said = await run(words);
    expect([said.code, said.stderr]).toEqual([code, ""]);
    expect(said.stdout).toMatchSnapshot();
  });

  it("no line is too wide to read at arm's length", async () => {
    for (const words of [
      ["127"],
      ["787", "--near", "--radius", "50"],
      ["96", "--head", "ratio-40-plates-15-49-ungeared"],
      ["--help"],
    ]) {
      const { stdout } = await run(words);
      expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
    }
  });

  it("10,000,000 is answered, though not with a setting", async () => {
    const { code, stdout } = await run(["10000000"]);
    expect(code).toBe(1);
    expect(stdout).toContain("NOT POSSIBLE exactly with what this head has");
  });

  it("the ready heads are listed by their id", async () => {
    const { stdout } = await run(["heads"]);
    for (const { id } of readyHeads) expect(stdout).toContain(id);
  });

  it("--help and --version", async () => {
    expect((await run(["--help"])).stdout).toContain("turns-and-holes COUNT|ANGLE");
    expect((await run(["--version"])).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

describe.concurrent("--json is what the library returns", () => {
  const plain = (value: unknown) => JSON.parse(JSON.stringify(value));
  const givesOf = async (moves: readonly string[]) =>
    (await Promise.all(moves.map((move) => json("gives", move)))).map(({ gives }) => gives);
  const best = (divisions: number) => indexDivisions(head40, divisions).settings[0] as Setting;

  it.each([127, 383, 8, 787, 69])("%d", async (divisions) => {
    expect(await json(String(divisions))).toEqual(plain(indexDivisions(head40, divisions)));
  });

  it("an angle, a head of one's own, all settings", async () => {
    expect(await json("2°54'")).toEqual(plain(indexAngle(head40, parseAngle("2°54'"))));
    expect(await json("8", "--head", secondHand, "--all")).toEqual(plain(indexDivisions(loadHead(secondHand), 8, { all: true })));
  });

  it("methods, limit, teeth per move, the plate that is on", async () => {
    const words = ["50", "--method", "simple,compound", "--limit", "3", "--teeth-per-move", "2", "--mounted", "2", "--all"];
    expect(await json(...words)).toEqual(
      plain(indexDivisions(head40, 50, { methods: ["simple", "compound"], limit: 3, teethPerMove: 2, mounted: "2", all: true })),
    );
  });

  it("positions, what is left, where the ring stands", async () => {
    const { positions: four } = await json("86", "--teeth", "3,4,31,60");
    expect(four).toEqual(plain(positions(best(86), { head: head40, teeth: [3, 4, 31, 60] })));
    const { positions: left } = await json(
      "383",
      "--after",
      "200",
      "--nearer",
      "--minus",
      "--start-angle",
      "10°",
      "--start-hole",
      "5",
    );
    expect(left).toEqual(
      plain(
        positionsAfter(best(383), 200, { head: head40, direction: "nearer", side: "minus", startAngle: "1/36", startHole: 5 }),
      ),
    );
    expect((await json("86", "--ring", "46.5")).standingAt).toEqual(toothAt(best(86), parseAngle("46.5"), { ring: head40.ring }));
    expect((await json("86", "--ring", "0")).standingAt).toEqual({
      tooth: 1,
      past: "0",
      sure: true,
      alike: { first: 1, last: 1, count: 1 },
    });
  });

  it("a ring that stands at 124° at tooth 1 falls from there on the minus side", async () => {
    const { stdout } = await run(["90", "--teeth", "1,2,3", "--minus", "--start-angle", "124"]);
    for (const degrees of ["124°", "120°", "116°"]) expect(stdout).toContain(` ${degrees} minus`);
    const there = ["90", "--minus", "--start-angle", "124", "--ring", "120"];
    expect((await run(there)).stdout).toContain("tooth 2, exactly");
  });

  it("what a ring cannot tell apart is said to read the same", async () => {
    const { stdout } = await run(["1000", "--ring", "180"]);
    expect(stdout.replace(/\s+/g, " ")).toContain("NOT SURE teeth 500 to 502 read the same on this ring");
    expect(stdout).not.toContain("exactly");
    expect((await run(["10", "--ring", "40"])).stdout).toContain("no tooth reads so on this ring");
  });

  it("the last tooth leaves nothing to do", async () => {
    expect((await json("97", "--head", table90, "--after", "97")).fromZero).toEqual([]);
    expect((await json("86", "--after", "86")).positions).toEqual([]);
    expect((await run(["86", "--after", "86"])).stdout).toContain("That was the last: nothing is left to do.");
  });

  it("coordinates and chords, in inches too", async () => {
    const said = await json("12", "--coordinates", "--radius", "2in", "--tangents", "--clockwise", "--start-angle", "90");
    expect(said.coordinates).toEqual(
      plain(coordinates(12, { radius: 50.8, origin: "tangents", sense: "clockwise", startAngle: "1/4" })),
    );
    expect(said.chords).toEqual([
      { apart: 1, length: chord(12, 50.8) },
      { apart: 6, length: chord(12, 50.8, 6) },
    ]);
  });

  it("the reverse question, however the move is written", async () => {
    const gives = plain(whatMoveGives({ wormRatio: "40", turns: 1, spaces: 22, circle: 33 }));
    const moves = ["1 + 22/33", "1 22/33", "1t + 22 of 33", "1 turn + 22/33", "1+22/33"];
    expect(await givesOf(moves)).toEqual(moves.map(() => gives));
    const whole = plain(whatMoveGives({ wormRatio: "40", turns: 3, spaces: 0, circle: null }));
    expect(await givesOf(["3", "3 turns", "3t"])).toEqual([whole, whole, whole]);
    const second = { spaces: 2, circle: 23, direction: "against" } as const;
    const compound = plain(whatMoveGives({ wormRatio: "40", turns: 0, spaces: 14, circle: 21, second }));
    expect(await givesOf(["14/21 - 2/23", "0 + 14/21 − 2/23", "14 of 21 - 2 of 23"])).toEqual([compound, compound, compound]);
  });

  it("the counts of an angle read by eye, over one tooth or several", async () => {
    const [angle, either] = [parseAngle("2.9"), parseAngle("0.05")];
    expect((await json("2.9° ± 0.05°")).counts).toEqual(countsFromAngle(angle, either));
    expect((await json("2.9 +- 0.05")).counts).toEqual(countsFromAngle(angle, either));
    expect((await json("14.5° ± 0.05° over 5 teeth")).counts).toEqual(countsFromAngle(parseAngle("14.5"), either, 5));
  });

  it("the keys that other programs rely on are there", async () => {
    const said = await json("127", "--near");
    expect(said).toMatchObject({
      head: { id: "ratio-40-plates-15-49", name: expect.any(String), wormRatio: "40" },
      target: { divisions: 127 },
      exact: true,
      near: expect.any(Array),
      nearestCounts: [],
      circlesThatWouldDo: expect.any(Array),
    });
    expect(said.settings[0]).toMatchObject({
      method: "differential",
      teethPerMove: 1,
      turns: 0,
      spaces: 5,
      circle: 15,
      plate: "1",
      armsEnclose: 6,
      gears: { drivers: [56], driven: [24], idlers: 2, platePerSpindle: "-7/3" },
      exact: true,
      closingArcSeconds: 0,
      worstArcSeconds: 0,
    });
    expect((await json("69", "--method", "compound")).settings[0].second).toEqual({
      spaces: 2,
      circle: 23,
      direction: "against",
    });
    expect(await json("787")).toMatchObject({ exact: false, settings: [], nearestCounts: [786, 788], circlesThatWouldDo: [787] });
    expect(await json("2.9°")).toMatchObject({ target: { angle: "29/3600" }, exact: true });
  });
});
