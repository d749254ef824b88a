import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mountedPlate } from "../../src/head/head.ts";
import { checkHead, defineHead, type HeadSpec, ownedCircles, readyHeads } from "../../src/index.ts";
import { headSpecs } from "../support/arbitraries.ts";
import { refusal, refusalLines } from "../support/refusal.ts";
import { runs } from "../support/sweep.ts";

const plates = [{ name: "1", circles: [15, 16, 17] }];
/** Anything at all, as parsed from a file. */
const define = (spec: unknown) => () => defineHead(spec as HeadSpec);
const withPlates = (more: object) => define({ wormRatio: 40, plates, ...more });

describe("defineHead completes what is left out", () => {
  it("whether it is left out or undefined", () => {
    const [plate, scale, gears] = [{ name: "1", circles: [15, 16] }, { marksPerTurn: 360 }, [24, 48]];
    const head = defineHead({ wormRatio: 40, plates: [plate], gears, gearing: {}, ring: scale, dial: scale });
    const said: HeadSpec = {
      id: undefined,
      name: undefined,
      wormRatio: 40,
      plates: [plate],
      directPlates: undefined,
      rearPin: undefined,
      gears,
      idlers: undefined,
      gearing: { idlersWithCrank: { onePair: undefined, twoPairs: undefined }, greatestPlateRatio: undefined },
      ring: { ...scale, vernierLines: undefined, figures: undefined },
      dial: { ...scale, vernierLines: undefined, figures: undefined },
      mounted: undefined,
    };
    expect(defineHead(said)).toEqual(head);
    expect(defineHead({ ...said, gearing: { idlersWithCrank: undefined } })).toEqual(head);
    const oneFace = { name: "1", faces: [{ name: undefined, circles: [15, 16] }] };
    expect(defineHead({ ...said, plates: [oneFace] })).toEqual(head);
    const bare = { ...said, plates: undefined, gears: undefined, gearing: undefined, ring: undefined };
    expect(defineHead(bare)).toEqual(defineHead({ wormRatio: 40, dial: scale }));
  });

  it("needs only the worm ratio and a plate", () => {
    expect(defineHead({ wormRatio: 40, plates: [{ name: " 1 ", circles: [17, 15, 16] }] })).toEqual({
      id: "ratio-40",
      name: "40:1 head",
      wormRatio: "40",
      plates: [{ name: "1", faces: [{ name: null, circles: [15, 16, 17] }] }],
      directPlates: [],
      rearPin: false,
      gears: [],
      idlers: null,
      gearing: null,
      ring: null,
      dial: null,
      mounted: null,
    });
  });

  it("takes gears to mean a plate that can be geared as on most heads", () => {
    const head = defineHead({ wormRatio: "81/2", plates, gears: [40, 24, 24] });
    expect(head.id).toBe("ratio-81-over-2");
    expect(head.gears).toEqual([24, 24, 40]);
    expect(head.gearing).toEqual({ idlersWithCrank: { onePair: 1, twoPairs: 0 }, greatestPlateRatio: "6" });
    expect(defineHead({ wormRatio: 40, plates, gears: [24, 40], gearing: null }).gearing).toBeNull();
    expect(defineHead({ wormRatio: 40, plates, gearing: { idlersWithCrank: { onePair: 0 } } }).gearing).toEqual({
      idlersWithCrank: { onePair: 0, twoPairs: 0 },
      greatestPlateRatio: "6",
    });
  });

  it("gives a ring degrees and a dial marks, and takes $schema as a note", () => {
    const head = defineHead({
      $schema: "head.schema.json",
      wormRatio: 90,
      ring: { marksPerTurn: 360 },
      dial: { marksPerTurn: 240, vernierLines: 6, figures: "angle" },
    } as HeadSpec);
    expect(head.ring).toEqual({ marksPerTurn: 360, vernierLines: 1, figures: "angle" });
    expect(head.dial).toEqual({ marksPerTurn: 240, vernierLines: 6, figures: "angle" });
    expect(defineHead({ wormRatio: 90, dial: { marksPerTurn: 50 } }).dial?.figures).toBe("marks");
    expect(head).not.toHaveProperty("$schema");
  });

  it.each([
    [40, "40"],
    ["40", "40"],
    ["80/2", "40"],
    ["40.5", "81/2"],
    [" 121 / 3 ", "121/3"],
    [100_000, "100000"],
    ["1/1000", "1/1000"],
  ])("reads a worm ratio of %j as %s", (wormRatio, exact) => {
    expect(defineHead({ wormRatio, plates }).wormRatio).toBe(exact);
  });

  it("keeps the same circle on two faces and on two plates apart", () => {
    const head = defineHead({
      wormRatio: 40,
      plates: [
        {
          name: "A",
          faces: [
            { name: "front", circles: [24] },
            { name: "back", circles: [24, 30] },
          ],
        },
        { name: "B", circles: [24] },
      ],
      mounted: "B",
    });
    expect(ownedCircles(head)).toEqual([
      { plate: "A", face: "front", holes: 24 },
      { plate: "A", face: "back", holes: 24 },
      { plate: "A", face: "back", holes: 30 },
      { plate: "B", face: null, holes: 24 },
    ]);
  });

  it("keeps each circle with its diameter when it puts the circles in order", () => {
    const face = { circles: [20, 15, 18], diameters: [96, 62.5, 80] };
    const inOrder = { circles: [15, 18, 20], diameters: [62.5, 80, 96] };
    expect(defineHead({ wormRatio: 40, plates: [{ name: "1", ...face }] }).plates).toEqual([
      { name: "1", faces: [{ name: null, ...inOrder }] },
    ]);
    const twoFaced = {
      name: "1",
      faces: [
        { name: "front", ...face },
        { name: "back", circles: [24] },
      ],
    };
    expect(defineHead({ wormRatio: 40, plates: [twoFaced] }).plates).toEqual([
      {
        name: "1",
        faces: [
          { name: "front", ...inOrder },
          { name: "back", circles: [24] },
        ],
      },
    ]);
  });

  it("freezes the head and all in it", () => {
    const frozen = (value: unknown): boolean =>
      typeof value !== "object" || value === null || (Object.isFrozen(value) && Object.values(value).every(frozen));
    fc.assert(fc.property(headSpecs(), (spec) => frozen(defineHead(spec))));
    expect(readyHeads.every(frozen)).toBe(true);
  });

  it("does not touch the spec", () => {
    const spec = { wormRatio: 40, plates: [{ name: "1", circles: [17, 15] }], gears: [40, 24] };
    defineHead(spec);
    expect(spec).toEqual({ wormRatio: 40, plates: [{ name: "1", circles: [17, 15] }], gears: [40, 24] });
  });

  it("a head is a spec of itself, also through JSON", () => {
    fc.assert(
      fc.property(headSpecs(), (spec) => {
        const head = defineHead(spec);
        expect(defineHead(head)).toEqual(head);
        expect(defineHead(JSON.parse(JSON.stringify(head)))).toEqual(head);
      }),
    );
    for (const head of readyHeads) expect(defineHead(JSON.parse(JSON.stringify(head)))).toEqual(head);
  });
});

