import type { Head } from "../head/head.ts";
import type { Scale } from "../head/scale.ts";
import type { AnyPlace } from "../machine/place.ts";
import { leastCountArcSeconds } from "../machine/readings.ts";
import type { Reading } from "../machine/scale-reader.ts";
import { formatAngle } from "../number/angle.ts";
import type { Ratio, Revolutions } from "../number/ratio.ts";
import { shortAngle, whole } from "./numbers.ts";

/** A reading in a table, as short as its scale shows it: `5° 25′ 40″`, or `17 + 4` for mark and vernier line. */
export function readingShort({ mark, line, figure }: Reading, { vernierLines }: Scale): string {
  if (figure !== null) return shortAngle(figure);
  return vernierLines > 1 ? `${mark} + ${line}` : String(mark);
}

/** A reading in a line of text: `41°`, `mark 17 line 4`, `0° 49′ 30″`; of a ring where no ratio is given, else of a dial with its turns. */
export function readingWords(reading: Reading, scale: Scale, wormRatio: Ratio | null): string {
  const turns = wormRatio === null ? "" : `${whole(reading.turns)} t + `;
  const line = scale.vernierLines > 1 ? ` line ${reading.line}` : "";
  const finest = wormRatio === null ? leastCountArcSeconds(scale) : leastCountArcSeconds(scale, wormRatio);
  const shown = reading.figure === null ? `mark ${reading.mark}${line}` : figureWords(reading.figure, finest);
  return `${turns}${shown}`;
}

/** The figure of a scale in degrees, with only the parts that it can show. */
function figureWords(figure: Revolutions, finest: number): string {
  const words = formatAngle(figure, 1).replace(/^≈ /, "");
  if (finest % 3600 === 0) return words.replace(/ 00′ 00\.0″$/, "");
  if (finest % 60 === 0) return words.replace(/ 00\.0″$/, "");
  return finest % 1 === 0 ? words.replace(/\.0″$/, "″") : words;
}

/** What ring and dial of a head show at a place: `ring 41°`, `dial 3 t + 2° 30′`; nothing where it has none. */
export function scalesStand({ ring, dial }: Pick<AnyPlace, "ring" | "dial">, head: Head): readonly string[] {
  return [
    ...(ring && head.ring ? [`ring ${readingWords(ring, head.ring, null)}`] : []),
    ...(dial && head.dial ? [`dial ${readingWords(dial, head.dial, head.wormRatio)}`] : []),
  ];
}
