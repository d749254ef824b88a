import { describe, expect, it } from "vitest";
import { commonestCounts } from "../../booklet/content/commonest-counts.ts";
import { bookletPdf, type PaperName } from "../../booklet/index.ts";
import { defineHead, type Head, readyHeads, revolutions, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { canBeSetUp, closesOnBench } from "../support/mechanism.ts";
import { byDegrees } from "../support/without-crank.ts";
import { secondHand } from "./heads.ts";
import { plateNamed } from "./plate-named.ts";
import { openPdf, type Piece, piecesOf } from "./read-pdf.ts";

const heads = [...readyHeads.filter(({ plates }) => plates.length > 0), secondHand].map((head) => [head.id, head] as const);

/** The rows of a table in two columns, by the baselines of their figures: the count stands larger, on a line of its own. */
function rowsOn(pieces: readonly Piece[], middle: number, cells: number): readonly (readonly string[])[] {
  const sides = [pieces.filter(({ right }) => right < middle), pieces.filter(({ left }) => left > middle)];
  return sides.flatMap((side) => {
    const lines = new Map<number, Piece[]>();
    for (const piece of side) {
      const y = [...lines.keys()].find((at) => Math.abs(at - piece.y) < 5) ?? piece.y;
      lines.set(y, [...(lines.get(y) ?? []), piece]);
    }
    return [...lines.values()]
      .map((line) => line.sort((a, b) => a.left - b.left).map(({ text }) => text))
      .filter((line) => line.length >= 2 && line.length <= cells && commonestCounts.includes(Number(line[0])));
  });
}

function settingOf(row: readonly string[], head: Head): UnprovedSetting {
  const [divisions = "", plate = "", circle = "", turns = "", spaces = "", arms = String(Number(spaces) + 1)] = row;
  const ofMove = { teethPerMove: 1, wormRatio: wormRatioOf(head), spindlePerMove: revolutions(1, Number(divisions)) };
  const crank =
    circle === "any"
      ? ({ turns: Number(turns), circle: null, plate: null, face: null, spaces: 0, armsEnclose: null } as const)
      : {
          turns: Number(turns),
          circle: Number(circle),
          spaces: Number(spaces),
          armsEnclose: Number(arms),
          ...plateNamed(plate, head),
        };
  return { ...ofMove, method: "simple", plateStopPin: "in", ...crank };
}

async function checked(head: Head, as: "poster" | "card", paper: PaperName) {
  const bytes = await bookletPdf(head, { as, paper });
  const document = await openPdf(bytes);
  const [, , width = 0] = (await document.getPage(1)).view;
  const pages = document.numPages;
  await document.destroy();
  const pieces = (await piecesOf(bytes)).flat();
  const reach = pieces.find(({ text }) => text === "What this head can do")?.y ?? 0;
  const found = rowsOn(
    pieces.filter(({ y }) => y < reach),
    width / 2,
    as === "poster" ? 6 : 5,
  );
  const moves = found.filter((row) => row.length > 2);
  const wrong = moves.filter((row) => {
    const setting = settingOf(row, head);
    return !canBeSetUp(setting, head) || !closesOnBench(setting, head);
  });
  const told = [...new Set(found.map(([count]) => Number(count)))].sort((a, b) => a - b);
  return { pages, wrong, told, moves: moves.length };
}

describe.each(heads)("%s", (_, head) => {
  it.each([
    ["poster", "a3"],
    ["poster", "tabloid"],
    ["card", "a4"],
    ["card", "letter"],
  ] as const)("the %s on %s is one page, and every move of the commonest counts closes", async (as, paper) => {
    const { pages, wrong, told, moves } = await checked(head, as, paper);
    expect({ pages, wrong, told }).toEqual({ pages: 1, wrong: [], told: commonestCounts });
    expect(moves).toBeGreaterThan(10);
  });
});

const directAlone = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });

describe("is refused in one sentence", () => {
  const [usual] = readyHeads;
  it.each([
    [
      "a poster of a head without plates",
      readyHeads.find(({ id }) => id === "ratio-90-dial"),
      { as: "poster" },
      /holds moves over index plates/,
    ],
    ["a poster of a head without a crank", byDegrees, { as: "poster" }, /holds moves over index plates/],
    ["a card of a head with a direct plate alone", directAlone, { as: "card" }, /holds moves over index plates/],
    ["a poster to 60", usual, { as: "poster", to: 60 }, /has no effect on a poster/],
    ["a tagged card", usual, { as: "card", tagged: true }, /has no order of reading/],
    ["a poster on a4", usual, { as: "poster", paper: "a4" }, /no paper "a4" for a poster; the papers are a3, tabloid/],
    ["large type on half a sheet", usual, { as: "large", paper: "a5" }, /no paper "a5" for a book in large type/],
    ["a form there is none of", usual, { as: "scroll" }, /there is no form "scroll"; the forms are pages, large/],
  ] as const)("%s", async (_, head, options, message) => {
    await expect(bookletPdf(head as Head, options as never)).rejects.toThrow(message);
  });
});
