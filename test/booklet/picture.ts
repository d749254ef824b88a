import { crc32, deflateSync } from "node:zlib";
import { type Canvas, createCanvas, loadImage } from "@napi-rs/canvas";
import { drawPages } from "../../booklet/draw/draw.ts";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import type { Page } from "../../booklet/layout/marks.ts";
import { openPdf } from "./read-pdf.ts";

/** A picture in sixteen greys, row by row from the top: 0 is black, 15 is white. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly greys: Uint8Array;
}

const shop = await openPrintShop();
const about = { title: "", subject: "", creator: "", digest: "", created: new Date(0), tagged: false };

/**
 * A page as it looks, a dot to each point: drawn into a PDF, and that made a picture by a reader that
 * shares no code with the writer. It may be moved to the right by a part of a point.
 */
export async function pictureOf(page: Page, moved = 0): Promise<Picture> {
  const canvas = shop.open(about);
  drawPages(canvas, [page]);
  const document = await openPdf(await canvas.end());
  const first = await document.getPage(1);
  const viewport = first.getViewport({ scale: 1, offsetX: moved });
  const paper = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
  // The types ask for the canvas of a browser; any that draws alike will do.
  await first.render({ canvas: paper as never, canvasContext: paper.getContext("2d") as never, viewport, background: "white" })
    .promise;
  await document.destroy();
  return greysOf(paper);
}

/** Reads a picture from a PNG file. */
export async function pictureIn(file: Uint8Array): Promise<Picture> {
  const image = await loadImage(file);
  const paper = createCanvas(image.width, image.height);
  paper.getContext("2d").drawImage(image, 0, 0);
  return greysOf(paper);
}

function greysOf(paper: Canvas): Picture {
  const { width, height } = paper;
  const { data } = paper.getContext("2d").getImageData(0, 0, width, height);
  // The book is black and white: red, green and blue are one.
  const greys = new Uint8Array(width * height).map((_, index) => Math.round((data[index * 4] ?? 0) / 17));
  return { width, height, greys };
}

/** Writes a picture as a PNG file with four bits a dot. */
export function fileOf({ width, height, greys }: Picture): Uint8Array {
  const bytes = Math.ceil(width / 2);
  const rows = Buffer.alloc((bytes + 1) * height);
  for (const [index, grey] of greys.entries()) {
    const [x, y] = [index % width, Math.floor(index / width)];
    const at = y * (bytes + 1) + 1 + (x >> 1);
    rows[at] = (rows[at] ?? 0) | (x % 2 === 0 ? grey << 4 : grey);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 4;
  const signature = Buffer.from("\x89PNG\r\n\x1a\n", "latin1");
  return Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", deflateSync(rows, { level: 9 })), chunk("IEND")]);
}

function chunk(name: string, content: Uint8Array = new Uint8Array()): Buffer {
  const named = Buffer.concat([Buffer.from(name, "latin1"), content]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}

/** Squares of so many dots across, and how far their greys taken together may be apart, from 0 to 15. */
const tolerance = [
  { across: 3, apart: 1.25 }, // a page moved by 0.1 dots comes to 1, another figure in the palest small type to 1.5
  { across: 15, apart: 0.6 }, // moved by 0.3 dots 0.35, a pale band left out 1
] as const;

/**
 * Whether two pictures show the same. Edges that are smoothed otherwise come out alike when the
 * dots of a small square are taken together; a figure that is another does not. A pale band shows
 * in a large square, where edges count for little.
 */
export function alike(one: Picture, other: Picture): boolean {
  if (one.width !== other.width || one.height !== other.height) return false;
  const apart = new Int32Array(one.greys).map((grey, index) => grey - (other.greys[index] ?? 0));
  return tolerance.every(({ across, apart: most }) => {
    const squares = sums(sums(apart, across, 1), across, one.width);
    return squares.every((sum) => Math.abs(sum) <= most * across ** 2);
  });
}

/** Each value together with so many after it, each a step on. */
function sums(values: Int32Array, many: number, step: number): Int32Array {
  const found = new Int32Array(values.length);
  for (let at = values.length - 1; at >= 0; at -= 1) {
    found[at] = (values[at] ?? 0) + (found[at + step] ?? 0) - (values[at + many * step] ?? 0);
  }
  return found;
}
