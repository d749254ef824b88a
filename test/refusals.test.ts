import { describe, expect, it } from "vitest";
import {
  chord,
  coordinates,
  defineHead,
  type FaultCode,
  type HeadSpec,
  indexDivisions,
  parseAngle,
  planJob,
  prove,
  spurGear,
  toothRepair,
} from "../src/index.ts";
import { threePlates } from "./support/ready.ts";
import { refusal } from "./support/refusal.ts";

const head = threePlates;
const anything = (value: unknown) => value as never;
const define = (spec: object) => defineHead(spec as HeadSpec);
const plates = [{ name: "1", circles: [15] }];

/** What is refused with each code, by more than one function where more than one gives it. */
const refused: Readonly<Record<FaultCode, readonly (() => unknown)[]>> = {
  missing: [() => define({ plates }), () => define({ wormRatio: 40 })],
  unreadable: [
    () => define({ wormRatio: "forty", plates }),
    () => parseAngle("a quarter"),
    () => indexDivisions(head, 2.5),
    () => chord(anything("12"), 40),
    () => coordinates(12, { radius: anything("40") }),
  ],
  "out-of-range": [
    () => define({ wormRatio: 0, plates }),
    () => parseAngle("1001 rev"),
    () => indexDivisions(head, 0),
    () => coordinates(12, { radius: -1 }),
    () => define({ wormRatio: 40, plates: [{ name: "1", circles: [1] }] }),
  ],
  "unknown-key": [() => define({ wormRatio: 40, plates, colour: "grey" })],
  "unknown-word": [
    () => indexDivisions(head, 12, { methods: [anything("plain")] }),
    () => indexDivisions(head, 12, { prefer: [anything("plain")] }),
    () => define({ wormRatio: 40, plates, ring: { marksPerTurn: 360, figures: "degrees" } }),
  ],
  twice: [() => define({ wormRatio: 40, plates: [...plates, ...plates] })],
  conflict: [() => spurGear({ teeth: 40, module: 2, diametralPitch: 12 })],
  "not-owned": [() => planJob(head, { divisions: 12 }, { by: "dial" }), () => indexDivisions(head, 12, { mounted: "9" })],
  "too-many": [() => define({ wormRatio: 40, plates: Array(51).fill(plates[0]) }), () => coordinates(100_001, { radius: 1 })],
  "cannot-be-made": [
    () => spurGear({ teeth: 8, module: 2, profileShift: 1.5 }),
    () => prove(anything({ ...indexDivisions(head, 127).settings[0], wormRatio: "1", gears: jamming })),
  ],
  "no-effect": [() => toothRepair(spurGear({ teeth: 40, module: 2 }), { damaged: [7], mateThinning: 0.1 })],
};

const jamming = { drivers: [48], driven: [24], direction: "with" };

describe("a refusal says what kind of fault it is", () => {
  for (const [code, acts] of Object.entries(refused)) {
    it.each(acts.map((act) => [act]))(`${code}, case %#`, (act) => {
      expect(refusal(act).map((fault) => fault.code)).toEqual([code]);
    });
  }
});
