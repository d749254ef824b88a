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

/** Refuses what stands in a list more than once. */
export function refuseDoubles(values: readonly (string | number)[], place: string, what: string, faults: FaultList): void {
  const seen = new Set<string | number>();
  for (const value of values) {
    if (value === "" || Number.isNaN(value)) continue;
    if (seen.has(value)) faults.add("twice", place, `the ${what} ${quoted(value)} is there twice; give each once`);
    seen.add(value);
  }
}
