import type { Head } from "../head/head.ts";
import { allCrankMoves, type CrankMove } from "../methods/crank-moves.ts";
import { idlersFor } from "../methods/differential.ts";
import { layOut } from "../methods/layout.ts";
import { orderOfPreference } from "../methods/registry.ts";
import { type Effort, take } from "../number/effort.ts";
import { sharedBy } from "../search/efforts.ts";
import { firstSetting, type Search, type SearchOnce } from "../search/exact-settings.ts";
import { kindOf } from "../setting/kind.ts";
import type { Move } from "../setting/move.ts";
import type { Setting } from "../setting/setting.ts";
import { movesFor, type Target, usualTeethPerMove } from "../setting/target.ts";
import { usualGears } from "./usual-gears.ts";

/** Change gears to add to those owned, with the setting that they make possible. */
export interface GearsToAdd {
  /** One gear, or the two of a pair. */
  readonly teeth: readonly number[];
  /** Proved on the head with these gears added. */
  readonly setting: Setting;
}

/** The gears that are named: sizes that change gears come in. Common practice, no source. */
const addable = { least: 16, most: 127 } as const;
const usualSizes: ReadonlySet<number> = new Set(usualGears);
const mostNamed = 3;

/**
 * The change gears that would do a target by differential indexing if they were added to those owned.
 *
 * A crank move wants the plate ratio p/q. With a new gear x beside owned gears that is a/x or x/b
 * in one pair, a·c/(b·x) or a·x/(b·d) in two, so x follows from the owned ones by one division.
 * What comes out is added to the head, and the setting found and proved there.
 *
 * @returns A few: one gear of a usual size, else a pair of usual sizes, and only where none of these
 * does it gears of any size. Of these, those for one tooth per move first, then one pair before two,
 * then the smaller gear. None where the plate cannot be geared, nor for an angle of over one turn of
 * the work; and at most 12 teeth per move are tried. Once the effort is cut, those found so far.
 */
export function gearsThatWouldDo(search: SearchOnce, target: Target): readonly GearsToAdd[] {
  if (search.layout.head.gearing === null || !search.methods.includes("differential")) return [];
  const moves = movesFor(target, Math.min(search.teethPerMove, usualTeethPerMove)).filter(
    ({ teeth, divisions }) => teeth <= divisions,
  );
  for (const usual of [true, false]) {
    for (const proposers of [[singleForOnePair, singleForTwoPairs], [newPair]]) {
      const found = firstFew({ search, target, effort: search.efforts.gears, moves }, proposers, usual);
      if (found.length > 0) return found;
    }
  }
  return [];
}

/** What the gears are to do, and how much work it may be to find them. */
interface Wanted {
  readonly search: Search;
  readonly target: Target;
  readonly effort: Effort;
  readonly moves: readonly Move[];
}

/** Takes gears that were proposed: one, or the two of a pair. */
type Offer = (first: number, second?: number) => void;

/** Proposes gears for one crank move; what it proposes is tried on the head before it is named. */
interface Proposer {
  /** How many gears it adds. */
  readonly adds: 1 | 2;
  /** How many products of owned gears it goes through for a crank move; where there are none it has nothing to propose. */
  readonly products: (search: Search) => number;
  propose(move: CrankMove, wanted: Wanted, offer: Offer): void;
}

function firstFew(wanted: Wanted, proposers: readonly Proposer[], usual: boolean): GearsToAdd[] {
  const found: GearsToAdd[] = [];
  for (const move of wanted.moves) {
    // What fails with fewer teeth per move may do with more.
    const tried = new Set(found.map(({ teeth }) => keyOf(teeth)));
    for (const proposer of proposers) {
      for (const teeth of proposed(move, proposer, usual, wanted)) {
        if (tried.has(keyOf(teeth))) continue;
        tried.add(keyOf(teeth));
        const setting = withGears(wanted, teeth, move);
        if (setting !== null) found.push({ teeth, setting });
        if (found.length === mostNamed) return found;
      }
    }
  }
  return found;
}

