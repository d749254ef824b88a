import type { Head } from "../head/head.ts";
import { countOf, rational, toRatio } from "../number/ratio.ts";
import type { SettingGears } from "../setting/setting.ts";

/** How many gears there are of each size. */
export function gearsBySize(gears: readonly number[]): ReadonlyMap<number, number> {
  const bySize = new Map<number, number>();
  for (const teeth of gears) bySize.set(teeth, (bySize.get(teeth) ?? 0) + 1);
  return bySize;
}

/**
 * Whether a head has idlers enough for a train: those kept as such, and change gears that it leaves
 * over. Where the owner has not said, they are taken to be at hand.
 */
export function hasIdlers({ gears, idlers }: Pick<Head, "gears" | "idlers">, inTrain: number, wanted: number): boolean {
  return idlers === null || idlers.length + gears.length - inTrain >= wanted;
}

/** What a head lacks of a train: its gears, a plate that can be geared, the idlers' direction, its ratio; null where nothing. */
export function lacksTrain(gears: SettingGears, head: Head): string | null {
  const { gears: owned, gearing } = head;
  const used = [...gears.drivers, ...gears.driven];
  if (used.some((teeth) => countOf(teeth, used) > countOf(teeth, owned))) return `needs the gears ${used.join(", ")}`;
  if (!hasIdlers(head, used.length, gears.idlers)) return `needs ${gears.idlers === 1 ? "an idler" : `${gears.idlers} idlers`}`;
  if (gearing === null) return "needs a plate that can be geared";
  const { onePair, twoPairs } = gearing.idlersWithCrank;
  const idlersWith = gears.drivers.length === 1 ? onePair : twoPairs;
  // Each idler more turns the plate the other way round.
  const direction = (gears.idlers - idlersWith) % 2 === 0 ? "with" : "against";
  if (direction !== gears.direction) {
    const idlers = `${gears.idlers} idler${gears.idlers === 1 ? "" : "s"}`;
    return `turns its plate ${direction} the crank with ${idlers}, not ${gears.direction} it`;
  }
  const product = (teeth: readonly number[]) => teeth.reduce((all, each) => all * each, 1);
  const ratio = toRatio(rational((direction === "with" ? 1 : -1) * product(gears.drivers), product(gears.driven)));
  return ratio === gears.platePerSpindle
    ? null
    : `turns its plate ${ratio} times for one spindle turn, not ${gears.platePerSpindle}`;
}