describe("ready heads", () => {
  it("are named by their geometry, the default first", () => {
    expect(readyHeads.map(({ id }) => id)).toEqual([
      "ratio-40-plates-15-49",
      "ratio-40-plates-15-49-ungeared",
      "ratio-40-faces-24-66",
      "ratio-60-table-15-49",
      "ratio-60-dial",
      "ratio-72-table-15-49",
      "ratio-72-dial",
      "ratio-90-table-15-49",
      "ratio-90-dial",
    ]);
    expect(readyHeads.filter(({ gearing }) => gearing !== null).map(({ id }) => id)).toEqual([
      "ratio-40-plates-15-49",
      "ratio-40-plates-15-49-ungeared",
      "ratio-40-faces-24-66",
    ]);
  });
});

const outOfRange = (given: string) =>
  `wormRatio: ${given} is out of range; give at most 100,000, as a fraction over at most 1,000`;
const noNumber = 'is not an exact number; give a whole number or a fraction in quotes, such as "81/2"';
const allKeys =
  "$schema, id, name, wormRatio, plates, directPlates, rearPin, gears, idlers, gearing, ring, dial, mounted, wormErrorArcSeconds, smallCrank";

describe("defineHead refuses a worm ratio", () => {
  it.each([
    [0, "wormRatio: 0 is not above 0"],
    ["0/7", 'wormRatio: "0/7" is not above 0'],
    [-40, "wormRatio: -40 is not above 0"],
    [Number.NaN, `wormRatio: NaN ${noNumber}`],
    [Number.POSITIVE_INFINITY, `wormRatio: Infinity ${noNumber}`],
    [40.5, `wormRatio: 40.5 ${noNumber}`],
    ["", `wormRatio: "" ${noNumber}`],
    ["forty", `wormRatio: "forty" ${noNumber}`],
    [[40], `wormRatio: a list ${noNumber}`],
    ["1/0", 'wormRatio: "1/0" divides by zero; give a fraction such as 81/2'],
    [100_001, outOfRange("100001")],
    ["1/1001", outOfRange('"1/1001"')],
    [129_600_001, "wormRatio: 129600001 is out of range; give a fraction with terms up to 129,600,000"],
    [
      undefined,
      'wormRatio: is missing; give the crank turns for one spindle turn, such as 40 or "81/2", or null where no crank turns it',
    ],
  ])("of %s", (wormRatio, line) => {
    expect(refusalLines(define({ wormRatio, plates }))).toEqual([line]);
  });
});

