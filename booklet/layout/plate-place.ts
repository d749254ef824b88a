import type { PlateFigure } from "../content/figure-blocks.ts";
import type { Weight } from "./marks.ts";
import type { Measure } from "./measure.ts";
import type { Centre } from "./shapes.ts";

/** Radii in parts of the rim's, where the plate's own are not known. */
const innermost = 0.42;
const outermost = 0.92;
const onlyOne = 0.83;

/** Beside the rim, for the figures that count spaces; over it, where the last may stand outside the first. In points. */
const besideRim = 28;
const overRim = 30;
const clearOfRim = 3;
/** From the rim, or from the figures beside it, to the numbers of circles. */
const beforeNumbers = 8;

/** From circle to circle, and from hole to hole, as close as they may be drawn; points. */
const leastPitch = 6;
const leastSpacing = 5;
const leastRim = 75;

/** The numbers of circles, each in the gap between two holes, or led out to the left, or to both sides. */
export type Numbering = "in gaps" | "left" | "both";

/** A plate face on the page: its middle, the radius of its rim, and of each circle. */
export interface PlacedPlate extends Centre {
  readonly rim: number;
  readonly radii: readonly number[];
  readonly numbering: Numbering;
  /** Size of the numbers. */
  readonly size: number;
  /** With its figures and numbers from side to side. */
  readonly width: number;
  /** From where to where it reaches down the page. */
  readonly top: number;
  readonly bottom: number;
}

/** Where a plate is to go. */
export interface PlateBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** As high as it may be. */
  readonly height: number;
  /** The least size of its numbers, in points. */
  readonly least: number;
  /** Whether figures outside the rim count the spaces. */
  readonly counted: boolean;
}

/** Rows of numbers led out stand so far apart, in parts of their size. */
export const rowOfNumbers = 1.18;

/** Places a plate as large as the box allows, with room round it for its figures and for the numbers of its circles. */
export function placedPlate(figure: PlateFigure, box: PlateBox, measure: Measure): PlacedPlate {
  const { circles } = figure;
  const inGaps = fitted(figure, box, "in gaps", measure);
  if (circles.every((_, index) => fitsInGap(figure, index, inGaps, measure))) return inGaps;
  const left = fitted(figure, box, "left", measure);
  const row = box.least * rowOfNumbers;
  return circles.length * row <= 2 * left.rim ? left : fitted(figure, box, "both", measure);
}

function fitted(figure: PlateFigure, box: PlateBox, numbering: Numbering, measure: Measure): PlacedPlate {
  const rooms = roomsFor(figure, box, numbering, measure);
  const rim = Math.min((box.width - rooms.left - rooms.right) / 2, (box.height - rooms.top - rooms.bottom) / 2);
  return placed(figure, box, numbering, rooms, rim);
}

/** Places a plate whose rim has the radius given, however much of the page it takes. */
export function plateOfRim(figure: PlateFigure, box: Omit<PlateBox, "height">, rim: number, measure: Measure): PlacedPlate {
  const numbering: Numbering = "left";
  return placed(figure, box, numbering, roomsFor(figure, box, numbering, measure), rim);
}

