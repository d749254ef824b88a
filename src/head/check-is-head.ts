import { quoted, refuse } from "../number/errors.ts";
import { directForms, mostVernierHoles } from "./direct-extras.ts";
import type { DirectPlate } from "./direct-plate.ts";
import { type Gearing, leastTeeth, mostGears, mostIdlers, mostTeeth } from "./gearing.ts";
import type { Head } from "./head.ts";
import { type Face, leastDiameter, mostCircles, mostDiameter, mostHoles, mostPlates, type Plate } from "./plate.ts";
import { mostLines, mostMarks, type Scale } from "./scale.ts";
import { mostSmallCircles, mostSmallRatio, type SmallCrank } from "./small-crank.ts";
import { mostWormError } from "./worm-error.ts";

type Is = (value: unknown) => boolean;
/** What each part of a shape must be; the compiler says which part is missing. */
type Parts<Shape> = Readonly<Record<keyof Shape, Is>>;

const isText: Is = (value) => typeof value === "string";
const isRatio: Is = (value) => typeof value === "string" && /^[1-9]\d{0,8}(?:\/[1-9]\d{0,3})?$/.test(value);
const isWhole =
  (least: number, most: number): Is =>
  (value) =>
    Number.isInteger(value) && (value as number) >= least && (value as number) <= most;
const orNull =
  (is: Is): Is =>
  (value) =>
    value === null || is(value);
const listOf =
  (is: Is, most: number): Is =>
  (value) =>
    Array.isArray(value) && value.length <= most && Array.from(value).every(is);

/** The first part that is missing or is not what it must be; null where all are right. */
function wrongPart(value: object, parts: Readonly<Record<string, Is>>): string | null {
  for (const name in parts) {
    if (!Object.hasOwn(value, name) || parts[name]?.((value as Record<string, unknown>)[name]) !== true) return name;
  }
  return null;
}

function shape<Shape>(parts: Parts<Shape>): Is {
  return (value) => typeof value === "object" && value !== null && wrongPart(value, parts) === null;
}

const isScale = shape<Scale>({ marksPerTurn: isWhole(2, mostMarks), vernierLines: isWhole(1, mostLines), figures: isText });
const isDiameter: Is = (value) => typeof value === "number" && value >= leastDiameter && value <= mostDiameter;
const isFaceOfCircles = shape<Omit<Face, "diameters">>({
  name: orNull(isText),
  circles: listOf(isWhole(2, mostHoles), mostCircles),
});
/** A face with a diameter for each circle, or with none. */
const isFace: Is = (value) => {
  if (!isFaceOfCircles(value)) return false;
  const { circles, diameters } = value as Face;
  return diameters === undefined || (listOf(isDiameter, mostCircles)(diameters) && diameters.length === circles.length);
};
const isNamedHoles = shape<Pick<DirectPlate, "name" | "holes">>({ name: isText, holes: isWhole(2, mostHoles) });
const isVernier = isWhole(2, mostVernierHoles);
/** A direct plate, with its row of holes and its form where it states them. */
const isDirectPlate: Is = (value) => {
  if (!isNamedHoles(value)) return false;
  const { vernierHoles, form } = value as DirectPlate;
  return (vernierHoles === undefined || isVernier(vernierHoles)) && (form === undefined || directForms.includes(form));
};
const isIdlers = shape<Gearing["idlersWithCrank"]>({ onePair: isWhole(0, mostIdlers), twoPairs: isWhole(0, mostIdlers) });

const isBox = listOf(isWhole(leastTeeth, mostTeeth), mostGears);

const head: Parts<Omit<Head, "wormErrorArcSeconds" | "smallCrank">> = {
  id: isText,
  name: isText,
  wormRatio: orNull(isRatio),
  plates: listOf(shape<Plate>({ name: isText, faces: listOf(isFace, 2) }), mostPlates),
  directPlates: listOf(isDirectPlate, mostPlates),
  rearPin: (value) => typeof value === "boolean",
  gears: isBox,
  idlers: orNull(isBox),
  gearing: orNull(shape<Gearing>({ idlersWithCrank: isIdlers, greatestPlateRatio: isRatio })),
  ring: orNull(isScale),
  dial: orNull(isScale),
  mounted: orNull(isText),
};

const isSmallCrank = shape<SmallCrank>({
  ratio: isWhole(2, mostSmallRatio),
  circles: listOf(isWhole(2, mostHoles), mostSmallCircles),
});

/** What only some heads have: what their worm and wheel are off by, a small crank. */
function wrongOfFew({ wormErrorArcSeconds: error, smallCrank }: Head): string | null {
  if (error !== undefined && !(typeof error === "number" && error >= 0 && error <= mostWormError)) return "wormErrorArcSeconds";
  return smallCrank === undefined || isSmallCrank(smallCrank) ? null : "smallCrank";
}

/**
 * Refuses what is not a head as {@link defineHead} makes it, such as the description that a head is
 * made of, or one whose parts were changed since. It looks at every part by itself, and costs next to
 * nothing beside any question put to the head.
 *
 * @throws {@link InputError} that says how to make one.
 */
export function checkIsHead(value: unknown): asserts value is Head {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    const code = value === undefined ? "missing" : "unreadable";
    refuse(code, "head", `${quoted(value)} is not a head; defineHead makes one, and readyHeads are there to use`);
  }
  const wrong = wrongPart(value, head) ?? wrongOfFew(value as Head);
  if (wrong !== null)
    refuse("unreadable", "head", `its ${wrong} is missing or not as a head has it; defineHead makes a head of it`);
}
