import { expect, it } from "vitest";
import { type Head, readyHead, readyHeads } from "../../src/index.ts";
import { plate } from "../published/army-od1644.ts";
import { refusal } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

it("every ready head is found by its id, and each id is there once", () => {
  for (const head of readyHeads) expect(readyHead(head.id)).toBe(head);
  expect(new Set(readyHeads.map(({ id }) => id)).size).toBe(readyHeads.length);
});

/** What a head goes by, as a shop writes it down: plates with a stroke between them, faces as well. */
const inShort = ({ wormRatio, plates, rearPin, gears, gearing, ring, dial }: Head) => [
  wormRatio,
  plates.flatMap(({ faces }) => faces.map(({ circles }) => circles.join(" "))).join(" / "),
  rearPin ? "rear pin" : "no rear pin",
  gearing === null ? "not geared" : gears.join(" "),
  [ring, dial].map((scale) => scale && `${scale.marksPerTurn} × ${scale.vernierLines}`).join(", "),
];

const twoFaces = [plate.first, plate.second].map((circles) => circles.join(" ")).join(" / ");
/** These are from memory. */
const threePlates = "15 16 17 18 19 20 / 21 23 27 29 31 33 / 37 39 41 43 47 49";
const twelve = "24 24 28 32 40 44 48 56 64 72 86 100";
const nineteen = "17 18 19 20 21 22 24 24 27 30 33 36 39 42 45 48 51 55 60";

it.each([
  ["ratio-40-plates-15-49", ["40", threePlates, "rear pin", twelve, "360 × 1, "]],
  ["ratio-40-plates-15-49-ungeared", ["40", threePlates, "rear pin", "", "360 × 1, "]],
  ["ratio-40-faces-24-66", ["40", twoFaces, "rear pin", nineteen, "360 × 1, "]],
  // A turn of the handwheel is so many minutes of the table, a mark each; six lines to 10″.
  ["ratio-60-table-15-49", ["60", threePlates, "no rear pin", "not geared", "360 × 1, 360 × 6"]],
  ["ratio-60-dial", ["60", "", "no rear pin", "not geared", "360 × 1, 360 × 6"]],
  ["ratio-72-table-15-49", ["72", threePlates, "no rear pin", "not geared", "360 × 1, 300 × 6"]],
  ["ratio-72-dial", ["72", "", "no rear pin", "not geared", "360 × 1, 300 × 6"]],
  ["ratio-90-table-15-49", ["90", threePlates, "no rear pin", "not geared", "360 × 1, 240 × 6"]],
  ["ratio-90-dial", ["90", "", "no rear pin", "not geared", "360 × 1, 240 × 6"]],
])("%s has what its name says", (id, parts) => {
  expect(inShort(readyHead(id))).toEqual(parts);
});

it.each(["ratio-41", "", "Ratio-90-dial", undefined])("%j is none, and those that there are are named", (id) => {
  const [fault] = refusal(() => readyHead(wrong<string>(id)));
  expect(fault).toMatchObject({ code: "unknown-word", place: "id" });
  for (const head of readyHeads) expect(fault?.problem).toContain(head.id);
});
