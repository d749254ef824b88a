import { type Head, parseAngle, unequalSpacing } from "../src/index.ts";
import { type Asked, fault } from "./command-line.ts";
import type { More } from "./more.ts";
import { errorWords, scaleColumns } from "./position-words.ts";
import { table } from "./table.ts";
import { arc, degrees, headLine, line, paragraph, plateName } from "./words.ts";

/** `spacing ANGLES`: the places of a work whose spaces are not equal. */
export function spacingAsked(angles: string, head: Head, { mounted }: Asked["options"]): More {
  if (angles.trim() === "")
    throw fault("missing", "", "no angles were given; list those from each place to the next, such as 58°,62°,59°,61°,60°,60°");
  const steps = angles.split(",").map(parseAngle);
  const spacing = unequalSpacing(head, steps, mounted === undefined ? {} : { mounted });
  const { circle, exact, worstArcSeconds, closes, left, places } = spacing;
  const cells = (of: (place: (typeof places)[number]) => string) => places.map(of);
  return {
    data: { spacing },
    lines: [
      `${places.length} PLACES, UNEQUAL SPACES`,
      headLine(head),
      "",
      ...(circle === null
        ? []
        : [line("Plate", `${plateName(circle).replace("plate ", "")}, circle of ${circle.holes} holes, for every place`)]),
      ...(worstArcSeconds === null
        ? []
        : [
            line(
              exact ? "Exact" : "NEAR, NOT EXACT",
              exact ? "every place is on a hole" : `no place over ${arc(worstArcSeconds)} off, each from one zero`,
            ),
          ]),
      line("Round", closes ? "the spaces make up whole turns of the work" : `the spaces leave ${degrees(left)} of the turn`),
      "",
      ...table([
        { head: "place", cells: cells(({ place }) => String(place)) },
        ...(circle === null
          ? []
          : [
              {
                head: "go on by",
                cells: cells(({ from, place }) => (place === 1 ? "start" : `${from?.turns} + ${from?.spaces}/${circle.holes}`)),
              },
              { head: "turns", cells: cells(({ turns }) => String(turns)) },
              { head: "hole", cells: cells(({ hole }) => String(hole)) },
              ...(exact
                ? []
                : [
                    {
                      head: "off by",
                      cells: cells(({ errorArcSeconds }) => errorWords({ errorArcSeconds: errorArcSeconds ?? 0 })),
                    },
                  ]),
            ]),
        ...scaleColumns(places, head),
        { head: "angle", cells: cells(({ angle }) => degrees(angle)) },
      ]),
      "",
      paragraph(
        "Turn one way only; past the hole, go back half a turn or more and come up to it again. Unlock the spindle to move, lock it to cut.",
      ),
    ],
  };
}
