import type { Method, SecondMove, SettingGears } from "../../src/index.ts";

/** What is set on the head, of every kind of setting. */
export interface SetOnHead {
  readonly method: Method;
  readonly teethPerMove: number;
  readonly plate: string | null;
  readonly face: string | null;
  readonly circle: number | null;
  readonly turns: number;
  readonly spaces: number;
  readonly second?: SecondMove;
  readonly gears?: Pick<SettingGears, "direction" | "drivers" | "driven">;
}

/** What is set on the head by a setting, as one line: two settings with one key are the same work. */
export function settingKey(setting: SetOnHead): string {
  const { method, teethPerMove, plate, face, circle, turns, spaces, second, gears } = setting;
  return [
    method,
    `${teethPerMove} per move`,
    `${plate}/${face}`,
    `${turns} + ${spaces}/${circle}`,
    ...(second ? [`${second.direction} ${second.spaces}/${second.circle}`] : []),
    ...(gears ? [`${gears.direction} ${trainKey(gears)}`] : []),
  ].join(", ");
}

/** The gears of a train as one text. Either driver may be on the spindle: the ratio is the same. */
export function trainKey({ drivers, driven }: Pick<SettingGears, "drivers" | "driven">): string {
  return `${inOrder(drivers)} : ${inOrder(driven)}`;
}

function inOrder(teeth: readonly number[]): string {
  return [...teeth].sort((a, b) => a - b).join("·");
}