describe("defineHead refuses a spec that is none", () => {
  it.each([
    [null, "null", "unreadable"],
    [undefined, "undefined", "missing"],
    [40, "40", "unreadable"],
    ["ratio-40", '"ratio-40"', "unreadable"],
    [[], "a list", "unreadable"],
  ])("%j", (spec, shown, code) => {
    expect(refusal(define(spec))).toEqual([
      { code, place: "", problem: `${shown} is not an object; its keys may be ${allKeys}` },
    ]);
  });

  it("and keys that are not known, also __proto__ from JSON", () => {
    expect(refusal(withPlates({ ratio: 40 }))).toEqual([
      { code: "unknown-key", place: "", problem: `there is no key "ratio"; the keys are ${allKeys}` },
    ]);
    const sly = JSON.parse('{"wormRatio": 40, "plates": [{"name": "1", "circles": [15]}], "__proto__": {"rearPin": true}}');
    expect(refusal(define(sly))).toEqual([
      { code: "unknown-key", place: "", problem: `there is no key "__proto__"; the keys are ${allKeys}` },
    ]);
  });
});

describe("defineHead refuses plates", () => {
  const noHoles = "is not a whole number from 2 to 10,000";
  const noName = "is not a name; give 1 to 60 characters on one line, in quotes";
  const eitherOr = "a plate has either circles (one face) or faces (one or two), not both or neither";
  const plate = (spec: unknown) => define({ wormRatio: 40, plates: [spec] });
  const circles = (list: unknown) => plate({ name: "1", circles: list });

  it.each([
    [
      "none, and nothing else that counts a move",
      define({ wormRatio: 40 }),
      "plates: there are none, nor a direct plate or a dial, so no move can be counted; list the plates with their circles",
    ],
    [
      "an empty list",
      define({ wormRatio: 40, plates: [] }),
      "plates: there are none, nor a direct plate or a dial, so no move can be counted; list the plates with their circles",
    ],
    ["no list", define({ wormRatio: 40, plates: "15-20" }), 'plates: "15-20" is not a list'],
    [
      "a huge list",
      define({ wormRatio: 40, plates: new Array(1_000_000) }),
      "plates: 1,000,000 entries are too many; give at most 50",
    ],
    ["a bare number", plate(15), "plates[0]: 15 is not an object; its keys may be name, circles, diameters, faces"],
    [
      "an unknown key",
      plate({ name: "1", circles: [15], holes: 15 }),
      'plates[0]: there is no key "holes"; the keys are name, circles, diameters, faces',
    ],
    ["no name", plate({ circles: [15] }), `plates[0].name: undefined ${noName}`],
    ["an empty name", plate({ name: " ", circles: [15] }), `plates[0].name: " " ${noName}`],
    ["a number for a name", plate({ name: 1, circles: [15] }), `plates[0].name: 1 ${noName}`],
    ["a name of two lines", plate({ name: "a\nb", circles: [15] }), `plates[0].name: "a\\nb" ${noName}`],
    ["a name of 61 characters", plate({ name: "x".repeat(61), circles: [15] }), `plates[0].name: "${"x".repeat(56)}… ${noName}`],
    ["neither circles nor faces", plate({ name: "1" }), `plates[0]: ${eitherOr}`],
    ["both circles and faces", plate({ name: "1", circles: [15], faces: [] }), `plates[0]: ${eitherOr}`],
    ["circles that are no list", circles(15), "plates[0].circles: 15 is not a list"],
    ["no circle", circles([]), "plates[0].circles: a face has at least one circle of holes"],
    [
      "61 circles",
      circles(Array.from({ length: 61 }, (_, i) => i + 2)),
      "plates[0].circles: 61 entries are too many; give at most 60",
    ],
    ["a circle of 0", circles([15, 0]), `plates[0].circles[1]: 0 ${noHoles}`],
    ["a circle of 1", circles([1]), `plates[0].circles[0]: 1 ${noHoles}`],
    ["a negative circle", circles([-15]), `plates[0].circles[0]: -15 ${noHoles}`],
    ["a fractional circle", circles([15.5]), `plates[0].circles[0]: 15.5 ${noHoles}`],
    ["a circle of NaN", circles([Number.NaN]), `plates[0].circles[0]: NaN ${noHoles}`],
    ["a circle in quotes", circles(["15"]), `plates[0].circles[0]: "15" ${noHoles}`],
    ["a circle of 10,001", circles([10_001]), `plates[0].circles[0]: 10001 ${noHoles}`],
    [
      "a circle that could not be read beside the least",
      circles([2, "x", "x"]),
      [`plates[0].circles[1]: "x" ${noHoles}`, `plates[0].circles[2]: "x" ${noHoles}`],
    ],
    ["a circle twice", circles([15, 16, 15]), "plates[0].circles: the circle 15 is there twice; give each once"],
    ["faces that are no list", plate({ name: "1", faces: "front" }), 'plates[0].faces: "front" is not a list'],
    ["no face", plate({ name: "1", faces: [] }), "plates[0].faces: a plate has one or two faces; list the circles of each"],
    ["three faces", plate({ name: "1", faces: [{}, {}, {}] }), "plates[0].faces: 3 entries are too many; give at most 2"],
    [
      "a face that is none",
      plate({ name: "1", faces: [24] }),
      "plates[0].faces[0]: 24 is not an object; its keys may be name, circles, diameters",
    ],
    [
      "two faces without names",
      plate({ name: "1", faces: [{ circles: [24] }, { circles: [46] }] }),
      "plates[0].faces: a plate with two faces names each, for instance front and back",
    ],
    [
      "two faces of one name",
      plate({
        name: "1",
        faces: [
          { name: "a", circles: [24] },
          { name: "a", circles: [46] },
        ],
      }),
      'plates[0].faces: the name "a" is there twice; give each once',
    ],
    [
      "two plates of one name",
      define({ wormRatio: 40, plates: [...plates, { name: " 1 ", circles: [21] }] }),
      'plates: the name "1" is there twice; give each once',
    ],
    [
      "a direct plate that is none",
      withPlates({ directPlates: [24] }),
      "directPlates[0]: 24 is not an object; its keys may be name, holes, vernierHoles, form",
    ],
    [
      "a direct plate of no holes",
      withPlates({ directPlates: [{ name: "nose", holes: 0 }] }),
      `directPlates[0].holes: 0 ${noHoles}`,
    ],
    [
      "two direct plates of one name",
      withPlates({
        directPlates: [
          { name: "a", holes: 24 },
          { name: "a", holes: 36 },
        ],
      }),
      'directPlates: the name "a" is there twice; give each once',
    ],
  ])("%s", (_, act, lines) => {
    expect(refusalLines(act)).toEqual([lines].flat());
  });
});

