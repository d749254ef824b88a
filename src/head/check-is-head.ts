import { quoted, refuse } from "../number/errors.ts";
import type { Head } from "./head.ts";

type Parts = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Parts => typeof value === "object" && value !== null && !Array.isArray(value);
const isText = (value: unknown) => typeof value === "string";
const orNull = (is: (value: unknown) => boolean) => (value: unknown) => value === null || is(value);
const listOf = (is: (value: unknown) => boolean) => (value: unknown) => Array.isArray(value) && value.every(is);
const isNumber = (value: unknown) => typeof value === "number";

const isFace = (face: unknown) => isObject(face) && Array.isArray(face.circles);
const isPlate = (plate: unknown) => isObject(plate) && listOf(isFace)(plate.faces);
const isScale = (scale: unknown) => isObject(scale) && isNumber(scale.marksPerTurn) && isNumber(scale.vernierLines);
const isGearing = (gearing: unknown) => isObject(gearing) && isObject(gearing.idlersWithCrank);

/** What each part of a head is at a glance; what is in the lists is not looked at. */
const parts = {
  id: isText,
  name: isText,
  wormRatio: (value) => typeof value === "string" && /^\d+(?:\/\d+)?$/.test(value),
  plates: listOf(isPlate),
  directPlates: listOf(isObject),
  rearPin: (value) => typeof value === "boolean",
  gears: Array.isArray,
  idlers: orNull(Array.isArray),
  gearing: orNull(isGearing),
  ring: orNull(isScale),
  dial: orNull(isScale),
  mounted: orNull(isText),
} satisfies Readonly<Record<keyof Head, (value: unknown) => boolean>>;

/**
 * Refuses what is not a head as {@link defineHead} makes it, such as the description that a head is
 * made of. A look at its shape only: it costs next to nothing beside any question put to the head.
 *
 * @throws {@link InputError} that says how to make one.
 */
export function checkIsHead(head: unknown): asserts head is Head {
  if (!isObject(head)) {
    refuse(
      head === undefined ? "missing" : "unreadable",
      "head",
      `${quoted(head)} is not a head; defineHead makes one, and readyHeads are there to use`,
    );
  }
  for (const [name, isRight] of Object.entries(parts)) {
    if (Object.hasOwn(head, name) && isRight(head[name])) continue;
    refuse("unreadable", "head", `its ${name} is missing or not as a head has it; defineHead makes a head of it`);
  }
}
