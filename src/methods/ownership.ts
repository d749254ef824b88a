import type { Head } from "../head/head.ts";
import { type FaultCode, quoted, refuse } from "../number/errors.ts";
import { countOf, rational, toExact } from "../number/ratio.ts";
import type { SettingGears, UnprovedSetting } from "../setting/setting.ts";

/**
 * Checks that a setting can be set up on a head: that the head has its ratio, plate, circles,
 * pins and gears, and that its idlers turn the plate the way the setting says.
 *
 * @throws {@link InputError} that names what the head lacks.
 */
export function checkOwned(setting: UnprovedSetting, head: Head): void {
  need(
    "conflict",
    setting.wormRatio === head.wormRatio,
    () => `is for a worm ratio of ${setting.wormRatio}; the head has ${head.wormRatio}`,
  );
  if (setting.method === "direct") {
    const plate = head.directPlates.find(({ name }) => name === setting.plate);
    need(
      "not-owned",
      plate?.holes === setting.circle,
      () => `needs a direct plate ${quoted(setting.plate)} of ${setting.circle} holes`,
    );
    return;
  }
  if (setting.method === "dial") {
    const places = (head.dial?.marksPerTurn ?? 0) * (head.dial?.vernierLines ?? 0);
    need("not-owned", places === setting.circle, () => `needs a dial with ${setting.circle} places in a turn`);
    return;
  }
  const face = head.plates.find(({ name }) => name === setting.plate)?.faces.find(({ name }) => name === setting.face);
  for (const circle of [setting.circle, setting.second?.circle ?? null]) {
    const where = () => `plate ${quoted(setting.plate)}${setting.face === null ? "" : `, face ${quoted(setting.face)}`}`;
    need(
      "not-owned",
      circle === null || face?.circles.includes(circle) === true,
      () => `needs a circle of ${circle} on ${where()}`,
    );
  }
  if (setting.second) need("not-owned", head.rearPin, () => "needs a rear pin");
  if (setting.gears) checkGears(setting.gears, head);
}

function checkGears(gears: SettingGears, head: Head): void {
  const used = [...gears.drivers, ...gears.driven];
  need(
    "not-owned",
    used.every((teeth) => countOf(teeth, used) <= countOf(teeth, head.gears)),
    () => `needs the gears ${used.join(", ")}`,
  );
  if (head.gearing === null) refuse("not-owned", "setting", "needs a plate that can be geared");
  const { onePair, twoPairs } = head.gearing.idlersWithCrank;
  const idlersWith = gears.drivers.length === 1 ? onePair : twoPairs;
  // Each idler more turns the plate the other way round.
  const direction = (gears.idlers - idlersWith) % 2 === 0 ? "with" : "against";
  need(
    "conflict",
    direction === gears.direction,
    () =>
      `turns its plate ${direction} the crank with ${gears.idlers} idler${gears.idlers === 1 ? "" : "s"}, not ${gears.direction} it`,
  );
  const product = (teeth: readonly number[]) => teeth.reduce((all, each) => all * each, 1);
  const ratio = rational((direction === "with" ? 1 : -1) * product(gears.drivers), product(gears.driven));
  need(
    "conflict",
    toExact(ratio) === gears.platePerSpindle,
    () => `turns its plate ${toExact(ratio)} times for one spindle turn, not ${gears.platePerSpindle}`,
  );
}

function need(code: FaultCode, isTrue: boolean, otherwise: () => string): void {
  if (!isTrue) refuse(code, "setting", otherwise());
}
