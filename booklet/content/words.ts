import {
  type Exact,
  type Face,
  formatAngle,
  fromExact,
  type Head,
  type Plate,
  type Reading,
  type Scale,
  type Setting,
} from "../../src/index.ts";

/** Between whole and fraction, so that 2 1/3 is never read as 21/3. */
const gap = "\u00a0\u00a0";

/**
 * An exact number as a machinist writes it: `40`, `2  1/3`. The sign is dropped: words say which way.
 *
 * @param between - What parts the whole from the fraction; in print a gap that no line breaks at.
 */
export function mixed(value: Exact, between: string = gap): string {
  const { n, d } = fromExact(value);
  const whole = n / d;
  const part = n % d;
  if (part === 0n) return String(whole);
  return whole === 0n ? `${part}/${d}` : `${whole}${between}${part}/${d}`;
}

/** An angle as short as it can be said: `9°`, `4° 30′`, `≈ 3° 06′ 12″`. Given in turns. */
export function shortAngle(turns: Exact): string {
  return formatAngle(turns).replace(/ 00″$/, "").replace(/ 00′$/, "");
}

/** The spindle's angle for one turn of the crank. */
export function degreesPerTurn(head: Head): string {
  return shortAngle(reciprocal(head.wormRatio));
}

/** One over an exact number. */
export function reciprocal(value: Exact): Exact {
  const { s, n, d } = fromExact(value);
  return exact(s * d, n);
}

/** An exact number from its terms, in lowest terms. */
export function exact(numerator: bigint, denominator: bigint): Exact {
  const value = fromExact(`${numerator}/${denominator}`);
  return value.d === 1n ? `${value.s * value.n}` : `${value.s * value.n}/${value.d}`;
}

/** A ratio as it is said: `40 : 1`, `81 : 2`. */
export function ratioInWords(wormRatio: Exact): string {
  const { n, d } = fromExact(wormRatio);
  return `${n} : ${d}`;
}

/** The plate of a setting with its face: `1`, `1 front`, or what to say where none is needed. */
export function plateOf(head: Head, { plate, face }: Pick<Setting, "plate" | "face">): string {
  if (plate === null) return head.plates.length === 0 ? "none" : "any";
  return face === null ? plate : `${plate} ${face}`;
}

/** The circles of a plate face in words. */
export function circlesOf(face: Face): string {
  return face.circles.join(" ");
}

/** A plate with all that is on it: `1: 15 16 17 18 19 20`. */
export function plateInWords({ name, faces }: Plate): string {
  return `${name}: ${faces.map((face) => (face.name === null ? circlesOf(face) : `${face.name} ${circlesOf(face)}`)).join(" / ")}`;
}

/** A list in words: `1, 2 and 3`. */
export function listed(items: readonly (string | number)[]): string {
  if (items.length <= 1) return String(items[0] ?? "none");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** A count with its noun: `1 turn`, `2 turns`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** A number that two digits would sort wrongly, filled up for an anchor: `simple00116`. */
export function anchorOf(part: string, count: number): string {
  return `${part}${String(count).padStart(5, "0")}`;
}

/** An error in arc-seconds without its sign, to a tenth where it is small: `4.7″`, `1′ 03″`, `2° 05′`. */
export function seconds(arcSeconds: number): string {
  const tenths = Math.round(Math.abs(arcSeconds) * 10);
  if (tenths < 600) return `${tenths / 10}″`;
  const whole = Math.round(tenths / 10);
  const two = (part: number) => String(part).padStart(2, "0");
  return whole < 3600
    ? `${Math.floor(whole / 60)}′ ${two(whole % 60)}″`
    : `${Math.floor(whole / 3600)}° ${two(Math.floor((whole % 3600) / 60))}′`;
}

/** A reading as its scale shows it: `5° 25′ 40″`, or `17 + 4` for mark and vernier line. */
export function readingOf({ mark, line, figure }: Reading, { vernierLines }: Scale): string {
  if (figure !== null) return shortAngle(figure);
  return vernierLines > 1 ? `${mark} + ${line}` : String(mark);
}
