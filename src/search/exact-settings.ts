import type { Head } from "../head/head.ts";
import { prove } from "../mechanism/mechanism.ts";
import { compound } from "../methods/compound.ts";
import { type GearedMove, type GearedMoves, gearedMovesOn } from "../methods/crank-moves.ts";
import { byDial } from "../methods/dial.ts";
import { differential } from "../methods/differential.ts";
import { direct } from "../methods/direct.ts";
import { type GearBox, gearBox } from "../methods/gear-box.ts";
import { type Bench, bench, checkTerms } from "../methods/layout.ts";
import { checkOwned } from "../methods/ownership.ts";
import { byHandling, type Kind, preferenceFrom } from "../methods/preference.ts";
import { simple } from "../methods/simple.ts";
import { invariant, quoted, refuse } from "../number/errors.ts";
import { gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { Method, Setting, UnprovedSetting } from "../setting/setting.ts";
import { checkTeethPerMove, firstMove, movesFor, type Target, usualTeethPerMove } from "../setting/target.ts";

/** All methods, in the order of preference. */
export const allMethods: readonly Method[] = Object.freeze(["direct", "simple", "differential", "compound", "dial"]);

/** What to look for, and in what order. */
export interface SearchOptions {
  /** The methods to try; left out, all of them. */
  readonly methods?: readonly Method[];
  /** The most teeth per move to try, 1 to 1,000; left out, 12. */
  readonly teethPerMove?: number;
  /** Kinds of setting to put before the others; the rest keep their usual order. */
  readonly prefer?: readonly Kind[];
  /** The plate that is on the head now, where it is not the head's own `mounted`. */
  readonly mounted?: string;
}

/** A search made ready for a head, to be put to many targets. */
export interface Search {
  readonly bench: Bench;
  readonly box: GearBox;
  readonly gearedMoves: GearedMoves;
  readonly methods: readonly Method[];
  readonly teethPerMove: number;
  readonly order: readonly Kind[];
}

/** Checks the options and lays out the head once. */
export function searchOn(head: Head, options: SearchOptions = {}): Search {
  for (const method of options.methods ?? []) {
    if (!allMethods.includes(method))
      refuse("unknown-word", "methods", `there is no method ${quoted(method)}; the methods are ${allMethods.join(", ")}`);
  }
  if (options.methods?.length === 0)
    refuse("missing", "methods", `the list names none; the methods are ${allMethods.join(", ")}`);
  return searchOnBench(bench(head, options.mounted), {
    methods: options.methods ?? allMethods,
    teethPerMove: checkTeethPerMove(options.teethPerMove ?? usualTeethPerMove),
    order: preferenceFrom(options.prefer ?? []),
  });
}

/** Makes a search ready on a head that is laid out. */
export function searchOnBench(
  on: Bench,
  { methods, teethPerMove, order }: Pick<Search, "methods" | "teethPerMove" | "order">,
): Search {
  const box = gearBox(on.head.gears);
  return { bench: on, box, gearedMoves: gearedMovesOn(on, box), methods, teethPerMove, order };
}

/**
 * Every exact setting of a head for a target, best first, each found and proved only when asked for.
 *
 * More than one tooth per move is tried where that can gain something: in differential indexing
 * always; in simple and compound indexing only on a fractional worm ratio, and there only until
 * one serves. Once the generator ends, every owned circle, train and number of teeth per move has
 * been tried.
 *
 * @throws {@link InputError} when the target or an option is not allowed.
 */
export function* exactSettings(head: Head, target: Target, options: SearchOptions = {}): Generator<Setting> {
  yield* settingsOf(searchOn(head, options), target);
}

/** {@link exactSettings} on a search made ready before. */
export function* settingsOf(search: Search, target: Target): Generator<Setting> {
  const trial = trialOf(search, target);
  if ("angle" in target) checkTerms(search.bench, trial.first);
  for (const kind of search.order) {
    for (const unproved of ofKind(kind, search, trial)) yield proved(unproved, search.bench.head, target);
  }
}

/** The moves that are tried for one target, worked out when first asked for: most targets need only the first. */
interface Trial {
  readonly first: Move;
  moves(): readonly Move[];
  /** The geared moves of a move with so many pairs, in order of handling. */
  geared(move: Move, pairs: 1 | 2): readonly GearedMove[];
}

function trialOf({ bench, gearedMoves, teethPerMove }: Search, target: Target): Trial {
  const first = firstMove(target);
  let moves: readonly Move[] | undefined;
  let known: Map<number, readonly GearedMove[]> | undefined;
  const isGeared = bench.head.gearing !== null && bench.head.gears.length > 1;
  return {
    first,
    moves() {
      moves ??= movesFor(target, teethPerMove);
      return moves;
    },
    geared(move, pairs) {
      if (!isGeared) return [];
      const key = 2 * move.teeth + pairs;
      known ??= new Map();
      let found = known.get(key);
      if (found === undefined) {
        const unsorted = gearedMoves(move, pairs);
        found = unsorted.length > 1 ? unsorted.sort(byHandling(bench.mounted)) : unsorted;
        known.set(key, found);
      }
      return found;
    },
  };
}

function* ofKind(kind: Kind, { bench, methods }: Search, { first, moves, geared }: Trial): Generator<UnprovedSetting> {
  if (kind === "direct") {
    if (methods.includes("direct")) yield* direct(bench, first);
  } else if (kind === "simple" || kind === "compound" || kind === "dial") {
    // The denominator of R·k/N changes with k only where k cancels against that of R.
    const tried = bench.worm.d === 1 ? [first] : firstOfEach(moves(), ({ teeth }) => gcd(teeth, bench.worm.d));
    if (methods.includes(kind)) yield* firstThatServes(ungeared[kind], bench, tried);
  } else if (methods.includes("differential")) {
    if (kind === "one-pair") yield* differential(bench, first, geared(first, 1), true);
    else if (kind === "two-pair") yield* differential(bench, first, geared(first, 2), true);
    else if (kind === "may-foul") for (const move of moves()) yield* differential(bench, move, geared(move, 2), false);
    else {
      for (const move of moves().slice(1)) {
        yield* differential(bench, move, geared(move, 1), true);
        yield* differential(bench, move, geared(move, 2), true);
      }
    }
  }
}

const ungeared = { simple, compound, dial: byDial } as const;

/** The first move of each that is alike by a number. */
function firstOfEach(moves: readonly Move[], alike: (move: Move) => number): readonly Move[] {
  const seen = new Set<number>();
  return moves.filter((move) => {
    const isNew = !seen.has(alike(move));
    seen.add(alike(move));
    return isNew;
  });
}

function firstThatServes(
  solve: (bench: Bench, move: Move) => UnprovedSetting[],
  bench: Bench,
  moves: readonly Move[],
): UnprovedSetting[] {
  for (const move of moves) {
    const found = solve(bench, move);
    if (found.length > 0) return found;
  }
  return [];
}

function proved(unproved: UnprovedSetting, head: Head, target: Target): Setting {
  checkOwned(unproved, head);
  const proof = prove(unproved);
  invariant(proof.closes, () => `${JSON.stringify(unproved)} does not close`);
  const teethPerMove = "angle" in target ? 1 : unproved.teethPerMove;
  return Object.assign(unproved, { teethPerMove, exact: true, closingArcSeconds: 0, worstArcSeconds: 0, proof });
}
