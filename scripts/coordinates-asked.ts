import { type Answer, chord, coordinates } from "../src/index.ts";
import { type Asked, angleFromZero, fault, millimetres } from "./command-line.ts";
import { type More, nothingMore } from "./more.ts";
import { table } from "./table.ts";
import { count, line, paragraph } from "./words.ts";

/** The coordinates asked for by `--coordinates`. */
export function coordinatesAsked({ target }: Answer, options: Asked["options"]): More {
  if (options.coordinates !== true) return nothingMore;
  if (!("divisions" in target)) throw fault("conflict", "--coordinates", "are those of a count; give a count such as 12");
  if (options.radius === undefined) throw fault("missing", "--coordinates", "need the radius of the circle; add --radius 40");
  const radius = millimetres(options.radius, "--radius");
  const list = coordinates(target.divisions, {
    radius,
    sense: options.clockwise === true ? "clockwise" : "counter-clockwise",
    origin: options.tangents === true ? "tangents" : "centre",
    ...(options["start-angle"] !== undefined && { startAngle: angleFromZero(options["start-angle"], "--start-angle") }),
  });
  const across = Math.floor(target.divisions / 2);
  const chords =
    target.divisions < 2
      ? []
      : [...new Set([1, across])].map((apart) => ({ apart, length: chord(target.divisions, radius, apart) }));
  const fixed = (value: number) => (Math.abs(value) < 0.0005 ? 0 : value).toFixed(3).replace("-", "−");
  return {
    data: { coordinates: list, chords },
    lines: [
      "",
      paragraph(
        `Coordinates in millimetres on a radius of ${fixed(radius)}, from ${options.tangents ? "the left and bottom tangents" : "the centre"}; x to the right, y up:`,
      ),
      "",
      ...table([
        { head: "tooth", cells: list.map(({ tooth }) => String(tooth)) },
        { head: "x", cells: list.map(({ x }) => fixed(x)) },
        { head: "y", cells: list.map(({ y }) => fixed(y)) },
      ]),
      "",
      ...chords.map(({ apart, length }) =>
        line(apart === 1 ? "Chord to next" : "Chord across", `${fixed(length)} mm, ${count(apart, "division")} apart`),
      ),
    ],
  };
}