interface Rooms {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

function placed(
  figure: PlateFigure,
  { left, top, width, least }: Pick<PlateBox, "left" | "top" | "width" | "least">,
  numbering: Numbering,
  rooms: Rooms,
  rim: number,
): PlacedPlate {
  const inColumn = Math.ceil(figure.circles.length / (numbering === "both" ? 2 : 1));
  const column = numbering === "in gaps" ? 0 : inColumn * least * rowOfNumbers;
  const height = Math.max(2 * rim + rooms.top + rooms.bottom, column);
  const wide = 2 * rim + rooms.left + rooms.right;
  return {
    x: left + (width - wide) / 2 + rooms.left + rim,
    y: top + rooms.top + rim + (height - 2 * rim - rooms.top - rooms.bottom) / 2,
    rim,
    radii: figure.circles.map((_, index) => radiusOf(figure, index) * rim),
    numbering,
    size: least,
    width: wide,
    top,
    bottom: top + height,
  };
}

function roomsFor(
  { circles, chosen }: PlateFigure,
  { least, counted }: Pick<PlateBox, "least" | "counted">,
  numbering: Numbering,
  measure: Measure,
): Rooms {
  const reach = counted && chosen !== null ? chosen.spaces / chosen.circle : 0;
  const numbers = numbersWidth(circles, least, measure) + beforeNumbers;
  const beside = (isCounted: boolean, isNumbered: boolean) => (isCounted ? besideRim : clearOfRim) + (isNumbered ? numbers : 0);
  return {
    top: reach > 0 ? overRim : clearOfRim,
    right: beside(reach > 0, numbering === "both"),
    bottom: reach > 0.36 ? besideRim : clearOfRim,
    left: beside(reach > 0.5, numbering !== "in gaps"),
  };
}

/** How far from the middle the numbers of circles begin, to the left and to the right. */
export function numbersFrom({ rim }: PlacedPlate, { chosen }: PlateFigure): { readonly left: number; readonly right: number } {
  const reach = chosen === null ? 0 : chosen.spaces / chosen.circle;
  return {
    left: rim + beforeNumbers + (reach > 0.5 ? besideRim : 0),
    right: rim + beforeNumbers + (reach > 0 ? besideRim : 0),
  };
}

function numbersWidth(circles: readonly number[], size: number, measure: Measure): number {
  return Math.max(...circles.map((holes) => measure(String(holes), { weight: "bold", size }))) + 2;
}

/** In parts of the rim's. */
function radiusOf({ circles, diameters }: PlateFigure, index: number): number {
  if (diameters !== undefined) return (outermost * (diameters[index] ?? 0)) / Math.max(...diameters);
  return circles.length === 1 ? onlyOne : innermost + ((outermost - innermost) * index) / (circles.length - 1);
}

/** The rim of a plate with its outermost circle of the diameter given. */
export function rimAround(diameter: number): number {
  return diameter / 2 / outermost;
}

/** From each circle to the nearest other. */
export function pitchOf({ radii, rim }: Pick<PlacedPlate, "radii" | "rim">): number {
  const inOrder = [...radii].sort((a, b) => a - b);
  return Math.min(rim * 0.2, ...inOrder.slice(1).map((radius, index) => radius - (inOrder[index] ?? 0)));
}

/** The diameter that a circle's holes are drawn with. */
export function dotOf(holes: number, radius: number, pitch: number): number {
  return Math.min(5.2, pitch * 0.42, ((2 * Math.PI * radius) / holes) * 0.5);
}

/** Where round the plate numbers stand in gaps: at its foot, or to the left where the far arm would lie over them. */
export function gapsAt({ chosen }: PlateFigure): 0.5 | 0.75 {
  const arm = chosen === null ? 0 : chosen.spaces / chosen.circle;
  return arm > 0.36 && arm < 0.56 ? 0.75 : 0.5;
}

function fitsInGap(figure: PlateFigure, index: number, plate: PlacedPlate, measure: Measure): boolean {
  const [holes, radius, pitch] = [figure.circles[index] ?? 0, plate.radii[index] ?? 0, pitchOf(plate)];
  const weight: Weight = figure.chosen?.circle === holes ? "bold" : "semibold";
  const width = measure(String(holes), { weight, size: plate.size });
  const gap = (2 * Math.PI * radius) / holes - dotOf(holes, radius, pitch);
  const [along, across] = gapsAt(figure) === 0.5 ? [width, plate.size] : [plate.size * 0.8, width * 1.15];
  return along <= gap * 0.94 && across <= pitch * 0.9;
}

/** As small as a plate may be drawn for its holes still to be told apart: the height that it takes. */
export function leastHeight(figure: PlateFigure): number {
  const { circles } = figure;
  const rims = circles.map((holes, index) => (holes * leastSpacing) / (2 * Math.PI * radiusOf(figure, index)));
  const pitch = pitchOf({ radii: circles.map((_, index) => radiusOf(figure, index)), rim: 1 });
  return 2 * Math.max(leastRim, leastPitch / pitch, ...rims) + overRim + besideRim;
}
