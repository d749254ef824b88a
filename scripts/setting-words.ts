import {
  gearsForgotten,
  type Head,
  kindOf,
  type NearMove,
  positions,
  type Setting,
  type SettingGears,
  shaftRoom,
  type UnprovedSetting,
} from "../src/index.ts";
import { arc, count, degrees, line, mixed, plateName } from "./words.ts";

const kindNames = {
  direct: "DIRECT INDEXING",
  simple: "SIMPLE INDEXING",
  "one-pair": "DIFFERENTIAL INDEXING, one pair of gears",
  "two-pair": "DIFFERENTIAL INDEXING, two pairs of gears",
  compound: "COMPOUND INDEXING",
  dial: "BY THE DIAL, every position on a mark",
  block: "DIFFERENTIAL INDEXING",
  "may-foul": "DIFFERENTIAL INDEXING, two pairs of gears that may foul",
} as const;

/** What kind of setting this is, in capitals where it must not be missed. */
export function settingTitle(setting: UnprovedSetting): string {
  const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} TEETH PER MOVE`;
  return `${kindNames[kindOf(setting)]}${teeth}`;
}

/** A setting in full, line by line in the order of work. */
export function settingLines(setting: Setting, head: Head): string[] {
  return [
    ...moveLines(setting, head),
    ...(setting.gears ? gearLines(setting.gears) : []),
    line("Each move", eachMove(setting)),
    line("Proof", proofLine(setting)),
    ...warningLines(setting),
  ];
}

/** A near move in full; it has no proof, as it does not close. */
export function nearMoveLines(setting: NearMove, head: Head): string[] {
  return [...moveLines(setting, head), ...(setting.gears ? gearLines(setting.gears) : []), line("Each move", eachMove(setting))];
}

function moveLines(setting: Setting | NearMove, head: Head): string[] {
  const { turns, spaces, circle, second } = setting;
  if (setting.method === "direct") {
    return [
      line("Worm", "out of mesh; the spindle is moved by hand"),
      line("Direct plate", `${setting.plate}, ${circle} holes`),
      line("Move", count(spaces, "space")),
      ...("proof" in setting ? [line("Holes used", holesUsed(setting))] : []),
    ];
  }
  if (setting.method === "dial") {
    const lines = head.dial?.vernierLines ?? 1;
    const vernier = lines > 1 ? ` + ${count(spaces % lines, "line")} of the vernier` : "";
    return [
      line("Dial", `${count(turns, "turn")} + ${count(Math.floor(spaces / lines), "mark")}${vernier} from each to the next`),
      line("", "Set every position from one zero; --teeth all lists the readings."),
    ];
  }
  if (circle === null && head.plates.length === 0) {
    return [line("Dial", `${count(turns, "turn")} + 0 marks: back at the same mark after every move`)];
  }
  if (circle === null) {
    return [
      line("Plate", "any, any circle: the pin comes back to the same hole"),
      line(second ? "First, the crank" : "Crank", `${count(turns, "turn")} + 0 spaces`),
      line("Plate stop pin", setting.plateStopPin === "in" ? "in" : "OUT"),
    ];
  }
  const move = `${count(turns, "turn")} + ${count(spaces, "space")}`;
  const arms = `enclose ${spaces + 1} holes, the pin's own among them`;
  const place = line("Plate", `${plateName(setting).replace("plate ", "")}, circle of ${circle} holes`);
  if (!second) {
    const pin = setting.plateStopPin === "in" ? "in" : "OUT: the gears turn the plate";
    return [place, line("Crank", move), line("Sector arms", arms), line("Plate stop pin", pin)];
  }
  return [
    place,
    line("First, the crank", `${move} on ${circle}`),
    line("Sector arms", arms),
    line(
      "Then both",
      `draw the rear pin from the circle of ${second.circle}; crank and plate together ${second.direction === "with" ? "ON the same way" : "BACK the other way"} ${count(second.spaces, "space")} of ${second.circle}; rear pin in again`,
    ),
    line("Plate stop pin", `OUT: the rear pin holds the plate, in the circle of ${second.circle} on the same face`),
  ];
}

const mostHolesNamed = 60;

/** The holes of a direct plate by number: the wrong hole is the usual mistake. */
function holesUsed(setting: Setting): string {
  if (setting.proof.moves > mostHolesNamed) return "--teeth all lists them";
  return `${positions(setting)
    .map(({ hole }) => hole)
    .join(", ")}; 0 is the hole that the pin starts in`;
}

