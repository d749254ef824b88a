import { type NotPossible, wayOf } from "../../src/index.ts";
import { gradeNote, nearItems, wayShort } from "../../src/words/index.ts";
import type { Acts } from "./answer-panel.ts";
import { el } from "./el.ts";
import { button, part } from "./pieces.ts";

const mostShown = 8;

/** The near ways with their errors, each to be taken by one tap; lengths at the radius that was given. */
export function nearSection({ near, target }: NotPossible, { way, take, radiusForm, radius }: Acts): HTMLElement | null {
  if (near.length === 0) return null;
  const count = "divisions" in target ? target.divisions : null;
  return part(
    "Near ways, each with the error that it leaves",
    radiusForm,
    radius !== null && el("p", { class: "note" }, gradeNote(radius, count)),
    el(
      "ul",
      { class: "ways" },
      near.slice(0, mostShown).map((setting) => {
        const [how, off] = nearItems(setting, count, radius);
        const isTaken = wayShort(wayOf(setting)) === way;
        return el(
          "li",
          {},
          button([el("b", {}, how?.term ?? "", ": "), how?.text ?? ""], () => take(wayOf(setting)), isTaken ? "taken" : ""),
          el("p", {}, off?.text ?? ""),
        );
      }),
    ),
  );
}
