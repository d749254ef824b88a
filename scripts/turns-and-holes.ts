#!/usr/bin/env node
import { readFileSync } from "node:fs";
import { loadHead } from "../booklet/head-file.ts";
import { readyHeads } from "../src/index.ts";
import { answerWords, cautionLines } from "./answer-words.ts";
import { countsByEye, moveGives } from "./asked-backwards.ts";
import { type Asked, fault, help, millimetres, readCommandLine, usualHead } from "./command-line.ts";
import { coordinatesAsked } from "./coordinates-asked.ts";
import { lookUp } from "./look-up.ts";
import type { More } from "./more.ts";
import { positionsAsked } from "./positions-asked.ts";
import { spacingAsked } from "./spacing-asked.ts";

/** Exit 0: answered; 1: no exact setting; 2: the question could not be read. */
async function run(words: readonly string[]): Promise<number> {
  // Loaded only when they are asked for: a look-up is not to wait for them.
  const [job, ...rest] = words;
  if (job === "booklet") return (await import("./booklet.ts")).printBooklet(rest);
  if (job === "gear") return tellOf((await import("./gear-asked.ts")).gearAsked(rest));
  if (job === "repair") return tellOf(await (await import("./repair-asked.ts")).repairAsked(rest));
  const asked = readCommandLine(words);
  if (asked.options.help === true) return say(help);
  if (asked.options.version === true) return say(`${version()}\n`);
  return answer(asked);
}

function answer({ question, rest, options }: Asked): number {
  if (question === undefined)
    throw fault("missing", "", "nothing was asked; give a count such as 127, an angle such as 2°54', or --help");
  if (question === "heads") return say(`${readyHeads.map(({ id, name }) => `${id.padEnd(34)}${name}`).join("\n")}\n`);
  const head = loadHead(options.head ?? usualHead);
  if (question === "spacing") return tell(spacingAsked(rest.join(" "), head, options), options);
  if (question === "gives") return tell(moveGives(rest.join(" "), head, options), options);
  if (rest.length > 0) {
    throw fault(
      "too-many",
      "",
      `one count or angle at a time, but ${rest.length + 1} were given; put an angle with spaces in quotes`,
    );
  }
  const byEye = countsByEye(question);
  if (byEye) return tell(byEye, options);
  const found = lookUp(head, question, options);
  const radius = options.radius === undefined ? null : millimetres(options.radius, "--radius");
  const more = [positionsAsked(found, head, options), coordinatesAsked(found, options)];
  tell(
    {
      data: Object.assign({}, found, ...more.map(({ data }) => data)),
      lines: [...answerWords(found, head, radius), ...more.flatMap(({ lines }) => lines), ...cautionLines(found)],
    },
    options,
  );
  return found.exact ? 0 : 1;
}

function tell({ data, lines }: More, { json }: Asked["options"]): number {
  return say(json === true ? `${JSON.stringify(data)}\n` : `${lines.join("\n")}\n`);
}

/** What a command with options of its own has to say. */
function tellOf({ json, code = 0, ...more }: More & { readonly json: boolean; readonly code?: number }): number {
  tell(more, { json });
  return code;
}

function say(text: string): number {
  process.stdout.write(text);
  return 0;
}

/** From the sources or from the build: the one is a folder nearer to package.json than the other. */
function version(): string {
  for (const up of ["../package.json", "../../package.json"]) {
    try {
      return (JSON.parse(readFileSync(new URL(up, import.meta.url), "utf8")) as { version: string }).version;
    } catch {}
  }
  return "unknown";
}

// A reader that closes early, such as a pager, is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  // By name: the booklet is loaded apart from this file and has the class a second time.
  if (!(error instanceof Error && error.name === "InputError")) throw error;
  // What was typed may hold a line break, but what is said of it is one line.
  process.stderr.write(`turns-and-holes: ${error.message.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ")}\n`);
  process.exitCode = 2;
}
