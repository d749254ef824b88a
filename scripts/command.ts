import { type Answer, type PreparedHead, prepare, readyHeads } from "../src/index.ts";
import { type AtRadius, answerWithWhys, csvOf, markdownOf, type TextColumn } from "../src/words/index.ts";
import { answerLines, cautionsOf, type Telling } from "./answer-lines.ts";
import { type Asked, fault, radiusAsked, readCommandLine } from "./command-line.ts";
import { checkEffects, kindOfQuestion, placesOption } from "./effects.ts";
import { headAsked } from "./head-asked.ts";
import { lookUp } from "./look-up.ts";
import type { Options } from "./look-up-options.ts";
import { type More, type MoreOfJob, nothingMore } from "./more.ts";
import type { Said } from "./said.ts";
import { version } from "./version.ts";
import { paragraph } from "./words.ts";

/**
 * Answers the words of a command line.
 *
 * @param columns - Of the terminal; help is set to fit it.
 * @throws {@link InputError} where the question cannot be read.
 */
export async function said(words: readonly string[], columns?: number): Promise<Said> {
  // Loaded only when they are asked for: a look-up is not to wait for them.
  const [job, ...rest] = words;
  if (job === "booklet") return (await import("./booklet.ts")).printBooklet(rest, columns);
  if (job === "gear") return ofJob((await import("./gear-asked.ts")).gearAsked(rest, columns));
  if (job === "repair") return ofJob(await (await import("./repair-asked.ts")).repairAsked(rest, columns));
  if (job === "plate") return ofJob(await (await import("./plate-asked.ts")).plateAsked(rest, columns));
  if (job === "graduate") return ofJob(await (await import("./graduate-asked.ts")).graduateAsked(rest, columns));
  if (job === "ratio") return ofJob((await import("./ratio-asked.ts")).ratioAsked(rest, columns));
  if (job === "kit") return ofJob(await (await import("./kit-asked.ts")).kitAsked(rest, columns));
  if (job === "flats") return ofJob(await (await import("./flats-asked.ts")).flatsAsked(rest, columns));
  if (job === "bolt-circle") return ofJob(await (await import("./bolt-circle-asked.ts")).boltCircleAsked(rest, columns));
  if (job === "completion") return (await import("./completion.ts")).completionAsked(rest);
  const asked = readCommandLine(words);
  if (asked.options.help === true) return { code: 0, text: (await import("./help.ts")).help(columns) };
  if (asked.options.version === true) return { code: 0, text: `${version()}\n` };
  return answered(asked);
}

async function answered(asked: Asked): Promise<Said> {
  const { question, rest, options } = asked;
  if (question === undefined)
    throw fault("missing", "", "nothing was asked; give a count such as 127, an angle such as 2°54', or --help");
  const kind = kindOfQuestion(question);
  checkEffects(kind, asked);
  const words = rest.join(" ");
  switch (kind) {
    case "heads":
      return ofMore(headsListed(words), options);
    case "by-eye":
      return ofMore((await import("./asked-backwards.ts")).countsByEye(alone(question, rest)), options);
    case "gives":
      return ofMore((await import("./asked-backwards.ts")).moveGives(words, await headAsked(options.head), options), options);
    case "table":
      return ofMore((await import("./table-asked.ts")).tableAsked(words, await headAsked(options.head), options), options);
    case "spacing":
      return ofMore((await import("./spacing-asked.ts")).spacingAsked(words, await headAsked(options.head), options), options);
    case "count":
    case "angle":
      return lookedUp(alone(question, rest), options);
  }
}

function alone(question: string, rest: readonly string[]): string {
  if (rest.length === 0) return question;
  throw fault(
    "too-many",
    "",
    `one count or angle at a time, but ${rest.length + 1} were given; put an angle with spaces in quotes`,
  );
}

async function lookedUp(question: string, options: Options): Promise<Said> {
  const { near, mounted, proof, limit, json, coordinates } = options;
  const head = prepare(await headAsked(options.head));
  const answer = lookUp(head, question, options);
  const radius = radiusAsked(options);
  const more = await moreAsked(answer, head, radius, options);
  const code = answer.exact ? 0 : 1;
  const { csv, markdown } = options;
  if (csv === true || markdown === true)
    return { ...ofMore({ data: {}, lines: [], table: tableAmong(more, options) }, options), code };
  const data = Object.assign(answerWithWhys(answer), ...more.map((each) => each.data));
  if (json === true) return { code, text: `${JSON.stringify(data)}\n` };
  const telling: Telling = {
    head: head.head,
    mounted: mounted ?? head.head.mounted,
    // Asked for coordinates alone, it says nothing of errors.
    radius: coordinates === true && answer.exact && answer.near.length === 0 ? null : radius,
    near: near === true ? "asked" : placesOption(options) === undefined ? "told" : "below",
    proof: proof === true,
    limit: limit === undefined ? null : Number(limit),
  };
  const cautions = more.find((each) => each.cautions !== undefined)?.cautions ?? cautionsOf(answer, head.head);
  const lines = [
    ...answerLines(answer, telling),
    ...more.flatMap((each) => each.lines),
    ...(cautions === "" ? [] : ["", paragraph(cautions)]),
  ];
  return { code, text: `${lines.join("\n")}\n` };
}

/** What is asked for besides the setting, loaded only then. */
async function moreAsked(
  answer: Answer,
  head: PreparedHead,
  radius: AtRadius | null,
  options: Options,
): Promise<readonly More[]> {
  const { ring, coordinates, budget } = options;
  const places =
    placesOption(options) === undefined
      ? nothingMore
      : (await import("./places-asked.ts")).placesAsked(answer, head, radius, options);
  return [
    places,
    ring === undefined ? nothingMore : (await import("./ring-asked.ts")).standingAsked(answer, head, ring, options),
    coordinates === true ? (await import("./coordinates-asked.ts")).coordinatesAsked(answer, radius, options) : nothingMore,
    budget === true
      ? (await import("./budget-asked.ts")).budgetAsked(answer, head.head, radius, options, places.planned)
      : nothingMore,
  ];
}

function headsListed(words: string): More {
  if (words !== "") throw fault("no-effect", "", `"heads" lists all the ready heads; leave out "${words.slice(0, 40)}"`);
  return {
    data: { heads: readyHeads.map(({ id, name, wormRatio }) => ({ id, name, wormRatio })) },
    lines: readyHeads.map(({ id, name }) => `${id.padEnd(34)}${name}`),
  };
}

/** One table in a file: of two, the spreadsheet would not know which. */
function tableAmong(more: readonly More[], options: Options): readonly TextColumn[] {
  const [first, second] = more.flatMap(({ table }) => (table === undefined ? [] : [table]));
  if (second !== undefined)
    throw fault(
      "conflict",
      "--coordinates",
      `is a table of its own beside that of --${placesOption(options)}; ask for one of the two`,
    );
  return first ?? [];
}

function ofMore({ data, lines, table = [] }: More, { json, csv, markdown }: Pick<Options, "json" | "csv" | "markdown">): Said {
  if (csv === true) return { code: 0, text: csvOf(table) };
  if (markdown === true) return { code: 0, text: markdownOf(table) };
  return { code: 0, text: json === true ? `${JSON.stringify(data)}\n` : `${lines.join("\n")}\n` };
}

/** What a command with options of its own has to say. */
function ofJob({ json, csv, markdown, code = 0, bytes, ...more }: MoreOfJob): Said {
  const told = { json, ...(csv !== undefined && { csv }), ...(markdown !== undefined && { markdown }) };
  return { ...(bytes === undefined ? ofMore(more, told) : { text: "", bytes }), code };
}