/** The gears proposed for all crank moves of a move, of usual sizes or not, the smallest first. */
function proposed(move: Move, proposer: Proposer, usual: boolean, wanted: Wanted): readonly (readonly number[])[] {
  const { search, effort } = wanted;
  const { n, d } = search.layout.plateTurns;
  const all = new Map<number, readonly number[]>();
  const offer: Offer = (first, second) => {
    const areUsual = usualSizes.has(first) && (second === undefined || usualSizes.has(second));
    if (areUsual !== usual) return;
    const teeth = second === undefined ? [first] : [first, second];
    all.set(keyOf(teeth), teeth);
  };
  const products = proposer.products(search);
  if (products === 0) return [];
  const steps = 2 + (products >> 3);
  for (const crank of allCrankMoves(search.layout, move)) {
    if (!take(effort, steps)) break;
    if (crank.numerator * d <= crank.denominator * n && couldIdle(search.layout.head, crank, proposer.adds))
      proposer.propose(crank, wanted, offer);
  }
  const sum = (teeth: readonly number[]) => teeth.reduce((total, each) => total + each, 0);
  return [...all.values()].sort((a, b) => sum(a) - sum(b));
}

/** Whether, with so many gears more, any train has the idlers that turn the plate the way of a crank move. */
function couldIdle(head: Head, crank: CrankMove, added: number): boolean {
  const { gearing, idlers, gears } = head;
  if (gearing === null || idlers === null) return true;
  const spare = idlers.length + gears.length + added;
  return [1, 2].some((pairs) => spare - 2 * pairs >= idlersFor(gearing, pairs, crank.with));
}

/** Gears to add as one number: they have at most three figures. */
function keyOf([first = 0, second = 0]: readonly number[]): number {
  return 1000 * second + first;
}

const singleForOnePair: Proposer = {
  adds: 1,
  products: ({ layout: { box } }) => box.products(1).length,
  propose({ numerator, denominator }, { search }, offer) {
    for (const owned of search.layout.box.products(1)) {
      if (owned % numerator === 0) offerWhole((owned * denominator) / numerator, offer);
      if (owned % denominator === 0) offerWhole((owned * numerator) / denominator, offer);
    }
  },
};

/** What is divided has no factor with what divides it but in the product: few products are left to try. */
const singleForTwoPairs: Proposer = {
  adds: 1,
  products: ({ layout: { box } }) => box.products(2).length,
  propose({ numerator, denominator }, { search, effort }, offer) {
    const { box } = search.layout;
    const singles = box.products(1);
    const offerBeside = (product: number, over: number, under: number) => {
      if (product % under !== 0 || !take(effort, singles.length)) return;
      for (const beside of singles) offerWhole((product * over) / (under * beside), offer);
    };
    for (const product of box.products(2)) {
      offerBeside(product, denominator, numerator);
      offerBeside(product, numerator, denominator);
    }
  },
};

const newPair: Proposer = {
  adds: 2,
  // That of the new pair alone.
  products: () => 1,
  propose({ numerator, denominator }, _, offer) {
    const [smaller, larger] = [Math.min(numerator, denominator), Math.max(numerator, denominator)];
    for (let times = Math.ceil(addable.least / smaller); larger * times <= addable.most; times += 1)
      offer(smaller * times, larger * times);
  },
};

function offerWhole(teeth: number, offer: Offer): void {
  if (teeth >= addable.least && teeth <= addable.most && Number.isInteger(teeth)) offer(teeth);
}

/** The preferred setting for no more teeth per move than in a move, once gears are added; null where its train may foul. */
function withGears({ search, target, effort }: Wanted, teeth: readonly number[], move: Move): Setting | null {
  const { layout } = search;
  // The products of two gears are laid out anew.
  if (!take(effort, layout.head.gears.length ** 2)) return null;
  const gears = [...layout.head.gears, ...teeth].sort((a, b) => a - b);
  const widened: Search = {
    layout: { ...layOut({ ...layout.head, gears }), mounted: layout.mounted },
    methods: ["differential"],
    teethPerMove: move.teeth,
    order: orderOfPreference,
    allowed: search.allowed,
  };
  const setting = firstSetting(widened, target, sharedBy(effort));
  return setting === null || kindOf(setting) === "may-foul" ? null : setting;
}
