import { type Head, type Scale, wormRatioOf } from "../../src/index.ts";
import { add, type Turns, times, turnsOf, withinTurn } from "../support/bench.ts";
import type { PrintedPlace } from "./printed-sheet.ts";
import type { OnTheBench } from "./sheet-on-bench.ts";
import type { PrintedWay } from "./sheet-setting.ts";

/** What dial, ring and true angle of a sheet say, against where the work stands. */
interface Standing {
  /** Where the tooth lies, in turns of the work from the start. */
  readonly truly: Turns;
  /** Where the work was set to. */
  readonly set: Turns;
}

/** A true angle is rounded to a tenth of a second; each scale shows the mark that is nearest. */
export function wrongOnScales(
  place: PrintedPlace,
  { truly, set }: Standing,
  by: PrintedWay["by"],
  { head, startAngle, side }: OnTheBench,
): readonly string[] {
  const from = (turned: Turns) => add(startAngle, times(side === "plus" ? 1n : -1n, turned));
  const apart = (a: Turns, b: Turns) => withinHalf(add(a, times(-1n, b)), turnsOf("1"));
  return [
    ...wrongAngle(place["true angle"], (angle) => arcSeconds(apart(angle, from(truly)))),
    ...(["dial", "ring"] as const).flatMap((scale) => {
      if (head[scale] === null) return [];
      // What is set by a scale lies at its mark; what is set otherwise the scale shows as nearly as it can.
      const shown = degreesIn(place, scale, head);
      const off = apart(shown, from(by === scale ? truly : set));
      return isWithinHalfStep(off, head, scale) ? [] : [`the ${scale} shows another mark`];
    }),
    ...wrongTurns(place, by === "moves" ? set : withinTurn(by === "dial" ? truly : set), { head, startAngle, side }),
  ];
}

/** Left out where tables so stand side by side; then the scales alone say where the work stands. */
function wrongAngle(shown: string | undefined, offBy: (angle: Turns) => number): readonly string[] {
  if (shown === undefined) return [];
  const most = shown.startsWith("≈") ? 0.0501 : 0;
  return Math.abs(offBy(angleIn(shown))) > most ? [`true angle ${shown} is another`] : [];
}

/** On the plus side the dial has turned as often as is printed, from its own zero; by moves it counts on round after round. */
function wrongTurns(
  place: PrintedPlace,
  turned: Turns,
  { head, startAngle, side }: Pick<OnTheBench, "head" | "startAngle" | "side">,
): readonly string[] {
  if (head.dial === null || side === "minus") return [];
  const worm = turnsOf(wormRatioOf(head));
  const at = add(startAngle, turned);
  const dial = { n: at.n * worm.n, d: at.d * worm.d };
  const read = add(turnsOf(place["DIAL turns"] ?? ""), dialIn(place, head.dial, head));
  const off = add(read, times(-1n, dial));
  const isNear = 2n * (off.n < 0n ? -off.n : off.n) * BigInt(head.dial.marksPerTurn * head.dial.vernierLines) <= off.d;
  return isNear ? [] : [`dial turns and reading come to ${read.n}/${read.d}, the work stands at ${dial.n}/${dial.d}`];
}

function isWithinHalfStep(off: Turns, { wormRatio, ...scales }: Head, scale: "dial" | "ring"): boolean {
  const { marksPerTurn = 1, vernierLines = 1 } = scales[scale] ?? {};
  const worm = scale === "dial" ? turnsOf(wormRatioOf({ wormRatio })) : turnsOf("1");
  const steps = { n: off.n * worm.n * BigInt(marksPerTurn * vernierLines), d: off.d * worm.d };
  return 2n * (steps.n < 0n ? -steps.n : steps.n) <= steps.d;
}

/** What a scale shows, in turns of the work. */
export function degreesIn(place: PrintedPlace, scale: "dial" | "ring", head: Head): Turns {
  if (scale === "ring") return head.ring === null ? turnsOf("0") : marksIn(place.ring ?? "", head.ring);
  if (head.dial === null) return turnsOf("0");
  const worm = turnsOf(wormRatioOf(head));
  const dial = add(turnsOf(place["DIAL turns"] ?? "0"), dialIn(place, head.dial, head));
  return { n: dial.n * worm.d, d: dial.d * worm.n };
}

/** What the dial shows within its turn, in turns of the dial. */
function dialIn(place: PrintedPlace, dial: Scale, { wormRatio }: Head): Turns {
  if (dial.figures === "angle") {
    const worm = turnsOf(wormRatioOf({ wormRatio }));
    const angle = angleIn(place.reads ?? "");
    return { n: angle.n * worm.n, d: angle.d * worm.d };
  }
  return marksIn(dial.vernierLines > 1 ? `${place.mark} + ${place.vernier}` : (place.mark ?? ""), dial);
}

/** `5° 25′ 40″`, `17`, or `17 + 4` for mark and vernier line, in turns of the scale. */
function marksIn(text: string, { figures, marksPerTurn, vernierLines }: Scale): Turns {
  if (figures === "angle") return angleIn(text);
  const [mark = 0, line = 0] = text.split(" + ").map(Number);
  return turnsOf(`${mark * vernierLines + line}/${marksPerTurn * vernierLines}`);
}

/** `≈ 3° 06′ 12.5″`, its minutes and seconds left out where there are none, in turns. */
function angleIn(text: string): Turns {
  const [, degrees = "0", minutes = "0", seconds = "0", tenths = "0"] =
    /^(?:≈ )?(\d+)°(?: (\d\d)′(?: (\d\d)(?:\.(\d))?″)?)?$/.exec(text) ?? [];
  if (!/\d/.test(text)) return turnsOf("-1/7");
  return turnsOf(`${((Number(degrees) * 60 + Number(minutes)) * 60 + Number(seconds)) * 10 + Number(tenths)}/12960000`);
}

/** `+4.7″`, `−61.4″`, `0`. */
export function signedSecondsIn(text: string): number {
  return Number(text.replace("−", "-").replace("″", ""));
}

export function arcSeconds({ n, d }: Turns): number {
  // Whole numbers first: the quotient is a float, its remainder too small to matter.
  const scaled = n * 1_296_000n;
  return Number(scaled / d) + Number(scaled % d) / Number(d);
}

/** As near to 0 as whole turns of a scale bring it. */
function withinHalf(turns: Turns, turn: Turns): Turns {
  const within = withinTurn(turns);
  return 2n * within.n > within.d ? add(within, times(-1n, turn)) : within;
}
