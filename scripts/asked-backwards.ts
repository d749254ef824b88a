import { countsFromAngle, type Head, type PossibleCount, parseAngle, type SetMove, whatMoveGives } from "../src/index.ts";
import { type Asked, fault, wholeNumber } from "./command-line.ts";
import type { More } from "./more.ts";
import { arc, count, degrees, line, paragraph } from "./words.ts";

/** `2.9° ± 0.05°`: the counts that an angle read by eye could mean; null where this is no such question. */
export function countsByEye(question: string): More | null {
  const [angle, uncertainty, more] = question.split(/±|\+\/?-/);
  if (angle === undefined || uncertainty === undefined || more !== undefined) return null;
  const counts = countsFromAngle(parseAngle(angle), parseAngle(uncertainty));
  return { data: { counts }, lines: eyeLines(counts) };
}

function eyeLines(counts: readonly PossibleCount[]): string[] {
  if (counts.length === 0) return [paragraph("No whole count has that angle; read it again over more teeth.")];
  const most = Math.max(0, ...counts.map(({ teethToTellFromNext }) => teethToTellFromNext ?? 0));
  const listed = counts.map(({ divisions }) => divisions);
  const shown = listed.length > 20 ? `${listed[0]} to ${listed.at(-1)}` : listed.join(", ");
  return [
    line("It could be", `${shown} divisions`),
    ...(most > 0
      ? [
          line(
            "To tell apart",
            `measure over ${most} teeth or more, with the same care, and ask again with that angle divided by the teeth`,
          ),
        ]
      : []),
  ];
}

/** `gives MOVE`: what count a move really gives. */
export function moveGives(move: string, head: Head, options: Asked["options"]): More {
  const set = { wormRatio: head.wormRatio, ...readMove(move), ...readGears(options) };
  const teeth = options["teeth-per-move"] === undefined ? 1 : wholeNumber(options["teeth-per-move"], "--teeth-per-move");
  const gives = whatMoveGives(set, teeth);
  const perMove = teeth === 1 ? "" : `, ${teeth} teeth per move`;
  return {
    data: { gives },
    lines: [
      line(
        "This gives",
        gives.exact
          ? `${count(gives.divisions, "division")} exactly${perMove}`
          : `no whole count; nearest is ${gives.divisions}${perMove}`,
      ),
      ...(gives.exact
        ? []
        : [
            line(
              "At the close",
              `the work is ${arc(gives.closingArcSeconds)} ${gives.closingArcSeconds > 0 ? "too far" : "short"}`,
            ),
          ]),
      line("Each move", `${degrees(gives.spindlePerMove)} of the work`),
    ],
  };
}

const movePattern =
  /^(?:(\d{1,6})(?:\s*t(?:urns?)?)?)?\s*(?:^|\+|\s)\s*(?:(\d{1,6})\s*(?:\/|of)\s*(\d{1,6}))?\s*(?:([+\-−])\s*(\d{1,6})\s*(?:\/|of)\s*(\d{1,6}))?$/;

function readMove(text: string): Omit<SetMove, "wormRatio"> {
  const parts = /^\d+$/.test(text.trim()) ? [text, text.trim()] : movePattern.exec(text.trim());
  if (!parts || text.trim() === "")
    throw fault(
      "",
      `"${text.slice(0, 40)}" is not a move; write turns and spaces such as "0 + 22/33", or "1 + 7/39 + 29/41" for a compound one`,
    );
  const [, turns = "0", spaces, circle, sign, then, second] = parts;
  return {
    turns: Number(turns),
    spaces: Number(spaces ?? 0),
    circle: circle === undefined ? null : Number(circle),
    ...(sign !== undefined && {
      second: { spaces: Number(then), circle: Number(second), direction: sign === "+" ? "with" : "against" } as const,
    }),
  };
}

function readGears({ gears, plate }: Asked["options"]): Pick<SetMove, "gears"> {
  if (gears === undefined) return {};
  const sides = gears.split("/").map((side) => side.split(/[*×x]/).map((teeth) => wholeNumber(teeth, "--gears")));
  const [drivers, driven] = sides;
  if (!drivers || !driven || sides.length > 2 || drivers.length !== driven.length || drivers.length > 2) {
    throw fault("--gears", `"${gears.slice(0, 40)}" is not a train; give drivers over driven, such as 56/24 or 64*44/24*40`);
  }
  if (plate !== "with" && plate !== "against")
    throw fault("--plate", "say which way these gears turn the plate: with or against the crank");
  return { gears: { drivers, driven, direction: plate } };
}
