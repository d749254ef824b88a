import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  exactSettings,
  type Head,
  indexDivisions,
  kindOf,
  type PreparedHead,
  prepare,
  type Setting,
  type SettingBy,
} from "../../src/index.ts";
import { byGearedHandling, byHandling } from "../../src/methods/handling.ts";
import { counts, heads } from "../support/arbitraries.ts";
import { plateTurns } from "../support/bench.ts";
import { secondOf } from "../support/parts.ts";
import { ready, threePlates } from "../support/ready.ts";
import { everyOf, runs } from "../support/sweep.ts";
import { take } from "../support/take.ts";

type Geared = SettingBy<"differential"> & Setting;

/** All geared settings for a count, in their order, each kind by itself; a block by its teeth and pairs as well. */
function kindsOf(head: Head | PreparedHead, divisions: number, mounted?: string): readonly (readonly Geared[])[] {
  const kinds = new Map<string, Geared[]>();
  for (const setting of exactSettings(head, { divisions }, { methods: ["differential"], teethPerMove: 3, mounted })) {
    if (setting.method !== "differential") continue;
    const key = [kindOf(setting), setting.teethPerMove, setting.gears.drivers.length].join();
    const alike = kinds.get(key) ?? [];
    alike.push(setting);
    kinds.set(key, alike);
  }
  return [...kinds.values()];
}

/** Whether the gears, by their teeth, turn the plate over two and a half times for one turn of the work. */
function isFast(setting: Geared): boolean {
  const { n, d } = plateTurns(setting);
  return (n < 0n ? -n : n) * 2n > 5n * d;
}

/** What there was to choose from, apart from the setting chosen. */
interface Choice {
  readonly plates: boolean;
  readonly speeds: boolean;
  readonly idlers: boolean;
}

/**
 * What a craftsman asks of the first of a kind: that the plate which is on the head stays on where it
 * can (whole turns are made on any); of those, that the gears do not race it where slower ones are to
 * be had; of those, that no more idlers are hung in than must be.
 */
function isChosenWell(alike: readonly Geared[], mounted: string | null): Choice {
  const [first] = alike;
  if (first === undefined) throw new Error("there is nothing to choose from");
  const staysOn = ({ plate }: Geared) => plate === null || plate === mounted;
  if (alike.some(staysOn)) expect(staysOn(first)).toBe(true);
  const onSame = alike.filter((setting) => staysOn(setting) === staysOn(first));
  const slow = onSame.filter((setting) => !isFast(setting));
  const idlers = slow.map(({ gears }) => gears.idlers);
  if (slow.length > 0) {
    expect(isFast(first)).toBe(false);
    expect(first.gears.idlers).toBe(Math.min(...idlers));
  }
  return {
    plates: onSame.length < alike.length,
    speeds: slow.length > 0 && slow.length < onSame.length,
    idlers: new Set(idlers).size > 1,
  };
}

/** Tallies choices: without one to be made wrongly a law would say nothing. */
function tally(): { note(choice: Choice): void; least(): number } {
  const seen = { plates: 0, speeds: 0, idlers: 0 };
  return {
    note(choice) {
      for (const key of ["plates", "speeds", "idlers"] as const) seen[key] += Number(choice[key]);
    },
    least: () => Math.min(...Object.values(seen)),
  };
}

