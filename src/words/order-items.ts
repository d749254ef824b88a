import { handOf } from "../head/hand.ts";
import type { Head } from "../head/head.ts";
import { roundsOf } from "../machine/cutting-order.ts";
import type { PlannedJob } from "../machine/plan.ts";
import { fromExact, type Ratio } from "../number/ratio.ts";
import type { Item } from "./item.ts";
import { goesBack } from "./legend-words.ts";
import { goesBy } from "./place-words.ts";

/** What an order of its own costs: how often the work goes round, where all teeth of a count are visited, always onward, and it is not the usual one. */
export function orderItems({ target, way, places }: PlannedJob, head: Head): readonly Item[] {
  if (!("divisions" in target) || places.length !== target.divisions || goesBack(places)) return [];
  const rounds = roundsOf(
    places.map(({ tooth }) => tooth),
    target.divisions,
  );
  const usual = way.by === "moves" ? way.setting.teethPerMove : 1;
  if (rounds <= usual) return [];
  const turns =
    head.wormRatio === null || goesBy(way, head).startsWith("spindle")
      ? ""
      : `: ${cranked(rounds, head.wormRatio)} turns of the ${handOf(head)}, not ${cranked(usual, head.wormRatio)}`;
  const goOn = way.by === "moves" ? " Go on by what each line says, not by the move of one place above." : "";
  return [
    {
      term: "In this order",
      text: `the work goes round ${rounds} times${turns}.${goOn} What was cut first has cooled and settled by then.`,
    },
  ];
}

function cranked(rounds: number, wormRatio: Ratio): string {
  return String(Math.round(fromExact(wormRatio).mul(rounds).valueOf() * 10) / 10);
}
