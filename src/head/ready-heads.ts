import { quoted, refuse } from "../number/errors.ts";
import { defineHead } from "./define-head.ts";
import type { CrankedHead } from "./head.ts";
import type { PlateSpec } from "./plate.ts";
import type { ScaleSpec } from "./scale.ts";

/** The three-plate set, 15 to 49 holes. */
const plates15To49: readonly PlateSpec[] = [
  { name: "1", circles: [15, 16, 17, 18, 19, 20] },
  { name: "2", circles: [21, 23, 27, 29, 31, 33] },
  { name: "3", circles: [37, 39, 41, 43, 47, 49] },
];

/** The plate with circles on both faces, 24 to 66 holes: US Army, OD1644, *Milling Machine Operations*. */
const faces24To66: readonly PlateSpec[] = [
  {
    name: "1",
    faces: [
      { name: "front", circles: [24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43] },
      { name: "back", circles: [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66] },
    ],
  },
];

/** From memory; confirmed by the reach it gives, *Practical Treatise on Milling and Milling Machines*, p. 52. */
const twelveGears = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100];

/** From memory. */
const nineteenGears = [17, 18, 19, 20, 21, 22, 24, 24, 27, 30, 33, 36, 39, 42, 45, 48, 51, 55, 60];

/** One mark a degree, no vernier. */
const degreeRing: ScaleSpec = { marksPerTurn: 360 };

/** A dial with one mark to each minute of the table, and a vernier to 10 seconds. */
const minuteDial = (wormRatio: number): ScaleSpec => ({
  marksPerTurn: 21_600 / wormRatio,
  vernierLines: 6,
  figures: "angle",
});

/** A rotary table: its plate cannot be geared, since it has no spindle gear, and it has no rear pin. */
const tables = [60, 72, 90].flatMap((wormRatio) => [
  defineHead({
    id: `ratio-${wormRatio}-table-15-49`,
    name: `${wormRatio}:1 rotary table, three plates 15–49, dial to 10″`,
    wormRatio,
    plates: plates15To49,
    gearing: null,
    ring: degreeRing,
    dial: minuteDial(wormRatio),
  }),
  defineHead({
    id: `ratio-${wormRatio}-dial`,
    name: `${wormRatio}:1 rotary table, dial to 10″`,
    wormRatio,
    ring: degreeRing,
    dial: minuteDial(wormRatio),
  }),
]);

/**
 * Heads ready to use, named by their geometry. The first is the one a look-up takes when none is named.
 */
export const readyHeads: readonly CrankedHead[] = Object.freeze([
  defineHead({
    id: "ratio-40-plates-15-49",
    name: "40:1 head, three plates 15–49, twelve change gears",
    wormRatio: 40,
    plates: plates15To49,
    rearPin: true,
    gears: twelveGears,
    ring: degreeRing,
  }),
  defineHead({
    id: "ratio-40-plates-15-49-ungeared",
    name: "40:1 head, three plates 15–49, no change gears",
    wormRatio: 40,
    plates: plates15To49,
    rearPin: true,
    gearing: {},
    ring: degreeRing,
  }),
  defineHead({
    id: "ratio-40-faces-24-66",
    name: "40:1 head, two-faced plate 24–66, nineteen gears",
    wormRatio: 40,
    plates: faces24To66,
    rearPin: true,
    gears: nineteenGears,
    ring: degreeRing,
  }),
  ...tables,
]);

/**
 * A ready head by its id.
 *
 * @throws {@link InputError} when there is none of that id.
 *
 * @example
 * ```ts
 * readyHead("ratio-90-dial").wormRatio; // "90"
 * ```
 */
export function readyHead(id: string): CrankedHead {
  const head = readyHeads.find((each) => each.id === id);
  if (head === undefined)
    refuse(
      "unknown-word",
      "id",
      `${quoted(id)} is no ready head; the ready heads are ${readyHeads.map((each) => each.id).join(", ")}`,
    );
  return head;
}
