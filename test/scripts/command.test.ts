import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadHead } from "../../booklet/head-file.ts";
import { said } from "../../scripts/command.ts";
import { options } from "../../scripts/look-up-options.ts";
import {
  chord,
  coordinates,
  countsFromAngle,
  type Head,
  indexAngle,
  indexDivisions,
  parseAngle,
  planJob,
  ratio,
  readyHeads,
  revolutions,
  type Setting,
  toothAt,
  whatMoveGives,
} from "../../src/index.ts";
import { answerWithWhys } from "../../src/words/index.ts";
import { run, runProcess } from "../support/command.ts";

const head40 = readyHeads[0] as Head;
const secondHand = fileURLToPath(new URL("../../booklet/heads/second-hand-40.json", import.meta.url));
const table90 = fileURLToPath(new URL("../../booklet/heads/table-90-with-dial.json", import.meta.url));

const json = async (...words: string[]) => {
  const { text } = await said([...words, "--json"]);
  expect(text.trimEnd()).not.toContain("\n");
  return JSON.parse(text);
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
    const answer = await said(words);
    expect(answer.code).toBe(code);
    expect(answer.text).toMatchSnapshot();
  });

  it("no line is too wide to read at arm's length", async () => {
    for (const words of [
      ["127"],
      ["787", "--near", "--radius", "50"],
      ["96", "--head", "ratio-40-plates-15-49-ungeared"],
      ["--help"],
      ["gear", "--help"],
      ["repair", "--help"],
    ]) {
      const { text } = await said(words);
      expect(text.split("\n").filter((line) => line.length > 80)).toEqual([]);
    }
  });

  it("10,000,000 is answered, though not with a setting", async () => {
    const { code, stdout } = await runProcess(["10000000"]);
    expect(code).toBe(1);
    expect(stdout).toContain("NOT POSSIBLE exactly with what this head has");
  });

  it("the ready heads are listed by their id", async () => {
    const { stdout } = await run(["heads"]);
    for (const { id } of readyHeads) expect(stdout).toContain(id);
  });

  it("--help and --version", async () => {
    expect((await run(["--help"])).stdout).toContain("turns-and-holes COUNT|ANGLE");
    expect((await runProcess(["--version"])).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  it("every example of --help is answered, and every option of it is there", async () => {
    const { text } = await said(["--help"]);
    const [, examples = ""] = /Examples\n(.*?)\n\n/s.exec(text) ?? [];
    for (const example of examples.split("\n").filter((line) => line.startsWith("  turns-and-holes "))) {
      const [, typed = ""] = /^ {2}turns-and-holes (.*?)(?: {2,}.*)?$/.exec(example) ?? [];
      const words = [...typed.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? "");
      const asked = words.map((word) => (word === "my-head.json" ? secondHand : word));
      expect((await said(asked)).text.length, example).toBeGreaterThan(50);
    }
    const told = new Set(text.match(/--[a-z-]+/g));
    for (const name of Object.keys(options)) expect(told).toContain(`--${name}`);
  });
});

/** What is printed, its folded lines joined. */
const told = async (...words: string[]) => (await said(words)).text.replace(/\s+/g, " ");

describe.concurrent("what an answer says, and in which order", () => {
  const inOrder = (text: string, ...parts: string[]) => {
    const places = parts.map((part) => text.indexOf(part));
    expect(places.includes(-1) ? parts.filter((_, index) => places[index] === -1) : []).toEqual([]);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  };

  it("gears forgotten stands above the proof, which is one line", async () => {
    const text = await told("127");
    inOrder(
      text,
      "Gears forgotten 5 spaces of 15 without them: that gives 120. The part is scrap.",
      "Never with",
      "Proof 127 moves",
    );
    expect(text).toContain("Proof 127 moves, 1 turn of the work, and it is back at its start Or");
  });

  it("--proof says what crank, pin and plate come to, and how it was shown", async () => {
    // 127 · 5/15 = 42 1/3 turns over the plate, and 2 1/3 of it the other way leave 40 turns of the crank.
    const text = await told("127", "--proof");
    expect(text).toContain(
      "the pin goes 42 1/3 turns over the plate, the plate 2 1/3 turns against the crank; 40 turns of the crank in all",
    );
    expect(text).toContain("Shown every move was made on a model of this head");
    expect(await told("1000003", "--head", "ratio-90-dial", "--proof")).toContain("for direct, simple and compound indexing");
  });

  it("the mounted plate and the largest circle are marked", async () => {
    const text = await told("12", "--mounted", "2");
    expect(text).toContain("Plate 2, circle of 21 holes: mounted");
    expect(text).toContain("3 + 13 of 39 (plate 3): largest circle");
  });

  it("idlers are gears besides those named, of any size that fits", async () => {
    expect(await told("127")).toContain("24 teeth, 2 idlers between: 2 gears more, of any size that fits");
  });

  it("a direct plate's answer names its holes, and shows the crank's own way", async () => {
    const text = await told("8", "--head", secondHand);
    inOrder(
      text,
      "DIRECT INDEXING: exact",
      "Holes used 0, 3, 6, 9, 12, 15, 18, 21;",
      "OR BY THE CRANK: SIMPLE INDEXING: exact",
      "5 turns + 0 spaces",
    );
  });

  it("what is not over is rounded upwards: 18.188″ at 50 mm is 0.00441 mm, 242.6″ are 4.04′", async () => {
    const near = await told("97", "--head", "ratio-40-plates-15-49-ungeared", "--radius", "50");
    expect(near).toContain("no position over 18.2″ (0.0045 mm) off (tooth 97)");
    expect(await told("spacing", "50.15,61,59")).toContain("no place over 4.1′ off");
  });

  it("a radius in inches is answered in inches, and one in millimetres in millimetres", async () => {
    // 18.188″ at 2 in is 0.000176 in.
    const inches = await told("97", "--head", "ratio-40-plates-15-49-ungeared", "--radius", "2in");
    expect(inches).toContain("18.2″ (0.00018 in) off (tooth 97)");
    expect(inches).not.toMatch(/\d mm/);
    expect(await told("97", "--head", "ratio-40-plates-15-49-ungeared", "--radius", "50mm")).not.toMatch(/\d in\b/);
    const square = await told("4", "--coordinates", "--radius", "2in", "--tangents");
    expect(square).toContain("Coordinates in inches on a radius of 2.0000, from the left and bottom tangents");
    expect(square).toContain("1 4.0000 2.0000 2 2.0000 4.0000 3 0.0000 2.0000 4 2.0000 0.0000");
    expect(square).toContain("Chord to next 2.8284 in, 1 division apart");
  });

  it("an exact answer has no error to tell at a radius, and says so", async () => {
    expect(await told("127", "--radius", "50")).toContain("Off by nothing, at any radius: it closes exactly");
  });

  it("a reason is told once for each method that one would expect of the head", async () => {
    const text = await told("97", "--head", "ratio-90-dial");
    expect(text).not.toContain("Direct ");
    expect(text).toContain("Dial needs a dial whose marks and vernier lines in a turn are a multiple of 97; yours is not");
  });

  it("unequal spaces on a head without a plate say how far its dial is off", async () => {
    expect(await told("spacing", "58.001,62,59,61,60", "--head", "ratio-90-dial")).toContain(
      "By the dial no place over 3.6″ off",
    );
    expect(await told("spacing", "58,62,59,61,60", "--head", "ratio-90-dial")).toContain("By the dial every place is on a mark");
  });
});

describe.concurrent("--json is what the library returns", () => {
  const plain = (value: unknown) =>
    JSON.parse(JSON.stringify("settings" in (value as object) ? answerWithWhys(value as never) : value));
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

  it("beside every code stands why, in words", async () => {
    const { passedOver } = await json("127");
    expect(passedOver).toEqual([
      expect.objectContaining({ method: "direct", why: "the head has no direct plate" }),
      expect.objectContaining({
        method: "simple",
        why: "needs a circle whose holes are a multiple of 127; no circle of yours is",
      }),
    ]);
    const { impossible } = await json("787", "--method", "compound");
    expect(impossible.reasons).toEqual([
      expect.objectContaining({
        code: "no-multiple",
        why: "needs two circles on one face whose least common multiple is a multiple of 787; no two of yours are",
      }),
    ]);
  });

  it("positions, what is left, where the ring stands", async () => {
    const { positions: four, plan } = await json("86", "--teeth", "3,4,31,60");
    const planned = planJob(head40, { divisions: 86 }, { teeth: [3, 4, 31, 60] });
    if (!planned.planned) throw new Error("86 can be planned");
    expect(four).toEqual(plain(planned.places));
    expect(Object.keys(plan)).toEqual(Object.keys(planned).filter((key) => key !== "places"));
    const where = ["--minus", "--start-angle", "10°", "--start-hole", "5"];
    const { positions: left } = await json("383", "--teeth", "200,3", "--nearer", ...where);
    expect(
      planJob(
        head40,
        { divisions: 383 },
        {
          teeth: [200, 3],
          direction: "nearer",
          side: "minus",
          startAngle: parseAngle("10°"),
          startHole: 5,
        },
      ),
    ).toMatchObject({ places: left });
    expect((await json("86", "--ring", "46.5")).standingAt).toEqual(toothAt(best(86), parseAngle("46.5"), { ring: head40.ring }));
    expect((await json("86", "--ring", "0")).standingAt).toEqual({
      tooth: 1,
      past: "0",
      sure: true,
      alike: { first: 1, last: 1, count: 1 },
    });
  });

  it("coordinates and chords, in inches too", async () => {
    const said = await json("12", "--coordinates", "--radius", "2in", "--tangents", "--clockwise", "--start-angle", "90");
    expect(said.coordinates).toEqual(
      plain(coordinates(12, { radius: 50.8, origin: "tangents", sense: "clockwise", startAngle: revolutions(1, 4) })),
    );
    expect(said.chords).toEqual([
      { apart: 1, length: chord(12, 50.8) },
      { apart: 6, length: chord(12, 50.8, 6) },
    ]);
  });

  it("the reverse question, however the move is written", async () => {
    const gives = plain(whatMoveGives({ wormRatio: ratio(40), turns: 1, spaces: 22, circle: 33 }));
    const moves = ["1 + 22/33", "1 22/33", "1t + 22 of 33", "1 turn + 22/33", "1+22/33"];
    expect(await givesOf(moves)).toEqual(moves.map(() => gives));
    const whole = plain(whatMoveGives({ wormRatio: ratio(40), turns: 3, spaces: 0, circle: null }));
    expect(await givesOf(["3", "3 turns", "3t"])).toEqual([whole, whole, whole]);
    const second = { spaces: 2, circle: 23, direction: "against" } as const;
    const compound = plain(whatMoveGives({ wormRatio: ratio(40), turns: 0, spaces: 14, circle: 21, second }));
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
