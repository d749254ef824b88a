/** A place on a picture: from the left, and from the top. */
export type At = readonly [x: number, y: number];

const placed = ([x, y]: At) => `${x.toFixed(1)} ${y.toFixed(1)}`;

export function text([x, y]: At, words: string, anchor: "start" | "middle" | "end" = "start"): string {
  return `<text fill="#000" x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}">${words}</text>`;
}

export function rule(from: At, to: At, stroke: string): string {
  return `<path d="M${placed(from)}L${placed(to)}" stroke="${stroke}"/>`;
}

/** A line through points, of so many dashes and gaps. */
export function line(points: readonly At[], dash = ""): string {
  return `<path d="M${points.map(placed).join("L")}" stroke="#000" stroke-width="1.8"${dash === "" ? "" : ` stroke-dasharray="${dash}"`}/>`;
}

/** A picture on white, told in words by its title. */
export function picture(width: number, height: number, title: string, parts: readonly string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12" fill="none">`,
    `<title>${title}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...parts,
    "</svg>",
    "",
  ].join("\n");
}
