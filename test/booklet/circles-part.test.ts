import { describe, expect, it } from "vitest";
import { defineHead, type Head, revolutions, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { canBeSetUp, closesOnBench } from "../support/mechanism.ts";
import { ready } from "../support/ready.ts";
import { secondHand } from "./heads.ts";
import { facesPrinted, plateNamed } from "./plate-named.ts";
import { readBack } from "./read-back.ts";
import { linesOf } from "./read-pdf.ts";

/** A count of the chart by circle with its move, read from the page alone. */
interface Printed {
  readonly plate: string;
  /** Null where any circle serves. */
  readonly circle: number | null;
  readonly divisions: number;
  readonly turns: number;
  readonly spaces: number;
}

function printedOn(lines: readonly string[]): readonly Printed[] {
  const found: Printed[] = [];
  let plate = "";
  let circle: number | null = null;
  for (const line of lines) {
    const heading = /^Plate ([^|]+)$/.exec(line);
    if (heading) plate = heading[1] ?? "";
    const pieces = line.split("|");
    const lead = pieces.length % 2 === 1 && pieces.length > 1 ? pieces.shift() : undefined;
    if (!pieces.every((piece, index) => (index % 2 === 0 ? /^\d+$/ : /^\d+ \+ \d+$/).test(piece)) || pieces.length < 2) continue;
    if (lead !== undefined) circle = lead === "any" ? null : Number(lead);
    for (let at = 0; at < pieces.length; at += 2) {
      const [turns = 0, spaces = 0] = (pieces[at + 1] ?? "").split(" + ").map(Number);
      found.push({ plate, circle, divisions: Number(pieces[at]), turns, spaces });
    }
  }
  return found;
}

function settingOf({ plate, circle, divisions, turns, spaces }: Printed, head: Head): UnprovedSetting {
  const ofMove = { teethPerMove: 1, wormRatio: wormRatioOf(head), spindlePerMove: revolutions(1, divisions) };
  const crank =
    circle === null
      ? ({ turns, circle: null, plate: null, face: null, spaces: 0, armsEnclose: null } as const)
      : { turns, circle, spaces, armsEnclose: spaces + 1, ...plateNamed(plate, head) };
  return { ...ofMove, method: "simple", plateStopPin: "in", ...crank };
}

const half = defineHead({ id: "half", name: "Half", wormRatio: "81/2", plates: [{ name: "one", circles: [18, 20] }] });
const heads = [ready("ratio-40-plates-15-49"), ready("ratio-40-faces-24-66"), ready("ratio-90-table-15-49"), secondHand, half];

describe("the chart by circle", () => {
  it.each(heads.map((head) => [head.id, head] as const))(
    "%s: every move closes on a circle of its plate, and no count is left out",
    async (_, head) => {
      const printed = printedOn((await readBack(head, { parts: ["circles"] })).flatMap(linesOf));
      expect(printed.length).toBeGreaterThan(10);
      const wrong = printed.filter((each) => {
        const setting = settingOf(each, head);
        return !canBeSetUp(setting, head) || !closesOnBench(setting, head);
      });
      expect(wrong).toEqual([]);

      const [n = 0, d = 1] = wormRatioOf(head).split("/").map(Number);
      const wanted: string[] = [];
      for (let count = 2; count <= 400; count += 1) {
        // R ÷ count turns: whole, or so many spaces of a circle.
        if (n % (d * count) === 0) wanted.push(`any ${count}`);
        else
          for (const { printed, face } of facesPrinted(head))
            for (const holes of face.circles) if ((n * holes) % (d * count) === 0) wanted.push(`${printed}/${holes} ${count}`);
      }
      const there = printed.map(
        ({ plate, circle, divisions }) => `${circle === null ? "any" : `${plate}/${circle}`} ${divisions}`,
      );
      expect(there.sort()).toEqual(wanted.sort());
    },
  );
});
