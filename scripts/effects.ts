import { isByEye } from "../booklet/screen/by-eye.ts";
import { type Fault, InputError } from "../src/index.ts";
import type { Asked } from "./command-line.ts";
import type { OptionName, Options } from "./look-up-options.ts";

/** The kinds of question that can be put. */
export type Question = "count" | "angle" | "by-eye" | "gives" | "spacing" | "table" | "heads";

const questionNames: Readonly<Record<Question, string>> = {
  count: "a count",
  angle: "an angle",
  "by-eye": "an angle read by eye",
  gives: '"gives"',
  spacing: '"spacing"',
  table: '"table"',
  heads: '"heads"',
};

/** What kind of question it is; whether it can be read is seen when it is answered. */
export function kindOfQuestion(question: string): Question {
  if (question === "gives" || question === "spacing" || question === "table" || question === "heads") return question;
  if (isByEye(question)) return "by-eye";
  return /^\s*\d+\s*$/.test(question) ? "count" : "angle";
}

/** Where an option has an effect. */
interface Effect {
  /** The questions that it changes the answer of. */
  readonly on: readonly Question[];
  /** The options of which one must stand beside it. */
  readonly beside?: readonly OptionName[];
  /** The options that leave it without an effect, or say the opposite. */
  readonly notBeside?: readonly OptionName[];
  /** Why it changes nothing of `--json`, unless one of these stands beside it. */
  readonly notInJson?: { readonly because: string; readonly unless?: readonly OptionName[] };
  /** That it changes nothing of the table of a look-up, as `--csv` and `--markdown` give it, unless one of these stands beside it. */
  readonly notInTable?: { readonly unless: readonly OptionName[] };
}

const lookUps: readonly Question[] = ["count", "angle"];
const all: readonly Question[] = ["count", "angle", "by-eye", "gives", "spacing", "table", "heads"];
const tables: readonly Question[] = ["count", "angle", "spacing", "table"];
/** An option that asks for positions. */
type PlacesOption = "teeth" | "every" | "after";
const places: readonly PlacesOption[] = ["teeth", "every", "after"];
/** What gives a look-up a table; other questions have one in any case. */
const tabled: readonly OptionName[] = [...places, "coordinates"];

const ofBudget: Effect = { on: lookUps, beside: ["budget"], notInTable: { unless: [] } };

const effects: Readonly<Record<OptionName, Effect>> = {
  head: { on: ["count", "angle", "gives", "spacing", "table"], notInTable: { unless: places } },
  mounted: { on: tables, notInTable: { unless: places } },
  method: { on: ["count", "angle", "table"], notInTable: { unless: places } },
  "teeth-per-move": { on: ["count", "gives", "table"], notInTable: { unless: places } },
  all: { on: lookUps, notInTable: { unless: [] } },
  limit: { on: lookUps, notInTable: { unless: [] } },
  near: { on: lookUps, notInTable: { unless: [] } },
  radius: {
    on: lookUps,
    notInJson: { because: "whose errors are in arc-seconds", unless: ["coordinates", "budget"] },
    notInTable: { unless: ["coordinates"] },
  },
  budget: { on: lookUps, beside: ["radius"], notInTable: { unless: [] } },
  "run-out": ofBudget,
  "hole-error": ofBudget,
  "circle-diameter": { ...ofBudget, beside: ["hole-error"] },
  "worm-error": ofBudget,
  "read-within": ofBudget,
  proof: { on: lookUps, notInJson: { because: "which has the proof of every setting" }, notInTable: { unless: [] } },
  teeth: { on: lookUps, notBeside: ["after", "ring"] },
  every: { on: ["count"], notBeside: ["teeth", "after", "ring"] },
  after: { on: lookUps, notBeside: ["ring"] },
  by: { on: lookUps, beside: places },
  ring: { on: lookUps, notInTable: { unless: [] } },
  "start-hole": { on: lookUps, beside: [...places, "ring"] },
  "start-angle": { on: lookUps, beside: [...places, "ring", "coordinates"] },
  minus: { on: lookUps, beside: [...places, "ring"] },
  nearer: { on: lookUps, beside: ["teeth", "every"] },
  coordinates: { on: ["count"] },
  clockwise: { on: ["count"], beside: ["coordinates"] },
  tangents: { on: ["count"], beside: ["coordinates"] },
  gears: { on: ["gives"] },
  plate: { on: ["gives"], beside: ["gears"] },
  propose: { on: ["spacing"] },
  uneven: { on: ["spacing"], beside: ["propose"] },
  unpaired: { on: ["spacing"], beside: ["propose"] },
  json: { on: all, notBeside: ["csv", "markdown"] },
  csv: { on: tables, beside: tabled, notBeside: ["markdown"] },
  markdown: { on: tables, beside: tabled },
  help: { on: all },
  version: { on: all },
};

/** The option by which positions are asked for; undefined where none are. */
export function placesOption(options: Options): PlacesOption | undefined {
  return places.find((name) => options[name] !== undefined);
}

/**
 * Refuses every option that would change nothing: one of another question, one without the option
 * that it goes with, one beside its opposite.
 *
 * @throws {@link InputError} with a fault for each.
 */
export function checkEffects(question: Question, { options }: Pick<Asked, "options">): void {
  const given = Object.keys(options) as OptionName[];
  const faults = given.flatMap((name) => faultOf(name, question, options) ?? []);
  if (faults.length > 0) throw new InputError(faults);
}

function faultOf(name: OptionName, question: Question, options: Options): Fault | null {
  const { on, beside, notBeside = [], notInJson, notInTable } = effects[name];
  const isGiven = (each: OptionName) => options[each] !== undefined;
  const place = `--${name}`;
  const noEffect = (problem: string): Fault => ({ code: "no-effect", place, problem });
  if (!on.includes(question)) {
    const goesWith = orOf(on.map((each) => questionNames[each]));
    return noEffect(`goes with ${goesWith} and has no effect on ${questionNames[question]}; leave it out`);
  }
  const hasTable = beside === tabled && !lookUps.includes(question);
  if (beside !== undefined && !hasTable && !beside.some(isGiven)) {
    const partners = orOf(beside.map((each) => `--${each}`));
    return noEffect(`has no effect without ${partners}; add it, or leave ${place} out`);
  }
  const opposite = notBeside.find(isGiven);
  if (opposite !== undefined) return { code: "conflict", place, problem: `is given beside --${opposite}; give one of the two` };
  const table = (["csv", "markdown"] as const).find(isGiven);
  if (notInTable !== undefined && table !== undefined && lookUps.includes(question) && !notInTable.unless.some(isGiven))
    return noEffect(`has no effect on the table of --${table}; leave it out`);
  const { because, unless } = notInJson ?? {};
  if (because === undefined || !isGiven("json") || unless?.some(isGiven) === true) return null;
  return noEffect(`has no effect on --json, ${because}; leave it out`);
}

function orOf(names: readonly string[]): string {
  return names.length < 2 ? String(names[0]) : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
}