describe("defineHead takes what just goes", () => {
  it("an id of 60 characters, the fastest plate and the finest ratio of it, and idlers as they are kept", () => {
    const id = "x".repeat(60);
    expect(defineHead({ id, wormRatio: 40, plates }).id).toBe(id);
    for (const greatestPlateRatio of ["100", "1/1000", "7/2"])
      expect(defineHead({ wormRatio: 40, plates, gearing: { greatestPlateRatio } }).gearing).toMatchObject({
        greatestPlateRatio,
      });
    expect(defineHead({ wormRatio: 40, plates, idlers: [30, 36] }).idlers).toEqual([30, 36]);
    expect(defineHead({ wormRatio: 40, plates, idlers: null }).idlers).toBeNull();
  });
});

describe("defineHead refuses what does not go together", () => {
  const noPlate = "without a plate there is nothing to gear; list the plates";
  it.each([
    [{ gears: [24, 48] }, `gears: ${noPlate}`],
    [{ gears: [24] }, `gears: ${noPlate}`],
    [{ gearing: {} }, `gearing: ${noPlate}`],
    [
      { plates: [{ name: "1", faces: [{ name: "front", circles: [15] }, { circles: [16] }] }] },
      "plates[0].faces: a plate with two faces names each, for instance front and back",
    ],
  ])("%j", (part, line) => {
    expect(refusalLines(define({ wormRatio: 40, dial: { marksPerTurn: 50 }, ...part }))).toEqual([line]);
  });
});

