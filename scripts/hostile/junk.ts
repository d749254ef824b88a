import type { Chance } from "../worst/random.ts";

const odd = [
  "",
  " ",
  "\u0000",
  "\n",
  "-",
  "--",
  "-0",
  "0",
  "NaN",
  "Infinity",
  "1e309",
  "-1",
  "1/0",
  "9".repeat(400),
  "0.".padEnd(60, "0"),
  "__proto__",
  "constructor",
  "toString",
  "\u001b[2J\u001b[31m",
  "\u202e\u2066abc",
  "\u009b1A",
  "\ud800",
  "٣",
  "½",
  "🦷".repeat(30),
  "a".repeat(100_000),
  "$(reboot)",
  "'; drop",
  "%s%n",
  "../../..",
  "[".repeat(2000),
];

const numbers = [
  0,
  -0,
  1,
  -1,
  2,
  0.5,
  1e-300,
  1e21,
  1e308,
  2 ** 53,
  -(2 ** 31),
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
];

/** A text that nobody should have to type. */
export function junkText(chance: Chance): string {
  if (chance.happens(0.6)) return chance.one(odd);
  const length = chance.spread(1, 40);
  return Array.from({ length }, () =>
    String.fromCodePoint(chance.happens(0.7) ? chance.spread(32, 126) : chance.spread(1, 0xffff)),
  ).join("");
}

/** A value of any kind, nested now and then. */
function junkValue(chance: Chance, depth: number = 3): unknown {
  const kinds: readonly (() => unknown)[] = [
    () => chance.one(numbers),
    () => chance.one(numbers),
    () => junkText(chance),
    () => null,
    () => undefined,
    () => chance.happens(0.5),
    () => BigInt(chance.spread(1, 1000)),
    () => Symbol("junk"),
    () => () => chance.spread(1, 9),
    () => new Date(Number.NaN),
    () => Array.from({ length: chance.spread(1, 5) }, () => (depth > 0 ? junkValue(chance, depth - 1) : 1)),
    () => new Array(chance.spread(1, 100_000)),
    () =>
      Object.fromEntries(
        Array.from({ length: 3 }, () => [junkText(chance).slice(0, 20), depth > 0 ? junkValue(chance, depth - 1) : 1]),
      ),
    () => Object.create(null) as object,
    () => new Proxy({}, { get: () => 7, ownKeys: () => [] }),
  ];
  return chance.one(kinds)();
}

/** A copy with one part, at whatever depth, made junk or taken out. */
export function spoilt(value: unknown, chance: Chance): unknown {
  if (Array.isArray(value) && value.length > 0 && chance.happens(0.8)) {
    const at = chance.below(value.length);
    return value.flatMap((each, index) => (index !== at ? [each] : chance.happens(0.1) ? [] : [spoilt(each, chance)]));
  }
  if (typeof value === "object" && value !== null && !Array.isArray(value) && chance.happens(0.85)) {
    const entries = Object.entries(value);
    if (entries.length > 0) {
      const at = chance.below(entries.length);
      const changed = entries.flatMap(([key, each], index): [string, unknown][] => {
        if (index !== at) return [[key, each]];
        if (chance.happens(0.1)) return [];
        return [[chance.happens(0.1) ? junkText(chance).slice(0, 30) : key, spoilt(each, chance)]];
      });
      return Object.fromEntries(changed);
    }
  }
  return junkValue(chance);
}
