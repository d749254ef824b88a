import type { UnprovedSetting } from "../../src/index.ts";

/** What is set on the head by a setting, as one line: two settings with one key are the same work. */
export function settingKey(
  setting: Omit<UnprovedSetting, "wormRatio" | "spindlePerMove" | "armsEnclose" | "plateStopPin">,
): string {
  const { method, teethPerMove, plate, face, circle, turns, spaces, second, gears } = setting;
  return [
    method,
    `${teethPerMove} per move`,
    `${plate}/${face}`,
    `${turns} + ${spaces}/${circle}`,
    ...(second ? [`${second.direction} ${second.spaces}/${second.circle}`] : []),
    ...(gears ? [`${gears.direction} ${inOrder(gears.drivers)} : ${inOrder(gears.driven)}`] : []),
  ].join(", ");
}

/** Either driver may be on the spindle: the ratio is the same. */
function inOrder(teeth: readonly number[]): string {
  return [...teeth].sort((a, b) => a - b).join("·");
}