describe("the plate that is on the head", () => {
  const head = defineHead({ wormRatio: 40, plates: ["1", "2"].map((name) => ({ name, circles: [15] })), mounted: "2" });

  it("is that asked for, else the head's own", () => {
    expect([mountedPlate(head, undefined), mountedPlate(head, "1"), mountedPlate({ ...head, mounted: null }, undefined)]).toEqual(
      ["2", "1", null],
    );
  });

  it("is one that it has", () => {
    expect(refusalLines(() => mountedPlate(head, "3"))).toEqual(['mounted: this head has no plate "3"; its plates are 1, 2']);
    expect(refusalLines(() => mountedPlate(defineHead({ wormRatio: 40, dial: { marksPerTurn: 50 } }), "3"))).toEqual([
      'mounted: this head has no plate "3"; its plates are none',
    ]);
  });
});

describe("defineHead refuses diameters", () => {
  const noDiameter = "is not a number from 1 to 2,000 mm";
  const ofTwo = (diameters: unknown) => define({ wormRatio: 40, plates: [{ name: "1", circles: [16, 15], diameters }] });
  it.each([
    [ofTwo(80), "plates[0].diameters: 80 is not a list"],
    [ofTwo([80]), "plates[0].diameters: 1 for 2 circles; give one for each circle, in the same order"],
    [ofTwo([80, 90, 100]), "plates[0].diameters: 3 for 2 circles; give one for each circle, in the same order"],
    [ofTwo([80, 80]), "plates[0].diameters: the diameter 80 is there twice; give each once"],
    [ofTwo([0.99, 2000.1]), [`plates[0].diameters[0]: 0.99 ${noDiameter}`, `plates[0].diameters[1]: 2000.1 ${noDiameter}`]],
    [ofTwo(["80", null]), [`plates[0].diameters[0]: "80" ${noDiameter}`, `plates[0].diameters[1]: null ${noDiameter}`]],
    [ofTwo([Number.NaN, 80]), `plates[0].diameters[0]: NaN ${noDiameter}`],
    [
      define({ wormRatio: 40, plates: [{ name: "1", diameters: [80], faces: [{ circles: [15] }] }] }),
      "plates[0].diameters: stand beside the circles of each face; write them there",
    ],
  ])("case %#", (act, lines) => {
    expect(refusalLines(act)).toEqual([lines].flat());
  });
});