function gearLines({ drivers, driven, idlers, direction, platePerSpindle, mayFoul }: SettingGears): string[] {
  const [spindle, studDriver] = drivers;
  const idlerWords = idlers === 0 ? "no idler" : count(idlers, "idler");
  const train =
    studDriver === undefined
      ? [line("Gear on spindle", `${spindle} teeth`), line("Gear on worm", `${driven[0]} teeth, ${idlerWords} between`)]
      : [
          line("Gear on spindle", `${spindle} teeth, drives`),
          line("Gears on stud", `${driven[0]} teeth, fast with ${studDriver} teeth, which drives`),
          line("Gear on worm", `${driven[1]} teeth; ${idlerWords} in the train`),
        ];
  return [
    ...train,
    line("Plate turns", `${direction.toUpperCase()} the crank, ${mixed(platePerSpindle)} for one turn of the spindle`),
    ...(mayFoul
      ? [
          line(
            "MAY FOUL",
            `${mayFoul} (a shop rule for the room of a shaft, ${shaftRoom} teeth; common practice, no source). Try it on the quadrant first.`,
          ),
        ]
      : []),
  ];
}

function eachMove({ spindlePerMove, teethPerMove }: UnprovedSetting): string {
  const teeth = teethPerMove === 1 ? "" : `; ${teethPerMove} teeth on, so go round the work ${teethPerMove} times`;
  return `${degrees(spindlePerMove)} of the work${teeth}`;
}

function proofLine({ method, proof, circle, second, gears }: Setting): string {
  const back = `${count(proof.moves, "move")}, ${count(proof.rounds, "turn")} of the work`;
  if (method === "direct") return `${back}, and the pin is in its first hole again`;
  const crank = `${turnsOf(proof.crankTurns)} of the crank`;
  if (gears) {
    return `${back}: the pin goes ${turnsOf(proof.pinTurns)} over the plate, the plate ${turnsOf(proof.plateTurns)} ${gears.direction} the crank; ${crank} in all, and the work is back at its start`;
  }
  if (second) {
    const place = proof.pinTurns?.includes("/")
      ? "the work back to its start, the pins to other holes"
      : "you back to the start holes";
    return `${back}: ${crank} in all bring ${place}`;
  }
  if (method === "dial") return `${back}: ${crank} bring you back to the start mark`;
  const hole = circle === null || proof.crankTurns?.includes("/") ? "the start" : "the start hole";
  return `${back}: ${crank} bring you back to ${hole}`;
}

function turnsOf(turns: string | null): string {
  const shown = mixed(turns ?? "0");
  return `${shown} turn${shown === "1" ? "" : "s"}`;
}

function warningLines(setting: Setting): string[] {
  const alone = gearsForgotten(setting);
  if (!alone) return [];
  const move = `${setting.turns === 0 ? "" : `${count(setting.turns, "turn")} + `}${setting.circle === null ? "0 spaces" : `${count(setting.spaces, "space")} of ${setting.circle}`}`;
  const gives = alone.exact
    ? `gives ${alone.divisions}`
    : `comes nearest to ${alone.divisions}, ${arc(alone.closingArcSeconds)} out at the close`;
  return [
    line("Gears forgotten", `${move} alone ${gives}. The part is scrap.`),
    line("Never", "with the spindle tilted out of line with the gears, nor while they cut a helix"),
  ];
}

/** Other settings of the same kind, each in few words. */
export function shortSetting(setting: UnprovedSetting): string {
  const { turns, spaces, circle, second, gears } = setting;
  if (setting.method === "dial") return `by the dial, ${turns} + ${spaces}/${circle} turns`;
  const move = circle === null ? `${count(turns, "turn")} + 0` : `${turns} + ${spaces} of ${circle}`;
  const then = second ? ` ${second.direction === "with" ? "+" : "−"} ${second.spaces} of ${second.circle}` : "";
  const train = gears
    ? `, gears ${gears.drivers.join(" × ")} to ${gears.driven.join(" × ")}, ${count(gears.idlers, "idler")}, plate ${gears.direction}`
    : "";
  const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} teeth per move`;
  const place = setting.plate === null ? "" : ` (${plateName(setting)})`;
  return `${move}${then}${place}${train}${teeth}`;
}
