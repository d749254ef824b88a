import { quoted } from "../number/errors.ts";
import type { FaultList } from "../number/fault-list.ts";

/** One side of an index plate. Circles on one face can be paired for compound indexing. */
export interface Face {
  /** As its owner calls it, `"front"`; null on a plate with circles on one side only. */
  readonly name: string | null;
  /** Holes in each circle, ascending. */
  readonly circles: readonly number[];
  /**
   * Diameter of each circle through the middles of its holes, in mm, in the order of `circles`; left
   * out where the owner has not measured them. No setting depends on them: they are for drawings to
   * scale and for measuring the plate.
   */
  readonly diameters?: readonly number[];
}

/** An index plate, named as its owner stamped it. */
export interface Plate {
  readonly name: string;
  /** One or two. */
  readonly faces: readonly Face[];
}

/** What a direct plate is where it is no plate with holes: a notched collar, detents, or a gear that a detent drops into. */
export type DirectForm = "collar" | "detents" | "gear";

/** A plate or ring of holes on the spindle itself, for direct indexing with the worm out of mesh. */
export interface DirectPlate {
  readonly name: string;
  /** Places round it that the pin drops into: holes, notches, detents, or the teeth of a gear. */
  readonly holes: number;
  /**
   * Holes of the row that the pin goes through instead of one, where there is such a row: each lies one
   * of as many parts of a space further along than the last, so that a plate of 36 with ten is set to 360 places.
   */
  readonly vernierHoles?: number;
  /** Left out: a plate with holes. */
  readonly form?: DirectForm;
}

/** A direct plate as it is written in a head file. */
export interface DirectPlateSpec {
  readonly name: string;
  readonly holes: number;
  readonly vernierHoles?: number | undefined;
  readonly form?: DirectForm | undefined;
}

/** The places in a turn that a direct plate can be set to. */
export function placesOf({ holes, vernierHoles = 1 }: Pick<DirectPlate, "holes" | "vernierHoles">): number {
  return holes * vernierHoles;
}

/** The circles of a face as they are written in a head file, in any order. */
export interface CirclesSpec {
  readonly circles: readonly number[];
  /** The diameter of each circle in mm, in the order of `circles`; left out: not said. */
  readonly diameters?: readonly number[] | undefined;
}

/** A plate as it is written in a head file: one face by its circles, or two faces by name. */
export type PlateSpec =
  | ({ readonly name: string } & CirclesSpec)
  | { readonly name: string; readonly faces: readonly ({ readonly name?: string | null | undefined } & CirclesSpec)[] };

/** The most holes that a circle may have. */
export const mostHoles = 10_000;
/** The most holes of the row beside a direct plate. */
export const mostVernierHoles = 60;
/** The most plates of a head. */
export const mostPlates = 50;
/** The most circles of a face. */
export const mostCircles = 60;
/** The least and the greatest diameter of a circle, in mm. */
export const leastDiameter = 1;
export const mostDiameter = 2000;

/** Checks the plates of a spec; each plate has its own name, each face its own circles. */
export function readPlates(value: unknown, place: string, faults: FaultList): readonly Plate[] {
  const plates = faults.list(value, place, mostPlates).map((plate, index) => readPlate(plate, `${place}[${index}]`, faults));
  refuseDoubles(
    plates.map(({ name }) => name),
    place,
    "name",
    faults,
  );
  return Object.freeze(plates);
}

function readPlate(value: unknown, place: string, faults: FaultList): Plate {
  const spec = faults.object(value, place, ["name", "circles", "diameters", "faces"]);
  if (spec === null) return { name: "", faces: [] };
  const name = faults.name(spec.name, `${place}.name`);
  if ((spec.circles === undefined) === (spec.faces === undefined)) {
    faults.add("conflict", place, "a plate has either circles (one face) or faces (one or two), not both or neither");
    return { name, faces: [] };
  }
  if (spec.faces === undefined)
    return Object.freeze({ name, faces: Object.freeze([Object.freeze({ name: null, ...readCircles(spec, place, faults) })]) });
  if (spec.diameters !== undefined)
    faults.add("conflict", `${place}.diameters`, "stand beside the circles of each face; write them there");
  const faces = faults
    .list(spec.faces, `${place}.faces`, 2, "a plate has one or two faces; list the circles of each")
    .map((face, index) => readFace(face, `${place}.faces[${index}]`, faults));
  if (faces.length === 2 && faces.some((face) => face.name === null)) {
    faults.add("missing", `${place}.faces`, "a plate with two faces names each, for instance front and back");
  }
  refuseDoubles(
    faces.flatMap((face) => face.name ?? []),
    `${place}.faces`,
    "name",
    faults,
  );
  return Object.freeze({ name, faces: Object.freeze(faces) });
}

