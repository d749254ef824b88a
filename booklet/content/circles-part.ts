import { ownedCircles } from "../../src/index.ts";
import type { Block, ColumnsBlock, Part } from "./blocks.ts";
import type { HeadCount, ProvedBy } from "./head-counts.ts";
import type { Desk } from "./parts.ts";
import { plateHeading } from "./plate-keys.ts";
import { anchorOf, plateOf } from "./words.ts";

/** What a plate that is on the head can do: for each of its circles the counts with their moves. */
export function circlesPart({ head, keys, counts, included }: Desk): Part | null {
  const circles = ownedCircles(head);
  if (circles.length === 0) return null;
  const headings = new Map(circles.map((circle) => [plateOf(head, circle), plateHeading(keys, circle)]));
  const faces = [...headings.keys()];
  const linked = included.has("simple");
  return {
    id: "circles",
    title: "What each circle can do",
    joins: true,
    blocks: [
      {
        kind: "paragraph",
        text: "Each count with its move, turns + spaces, on the circle named before it, or any. Stop pin in, no gears; the arms enclose one hole more than the spaces.",
      },
      ...wholeTurns(counts, linked),
      ...faces.flatMap((face): readonly Block[] => {
        const used = circles
          .filter((circle) => plateOf(head, circle) === face)
          .map(
            (circle): ColumnsBlock => ({
              kind: "columns",
              lead: String(circle.holes),
              items: entries(counts, linked, (setting) => plateOf(head, setting) === face && setting.circle === circle.holes),
            }),
          )
          .filter(({ items }) => items.length > 0);
        return used.length === 0 ? [] : [{ kind: "heading", text: headings.get(face) ?? face }, ...used];
      }),
    ],
  };
}

/** Counts that any circle does, its pin always in the hole it started from. */
function wholeTurns(counts: readonly HeadCount[], linked: boolean): readonly Block[] {
  const items = entries(counts, linked, ({ circle }) => circle === null);
  return items.length === 0 ? [] : [{ kind: "columns", lead: "any", items }];
}

function entries(
  counts: readonly HeadCount[],
  linked: boolean,
  isOn: (setting: ProvedBy<"simple">) => boolean,
): ColumnsBlock["items"] {
  return counts.flatMap(({ divisions, simple }) => {
    const setting = simple.find((each) => each.teethPerMove === 1 && isOn(each));
    if (setting === undefined) return [];
    const link = linked ? { link: anchorOf("simple", divisions) } : {};
    return [{ parts: [String(divisions), `${setting.turns} + ${setting.spaces}`], ...link }];
  });
}
