import { byDial } from "./by-dial.ts";
import { compound } from "./compound.ts";
import { type GearedMove, gearedMoves } from "./crank-moves.ts";
import { differential } from "./differential.ts";
import { direct } from "./direct.ts";
import { invariant, quoted, refuse } from "./errors.ts";
import { type GearBox, gearBox } from "./gear-box.ts";
import type { Head } from "./head.ts";
import { prove } from "./mechanism.ts";
import { type Bench, bench, checkTerms, type Move } from "./move.ts";
import { checkOwned } from "./ownership.ts";
import { byHandling, type Kind, preferenceFrom } from "./preference.ts";
import { gcd } from "./ratio.ts";
import type { Method, Setting, UnprovedSetting } from "./setting.ts";
import { simple } from "./simple.ts";
import { checkTeethPerMove, movesFor, type Target, usualTeethPerMove } from "./target.ts";

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
  readonly methods: readonly Method[];
  readonly teethPerMove: number;
  readonly order: readonly Kind[];
}

/** Checks the options and lays out the head once. */
export function searchOn(head: Head, options: SearchOptions = {}): Search {
  for (const method of options.methods ?? []) {
    if (!allMethods.includes(method))
      refuse("methods", `there is no method ${quoted(method)}; the methods are ${allMethods.join(", ")}`);
  }
  if (options.methods?.length === 0) refuse("methods", `the list names none; the methods are ${allMethods.join(", ")}`);
  return {
    bench: bench(head, options.mounted),
    box: gearBox(head.gears),
    methods: options.methods ?? allMethods,
    teethPerMove: checkTeethPerMove(options.teethPerMove ?? usualTeethPerMove),
    order: preferenceFrom(options.prefer ?? []),
  };
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
  const moves = movesFor(target, search.teethPerMove);
  if ("angle" in target) for (const move of moves) checkTerms(search.bench, move);
  const geared = gearedMovesOnce(search);
  for (const kind of search.order) {
    for (const unproved of ofKind(kind, search, moves, geared)) yield proved(unproved, search.bench.head, target);
  }
}

function* ofKind(
  kind: Kind,
  { bench, methods }: Search,
  moves: readonly Move[],
  geared: GearedMoves,
): Generator<UnprovedSetting> {
  const [first, ...blocks] = moves;
  invariant(first !== undefined, () => "a target has a move");
  if (kind === "direct") {
    if (methods.includes("direct")) yield* direct(bench, first);
  } else if (kind === "simple" || kind === "compound" || kind === "dial") {
    if (methods.includes(kind)) yield* firstThatServes(ungeared[kind], bench, moves);
  } else if (methods.includes("differential")) {
    for (const move of kind === "block" ? blocks : kind === "may-foul" ? moves : [first]) {
      if (kind === "one-pair" || kind === "block") yield* differential(bench, move, geared(move, 1), true);
      if (kind === "two-pair" || kind === "block") yield* differential(bench, move, geared(move, 2), true);
      if (kind === "may-foul") yield* differential(bench, move, geared(move, 2), false);
    }
  }
}

type GearedMoves = (move: Move, pairs: 1 | 2) => readonly GearedMove[];

/** The geared moves in order of handling, found when first asked for and kept for the other kinds. */
function gearedMovesOnce({ bench, box }: Search): GearedMoves {
  const known = { 1: new Map<Move, readonly GearedMove[]>(), 2: new Map<Move, readonly GearedMove[]>() };
  const isGeared = bench.head.gearing !== null && bench.head.gears.length > 1;
  return (move, pairs) => {
    let found = known[pairs].get(move);
    if (found === undefined) {
      found = isGeared ? gearedMoves(bench, move, box, pairs).sort(byHandling(bench.mounted)) : [];
      known[pairs].set(move, found);
    }
    return found;
  };
}

const ungeared = { simple, compound, dial: byDial } as const;

/** The denominator of R·k/N changes with k only where k cancels against that of R. */
function firstThatServes(
  solve: (bench: Bench, move: Move) => UnprovedSetting[],
  bench: Bench,
  moves: readonly Move[],
): UnprovedSetting[] {
  for (const [index, move] of moves.entries()) {
    if (index > 0 && gcd(move.teeth, bench.worm.d) === 1) continue;
    const found = solve(bench, move);
    if (found.length > 0) return found;
  }
  return [];
}

function proved(unproved: UnprovedSetting, head: Head, target: Target): Setting {
  checkOwned(unproved, head);
  const proof = prove(unproved);
  invariant(proof.closes, () => `${JSON.stringify(unproved)} does not close`);
  return {
    ...unproved,
    teethPerMove: "angle" in target ? 1 : unproved.teethPerMove,
    exact: true,
    closingArcSeconds: 0,
    worstArcSeconds: 0,
    proof,
  };
}