function readFace(value: unknown, place: string, faults: FaultList): Face {
  const spec = faults.object(value, place, ["name", "circles", "diameters"]);
  if (spec === null) return { name: "", circles: [] };
  const name = spec.name === undefined || spec.name === null ? null : faults.name(spec.name, `${place}.name`);
  return Object.freeze({ name, ...readCircles(spec, place, faults) });
}

/** The circles of a face in ascending order, each with its diameter where those are given. */
function readCircles(spec: Readonly<Record<string, unknown>>, place: string, faults: FaultList): Omit<Face, "name"> {
  const circles = faults
    .list(spec.circles, `${place}.circles`, mostCircles, "a face has at least one circle of holes")
    .map((holes, index) => faults.wholeNumber(holes, `${place}.circles[${index}]`, 2, mostHoles));
  refuseDoubles(circles, `${place}.circles`, "circle", faults);
  if (spec.diameters === undefined) return { circles: Object.freeze(circles.sort((a, b) => a - b)) };
  const diameters = readDiameters(spec.diameters, `${place}.diameters`, circles.length, faults);
  const inOrder = circles
    .map((holes, index) => ({ holes, diameter: diameters[index] ?? Number.NaN }))
    .sort((a, b) => a.holes - b.holes);
  return {
    circles: Object.freeze(inOrder.map(({ holes }) => holes)),
    diameters: Object.freeze(inOrder.map(({ diameter }) => diameter)),
  };
}

function readDiameters(value: unknown, place: string, circles: number, faults: FaultList): readonly number[] {
  const diameters = faults
    .list(value, place, mostCircles)
    .map((diameter, index) => faults.number(diameter, `${place}[${index}]`, leastDiameter, mostDiameter, "mm"));
  if (Array.isArray(value) && value.length !== circles)
    faults.add("conflict", place, `${value.length} for ${circles} circles; give one for each circle, in the same order`);
  refuseDoubles(diameters, place, "diameter", faults);
  return diameters;
}

/** Checks the direct plates of a spec. */
export function readDirectPlates(value: unknown, place: string, faults: FaultList): readonly DirectPlate[] {
  const plates = faults.list(value, place, mostPlates).map((plate, index) => {
    const at = `${place}[${index}]`;
    const spec = faults.object(plate, at, ["name", "holes", "vernierHoles", "form"]);
    if (spec === null) return { name: "", holes: 0 };
    return Object.freeze({
      name: faults.name(spec.name, `${at}.name`),
      holes: faults.wholeNumber(spec.holes, `${at}.holes`, 2, mostHoles),
      ...readVernier(spec.vernierHoles, `${at}.vernierHoles`, faults),
      ...readForm(spec.form, `${at}.form`, faults),
    });
  });
  refuseDoubles(
    plates.map(({ name }) => name),
    place,
    "name",
    faults,
  );
  return Object.freeze(plates);
}

function readVernier(value: unknown, place: string, faults: FaultList): Pick<DirectPlate, "vernierHoles"> {
  return value === undefined ? {} : { vernierHoles: faults.wholeNumber(value, place, 2, mostVernierHoles) };
}

/** What a direct plate can be besides a plate with holes. */
export const directForms: readonly DirectForm[] = ["collar", "detents", "gear"];

function readForm(value: unknown, place: string, faults: FaultList): Pick<DirectPlate, "form"> {
  if (value === undefined) return {};
  const form = directForms.find((each) => each === value);
  if (form !== undefined) return { form };
  faults.add(
    "unknown-word",
    place,
    `there is no form ${quoted(value)}; give collar, detents or gear, or leave it out for a plate with holes`,
  );
  return {};
}

function refuseDoubles(values: readonly (string | number)[], place: string, what: string, faults: FaultList): void {
  const seen = new Set<string | number>();
  for (const value of values) {
    if (value === "" || Number.isNaN(value)) continue;
    if (seen.has(value)) faults.add("twice", place, `the ${what} ${quoted(value)} is there twice; give each once`);
    seen.add(value);
  }
}