describe("the first geared setting of a kind", () => {
  it("races its plate, and hangs in idlers, only where it must: 2 to 382 on the default head, whichever plate is on", () => {
    const head = prepare(threePlates);
    const choices = tally();
    const asked = everyOf(
      3,
      Array.from({ length: 381 }, (_, index) => index + 2),
    );
    for (const divisions of asked) {
      for (const mounted of [undefined, "2"]) {
        for (const alike of kindsOf(head, divisions, mounted)) choices.note(isChosenWell(alike, mounted ?? null));
      }
    }
    expect(choices.least()).toBeGreaterThan(1.05 * asked.length);
  });

  it("does so on any head", () => {
    const choices = tally();
    fc.assert(
      fc.property(heads(), counts, (head, divisions) => {
        for (const mounted of [undefined, head.plates[0]?.name]) {
          for (const alike of kindsOf(head, divisions, mounted)) choices.note(isChosenWell(alike, mounted ?? null));
        }
      }),
      runs(300),
    );
    expect(choices.least()).toBeGreaterThan(3);
  });

  it("is for 59 the train 48 to 72, and not 100 to 32", () => {
    const [first] = take(1, threePlates, { divisions: 59 });
    expect(first).toMatchObject({
      circle: 15,
      spaces: 10,
      armsEnclose: 11,
      gears: { drivers: [48], driven: [72], direction: "with", idlers: 1 },
    });
    const trains = kindsOf(threePlates, 59).flatMap((alike) =>
      alike.map(({ gears }) => [...gears.drivers, ...gears.driven].join()),
    );
    expect(trains).toContain("100,32");
  });

  it("of moves that turn the plate with the crank is one that turns it at most one and a half times, were it of more spaces", () => {
    const move = (numerator: number, spaces: number, isWith: boolean) =>
      ({ turns: 0, spaces, circle: 20, plate: "1", numerator, denominator: 10, with: isWith }) as const;
    const better = (a: ReturnType<typeof move>, b: ReturnType<typeof move>) => Math.sign(byGearedHandling("1")(a, b));
    expect(better(move(15, 9, true), move(16, 1, true))).toBe(-1);
    // An idler less is worth a faster plate, up to two and a half turns.
    expect(better(move(25, 9, true), move(10, 1, false))).toBe(-1);
    expect(better(move(26, 1, true), move(10, 9, false))).toBe(1);
    // Of the same spaces on the same circle the one with fewer turns.
    expect(byHandling("1")(move(1, 2, true), { ...move(1, 2, true), turns: 1 })).toBe(-1);
  });

  it("of like trains is the one with fewer spaces, then on the larger circle", () => {
    // 10 of 18 with the plate at 5/9 is 71, and so is 15 of 27; no other circle of the three plates has that part.
    const alike = kindsOf(threePlates, 71)[0]?.filter(({ gears }) => gears.platePerSpindle === "5/9") ?? [];
    const holes = alike.map(({ spaces, circle }) => [spaces, circle]);
    expect(holes).toEqual([
      [10, 18],
      [15, 27],
    ]);
  });
});

describe("a compound move whose second part goes on comes before one that goes back, on the same plate", () => {
  const ungeared = ready("ratio-40-plates-15-49-ungeared");
  const goesBack = (setting: Setting) => secondOf(setting)?.direction === "against";
  const forwardFirst = (settings: readonly Setting[], mounted: string | null) => {
    const [on, off] = [settings.filter(({ plate }) => plate === mounted), settings.filter(({ plate }) => plate !== mounted)];
    for (const alike of [on, off]) {
      const back = alike.map(goesBack);
      expect(back).toEqual([...back].sort());
    }
    expect(settings).toEqual([...on, ...off]);
  };

  it.each([51, 63])("%i without gears", (divisions) => {
    const { settings } = indexDivisions(ungeared, divisions, { methods: ["compound"], all: true });
    expect(settings.map(goesBack)).toContain(true);
    expect(goesBack(settings[0] as Setting)).toBe(false);
    forwardFirst(settings, null);
  });

  it("on any head, whichever plate is on", () => {
    let both = 0;
    fc.assert(
      fc.property(heads(), fc.integer({ min: 2, max: 150 }), (spec, divisions) => {
        const head = { ...spec, rearPin: true };
        for (const mounted of [undefined, head.plates[0]?.name]) {
          const settings = [...exactSettings(head, { divisions }, { methods: ["compound"], mounted })];
          forwardFirst(settings, mounted ?? null);
          both += Number(new Set(settings.map(goesBack)).size === 2);
        }
      }),
      runs(300),
    );
    expect(both).toBeGreaterThan(3);
  });

  it("but a plate that is on stays on, though its move goes back: 69 by 23 and 33, where 46 and 66 go on", () => {
    const plate = (name: string, ...circles: number[]) => ({ name, faces: [{ name: null, circles }] });
    const head = { ...ungeared, plates: [plate("A", 23, 33), plate("B", 46, 66)] };
    const first = (mounted?: string) => take(1, head, { divisions: 69 }, { methods: ["compound"], mounted })[0];
    expect(first()).toMatchObject({ plate: "B", spaces: 11, circle: 66, second: { spaces: 19, circle: 46, direction: "with" } });
    expect(first("A")).toMatchObject({ plate: "A", second: { direction: "against" } });
  });
});
