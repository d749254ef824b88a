import { type AtRadius, lengthsIn } from "../../src/words/index.ts";
import type { Desk } from "./desk.ts";
import { el } from "./el.ts";
import { choice, field } from "./pieces.ts";

const mmPerInch = 25.4;

/** The radius of the work, at which errors are told as lengths too. */
export function radiusForm(desk: Desk, changed: () => void): HTMLElement {
  const given = desk.radius();
  const input = el("input", { inputmode: "decimal", autocomplete: "off", oninput: change, size: 6 });
  input.value =
    given === null
      ? ""
      : lengthsIn(given.unit)
          .bare(given.mm)
          .replace(/\.?0+$/, "");
  const unit = choice(
    [
      ["mm", "mm"],
      ["in", "inches"],
    ],
    given?.unit ?? "mm",
    change,
  );
  function change() {
    desk.setRadius(radiusTyped(input.value, unit.value === "in" ? "in" : "mm"));
    changed();
  }
  return el("div", { class: "row" }, field("Radius of the work", input), field("Unit", unit));
}

function radiusTyped(text: string, unit: AtRadius["unit"]): AtRadius | null {
  const size = Number(text.replace(",", "."));
  return size > 0 && size < 100_000 ? { mm: unit === "in" ? size * mmPerInch : size, unit } : null;
}
