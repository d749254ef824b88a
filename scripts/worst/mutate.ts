import { allMethods, type HeadSpec } from "../../src/index.ts";
import type { Ask, Question, Terms } from "./question.ts";
import type { Chance } from "./random.ts";

/** A head or question part that is made anew, by name. */
type Parts<Whole> = { readonly [Key in keyof Whole]-?: (chance: Chance) => Whole[Key] };

/** Numbers with many divisors, where most sums meet; as likely as any other. */
const smooth = [12, 24, 60, 120, 360, 720, 840, 2520, 5040, 7560, 9240, 10_000];
const holes = (chance: Chance) => (chance.happens(0.3) ? chance.one(smooth) : chance.spread(2, 10_000));
const listOf = <T>(count: number, make: () => T): T[] => Array.from({ length: count }, make);

/** Circles at random, one after the other, or all multiples of one. */
function circles(chance: Chance): number[] {
  const count = chance.spread(1, 60);
  const first = holes(chance);
  const step = chance.one([0, 1, 2, chance.spread(1, 150)]);
  const all = step === 0 ? listOf(count, () => holes(chance)) : listOf(count, () => 0).map((_, index) => first + step * index);
  return [...new Set(all.map((each) => Math.min(10_000, Math.max(2, each))))];
}

function plates(chance: Chance): NonNullable<HeadSpec["plates"]> {
  return listOf(chance.spread(1, 50), () => chance).map((_, index) => {
    const name = String(index + 1);
    if (chance.happens(0.5)) return { name, circles: circles(chance) };
    const faces = [
      { name: "front", circles: circles(chance) },
      { name: "back", circles: circles(chance) },
    ];
    return { name, faces };
  });
}

function gears(chance: Chance): number[] {
  const count = chance.spread(2, 200);
  const first = chance.spread(8, 800);
  return listOf(count, () => 0).map((_, index) => (chance.happens(0.5) ? Math.min(1000, first + index) : chance.spread(8, 1000)));
}

const ratio = (chance: Chance, most: number) => {
  const above = chance.spread(1, most);
  return chance.happens(0.5) ? above : `${above}/${chance.one([2, 7, 60, 720, 840, 997, 1000])}`;
};

const scale = (chance: Chance) => ({ marksPerTurn: chance.spread(2, 100_000), vernierLines: chance.spread(1, 120) });

/** Each part of a head at random within what defineHead takes. */
const headParts: Parts<
  Pick<HeadSpec, "wormRatio" | "plates" | "smallCrank" | "rearPin" | "gears" | "gearing" | "idlers" | "dial" | "ring">
> = {
  wormRatio: (chance) => ratio(chance, 100_000),
  plates,
  smallCrank: (chance) =>
    chance.happens(0.7)
      ? null
      : {
          ratio: chance.spread(2, 1000),
          circles: [...new Set(Array.from({ length: chance.spread(1, 12) }, () => chance.spread(2, 10_000)))],
        },
  rearPin: (chance) => chance.happens(0.7),
  gears,
  gearing: (chance) => ({ greatestPlateRatio: ratio(chance, 100) }),
  idlers: (chance) => (chance.happens(0.8) ? null : [24]),
  dial: (chance) => (chance.happens(0.5) ? null : scale(chance)),
  ring: (chance) => (chance.happens(0.5) ? null : scale(chance)),
};

const divisions = (chance: Chance) => (chance.happens(0.3) ? chance.spread(9_000_000, 10_000_000) : chance.spread(1, 10_000_000));

function options(chance: Chance) {
  return {
    ...(chance.happens(0.4) && { all: true }),
    ...(chance.happens(0.4) && { near: true }),
    ...(chance.happens(0.3) && { limit: chance.spread(1, 500) }),
    ...(chance.happens(0.5) && { teethPerMove: chance.spread(1, 1000) }),
    ...(chance.happens(0.5) && { methods: allMethods.filter((_, index) => index < 1 || chance.happens(0.6)) }),
  };
}

/** Every kind of question at random. A list of places is kept to a length that is not itself the work. */
const asks: { readonly [Kind in Ask["kind"]]: (chance: Chance) => Ask } = {
  count: (chance) => ({ kind: "count", divisions: divisions(chance), options: options(chance) }),
  angle: (chance) => ({
    kind: "angle",
    angle: [chance.spread(1, 10_000_000), chance.spread(1, 10_000_000)],
    options: options(chance),
  }),
  first: (chance) => {
    const { teethPerMove, methods } = { teethPerMove: undefined, methods: undefined, ...options(chance) };
    return { kind: "first", divisions: divisions(chance), options: { teethPerMove, methods } };
  },
  near: (chance) => ({ kind: "near", divisions: divisions(chance) }),
  table: (chance) => {
    const from = chance.spread(1, 9_999_000);
    return { kind: "table", range: { from, to: from + chance.spread(1, 1000), teethPerMove: chance.spread(1, 1000) } };
  },
  plan: (chance) => ({ kind: "plan", divisions: chance.spread(1, 10_000), options: {} }),
  walk: (chance) => ({ kind: "walk", divisions: divisions(chance) }),
  readings: (chance) => ({ kind: "readings", divisions: chance.spread(1, 10_000) }),
  spacing: (chance) => {
    const parts = listOf(4, () => chance.spread(1, 3000));
    return { kind: "spacing", steps: listOf(chance.spread(1, 10_000), (): Terms => [chance.spread(1, 10), chance.one(parts)]) };
  },
};

/** A head and a question at random. */
export function anyQuestion(chance: Chance, kind: Ask["kind"] = chance.one(Object.keys(asks) as Ask["kind"][])): Question {
  const parts = Object.entries(headParts).map(([part, make]) => [part, make(chance)]);
  return { head: Object.fromEntries(parts) as unknown as HeadSpec, ask: asks[kind](chance) };
}

/** The same with one or a few parts made anew; it stays a question of its kind. */
export function changed({ head, ask }: Question, chance: Chance): Question {
  const parts = Object.keys(headParts) as (keyof typeof headParts)[];
  const other = anyQuestion(chance, ask.kind);
  let now = head;
  if (chance.happens(0.7)) {
    for (let times = chance.spread(1, 3); times > 0; times -= 1) {
      const part = chance.one(parts);
      now = { ...now, [part]: other.head[part] };
    }
  }
  const mixed = Object.fromEntries(
    Object.entries(ask).map(([part, was]) => [
      part,
      chance.happens(0.5) ? was : (other.ask as unknown as Record<string, unknown>)[part],
    ]),
  );
  return { head: now, ask: chance.happens(0.5) ? ask : ({ ...mixed, kind: ask.kind } as Ask) };
}
