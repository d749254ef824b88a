import type { Head } from "../head/head.ts";
import type { Fouling, SettingGears } from "../setting/setting.ts";
import type { Item } from "./item.ts";
import { counted, mixed } from "./numbers.ts";

/** The train shaft by shaft, and which way it turns the plate. */
export function trainItems(gears: SettingGears, { idlers: kept }: Pick<Head, "idlers">): readonly Item[] {
  const { drivers, driven, direction, platePerSpindle, mayFoul } = gears;
  const [spindle, studDriver] = drivers;
  const shafts: readonly Item[] =
    studDriver === undefined
      ? [
          { term: "Gear on spindle", text: `${spindle} teeth` },
          { term: "Gear on worm", text: `${driven[0]} teeth, ${idlersBetween(gears, kept)}` },
        ]
      : [
          { term: "Gear on spindle", text: `${spindle} teeth, drives` },
          { term: "Gears on stud", text: `${driven[0]} teeth, fast with ${studDriver} teeth, which drives` },
          { term: "Gear on worm", text: `${driven[1]} teeth; ${idlersBetween(gears, kept)}` },
        ];
  const turns = `${direction.toUpperCase()} the crank, ${mixed(platePerSpindle, " ")} for one turn of the spindle`;
  return [
    ...shafts,
    { term: "Plate turns", text: turns },
    ...(mayFoul === null ? [] : [{ term: "MAY FOUL", text: `${foulingWords(mayFoul)}. Try it on the quadrant first.` }]),
  ];
}

/** Idlers are gears besides those named, and their size does not matter: nobody is to look for them among the others. */
function idlersBetween({ idlers }: SettingGears, kept: Head["idlers"]): string {
  if (idlers === 0) return "no idler";
  const which =
    kept === null || kept.length === 0 ? "of any size that fits" : `your ${kept.join(" or ")}, or any left over that fits`;
  return `${counted(idlers, "idler")} between: ${idlers === 1 ? "one gear more" : `${idlers} gears more`}, ${which}`;
}

/** Why a train may not go together. */
export function foulingWords({ code, gear, meshing: [one, other], room }: Fouling): string {
  const shaft = { "stud-driver-at-spindle": "the spindle", "stud-driven-at-worm-shaft": "the worm shaft" }[code];
  return `the stud's ${gear} may reach ${shaft}: ${one} + ${other} is less than ${gear} + ${room} (a shop rule for the room of a shaft, ${room} teeth; common practice, no source)`;
}

/** The train in few words: `gears 56 to 24, 2 idlers, plate against`. */
export function trainShort({ drivers, driven, idlers, direction }: SettingGears): string {
  return `gears ${drivers.join(" × ")} to ${driven.join(" × ")}, ${counted(idlers, "idler")}, plate ${direction}`;
}
