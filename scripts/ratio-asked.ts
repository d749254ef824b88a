import { fromExact, type IdlerTrial, idlersFromTrial, type RatioFound, type Revolutions, ratioFromTrial } from "../src/index.ts";
import { angleFromZero, fault, wholeNumber } from "./command-line.ts";
import type { MoreOfJob } from "./more.ts";
import { ratioHelp } from "./ratio-help.ts";
import { ratioOptions } from "./ratio-options.ts";
import { type Given, readOptions, withOptionNames } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { line } from "./words.ts";

type RatioGiven = Given<typeof ratioOptions>;

const ofTurns = ["turns", "turned", "within"] as const;
const ofTrain = ["pairs", "idlers", "plate"] as const;

/** `ratio …`: the worm ratio of a head, or its idlers, from a trial. */
export function ratioAsked(words: readonly string[], columns?: number): MoreOfJob {
  const { values, positionals } = readOptions(words, ratioOptions, "ratio --help");
  const itself = toldOfItself(values, ratioHelp, columns);
  if (itself !== null) return itself;
  const [extra] = positionals;
  if (extra !== undefined)
    throw fault("no-effect", "", `"${extra.slice(0, 40)}" stands by itself; say what was done with --turns and --turned`);
  const json = values.json === true;
  const given = (names: readonly (keyof RatioGiven)[]) => names.filter((name) => values[name] !== undefined);
  const [turns, train] = [given(ofTurns), given(ofTrain)];
  if (turns.length > 0 && train.length > 0)
    throw fault(
      "conflict",
      `--${train[0]}`,
      "is of another trial than --turns; ask for the worm ratio and for the idlers one by one",
    );
  return { ...(train.length > 0 ? idlersAsked(values) : ratioOf(values)), json };
}

function ratioOf(given: RatioGiven): Omit<MoreOfJob, "json"> {
  const trial = {
    crankTurns: needed(given, "turns", "the crank's turns, such as 10"),
    degrees: inDegrees(angleFromZero(needed(given, "turned", "how far the spindle came round, such as 90°"), "--turned")),
    within: inDegrees(angleFromZero(given.within ?? "1°", "--within")),
  };
  const names = { crankTurns: "--turns", degrees: "--turned", within: "--within" };
  const found = withOptionNames(names, () => ratioFromTrial(trial));
  return {
    data: { ratio: found },
    lines: ratioLines(found),
    code: found.candidates.length === 1 && found.unlisted === 0 ? 0 : 1,
  };
}

function inDegrees(angle: Revolutions): string {
  const { n, d } = fromExact(angle).mul(360);
  return `${n}/${d}`;
}

function ratioLines({ candidates, unlisted, turnsToTellApart, least, greatest }: RatioFound): readonly string[] {
  const named = (common: boolean) => candidates.filter((each) => each.common === common).map(({ wormRatio }) => `${wormRatio}:1`);
  const [usual, others] = [named(true), named(false)];
  const between = `${shown(least)} and ${shown(greatest)}`;
  const fits = [
    ...(usual.length > 0 ? [`${usual.join(" or ")}, as heads are made`] : []),
    ...(others.length > 0 ? [`${others.join(" or ")}${usual.length > 0 ? " fits as well" : ", none of them common"}`] : []),
    ...(unlisted > 0 ? [unlistedWords(candidates.length, unlisted, between)] : []),
  ];
  const none = `none that is whole lies between ${between}; count the turns again, from where the slack is taken up`;
  const [only, ...more] = candidates;
  return [
    ...(fits.length === 0 ? [none] : fits).map((text, index) => line(index === 0 ? "Worm ratio" : "", text)),
    ...(turnsToTellApart === null
      ? []
      : [line("To tell apart", `turn the crank on to ${turnsToTellApart} turns in all, read it as closely, and ask again`)]),
    ...(only !== undefined && more.length === 0 && unlisted === 0
      ? [line("In a head file", `"wormRatio": ${only.wormRatio}`)]
      : []),
  ];
}

function unlistedWords(listed: number, unlisted: number, between: string): string {
  return listed > 0
    ? `${unlisted} other whole ratios between ${between} fit as well`
    : `${unlisted} whole ratios between ${between} fit, none of them common; turn the crank further and ask again`;
}

/** For a person: to two decimals. */
function shown(ratio: RatioFound["least"]): string {
  return String(Math.round(fromExact(ratio).valueOf() * 100) / 100);
}

function idlersAsked(given: RatioGiven): Omit<MoreOfJob, "json"> {
  const trial = {
    pairs: wholeNumber(needed(given, "pairs", "the pairs of the train, 1 or 2"), "--pairs"),
    idlers: wholeNumber(needed(given, "idlers", "the idlers in it, such as 0"), "--idlers"),
    plateTurned: needed(given, "plate", "the way that the plate turned, with or against the crank"),
  } as IdlerTrial;
  const names = { pairs: "--pairs", idlers: "--idlers", plateTurned: "--plate" };
  const idlers = withOptionNames(names, () => idlersFromTrial(trial));
  const said = (count: number) => (count === 0 ? "none" : "one");
  return {
    data: { idlersWithCrank: idlers },
    lines: [
      line(
        "With the crank",
        `the plate turns by ${said(idlers.onePair)} in a train of one pair, by ${said(idlers.twoPairs)} in one of two`,
      ),
      line("Against it", "with one idler more"),
      line("In a head file", `"gearing": ${JSON.stringify({ idlersWithCrank: idlers })}`),
    ],
  };
}

function needed(given: RatioGiven, name: Exclude<keyof RatioGiven, "json" | "help" | "version">, what: string): string {
  const value = given[name];
  if (value === undefined) throw fault("missing", `--${name}`, `is needed: ${what}`);
  return value;
}