describe("defineHead refuses the rest", () => {
  const noGear = "is not a whole number from 8 to 1,000";
  it.each([
    [{ id: "My head" }, 'id: "My head" is not an id; use up to 60 lower-case letters, digits and single hyphens'],
    [{ id: "a--b" }, 'id: "a--b" is not an id; use up to 60 lower-case letters, digits and single hyphens'],
    [{ id: "x".repeat(61) }, `id: "${"x".repeat(56)}… is not an id; use up to 60 lower-case letters, digits and single hyphens`],
    [{ id: 40 }, "id: 40 is not an id; use up to 60 lower-case letters, digits and single hyphens"],
    [{ name: "" }, 'name: "" is not a name; give 1 to 60 characters on one line, in quotes'],
    [{ rearPin: "yes" }, 'rearPin: "yes" is not true or false'],
    [{ gears: 24 }, "gears: 24 is not a list"],
    [{ gears: [24, 7] }, `gears[1]: 7 ${noGear}`],
    [{ gears: [24, 24.5, 0] }, [`gears[1]: 24.5 ${noGear}`, `gears[2]: 0 ${noGear}`]],
    [{ gears: new Array(201).fill(24) }, "gears: 201 entries are too many; give at most 200"],
    [{ gearing: true }, "gearing: true is not an object; its keys may be idlersWithCrank, greatestPlateRatio"],
    [{ gearing: { idlers: 1 } }, 'gearing: there is no key "idlers"; the keys are idlersWithCrank, greatestPlateRatio'],
    [{ gearing: { idlersWithCrank: 1 } }, "gearing.idlersWithCrank: 1 is not an object; its keys may be onePair, twoPairs"],
    [{ gearing: { idlersWithCrank: { onePair: 4 } } }, "gearing.idlersWithCrank.onePair: 4 is not a whole number from 0 to 3"],
    [
      { gearing: { idlersWithCrank: { twoPairs: -1 } } },
      "gearing.idlersWithCrank.twoPairs: -1 is not a whole number from 0 to 3",
    ],
    [{ gearing: { greatestPlateRatio: 0 } }, "gearing.greatestPlateRatio: 0 is not above 0"],
    [
      { gearing: { greatestPlateRatio: "1/0" } },
      'gearing.greatestPlateRatio: "1/0" divides by zero; give a fraction such as 81/2',
    ],
    [
      { gearing: { greatestPlateRatio: 101 } },
      "gearing.greatestPlateRatio: 101 is out of range; give at most 100, as a fraction over at most 1,000",
    ],
    [{ ring: 360 }, "ring: 360 is not an object; its keys may be marksPerTurn, vernierLines, figures"],
    [{ ring: {} }, "ring.marksPerTurn: undefined is not a whole number from 2 to 100,000"],
    [{ dial: { marksPerTurn: 50, vernierLines: 0 } }, "dial.vernierLines: 0 is not a whole number from 1 to 120"],
    [
      { dial: { marksPerTurn: 50, figures: "inches" } },
      'dial.figures: give "marks" where the figures count marks, or "angle" where they are degrees',
    ],
    [{ mounted: "2" }, 'mounted: "2" is not one of the plates listed'],
    [{ mounted: 1 }, "mounted: 1 is not a name; give 1 to 60 characters on one line, in quotes"],
  ])("%j", (more, lines) => {
    expect(refusalLines(withPlates(more))).toEqual([lines].flat());
  });

  it("a rear pin or gearing with no plate to hold or gear", () => {
    const dial = { marksPerTurn: 50 };
    expect(refusalLines(define({ wormRatio: 90, dial, rearPin: true, gearing: {} }))).toEqual([
      "rearPin: a rear pin needs a plate to hold; list the plates",
      "gearing: without a plate there is nothing to gear; list the plates",
    ]);
  });
});

