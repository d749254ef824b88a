import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { type Head, readyHeads, revolutions, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { add, holes, type Turns, times, turnsOf, workTurned } from "../support/bench.ts";
import { canBeSetUp } from "../support/mechanism.ts";
import { halfTurn, secondHand } from "./heads.ts";
import { plateNamed } from "./plate-named.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { arcSeconds } from "./sheet-scales.ts";

const heads = [...readyHeads.filter(({ plates }) => plates.length > 0), secondHand, halfTurn];

/** The rows of the tables under a heading, those side by side one after the other. */
function rowsUnder(lines: readonly string[], heading: string, first: string): readonly (readonly string[])[] {
  const from = lines.findIndex((line) => line.startsWith(heading));
  const table = lines.slice(from);
  const head = table.find((line) => line.startsWith(`${first}|`))?.split("|") ?? [];
  const tables = head.filter((text) => text === first).length;
  const columns = head.length / tables;
  return table.flatMap((line) => {
    const cells = line.split("|");
    if (cells.length % columns !== 0 || cells.includes(first) || !/°|^\d/.test(cells[first === "angle" ? 0 : 2] ?? "")) return [];
    return Array.from({ length: cells.length / columns }, (_, at) => cells.slice(at * columns, (at + 1) * columns));
  });
}

/** `≈ 0° 18′ 37″`, `5°`: in seconds. */
function secondsIn(text: string): number {
  const [, degrees, minutes = 0, seconds = 0] = /^(?:≈ )?(\d+)°(?: (\d+)′)?(?: (\d+)″)?$/.exec(text) ?? [];
  return (Number(degrees) * 60 + Number(minutes)) * 60 + Number(seconds);
}

const perTurn = 1_296_000;

/** How far the crank turns the work, in turns. */
function workOf(head: Head, turns: number, spaces: number, circle: number): Turns {
  return workTurned(holes(turns, spaces, circle), turnsOf("0"), turnsOf(wormRatioOf(head)));
}

function circlesOf({ plates }: Head): readonly number[] {
  return plates.flatMap(({ faces }) => faces.flatMap(({ circles }) => circles));
}

function isOwned(head: Head, plate: string, circle: number): boolean {
  const on = { ...plateNamed(plate, head), circle, turns: 0, spaces: 0, armsEnclose: 1, plateStopPin: "in" } as const;
  const ofMove = { teethPerMove: 1, wormRatio: head.wormRatio, spindlePerMove: revolutions(1, 1) };
  return canBeSetUp({ ...ofMove, ...on, method: "simple" } as UnprovedSetting, head);
}

/** `14.7″ short`, `61.3″ too far`, `2.2′ short`, `exact`: in seconds, + too far. */
function missIn(text: string): { readonly least: number; readonly most: number } {
  if (text === "exact") return { least: 0, most: 0 };
  const [, size, unit, way] = /^([\d.]+)([″′°]) (too far|short)$/.exec(text) ?? [];
  const factor = unit === "″" ? 1 : unit === "′" ? 60 : 3600;
  // Rounded up to a tenth of its unit.
  const [most, least] = [Number(size) * factor, (Number(size) - 0.1) * factor];
  return way === "short" ? { least: -most, most: -least } : { least, most };
}

function wrongAngle(
  head: Head,
  [angle = "", plate = "", circle = "", turns, spaces, leaves = ""]: readonly string[],
): readonly string[] {
  const any = circle === "any";
  const work = workOf(head, Number(turns), Number(spaces), any ? 1 : Number(circle));
  const wanted: Turns = { n: BigInt(secondsIn(angle)), d: BigInt(perTurn) };
  const miss = arcSeconds(add(work, times(-1n, wanted)));
  const { least, most } = missIn(leaves);
  const nearest = Math.min(...circlesOf(head).map((each) => missOf(head, wanted, each)));
  return [
    ...(any ? (spaces === "0" ? [] : ["spaces of any circle"]) : isOwned(head, plate, Number(circle)) ? [] : ["is not owned"]),
    ...(miss < least - 1e-6 || miss > most + 1e-6 ? [`misses by ${miss}″`] : []),
    ...(Math.abs(miss) > nearest + 1e-6 ? [`another circle misses by ${nearest}″ only`] : []),
  ].map((fault) => `${angle} by ${turns} + ${spaces} of ${circle} on ${plate}, ${leaves}: ${fault}`);
}

/** How far the nearest hole of a circle is from an angle. */
function missOf(head: Head, { n, d }: Turns, circle: number): number {
  const worm = turnsOf(wormRatioOf(head));
  const past = (n * worm.n * BigInt(circle)) % (d * worm.d);
  const nearer = 2n * past > d * worm.d ? d * worm.d - past : past;
  return arcSeconds({ n: nearer, d: d * worm.n * BigInt(circle) });
}

/** Whole spaces, or null. */
function spacesFor(head: Head, circle: number, minutes: number): number | null {
  const worm = turnsOf(wormRatioOf(head));
  const [n, d] = [BigInt(minutes) * worm.n * BigInt(circle), 21_600n * worm.d];
  return n % d === 0n ? Number(n / d) : null;
}

function wrongSpace(
  head: Head,
  parts: readonly string[],
  [plate = "", circle = "", space = "", ...spaces]: readonly string[],
): readonly string[] {
  const off = Math.abs(secondsIn(space) - arcSeconds(workOf(head, 0, 1, Number(circle))));
  return [
    ...(isOwned(head, plate, Number(circle)) ? [] : ["is not owned"]),
    ...(off > (space.startsWith("≈") ? 0.5 : 0) ? [`one space is off by ${off}″`] : []),
    ...parts.flatMap((part, at) =>
      String(spacesFor(head, Number(circle), secondsIn(`0° ${part}`.replace(/0° (\d+°)/, "$1")) / 60) ?? "–") === spaces[at]
        ? []
        : [`${part} is not ${spaces[at]}`],
    ),
  ].map((fault) => `${circle} on ${plate}, ${space}: ${fault}`);
}

describe.each(heads.map((head) => [head.id, head] as const))("the angles of %s, turned by hand", (_, head) => {
  const printed = bookletPdf(head, { parts: ["angles"], to: 3 }).then(piecesOf);

  it("each by a circle of its plate, as near as is printed and as any hole comes", async () => {
    const rows = rowsUnder((await printed).flatMap(linesOf), "Angles within a turn", "angle");
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.flatMap((row) => wrongAngle(head, row))).toEqual([]);
    const seconds = rows.map(([angle = ""]) => secondsIn(angle));
    const sorted = seconds.toSorted((a, b) => a - b);
    const steps = sorted.slice(1).map((each, index) => each - (sorted[index] ?? 0));
    expect(new Set(steps).size).toBe(1);
  });

  it("one space of each circle that is owned, and the spaces that make parts of a degree", async () => {
    const lines = (await printed).flatMap(linesOf);
    const until = lines.findIndex((line) => line.startsWith("Angles within a turn"));
    const table = lines.slice(0, until);
    const rows = rowsUnder(table, "What one space is worth", "plate");
    const parts = [
      ...new Set(
        table
          .find((line) => line.startsWith("plate|circle|one space"))
          ?.split("|")
          .slice(3),
      ),
    ].filter((text) => /^\d+[°′]$/.test(text));
    expect(rows.map(([, circle]) => Number(circle)).toSorted((a, b) => a - b)).toEqual(
      [...circlesOf(head)].sort((a, b) => a - b),
    );
    expect(rows.flatMap((row) => wrongSpace(head, parts, row))).toEqual([]);
    const said = [...table.join(" ").matchAll(/(\d+) \((\d+) spaces? a degree\)/g)].map(
      ([, circle, spaces]) => `${circle}: ${spaces}`,
    );
    const wanted = circlesOf(head).flatMap((circle) => {
      const spaces = spacesFor(head, circle, 60);
      return spaces === null ? [] : [`${circle}: ${spaces}`];
    });
    expect(new Set(said)).toEqual(new Set(wanted));
  });
});
