import { boltCircleOptions } from "./bolt-circle-options.ts";
import { fault } from "./command-line.ts";
import { flatsOptions } from "./flats-options.ts";
import { gearCommandOptions } from "./gear-option-table.ts";
import { graduateOptions } from "./graduate-options.ts";
import { kitOptions } from "./kit-options.ts";
import { options as lookUpOptions } from "./look-up-options.ts";
import type { OptionSpec, OptionTable } from "./option-table.ts";
import { plateOptions } from "./plate-options.ts";
import { ratioOptions } from "./ratio-options.ts";
import { repairOptions } from "./repair-options.ts";
import type { Said } from "./said.ts";

/** The commands by their first word, each with its options; the empty one is a question. */
type Commands = Readonly<Record<string, OptionTable>>;

const questions = [
  "table",
  "gives",
  "spacing",
  "heads",
  "gear",
  "repair",
  "ratio",
  "kit",
  "plate",
  "graduate",
  "flats",
  "bolt-circle",
  "booklet",
  "completion",
];

const shells: Readonly<Record<string, (commands: Commands) => string>> = {
  bash: bashCompletion,
  zsh: zshCompletion,
  fish: fishCompletion,
};

/** `completion SHELL`: a script by which a shell completes the command, written from the same tables as help. */
export async function completionAsked([shell = "", ...more]: readonly string[]): Promise<Said> {
  const script = Object.hasOwn(shells, shell) ? shells[shell] : undefined;
  if (script === undefined || more.length > 0)
    throw fault("unknown-word", "", `completion is for ${Object.keys(shells).join(", ")}; name one of them: ${inUse}`);
  // Loaded only here: the options of the booklet stand with the booklet.
  const { bookletOptions } = await import("./booklet.ts");
  const commands = {
    gear: gearCommandOptions,
    repair: repairOptions,
    ratio: ratioOptions,
    plate: plateOptions,
    kit: kitOptions,
    flats: flatsOptions,
    "bolt-circle": boltCircleOptions,
    graduate: graduateOptions,
    booklet: bookletOptions,
    "": lookUpOptions,
  };
  return { code: 0, text: script(commands) };
}

const inUse = 'eval "$(turns-and-holes completion bash)"';

const entries = (table: OptionTable) => Object.entries(table);
const typed = (name: string) => `--${name}`;

/** The lines of a `case` over the option before the cursor: what may stand after it. */
function afterOption(table: OptionTable, offered: (spec: OptionSpec) => string): readonly string[] {
  return entries(table)
    .filter(([, { type }]) => type === "string")
    .map(([name, spec]) => `        ${typed(name)}) ${offered(spec)} ;;`);
}

function bashCompletion(commands: Commands): string {
  const offered = ({ words = [], file = false }: OptionSpec) =>
    `COMPREPLY=($(compgen ${file ? "-f " : ""}-W "${words.join(" ")}" -- "$now"))`;
  const branches = Object.entries(commands).map(([name, table]) => {
    const more = name === "" ? ` ${questions.join(" ")}` : "";
    return [
      `    ${name === "" ? "*" : name})`,
      '      case "$before" in',
      ...afterOption(table, offered),
      `        *) COMPREPLY=($(compgen -W "${entries(table)
        .map(([each]) => typed(each))
        .join(" ")}${more}" -- "$now")) ;;`,
      "      esac ;;",
    ].join("\n");
  });
  return `_turns_and_holes() {
  local now="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" command=""
  [ "$COMP_CWORD" -gt 1 ] && command="\${COMP_WORDS[1]}"
  case "$command" in
${branches.join("\n")}
  esac
}
complete -o filenames -F _turns_and_holes turns-and-holes
`;
}

const quotedForShell = (text: string) => `'${text.replaceAll("'", "'\\''")}'`;

function zshCompletion(commands: Commands): string {
  const argument = ([name, { type, value = "", words, file = false, says, short }]: readonly [string, OptionSpec]) => {
    const about = `[${says.replace(/[[\]:\\]/g, "\\$&")}]`;
    const offered =
      words && file ? `{ compadd ${words.join(" ")}; _files }` : words ? `(${words.join(" ")})` : file ? "_files" : " ";
    const after = type === "boolean" ? "" : `:${value.replace(/[:\\]/g, "\\$&")}:${offered}`;
    return [
      `      ${quotedForShell(`${typed(name)}${about}${after}`)}`,
      ...(short === undefined ? [] : [`      ${quotedForShell(`-${short}${about}`)}`]),
    ].join(" \\\n");
  };
  const branches = Object.entries(commands).map(([name, table]) =>
    [
      `    ${name === "" ? "*" : name})`,
      "      _arguments \\",
      `${[...entries(table).map(argument), `      ${quotedForShell(name === "" ? `*: :(${questions.join(" ")})` : "*: : ")}`].join(" \\\n")} ;;`,
    ].join("\n"),
  );
  return `#compdef turns-and-holes
_turns_and_holes() {
  local command=""
  (( CURRENT > 2 )) && command="$words[2]"
  case "$command" in
${branches.join("\n")}
  esac
}
compdef _turns_and_holes turns-and-holes
`;
}

function fishCompletion(commands: Commands): string {
  const jobs = Object.keys(commands).filter((name) => name !== "");
  const lines = Object.entries(commands).flatMap(([name, table]) => {
    const when = name === "" ? `not __fish_seen_subcommand_from ${jobs.join(" ")}` : `__fish_seen_subcommand_from ${name}`;
    return entries(table).map(([each, { type, short, words, file = false, says }]) =>
      [
        `complete -c turns-and-holes -n ${quotedForFish(when)} -l ${each}`,
        ...(short === undefined ? [] : [`-s ${short}`]),
        `-d ${quotedForFish(says)}`,
        ...(type === "boolean" ? [] : [file ? "-r -F" : "-x"]),
        ...(words === undefined ? [] : [`-a ${quotedForFish(words.join(" "))}`]),
      ].join(" "),
    );
  });
  return [
    "complete -c turns-and-holes -f",
    `complete -c turns-and-holes -n __fish_use_subcommand -a ${quotedForFish(questions.join(" "))}`,
    ...lines,
    "",
  ].join("\n");
}

function quotedForFish(text: string): string {
  return `'${text.replace(/['\\]/g, "\\$&")}'`;
}
