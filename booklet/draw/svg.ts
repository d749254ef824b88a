import type { Mark, Page } from "../layout/marks.ts";
import type { Outlines } from "./outlines.ts";

/** What a drawing says of itself. */
export interface AboutDrawing {
  readonly title: string;
  readonly creator: string;
  readonly digest: string;
}

/**
 * Writes a page of marks as an SVG file at its true size, in points. Letters are shapes, with the words
 * beside them for a reader aloud, so that no machine needs the type. Anchors and links are left out.
 */
export function svgOf(
  { width, height, marks }: Pick<Page, "width" | "height" | "marks">,
  about: AboutDrawing,
  outlines: Outlines,
): string {
  const [wide, high] = [width, height].map((size) => `${figure((size * 25.4) / 72)}mm`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${figure(width)} ${figure(height)}">`,
    `<title>${escaped(about.title)}</title>`,
    `<desc>${escaped(`${about.creator} ${about.digest}`)}</desc>`,
    ...marks.map((mark) => elementOf(mark, outlines)).filter((element) => element !== ""),
    "</svg>\n",
  ].join("\n");
}

function elementOf(mark: Mark, outlines: Outlines): string {
  switch (mark.kind) {
    case "text": {
      const { x, y, text, grey = 0 } = mark;
      if (text === "") return "";
      const at = `translate(${figure(x)} ${figure(y)})`;
      return `<path aria-label="${escaped(text)}" role="img" transform="${at}" fill="${shade(grey)}" d="${outlines(text, mark)}"/>`;
    }
    case "rule":
      return `<path d="M${point(mark.from)}L${point(mark.to)}" ${stroked(mark.width, mark.grey ?? 0)}/>`;
    case "band":
      return `<rect x="${figure(mark.x)}" y="${figure(mark.y)}" width="${figure(mark.width)}" height="${figure(mark.height)}" fill="${shade(mark.grey)}"/>`;
    case "shape": {
      const { path, fill, stroke } = mark;
      const filled = `fill="${fill === undefined ? "none" : shade(fill)}"`;
      const edge = stroke === undefined ? "" : ` stroke="${shade(stroke.grey)}" stroke-width="${figure(stroke.width)}"`;
      return `<path d="${escaped(path)}" ${filled}${edge}/>`;
    }
    case "dots": {
      const discs = mark.at.map(([x, y]) => `<circle cx="${figure(x)}" cy="${figure(y)}" r="${figure(mark.diameter / 2)}"/>`);
      return `<g fill="${shade(mark.grey)}">${discs.join("")}</g>`;
    }
    case "group":
      return `<g>${mark.marks.map((inner) => elementOf(inner, outlines)).join("")}</g>`;
    case "anchor":
    case "link":
      return "";
  }
}

function stroked(width: number, grey: number): string {
  return `fill="none" stroke="${shade(grey)}" stroke-width="${figure(width)}"`;
}

function point([x, y]: readonly [number, number]): string {
  return `${figure(x)} ${figure(y)}`;
}

/** From 0, black, to 1, white. */
function shade(grey: number): string {
  const level = Math.round(grey * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${level}${level}${level}`;
}

/** Three decimals: the last bits of sines differ between engines and must not reach the file. */
function figure(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** Text that no reader of XML takes for anything else. */
function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
