import type { FlatsSheet } from "../booklet/index.ts";
import {
  type Flats,
  flats,
  indexDivisions,
  type PreparedHead,
  planJob,
  prepare,
  revolutions,
  type SearchOptions,
} from "../src/index.ts";
import { answerWithWhys, flatsCautions, flatsItems, flatsTitle, withoutHeadCautions } from "../src/words/index.ts";
import { answerLines, cautionsOf } from "./answer-lines.ts";
import { fault, millimetres, optionNames } from "./command-line.ts";
import { flatsHelp } from "./flats-help.ts";
import { flatsOptions } from "./flats-options.ts";
import { askedAs, unitOf } from "./gear-options.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { type Given, readOptions, withOptionNames } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked } from "./shared-options.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";
import { table } from "./table.ts";
import { degrees, itemLines, paragraph } from "./words.ts";

/** What the trade calls some of them. */
const sidesNamed: Readonly<Record<string, number>> = { square: 4, hexagon: 6, hex: 6, octagon: 8 };

/** `flats …`: flats on round stock, and the moves for them, in words, as data, and as a sheet to print. */
export async function flatsAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, flatsOptions, "flats --help");
  const itself = toldOfItself(values, flatsHelp, columns);
  if (itself !== null) return itself;
  checkSheet(values);
  checkHeadless(values);
  const spec = {
    sides: sidesAsked(positionals),
    ...(values.across !== undefined && { acrossFlats: millimetres(values.across, "--across") }),
    ...(values.blank !== undefined && { blank: millimetres(values.blank, "--blank") }),
  };
  const names = { sides: "", acrossFlats: "--across", blank: "--blank" };
  const cut = askedAs(values, () => flats(spec), names);
  const unit = unitOf(values);
  const work = [flatsTitle(cut, unit), "", ...itemLines(flatsItems(cut, unit)), ""];
  const json = values.json === true;
  const inches = unit === "in";
  if (values.degrees === true) {
    const answer = { data: { flats: cut, indexing: null }, lines: [...work, ...degreeLines(cut)], json };
    return withSheet(answer, values, "flats", () => ({ flats: cut, on: null, inches }));
  }
  const head = prepare(await headAsked(values.head));
  const search = searchAsked(values);
  const answer = withOptionNames(optionNames, () => indexDivisions(head, cut.sides, search));
  const mounted = values.mounted ?? head.head.mounted;
  const telling = { head: head.head, mounted, radius: null, near: "told", proof: false, limit: null } as const;
  const cautions = cautionsOf(answer, head.head);
  const told = {
    data: { flats: cut, indexing: answerWithWhys(answer) },
    lines: [...work, ...answerLines(answer, telling), ...(cautions === "" ? [] : ["", paragraph(cautions)])],
    json,
    code: answer.exact ? 0 : 1,
  };
  return withSheet(told, values, "flats", () => ({ flats: cut, on: planned(head, cut, search), inches }));
}

/** The plan that a sheet follows; where the head can do nothing, not even nearly, there is none to print. */
function planned(head: PreparedHead, { sides }: Flats, search: SearchOptions): FlatsSheet["on"] {
  const plan = planJob(head, { divisions: sides }, search);
  if (plan.planned) return { head: head.head, plan };
  throw fault(
    "not-owned",
    "--sheet",
    `this head cannot make ${sides} flats, not even nearly; add --degrees for a sheet by degrees`,
  );
}

const ofHead = ["head", "mounted", "method", "teeth-per-move"] as const;

function checkHeadless(given: Given<typeof flatsOptions>): void {
  const idle = given.degrees === true && ofHead.find((name) => given[name] !== undefined);
  if (idle) throw fault("no-effect", `--${idle}`, "has no effect with --degrees, which is for no head; give one of the two");
}

function degreeLines({ sides }: Flats): readonly string[] {
  const all = Array.from({ length: sides }, (_, index) => index);
  return [
    ...table([
      { head: "flat", cells: all.map((index) => String(index + 1)) },
      { head: "set at", cells: all.map((index) => degrees(revolutions(index, sides))) },
    ]),
    "",
    paragraph([...flatsCautions, ...withoutHeadCautions].map(({ text }) => text).join(" ")),
  ];
}

function sidesAsked([text, more]: readonly string[]): number {
  if (text === undefined)
    throw fault("missing", "", "how many flats? Begin with square, hexagon, octagon or a number, such as flats 6 --across 17");
  if (more !== undefined) throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one number of flats`);
  if (Object.hasOwn(sidesNamed, text)) return sidesNamed[text] ?? Number.NaN;
  if (/^\d{1,6}$/.test(text)) return Number(text);
  throw fault("unreadable", "", `"${text.slice(0, 40)}" is no number of flats; give square, hexagon, octagon or a number`);
}
