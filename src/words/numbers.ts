import { formatAngle } from "../number/angle.ts";
import { type Exact, fromExact, type Revolutions } from "../number/ratio.ts";
import { roundedDown, roundedUp } from "../number/rounded.ts";

export { roundedDown, roundedUp };

/** Between whole and fraction, so that 2 1/3 is never read as 21/3: in print a gap that no line breaks at. */
const gap = "\u00a0\u00a0";

/**
 * An exact number as a machinist writes it: `40`, `2  1/3`. The sign is dropped: words say which way.
 *
 * @param between - What parts the whole from the fraction.
 */
export function mixed(value: Exact, between: string = gap): string {
  const { n, d } = fromExact(value);
  const whole = n / d;
  const part = n % d;
  if (part === 0n) return String(whole);
  return whole === 0n ? `${part}/${d}` : `${whole}${between}${part}/${d}`;
}

/** A count with its noun: `1 turn`, `2 turns`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** A list in words: `1, 2 and 3`. */
export function listed(items: readonly (string | number)[]): string {
  if (items.length <= 1) return String(items[0] ?? "none");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** A number with so many decimals and a true minus; nothing is −0. */
export function fixed(value: number, places: number): string {
  return (Math.abs(value) < 0.5 * 10 ** -places ? 0 : value).toFixed(places).replace("-", "−");
}

/** A figure that is written already, with its plus where it is above nothing: `+0.100 mm`, `−0.20`, `0.00`. */
export function withPlus(figure: string): string {
  return figure.startsWith("−") || !/[1-9]/.test(figure) ? figure : `+${figure}`;
}

/** A plain number without needless decimals: `12.7`, `2`, `3.629`. */
export function plain(value: number, places = 3): string {
  return String(Number(value.toFixed(places)));
}

const secondsPerMinute = 60;
/** In arc-seconds. */
const leastShown = 0.1;
const secondsPerDegree = 3600;

/**
 * A bound on an error of angle, in a unit fit for its size and rounded upwards, so that nothing is
 * further off than it says: `4.7″`, `3.5′`, `1.26°`. The sign is dropped.
 */
export function arcUpTo(arcSeconds: number): string {
  return arcBy(arcSeconds, roundedUp);
}

/** An error of angle with its sign, to the nearest that is shown: `+4.7″`, `−3.5′`; `0` where there is none. */
export function signedArc(arcSeconds: number): string {
  if (arcSeconds === 0) return "0";
  if (Math.abs(arcSeconds) < leastShown / 2) return `under ${leastShown}″`;
  return `${arcSeconds > 0 ? "+" : "−"}${arcBy(arcSeconds, (size, places) => Number(size.toFixed(places)))}`;
}

/** A whole number with a true minus: `−12`. */
export function whole(count: number): string {
  return String(count).replace("-", "−");
}

/** An error in arc-seconds with its sign, to a tenth: for columns, where one unit lets the eye compare. `0` where there is none. */
export function signedSeconds(arcSeconds: number): string {
  if (arcSeconds === 0) return "0";
  return `${arcSeconds > 0 ? "+" : "−"}${Math.abs(arcSeconds).toFixed(1)}″`;
}

function arcBy(arcSeconds: number, rounded: (size: number, places: number) => number): string {
  const size = Math.abs(arcSeconds);
  if (size >= secondsPerDegree) return `${fixed(rounded(size / secondsPerDegree, 2), 2)}°`;
  if (size >= 2 * secondsPerMinute) return `${fixed(rounded(size / secondsPerMinute, 1), 1)}′`;
  return `${fixed(rounded(size, 1), 1)}″`;
}

/** An angle as short as it can be said: `9°`, `4° 30′`, `≈ 3° 06′ 12″`. In revolutions. */
export function shortAngle(angle: Revolutions): string {
  return formatAngle(angle).replace(/ 00″$/, "").replace(/ 00′$/, "");
}
