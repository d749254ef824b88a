import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import schema from "../../booklet/head.schema.json" with { type: "json" };
import { loadHead } from "../../booklet/head-file.ts";
import { defineHead, type HeadSpec, readyHeads } from "../../src/index.ts";
import { headSpecs } from "../support/arbitraries.ts";
import { refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const isBySchema = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, allErrors: true }).compile(schema);
const faultsOf = (spec: unknown) => refusalLines(() => defineHead(spec as HeadSpec));

const examples = fileURLToPath(new URL("../../booklet/heads/", import.meta.url));
const exampleFiles = readdirSync(examples).map((name) => join(examples, name));

describe("the examples and the ready heads", () => {
  it.each(exampleFiles)("%s is a head by the schema and by the check", (path) => {
    const spec: unknown = JSON.parse(readFileSync(path, "utf8"));
    expect(isBySchema(spec) || isBySchema.errors).toBe(true);
    expect(loadHead(path)).toEqual(defineHead(spec as HeadSpec));
  });

  it.each(readyHeads)("$id goes through JSON and is the same head again", (head) => {
    const spec: unknown = JSON.parse(JSON.stringify(head));
    expect(isBySchema(spec) || isBySchema.errors).toBe(true);
    expect(defineHead(spec as HeadSpec)).toEqual(head);
  });

  it.each(readyHeads)("$id is found by its id", (head) => {
    expect(loadHead(head.id)).toBe(head);
  });
});

/** What only the whole of a head can tell, or the value of a fraction: no schema sees it. */
const beyondSchema = [
  /diameters: .* circles; give one for each circle, in the same order$/,
  /: the name .* is there twice; give each once$/,
  /^mounted: .* is not one of the plates listed$/,
  /^rearPin: a rear pin needs a plate to hold/,
  /^(gearing|gears): without a plate there is nothing to gear/,
  /^smallCrank: the large crank beside it needs a plate to stand on/,
  /^(wormRatio|gearing\.greatestPlateRatio): .* is out of range/,
];

const scales = fc.option(
  fc.record(
    {
      marksPerTurn: fc.integer({ min: 2, max: 100_000 }),
      vernierLines: fc.integer({ min: 1, max: 120 }),
      figures: fc.constantFrom("marks", "angle"),
    },
    { requiredKeys: ["marksPerTurn"] },
  ),
);

const smallCranks = fc.option(
  fc.record({
    ratio: fc.integer({ min: 2, max: 1000 }),
    circles: fc.uniqueArray(fc.integer({ min: 2, max: 10_000 }), { minLength: 1, maxLength: 12 }),
  }),
);

const names = fc.oneof(
  fc.string({ unit: "grapheme", minLength: 1, maxLength: 62 }),
  fc.constantFrom("1", "2", "front", "ring 1"),
);

/** Specs with all that a head file may hold. */
const specs: fc.Arbitrary<Record<string, unknown>> = fc
  .tuple(
    headSpecs(),
    fc.record(
      {
        name: names,
        id: fc.constantFrom("my-head", "a", "head-40-1"),
        ring: scales,
        dial: scales,
        wormErrorArcSeconds: fc.double({ min: 0, max: 3600, noNaN: true }),
        smallCrank: smallCranks,
      },
      { requiredKeys: [] },
    ),
    fc.constantFrom(undefined, null, "plate 1", "plate 2"),
  )
  .map(([spec, more, mounted]) => ({ ...spec, ...more, ...(mounted !== undefined && { mounted }) }));

const spoilers: fc.Arbitrary<unknown> = fc.oneof(
  fc.constant(null),
  fc.constantFrom<unknown>(
    null,
    true,
    "",
    " ",
    "x",
    "1",
    "40",
    "0",
    "0/3",
    "1/0",
    "81/2",
    " 81 / 2 ",
    "+40",
    "-40",
    "2.50",
    "1e3",
  ),
  fc.constantFrom<unknown>(
    [],
    {},
    [15],
    [15, 15],
    [null],
    { name: "1" },
    { marksPerTurn: 360 },
    { circles: [15] },
    { onePair: 1 },
    { ratio: 100, circles: [100] },
  ),
  fc.constantFrom<unknown>(
    "a\nb",
    "a\u2028b",
    "\u00a0",
    "\u007f",
    "x".repeat(60),
    "x".repeat(61),
    "😀".repeat(31),
    "😀".repeat(61),
  ),
  fc.constantFrom<unknown>(-1, 0, -0, 1, 2, 3, 7, 8, 100, 101, 120, 121, 1000, 1001, 10_000, 10_001, 100_000, 100_001, 1.5, 1e21),
  names,
  fc.array(fc.integer({ min: 1, max: 70 }), { maxLength: 62 }),
  fc.tuple(fc.integer({ min: 0, max: 200_000 }), fc.integer({ min: 0, max: 2000 })).map(([n, d]) => `${n}/${d}`),
);

