import { type Answer, checkChords, coordinates } from "../src/index.ts";
import { type AtRadius, chordItem, coordinateColumns, coordinatesWords, lengthsIn } from "../src/words/index.ts";
import { angleFromZero, fault } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import { type More, nothingMore } from "./more.ts";
import { table } from "./table.ts";
import { itemLines, paragraph } from "./words.ts";

/** The coordinates asked for by `--coordinates`, in the unit that the radius was given in. */
export function coordinatesAsked({ target }: Answer, radius: AtRadius | null, options: Options): More {
  if (!("divisions" in target)) return nothingMore;
  if (radius === null) throw fault("missing", "--coordinates", "need the radius of the circle; add --radius 40");
  const { divisions } = target;
  const origin = options.tangents === true ? "tangents" : "centre";
  const list = coordinates(divisions, {
    radius: radius.mm,
    sense: options.clockwise === true ? "clockwise" : "counter-clockwise",
    origin,
    ...(options["start-angle"] !== undefined && { startAngle: angleFromZero(options["start-angle"], "--start-angle") }),
  });
  const chords = checkChords(divisions, radius.mm);
  const lengths = lengthsIn(radius.unit);
  return {
    data: { coordinates: list, chords },
    table: coordinateColumns(list, radius.unit),
    lines: [
      "",
      paragraph(coordinatesWords(radius, origin)),
      "",
      ...table([
        { head: "tooth", cells: list.map(({ tooth }) => String(tooth)) },
        { head: "x", cells: list.map(({ x }) => lengths.bare(x)) },
        { head: "y", cells: list.map(({ y }) => lengths.bare(y)) },
      ]),
      "",
      ...itemLines(chords.map((each) => chordItem(each, lengths))),
    ],
  };
}
