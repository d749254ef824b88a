import { describe, expect, it } from "vitest";
import { exactSettings, fromExact, prove, ratio, spindleTurnsPerMove } from "../../src/index.ts";
import { rational, toRatio } from "../../src/number/ratio.ts";
import { threePlates } from "../support/ready.ts";
import { trainKey } from "../support/setting-key.ts";
import { onePair, source, twoPairs } from "./differential-from-memory.ts";
import { geared, gearedByRatio } from "./practical-treatise.ts";

const settingsFor = (divisions: number) =>
  [...exactSettings(threePlates, { divisions }, { methods: ["differential"], teethPerMove: 1 })].flatMap((setting) =>
    setting.method === "differential" ? [setting] : [],
  );
type Geared = ReturnType<typeof settingsFor>[number];

/** The same move over the plate, and the same gears in either order on spindle, stud and worm. */
const sameWork = (setting: Geared, move: Pick<Geared, "turns" | "spaces" | "circle">, drivers: number[], driven: number[]) =>
  setting.turns === move.turns &&
  setting.spaces === move.spaces &&
  setting.circle === move.circle &&
  trainKey(setting.gears) === trainKey({ drivers, driven });

describe("Practical Treatise, p. 57, differential indexing", () => {
  it.each(geared)(
    "$divisions: $spaces/$circle, $spindle·$firstOnStud / $secondOnStud·$worm, $idlers idler, $direction",
    (row) => {
      const drivers = [row.spindle, row.firstOnStud];
      const driven = [row.secondOnStud, row.worm];
      const found = settingsFor(row.divisions).filter((setting) => sameWork(setting, row, drivers, driven));
      expect(found).toEqual([
        expect.objectContaining({
          plateStopPin: "out",
          gears: expect.objectContaining({
            idlers: row.idlers,
            direction: row.direction,
            platePerSpindle: row.platePerSpindle,
            mayFoul: null,
          }),
        }),
      ]);
      // The train as printed, gear by gear, on the mechanism.
      const { turns, spaces, circle, direction } = row;
      const turned = spindleTurnsPerMove({
        wormRatio: ratio("40"),
        turns,
        spaces,
        circle,
        gears: { drivers, driven, direction },
      });
      expect(turned).toBe(`1/${row.divisions}`);
    },
  );

  it("1440: one space of 33 is no assumed whole count", () => {
    const [, quarter] = geared;
    expect(toRatio(rational(40 * quarter.circle, quarter.spaces))).toBe("1320");
    expect(fromExact(quarter.platePerSpindle).equals(rational(40 * (1320 - 1440), 1320))).toBe(true);
  });

  it("271 by 280: 3/21, the plate 9/7 with the crank, one pair, one idler", () => {
    const { divisions, assumed, spaces, circle, platePerSpindle, idlers, direction } = gearedByRatio;
    expect(toRatio(rational(40 * (assumed - divisions), assumed))).toBe(platePerSpindle);
    const found = settingsFor(divisions).filter(
      (setting) => setting.spaces === spaces && setting.circle === circle && setting.gears.drivers.length === 1,
    );
    expect(found.map(({ gears }) => gears)).toEqual([
      { drivers: [72], driven: [56], idlers, direction, platePerSpindle, mayFoul: null },
    ]);
  });
});

describe(`differential settings, ${source.place}`, () => {
  const g = ({ divisions, assumed }: { divisions: number; assumed: number }) =>
    toRatio(rational(40 * (assumed - divisions), assumed));

  it.each(onePair)("$divisions by $assumed: $spaces/$circle, spindle $spindle, worm $worm, $idlers idlers", (row) => {
    const move = { turns: 0, spaces: row.spaces, circle: row.circle };
    const [found] = settingsFor(row.divisions).filter((setting) => sameWork(setting, move, [row.spindle], [row.worm]));
    expect(found?.gears).toMatchObject({ idlers: row.idlers, platePerSpindle: g(row) });
    expect(found && prove(found, { walkOn: threePlates }).closes).toBe(true);
  });

  it.each(twoPairs)("$divisions by $assumed: $spaces/$circle, $spindle·$firstOnStud / $secondOnStud·$worm", (row) => {
    const move = { turns: 0, spaces: row.spaces, circle: row.circle };
    const [found] = settingsFor(row.divisions).filter((setting) =>
      sameWork(setting, move, [row.spindle, row.firstOnStud], [row.secondOnStud, row.worm]),
    );
    expect(found?.gears).toMatchObject({ idlers: row.idlers, platePerSpindle: g(row), mayFoul: null });
  });
});