type Place = { readonly holder: Record<string | number, unknown>; readonly key: string | number };

/** Every place in a value that holds another. */
function placesIn(value: unknown): Place[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Place["holder"];
  const keys = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  return keys.flatMap((key) => [{ holder, key }, ...placesIn(holder[key])]);
}

const keysOfHead = Object.keys(schema.properties);

/** Specs with one to three things changed, taken out or put in. */
const spoiled: fc.Arbitrary<unknown> = fc
  .tuple(
    specs,
    fc.array(fc.tuple(fc.nat(), spoilers, fc.constantFrom("change", "take out", "add", "double")), {
      minLength: 1,
      maxLength: 3,
    }),
  )
  .map(([spec, changes]) => {
    const copy = JSON.parse(JSON.stringify(spec));
    for (const [pick, value, how] of changes) {
      const places = placesIn(copy);
      const place = places[pick % Math.max(1, places.length)];
      if (!place) continue;
      const { holder, key } = place;
      const list = Array.isArray(holder) ? holder : null;
      if (how === "change") holder[key] = value;
      else if (how === "take out") list ? list.splice(Number(key), 1) : delete holder[key];
      else if (how === "double" && list) list.push(list[Number(key)]);
      else if (list) list.push(value);
      else holder[pick % 2 === 0 ? "other" : (keysOfHead[pick % keysOfHead.length] ?? "id")] = value;
    }
    return JSON.parse(JSON.stringify(copy));
  });

function agree(spec: unknown): void {
  const faults = faultsOf(spec);
  if (isBySchema(spec)) {
    expect(faults.filter((fault) => !beyondSchema.some((pattern) => pattern.test(fault)))).toEqual([]);
  } else {
    expect([isBySchema.errors?.[0], faults]).not.toEqual([isBySchema.errors?.[0], []]);
  }
}

describe("the schema and the check of a head agree", () => {
  it("on good heads", () => {
    fc.assert(
      fc.property(specs, (spec) => {
        agree(spec);
        fc.pre(faultsOf(spec).length === 0);
        const head = defineHead(spec as unknown as HeadSpec);
        expect(isBySchema(JSON.parse(JSON.stringify(head))) || isBySchema.errors).toBe(true);
        expect(defineHead(JSON.parse(JSON.stringify(head)))).toEqual(head);
      }),
      runs(300),
    );
  });

  it("on heads with something spoiled", () => {
    fc.assert(fc.property(spoiled, agree), runs(3000));
  });

  it("on anything at all", () => {
    fc.assert(fc.property(fc.jsonValue(), agree), runs(300));
  });

  it.each([
    ["a ratio of 0", { wormRatio: 0, plates: [{ name: "1", circles: [15] }] }],
    ["a ratio of 0 over 3", { wormRatio: "0/3", plates: [{ name: "1", circles: [15] }] }],
    ["a ratio over 0", { wormRatio: "1/0", plates: [{ name: "1", circles: [15] }] }],
    ["a ratio of NaN in text", { wormRatio: "NaN", plates: [{ name: "1", circles: [15] }] }],
    ["a decimal ratio that is no exact number", { wormRatio: 40.5, plates: [{ name: "1", circles: [15] }] }],
    ["no ratio", { plates: [{ name: "1", circles: [15] }] }],
    ["no plates", { wormRatio: 40 }],
    ["an empty list of plates", { wormRatio: 40, plates: [] }],
    ["a circle of 0", { wormRatio: 40, plates: [{ name: "1", circles: [0] }] }],
    ["a circle twice", { wormRatio: 40, plates: [{ name: "1", circles: [15, 15] }] }],
    ["a plate without circles", { wormRatio: 40, plates: [{ name: "1", circles: [] }] }],
    ["a plate with circles and faces", { wormRatio: 40, plates: [{ name: "1", circles: [15], faces: [{ circles: [15] }] }] }],
    ["two faces without names", { wormRatio: 40, plates: [{ name: "1", faces: [{ circles: [15] }, { circles: [16] }] }] }],
    ["no diameters where there is a list of them", { wormRatio: 40, plates: [{ name: "1", circles: [15], diameters: [] }] }],
    ["a diameter of 0", { wormRatio: 40, plates: [{ name: "1", circles: [15], diameters: [0] }] }],
    ["a diameter twice", { wormRatio: 40, plates: [{ name: "1", circles: [15, 16], diameters: [80, 80] }] }],
    ["diameters beside faces", { wormRatio: 40, plates: [{ name: "1", diameters: [80], faces: [{ circles: [15] }] }] }],
    ["a name on two lines", { wormRatio: 40, plates: [{ name: "1\n2", circles: [15] }] }],
    ["a small crank of no ratio", { wormRatio: 40, plates: [{ name: "1", circles: [15] }], smallCrank: { circles: [100] } }],
    ["a small crank of 1:1", { wormRatio: 40, plates: [{ name: "1", circles: [15] }], smallCrank: { ratio: 1, circles: [100] } }],
    [
      "a small crank without circles",
      { wormRatio: 40, plates: [{ name: "1", circles: [15] }], smallCrank: { ratio: 100, circles: [] } },
    ],
    [
      "a circle of a small crank twice",
      { wormRatio: 40, plates: [{ name: "1", circles: [15] }], smallCrank: { ratio: 100, circles: [54, 54] } },
    ],
    [
      "a small crank where there is no large one",
      { wormRatio: null, directPlates: [{ name: "1", holes: 36 }], smallCrank: { ratio: 100, circles: [100] } },
    ],
    ["null for a list", { wormRatio: 40, plates: [{ name: "1", circles: [15] }], gears: null }],
    ["null for a vernier", { wormRatio: 40, dial: { marksPerTurn: 50, vernierLines: null } }],
    ["a key that is not there", { wormRatio: 40, plates: [{ name: "1", circles: [15] }], gear: [24] }],
  ])("and both refuse %s", (_, spec) => {
    expect([isBySchema(spec), faultsOf(spec).length > 0]).toEqual([false, true]);
  });
});

