import type { HelpPage, HelpSection, OptionTable } from "./option-table.ts";
import { fold } from "./words.ts";

const narrowest = 30;
const widest = 80;
/** Where what is said begins, on a terminal with room for it. */
const indent = 22;
/** Below this, what is said stands under what is typed. */
const roomy = 60;

/** Help for a command, as wide as the terminal and never wider than is read easily. */
export function helpText<Name extends string>(page: HelpPage<Name>, options: OptionTable, columns: number = widest): string {
  const width = Math.min(widest, Math.max(narrowest, columns));
  const { about, uses, examples = [], sections, end } = page;
  const parts = [
    fold(about, width),
    linesToType(uses, width),
    ...(examples.length === 0 ? [] : [["Examples", ...linesToType(examples, width)]]),
    ...sections.map((section) => sectionLines(section, options, width)),
    ...end.map((paragraph) => fold(paragraph, width)),
  ];
  return `${parts.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

/** The most columns that lines to type may take of a terminal, where something is said beside them. */
const mostTyped = 46;

function linesToType(lines: HelpPage<string>["uses"], width: number): readonly string[] {
  const beside = lines.flatMap(([typed, does]) => (does === "" || typed.length + 4 > mostTyped ? [] : [typed.length + 4]));
  return lines.flatMap(([typed, does]) => pair(typed, does, width, Math.max(indent, ...beside)));
}

function sectionLines<Name extends string>(section: HelpSection<Name>, options: OptionTable, width: number): readonly string[] {
  const { title, says, options: names } = section;
  return [
    ...fold(says === undefined ? title : `${title}${title.endsWith("?") ? "" : "."} ${says}`, width),
    ...names.flatMap((name) => pair(typedAs(name, options), options[name]?.says ?? "", width)),
  ];
}

/** `--head ID|FILE`, `-h, --help`. */
function typedAs(name: string, options: OptionTable): string {
  const { short, value } = options[name] ?? {};
  return `${short === undefined ? "" : `-${short}, `}--${name}${value === undefined ? "" : ` ${value}`}`;
}

/** What is typed and what that does, beside each other or under one another. */
function pair(typed: string, does: string, width: number, column: number = indent): readonly string[] {
  const from = width < roomy ? 6 : column;
  const lines = fold(does, width - from).map((line) => `${" ".repeat(from)}${line}`.trimEnd());
  const [first = "", ...others] = lines;
  const isBeside = width >= roomy && typed.length + 4 <= from;
  if (does === "") return shellLines(typed, width);
  return isBeside ? [`  ${typed.padEnd(from - 2)}${first.trimStart()}`, ...others] : [...shellLines(typed, width), ...lines];
}

/** A line to type that is too long goes on in the next, as a shell takes it. */
function shellLines(typed: string, width: number): readonly string[] {
  const lines = typed.length + 2 <= width ? [typed] : fold(typed, width - 6);
  return lines.map((line, at) => `${at === 0 ? "  " : "    "}${line}${at < lines.length - 1 ? " \\" : ""}`);
}