describe("defineHead lists all the faults", () => {
  it("in the order of the head, in one sentence", () => {
    const spec = {
      wormRatio: 0,
      plates: [{ name: "", circles: [0] }],
      gears: [3],
      rearPin: 1,
      dial: { marksPerTurn: 1 },
      colour: "grey",
    };
    const places = refusal(define(spec)).map(({ place }) => place);
    expect(places).toEqual([
      "",
      "wormRatio",
      "gears[0]",
      "plates[0].name",
      "plates[0].circles[0]",
      "rearPin",
      "dial.marksPerTurn",
    ]);
    expect(define(spec)).toThrow(/^there is no key "colour".*; wormRatio: 0 is not above 0; gears\[0\]: 3 is not/);
  });

  it("all of them, of which the sentence names the first dozen and says how many more there are", () => {
    const many = withPlates({ gears: new Array(40).fill(1) });
    expect(refusal(many).map(({ place }) => place)).toEqual(Array.from({ length: 40 }, (_, index) => `gears[${index}]`));
    expect(many).toThrow(/; gears\[11\]: 1 is not a whole number from 8 to 1,000; and 28 more faults$/);
    expect(withPlates({ gears: new Array(13).fill(1) })).toThrow(/; and 1 more fault$/);
    expect(withPlates({ gears: new Array(12).fill(1) })).toThrow(/; gears\[11\]: 1 is not a whole number from 8 to 1,000$/);
  });
});

describe("checkHead", () => {
  it("of a right description gives the head that defineHead makes", () => {
    fc.assert(
      fc.property(headSpecs(), (spec) => {
        expect(checkHead(spec)).toEqual({ ok: true, head: defineHead(spec) });
      }),
    );
  });

  it("of anything at all gives the faults for which defineHead refuses it, and throws nothing", () => {
    const anything = fc.anything({ withBigInt: true, withDate: true, withSparseArray: true, withMap: true, withSet: true });
    const like = fc.record(
      {
        wormRatio: fc.oneof(fc.constant(40), anything),
        plates: fc.oneof(
          fc.array(fc.oneof(anything, fc.record({ name: anything, circles: anything, faces: anything }))),
          anything,
        ),
        gears: fc.oneof(fc.array(anything), anything),
        gearing: fc.oneof(fc.record({ idlersWithCrank: anything, greatestPlateRatio: anything }), anything),
        directPlates: fc.oneof(fc.array(fc.record({ name: anything, holes: anything })), anything),
        ring: anything,
        dial: anything,
        mounted: anything,
        idlers: anything,
        id: anything,
        name: anything,
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(anything, like), (spec) => {
        const checked = checkHead(spec);
        expect(checked.ok ? [] : checked.faults).toEqual(refusal(define(spec)));
        if (!checked.ok) expect(checked.faults.length).toBeGreaterThan(0);
      }),
      runs(1000),
    );
  });

  it("takes no list with gaps", () => {
    const gaps = [{ name: "1", circles: Object.assign(new Array(3), { 0: 15, 2: 17 }) }];
    expect(refusalLines(define({ wormRatio: 40, plates: gaps }))).toEqual([
      "plates[0].circles[1]: undefined is not a whole number from 2 to 10,000",
    ]);
    expect(refusal(define({ wormRatio: 40, plates: new Array(2) })).map(({ place }) => place)).toEqual([
      "plates[0]",
      "plates[1]",
    ]);
  });
});