describe("a head file that is none is refused in one sentence", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "head-file-"));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  const loading = (content: string | Uint8Array) => {
    const path = join(folder, "head.json");
    writeFileSync(path, content);
    return refusalLines(() => loadHead(path)).map((line) => line.replace(path, "head.json"));
  };

  it.each([
    ["broken JSON", '{"wormRatio": 40', /^head\.json: is not JSON \(.+\); mend it or start from a copy of an example$/],
    ["nothing", "", /^head\.json: is not JSON \(Unexpected end of JSON input\); mend it/],
    ["NaN", '{"wormRatio": NaN}', /^head\.json: is not JSON \(.+\); mend it/],
    ["brackets within brackets", "[".repeat(900_000), /^head\.json: is not JSON \(.+\); mend it/],
    ["brackets that close", "[".repeat(400_000) + "]".repeat(400_000), /^head\.json: .*(not JSON|not an object)/],
    [
      "3 MB of brackets",
      "[".repeat(3_000_000),
      /^head\.json: has 3,000,000 bytes, too many for a head file; a head takes a few hundred$/,
    ],
    ["bytes that are no text", Uint8Array.of(0xff, 0xfe, 0x7b, 0x00), /^head\.json: is not JSON \(.+\); mend it/],
    ["a ratio of 0", '{"wormRatio":0,"plates":[{"name":"1","circles":[15]}]}', /^head\.json, wormRatio: 0 is not above 0$/],
  ])("%s", (_, content, told) => {
    const lines = loading(content);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(told);
    expect(lines[0]).not.toContain("\n");
    expect(lines[0]?.length).toBeLessThan(300);
  });

  it("each fault of a head with its place in the file", () => {
    expect(
      loading('{"wormRatio":40,"plates":[{"name":"1","circles":[15,15,0]},{"name":"1","circles":[18]}],"gears":[7]}'),
    ).toEqual([
      "head.json, gears[0]: 7 is not a whole number from 8 to 1,000",
      "head.json, plates[0].circles[2]: 0 is not a whole number from 2 to 10,000",
      "head.json, plates[0].circles: the circle 15 is there twice; give each once",
      'head.json, plates: the name "1" is there twice; give each once',
    ]);
  });

  it("a mark of byte order at the beginning does no harm", () => {
    expect(loading('\ufeff{"wormRatio":40,"plates":[{"name":"1","circles":[15]}]}')).toEqual([]);
  });

  it("a directory, a missing file, a name that is none", () => {
    expect(refusalLines(() => loadHead(folder))).toEqual([`${folder}: is a directory; name the JSON file in it`]);
    expect(refusalLines(() => loadHead(join(folder, "none.json")))[0]).toContain("there is no such ready head and no such file");
    expect(refusalLines(() => loadHead(" "))).toEqual(["head: no name or file was given; name a ready head or a JSON file"]);
    expect(refusalLines(() => loadHead("a\0b"))[0]).toContain("there is no such ready head and no such file");
    expect(refusalLines(() => loadHead("x".repeat(10_000)))[0]?.length).toBeLessThan(600);
    expect(refusalLines(() => loadHead("a\nb"))[0]).toMatch(/^a b: there is no such ready head/);
    expect(refusalLines(() => loadHead("/dev/null"))).toEqual(["/dev/null: is not a plain file; name a JSON file"]);
  });
});
