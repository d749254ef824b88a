import { el, fill } from "./el.ts";
import { placesFound } from "./find-place.ts";
import { button, disclosure, field, form, itemList } from "./pieces.ts";
import type { Walk } from "./walk.ts";

/** The most places that are offered to choose from. */
const mostOffered = 6;

/** Finds the place again from what stands at the machine. */
export function findPanel(walk: () => Walk, jump: (done: number) => void): HTMLElement {
  const typed = (mode: string) => el("input", { inputmode: mode, autocomplete: "off", size: 7 });
  const [ring, hole, turns] = [typed("text"), typed("numeric"), typed("numeric")];
  const found = el("div", { "aria-live": "polite" });

  function find() {
    fill(found);
    const { indices, items } = placesFound(walk(), { ring: ring.value, hole: hole.value, turns: turns.value });
    const { steps, noun } = walk();
    fill(
      found,
      itemList(items),
      indices.length === 0 &&
        el(
          "p",
          { class: "refused" },
          `No ${noun} of this job stands so. Check the readings, the start hole, the side, and that nothing has moved.`,
        ),
      indices.length > mostOffered && el("p", {}, `${indices.length} places stand so; read more.`),
      indices.slice(0, mostOffered).map((index) => {
        const name = `${noun} ${steps[index]?.place.tooth}`;
        return el(
          "p",
          { class: "row" },
          button(`At ${name}, not done yet`, () => jump(index)),
          button(`${name} is done`, () => jump(index + 1)),
        );
      }),
    );
  }

  const readings = el(
    "div",
    { class: "row" },
    field("The ring stands at", ring),
    field("Pin in hole", hole),
    field("after turns", turns),
  );
  return disclosure("Where was I?", form("Find the place", find, readings), found);
}
