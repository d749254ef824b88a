import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  defineHead,
  exactSettings,
  type Head,
  type Kind,
  kindOf,
  orderOfPreference,
  type SearchOptions,
  type Setting,
} from "../../src/index.ts";
import { preferenceFrom } from "../../src/search/preference.ts";
import { counts, heads, small, teethPerMove } from "../support/arbitraries.ts";
import { plateTurns } from "../support/bench.ts";
import { gearsOf, secondOf } from "../support/parts.ts";
import { threePlates } from "../support/ready.ts";
import { refusalLines } from "../support/refusal.ts";
import { settingKey } from "../support/setting-key.ts";
import { runs } from "../support/sweep.ts";
import { take } from "../support/take.ts";
import { wrong } from "../support/wrong.ts";

/** Numbers that must not fall from one setting to the next, the first that differ deciding. */
function rank(setting: Setting, order: readonly Kind[], mounted: string | null): readonly number[] {
  const { teethPerMove, plate, spaces, circle, turns, method } = setting;
  const [gears, second] = [gearsOf(setting), secondOf(setting)];
  const place = [order.indexOf(kindOf(setting)), teethPerMove, gears?.drivers.length ?? 0];
  if (method === "direct") return [...place, spaces];
  const onMounted = plate === null || plate === mounted ? 0 : 1;
  const { n, d } = plateTurns(setting);
  const speed = Math.abs(Number(n) / Number(d));
  return [
    ...place,
    onMounted,
    // Our own choice: a plate that turns over 2.5 times only where it must, over 1.5 only to save an idler.
    Number(speed > 2.5),
    gears?.idlers ?? 0,
    Number(speed > 1.5),
    Number(second?.direction === "against"),
    spaces + (second?.spaces ?? 0),
    -(circle ?? 0),
    turns,
  ];
}

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

function rises(settings: readonly Setting[], order: readonly Kind[], mounted: string | null): void {
  const ranks = settings.map((setting) => rank(setting, order, mounted));
  for (const [index, each] of ranks.slice(1).entries()) expect(compare(ranks[index] ?? [], each)).toBeLessThanOrEqual(0);
}

describe("the order of settings", () => {
  it("is that of preference, then fewer teeth per move, and then how they handle", () => {
    fc.assert(
      fc.property(heads(), counts, teethPerMove, fc.boolean(), (head, divisions, teeth, isMounted) => {
        const mounted = isMounted ? head.plates.at(-1)?.name : undefined;
        const settings = take(300, head, { divisions }, { teethPerMove: teeth, mounted });
        rises(settings, orderOfPreference, mounted ?? null);
      }),
      runs(200),
    );
  });

  it("puts kinds that are asked for first", () => {
    const prefer = ["compound", "block"] as const;
    const settings = take(300, threePlates, { divisions: 69 }, { prefer, teethPerMove: 2 });
    rises(settings, ["compound", "block", ...orderOfPreference.filter((kind) => kind !== "compound" && kind !== "block")], null);
    expect(settings[0]?.method).toBe("compound");
    expect(take(1, threePlates, { divisions: 69 })[0]?.method).toBe("differential");
  });

  it("takes the head's own mounted plate, or the one named", () => {
    const first = (head: Head, options: SearchOptions) => take(1, head, { divisions: 15 }, options)[0];
    const mounted = defineHead({ ...threePlates, mounted: "2" });
    expect(first(threePlates, {})).toMatchObject({ plate: "1", circle: 15, spaces: 10 });
    expect(first(mounted, {})).toMatchObject({ plate: "2", circle: 21, spaces: 14 });
    expect(first(mounted, { mounted: "3" })).toMatchObject({ plate: "3", circle: 39, spaces: 26 });
  });

  it("is the same at every call, and ends", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 1, max: 120 }), (head, divisions) => {
        const all = [...exactSettings(head, { divisions })];
        expect([...exactSettings(head, { divisions })]).toEqual(all);
        expect(new Set(all.map(settingKey)).size).toBe(all.length);
      }),
    );
  });
});

describe("preferenceFrom", () => {
  it("puts the kinds named first, each once, and keeps the others in their usual order", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...orderOfPreference)), (asked) => {
        const order = preferenceFrom(asked);
        const first = [...new Set(asked)];
        expect(order.slice(0, first.length)).toEqual(first);
        expect(order.slice(first.length)).toEqual(orderOfPreference.filter((kind) => !first.includes(kind)));
      }),
    );
  });

  it("refuses each kind that is none", () => {
    const kinds = `the kinds are ${orderOfPreference.join(", ")}`;
    expect(refusalLines(() => preferenceFrom(wrong(["compound", "geared", "plain"])))).toEqual([
      `prefer: there is no kind "geared"; ${kinds}`,
      `prefer: there is no kind "plain"; ${kinds}`,
    ]);
  });
});
