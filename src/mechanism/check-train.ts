import { quoted, refuse } from "../number/errors.ts";

/** Checks that there are gears to make a train of: one or two pairs, each with its teeth. */
export function checkTrain(drivers: readonly number[], driven: readonly number[]): void {
  if (!Array.isArray(drivers) || !Array.isArray(driven))
    refuse(
      "unreadable",
      "setting.gears",
      `${quoted(Array.isArray(drivers) ? driven : drivers)} is not a list of gears; give drivers and driven, such as [56] and [24]`,
    );
  if (drivers.length !== driven.length || drivers.length < 1 || drivers.length > 2)
    refuse(
      "cannot-be-made",
      "setting.gears",
      `${drivers.length} drivers and ${driven.length} driven gears are no train of one or two pairs`,
    );
  const areGears = (teeth: readonly number[]) => teeth.every((each) => Number.isSafeInteger(each) && each > 0);
  if (!areGears(drivers) || !areGears(driven)) {
    refuse(
      "unreadable",
      "setting.gears",
      `${drivers.map(quoted).join(" and ")} to ${driven.map(quoted).join(" and ")} are not the teeth of gears; give whole numbers above 0`,
    );
  }
}
