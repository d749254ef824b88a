import { el } from "./el.ts";
import type { GearTyped } from "./job.ts";
import { numbersTyped, numberTyped, wholeTyped } from "./numbers-typed.ts";
import { choice, field } from "./pieces.ts";

const mmPerInch = 25.4;

/** A form for a gear and its damage. */
export function repairForm(changed: () => void): { readonly node: HTMLElement; gear(): GearTyped | null } {
  const typed = (inputmode: string, value = "") => {
    const input = el("input", { inputmode, autocomplete: "off", size: 7, oninput: changed });
    input.value = value;
    return input;
  };
  const [teeth, pitch, pressureAngle] = [typed("numeric"), typed("decimal"), typed("decimal", "20")];
  const [damaged, backlash] = [typed("text"), typed("decimal")];
  const backlashField = field("", backlash);
  const system = choice(
    [
      ["module", "module"],
      ["dp", "DP"],
    ],
    "module",
    () => {
      nameUnit();
      changed();
    },
  );
  const isModule = () => system.value === "module";
  const nameUnit = () => {
    if (backlashField.firstChild) backlashField.firstChild.textContent = `Most backlash, ${isModule() ? "mm" : "in"}`;
  };
  nameUnit();
  return {
    node: el(
      "div",
      { class: "row" },
      field("Teeth", teeth),
      field("Pitch", pitch),
      field("Pitch by", system),
      field("Pressure angle, °", pressureAngle),
      field("Damaged: 31-33, 40", damaged),
      backlashField,
    ),
    gear() {
      if ([teeth, pitch, damaged].some(({ value }) => value.trim() === "")) return null;
      return {
        teeth: wholeTyped(teeth.value, "teeth"),
        pitch: numberTyped(pitch.value, "pitch"),
        system: isModule() ? "module" : "dp",
        pressureAngle: numberTyped(pressureAngle.value, "pressure angle"),
        damaged: numbersTyped(damaged.value, "damaged teeth"),
        backlash: backlash.value.trim() === "" ? null : millimetres(numberTyped(backlash.value, "backlash"), isModule()),
      };
    },
  };
}

/** To the nanometre, so that a link can say it. */
function millimetres(length: number, isMetric: boolean): number {
  return isMetric ? length : Number((length * mmPerInch).toFixed(6));
}
