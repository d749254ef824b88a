import { flats, indexDivisions, prepare } from "../src/index.ts";
import { answerWithWhys, flatsItems, flatsTitle } from "../src/words/index.ts";
import { answerLines, cautionsOf } from "./answer-lines.ts";
import { fault, millimetres, optionNames } from "./command-line.ts";
import { flatsHelp } from "./flats-help.ts";
import { flatsOptions } from "./flats-options.ts";
import { askedAs, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { readOptions, withOptionNames } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked } from "./shared-options.ts";
import { itemLines, paragraph } from "./words.ts";

/** What the trade calls some of them. */
const sidesNamed: Readonly<Record<string, number>> = { square: 4, hexagon: 6, hex: 6, octagon: 8 };

/** `flats …`: flats on round stock, and the moves for them. */
export async function flatsAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, flatsOptions, "flats --help");
  const itself = toldOfItself(values, flatsHelp, columns);
  if (itself !== null) return itself;
  const spec = {
    sides: sidesAsked(positionals),
    ...(values.across !== undefined && { acrossFlats: millimetres(values.across, "--across") }),
    ...(values.blank !== undefined && { blank: millimetres(values.blank, "--blank") }),
  };
  const names = { sides: "", acrossFlats: "--across", blank: "--blank" };
  const cut = askedAs(values, () => flats(spec), names);
  const head = prepare(await headAsked(values.head));
  const answer = withOptionNames(optionNames, () => indexDivisions(head, cut.sides, searchAsked(values)));
  const unit = unitOf(values);
  const mounted = values.mounted ?? head.head.mounted;
  const telling = { head: head.head, mounted, radius: null, near: "told", proof: false, limit: null } as const;
  const cautions = cautionsOf(answer, head.head);
  return {
    data: { flats: cut, indexing: answerWithWhys(answer) },
    lines: [
      flatsTitle(cut, unit),
      "",
      ...itemLines(flatsItems(cut, unit)),
      "",
      ...answerLines(answer, telling),
      ...(cautions === "" ? [] : ["", paragraph(cautions)]),
    ],
    json: values.json === true,
    code: answer.exact ? 0 : 1,
  };
}

function sidesAsked([text, more]: readonly string[]): number {
  if (text === undefined)
    throw fault("missing", "", "how many flats? Begin with square, hexagon, octagon or a number, such as flats 6 --across 17");
  if (more !== undefined) throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one number of flats`);
  if (Object.hasOwn(sidesNamed, text)) return sidesNamed[text] ?? Number.NaN;
  if (/^\d{1,6}$/.test(text)) return Number(text);
  throw fault("unreadable", "", `"${text.slice(0, 40)}" is no number of flats; give square, hexagon, octagon or a number`);
}
