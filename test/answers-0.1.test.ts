import { describe, expect, it } from "vitest";
import {
  type Answer,
  exactSettings,
  fromExact,
  type Head,
  indexDivisions,
  kindOf,
  type NearSetting,
  type PreparedHead,
  prepare,
  type Reason,
  type Route,
  readyHeads,
  type Setting,
  type WhyNot,
} from "../src/index.ts";
import { type AnswerThen, answersThen, differences, type SentenceThen } from "./support/answers-then.ts";
import { turnsText } from "./support/bench.ts";
import { canBeSetUp, closesOnBench, workPerMove } from "./support/mechanism.ts";
import { offByEye } from "./support/near-errors.ts";
import { settingKey } from "./support/setting-key.ts";

/*
 * Whoever read the JSON of 0.1 can read that of today: every key of then is there with the value of
 * then. What differs is listed here, each with its reason, and nothing else may.
 *
 *  - order: the settings of a kind come in the order in which a craftsman would choose: a slow plate,
 *    few idlers, and a second part that goes on, before fewer spaces.
 *  - reasons: `why` was a sentence; it is a code with its numbers, which say the same.
 *  - equally near: of near moves with the same error one that goes on is named before one that goes back.
 *  - rings: one with a mark for every place was left out, and one stood by what its marks are off by; it
 *    stands by how it is read, no nearer than half of what it shows.
 *  - gears to add: sizes that are usual are named before those that nobody has.
 *
 * Why a train may foul was a sentence too; none of these answers names such a train, then or now.
 */

const heads: ReadonlyMap<string, PreparedHead> = new Map(readyHeads.map((head) => [head.id, prepare(head)]));
const headFor = ({ head: { id } }: AnswerThen): PreparedHead => {
  const head = heads.get(id);
  if (head === undefined) throw new Error(`there is no ready head ${id} any more`);
  return head;
};
const pairs = answersThen().map((then) => ({
  then,
  on: headFor(then),
  now: indexDivisions(headFor(then), then.target.divisions, { near: true }),
}));
const named = ({ then }: (typeof pairs)[number]) => `${then.head.id}, ${then.target.divisions}`;

/** Every difference of one part of the answers, with the head and the count. */
const differing = (part: (pair: (typeof pairs)[number]) => readonly string[]) =>
  pairs.flatMap((pair) => part(pair).map((each) => `${named(pair)}: ${each}`));

/** All settings of today for a count that are of the kind of a setting of then, which is preferred. */
function allLike(preferred: Setting | undefined, on: PreparedHead, divisions: number): readonly Setting[] {
  const all: Setting[] = [];
  for (const setting of exactSettings(on, { divisions })) {
    if (preferred === undefined || kindOf(setting) !== kindOf(preferred)) break;
    all.push(setting);
  }
  return all;
}

describe("the answers of 0.1, today", () => {
  it("are those of nine heads, 2 to 400", () => {
    expect(pairs).toHaveLength(9 * 399);
    expect(new Set(pairs.map(named)).size).toBe(pairs.length);
  });

  it("hold every key of then; all but settings, reasons, near settings and routes as it was", () => {
    const kept = (answer: AnswerThen | Answer) => ({
      ...answer,
      settings: [],
      passedOver: [],
      impossible: {},
      near: [],
      routes: [],
    });
    const gone = ({ then, now }: (typeof pairs)[number]) => Object.keys(then).filter((key) => !(key in now));
    expect(differing(({ then, now }) => differences(kept(then), kept(now)))).toEqual([]);
    expect(differing(gone)).toEqual([]);
  });
});

describe("settings", () => {
  const byKey = (settings: readonly Setting[]) => new Map(settings.map((setting) => [settingKey(setting), setting]));
  const isReordered = ({ settings: [first] }: AnswerThen) => first?.method === "differential" || first?.method === "compound";
  it("without gears, and by one circle, are as they were and in that order", () => {
    expect(differing(({ then, now }) => (isReordered(then) ? [] : differences(then.settings, now.settings)))).toEqual([]);
  });

  it("by gears or two circles are the same in another order, where the list was not cut", () => {
    let reordered = 0;
    const wrong = differing(({ then, now }) => {
      if (!then.complete || !isReordered(then)) return [];
      if (differences(then.settings, now.settings).length > 0) reordered += 1;
      const [before, after] = [byKey(then.settings), byKey(now.settings)];
      const added = [...after.keys()].filter((key) => !before.has(key));
      return [...added, ...[...before].flatMap(([key, setting]) => differences(setting, after.get(key), key))];
    });
    expect(wrong).toEqual([]);
    expect(reordered).toBeGreaterThan(0);
  });

  it("of a list that was cut are all among those of today, as many of them as before", () => {
    let cut = 0;
    const wrong = differing(({ then, on, now }) => {
      if (then.complete) return [];
      cut += 1;
      const all = byKey(allLike(then.settings[0], on, then.target.divisions));
      const listed = [...then.settings, ...now.settings];
      return [
        ...differences(then.settings.length, now.settings.length, ".settings.length"),
        ...listed.flatMap((setting) => differences(setting, all.get(settingKey(setting)), settingKey(setting))),
      ];
    });
    expect(wrong).toEqual([]);
    expect(cut).toBe(31);
  });
});

