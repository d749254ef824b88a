import { el } from "./el.ts";
import type { GearTyped } from "./job.ts";
import { numbersTyped, numberTyped, wholeTyped } from "./numbers-typed.ts";
import { choice, field } from "./pieces.ts";

const mmPerInch = 25.4;

/** A form for a gear and its damage, which the address keeps as it is typed. */
export interface RepairForm {
  readonly node: HTMLElement;
  /** Null while too little is typed. */
  gear(): GearTyped | null;
  /** What is typed, for the address. */
  said(): URLSearchParams;
  fill(said: URLSearchParams): void;
}

/** A form for a gear and its damage. */
export function repairForm(changed: () => void): RepairForm {
  const typed = (inputmode: string) => el("input", { inputmode, autocomplete: "off", size: 7, oninput: changed });
  const system = choice(
    [
      ["module", "module"],
      ["dp", "DP"],
    ],
    "module",
    changed,
  );
  const controls = {
    repair: typed("numeric"),
    pitch: typed("decimal"),
    by: system,
    angle: typed("decimal"),
    damaged: typed("text"),
    backlash: typed("decimal"),
  } as const;
  const { repair, pitch, angle, damaged, backlash } = controls;
  angle.value = "20";
  return {
    node: el(
      "div",
      { class: "row" },
      field("Teeth", repair),
      field("Pitch", pitch),
      field("Pitch by", system),
      field("Pressure angle, °", angle),
      field("Damaged: 31-33, 40", damaged),
      field("Most backlash, mm; by DP, in", backlash),
    ),
    gear() {
      if ([repair, pitch, damaged].some(({ value }) => value.trim() === "")) return null;
      const mmPerUnit = system.value === "dp" ? mmPerInch : 1;
      return {
        teeth: wholeTyped(repair.value, "teeth"),
        pitch: numberTyped(pitch.value, "pitch"),
        system: system.value === "dp" ? "dp" : "module",
        pressureAngle: numberTyped(angle.value, "pressure angle"),
        damaged: numbersTyped(damaged.value, "damaged teeth"),
        // To the nanometre, so that a link can say it.
        backlash: backlash.value.trim() === "" ? null : Number((numberTyped(backlash.value, "backlash") * mmPerUnit).toFixed(6)),
      };
    },
    said: () => new URLSearchParams(Object.entries(controls).map(([name, { value }]): [string, string] => [name, value])),
    fill(said) {
      for (const [name, control] of Object.entries(controls)) control.value = said.get(name) ?? control.value;
    },
  };
}
