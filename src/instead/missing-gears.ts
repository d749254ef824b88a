import { allCrankMoves, type CrankMove } from "../methods/crank-moves.ts";
import { layOut } from "../methods/layout.ts";
import { orderOfPreference } from "../methods/registry.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import { kindOf } from "../setting/kind.ts";
import type { Move } from "../setting/move.ts";
import type { Setting } from "../setting/setting.ts";
import { movesFor, type Target, usualTeethPerMove } from "../setting/target.ts";

/** Change gears to add to those owned, with the setting that they make possible. */
export interface GearsToAdd {
  /** One gear, or the two of a pair. */
  readonly teeth: readonly number[];
  /** Proved on the head with these gears added. */
  readonly setting: Setting;
}

/** The gears that are named: sizes that change gears come in. Common practice, no source. */
const addable = { least: 16, most: 127 } as const;
/**
 * Sizes found in most sets of change gears: those of dividing heads, by fours and eights with 86 and
 * 100, and those of lathes, by fives with 127. Common practice, no source.
 */
const usualSizes: ReadonlySet<number> = new Set([
  ...[24, 28, 32, 36, 40, 44, 48, 56, 64, 72, 86, 100],
  ...[20, 25, 30, 35, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 105, 110, 115, 120, 127],
]);
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
 * the work; and at most 12 teeth per move are tried.
 */
export function gearsThatWouldDo(search: Search, target: Target): readonly GearsToAdd[] {
  if (search.layout.head.gearing === null || !search.methods.includes("differential")) return [];
  const moves = movesFor(target, Math.min(search.teethPerMove, usualTeethPerMove)).filter(
    ({ teeth, divisions }) => teeth <= divisions,
  );
  for (const usual of [true, false]) {
    for (const proposers of [[singleForOnePair, singleForTwoPairs], [newPair]]) {
      const found = firstFew(moves, proposers, usual, search, target);
      if (found.length > 0) return found;
    }
  }
  return [];
}

/** Takes gears that were proposed: one, or the two of a pair. */
type Offer = (first: number, second?: number) => void;

/** Proposes gears for one crank move; what it proposes is tried on the head before it is named. */
type Proposer = (wanted: CrankMove, search: Search, offer: Offer) => void;

function firstFew(
  moves: readonly Move[],
  proposers: readonly Proposer[],
  usual: boolean,
  search: Search,
  target: Target,
): GearsToAdd[] {
  const found: GearsToAdd[] = [];
  for (const move of moves) {
    // What fails with fewer teeth per move may do with more.
    const tried = new Set(found.map(({ teeth }) => keyOf(teeth)));
    for (const propose of proposers) {
      for (const teeth of proposed(move, propose, usual, search)) {
        if (tried.has(keyOf(teeth))) continue;
        tried.add(keyOf(teeth));
        const setting = withGears(search, teeth, move, target);
        if (setting !== null) found.push({ teeth, setting });
        if (found.length === mostNamed) return found;
      }
    }
  }
  return found;
}

/** The gears proposed for all crank moves of a move, of usual sizes or not, the smallest first. */
function proposed(move: Move, propose: Proposer, usual: boolean, search: Search): readonly (readonly number[])[] {
  const { n, d } = search.layout.plateTurns;
  const all = new Map<number, readonly number[]>();
  const offer: Offer = (first, second) => {
    const areUsual = usualSizes.has(first) && (second === undefined || usualSizes.has(second));
    if (areUsual !== usual) return;
    const teeth = second === undefined ? [first] : [first, second];
    all.set(keyOf(teeth), teeth);
  };
  for (const wanted of allCrankMoves(search.layout, move)) {
    if (wanted.numerator * d <= wanted.denominator * n) propose(wanted, search, offer);
  }
  const sum = (teeth: readonly number[]) => teeth.reduce((total, each) => total + each, 0);
  return [...all.values()].sort((a, b) => sum(a) - sum(b));
}

/** Gears to add as one number: they have at most three figures. */
function keyOf([first = 0, second = 0]: readonly number[]): number {
  return 1000 * second + first;
}

const singleForOnePair: Proposer = ({ numerator, denominator }, { layout: { box } }, offer) => {
  for (const owned of box.products(1)) {
    if (owned % numerator === 0) offerWhole((owned * denominator) / numerator, offer);
    if (owned % denominator === 0) offerWhole((owned * numerator) / denominator, offer);
  }
};

/** What is divided has no factor with what divides it but in the product: few products are left to try. */
const singleForTwoPairs: Proposer = ({ numerator, denominator }, { layout: { box } }, offer) => {
  const singles = box.products(1);
  for (const product of box.products(2)) {
    if (product % numerator === 0)
      for (const beside of singles) offerWhole((product * denominator) / (numerator * beside), offer);
    if (product % denominator === 0)
      for (const beside of singles) offerWhole((product * numerator) / (denominator * beside), offer);
  }
};

const newPair: Proposer = ({ numerator, denominator }, _, offer) => {
  const [smaller, larger] = [Math.min(numerator, denominator), Math.max(numerator, denominator)];
  for (let times = Math.ceil(addable.least / smaller); larger * times <= addable.most; times += 1)
    offer(smaller * times, larger * times);
};

function offerWhole(teeth: number, offer: Offer): void {
  if (teeth >= addable.least && teeth <= addable.most && Number.isInteger(teeth)) offer(teeth);
}

/** The preferred setting for no more teeth per move than in a move, once gears are added; null where its train may foul. */
function withGears({ layout }: Search, teeth: readonly number[], move: Move, target: Target): Setting | null {
  const gears = [...layout.head.gears, ...teeth].sort((a, b) => a - b);
  const widened: Search = {
    layout: { ...layOut({ ...layout.head, gears }), mounted: layout.mounted },
    methods: ["differential"],
    teethPerMove: "angle" in target ? 1 : move.teeth,
    order: orderOfPreference,
  };
  const setting = firstSetting(widened, target);
  return setting === null || kindOf(setting) === "may-foul" ? null : setting;
}