describe("reasons", () => {
  const parts: Readonly<Record<Extract<WhyNot, { code: "without" }>["part"], string>> = {
    crank: "0.1 knew no head without a crank",
    "small-crank": "0.1 knew no head with two",
    "direct-plate": "the head has no direct plate",
    "index-plate": "the head has no index plate",
    "rear-pin": "the head has no rear pin to hold the plate by a second circle",
    dial: "the head has no dial",
    gearing: "the plate of this head cannot be geared to its spindle",
    "change-gears": "no change gears are listed for this head",
  };
  /** The sentence that 0.1 had for what a code says. */
  const sentence = (why: WhyNot): string => {
    if (why.code === "without") return parts[why.part];
    if (why.code === "no-train" || why.code === "not-all-tried")
      throw new Error("no ready head of 2 to 400 was told this by 0.1");
    const multiple = why.multiplesOf.join(" or ");
    switch (why.of) {
      case "direct-plate":
        return `needs a direct plate whose holes are a multiple of ${multiple}; yours: ${why.owned.join(", ")}`;
      case "circle":
        return `needs a circle whose holes are a multiple of ${multiple}; no circle of yours is`;
      case "two-cranks":
        throw new Error("0.1 knew no head with two cranks");
      case "two-circles":
        return `needs two circles on one face whose least common multiple is a multiple of ${multiple}; no two of yours are`;
      case "dial":
        return `needs a dial whose marks and vernier lines in a turn are a multiple of ${multiple}; yours is not`;
    }
  };
  const said = (reasons: readonly Reason[]): readonly SentenceThen[] =>
    reasons.map(({ method, ...why }) => ({ method, why: sentence(why) }));

  it("name the same methods in the same order, and say in a code what the sentence said", () => {
    expect(differing(({ then, now }) => differences(then.passedOver, said(now.passedOver), ".passedOver"))).toEqual([]);
    const impossible = ({ impossible: today }: Answer) => today && { ...today, reasons: said(today.reasons) };
    expect(differing(({ then, now }) => differences(then.impossible, impossible(now), ".impossible"))).toEqual([]);
  });
});

/** What a near setting says besides how its move is set. */
function aside({ turns: _, spaces, circle, plate, face, armsEnclose, ...rest }: NearSetting): unknown {
  return "second" in rest ? { ...rest, second: {} } : rest;
}

/** The same, or a compound move that turns the work by the same. */
function equallyNear(then: NearSetting, now: NearSetting | undefined, { head }: PreparedHead): readonly string[] {
  if (then.method !== "compound" || now?.method !== "compound") return differences(then, now);
  const turned = [then, now].map((near) => workPerMove(near, head)).map((work) => work && turnsText(work));
  return [...differences(aside(then), aside(now)), ...differences([then.spindleTurned, then.spindleTurned], turned)];
}

describe("near settings", () => {
  it("are of the same kinds with the same errors to the last bit, in the same order but for rings; a compound move may be another", () => {
    let others = 0;
    const wrong = differing(({ then, on, now }) => {
      const nearNow = now.near.filter(({ kind, worstArcSeconds }) => kind !== "ring" || worstArcSeconds > 0);
      const nearThen = then.near.toSorted((a, b) => offByEye(a) - offByEye(b));
      if (differences(nearThen, nearNow).length > 0) others += 1;
      return [
        ...differences(nearThen.length, nearNow.length, ".near.length"),
        ...nearThen.flatMap((near, index) => equallyNear(near, nearNow[index], on)),
      ];
    });
    expect(wrong).toEqual([]);
    expect(others).toBeGreaterThan(0);
  });
});

describe("routes", () => {
  it("are of the same kinds in the same order, to the same counts and circles", () => {
    const wrong = differing(({ then, on, now }) => [
      ...differences(then.routes.length, now.routes.length, ".routes.length"),
      ...then.routes.flatMap((route, index) => changed(route, now.routes[index], then, on)),
    ]);
    expect(wrong).toEqual([]);
  });

  function changed(then: Route, now: Route | undefined, { target }: AnswerThen, on: PreparedHead): readonly string[] {
    if (now?.kind !== then.kind) return differences(then.kind, now?.kind, ".kind");
    if (then.kind === "near" && now.kind === "near") return equallyNear(then.setting, now.setting, on);
    if (then.kind === "gears" && now.kind === "gears") return makes(target.divisions, now.setting, withGears(on.head, now.add));
    if (then.kind === "count" && now.kind === "count") return sameCount(then, now, on);
    return differences(then, now);
  }

  /** To the same count, by a setting that is the first of the same kind, in the order of today. */
  function sameCount(then: Route & { kind: "count" }, now: Route & { kind: "count" }, on: PreparedHead): readonly string[] {
    if (differences(then, now).length === 0) return [];
    const { divisions } = then;
    const all = allLike(then.setting, on, divisions);
    const isThere = all.some((setting) => differences(then.setting, setting).length === 0);
    return [
      ...differences(divisions, now.divisions, ".divisions"),
      ...differences([true, now.setting], [isThere, all[0]], ".setting"),
    ];
  }

  function withGears(head: Head, add: readonly number[]): Head {
    return { ...head, gears: [...head.gears, ...add] };
  }

  function makes(divisions: number, setting: Setting, head: Head): readonly string[] {
    const count = Number(fromExact(setting.spindlePerMove).d);
    return differences([divisions, true, true], [count, canBeSetUp(setting, head), closesOnBench(setting, head)], ".setting");
  }
});
