import { boltCircleOptions } from "../bolt-circle-options.ts";
import { flatsOptions } from "../flats-options.ts";
import { gearCommandOptions } from "../gear-option-table.ts";
import { graduateOptions } from "../graduate-options.ts";
import { kitOptions } from "../kit-options.ts";
import { options } from "../look-up-options.ts";
import type { OptionTable } from "../option-table.ts";
import { plateOptions } from "../plate-options.ts";
import { ratioOptions } from "../ratio-options.ts";
import { repairOptions } from "../repair-options.ts";
import type { Chance } from "../worst/random.ts";
import { junkText } from "./junk.ts";

/** The options of a job sheet; a whole book takes seconds, which is no fault. */
const sheetOptions: OptionTable = Object.fromEntries(
  Object.entries(repairOptions).filter(([name]) =>
    ["head", "paper", "by", "teeth-per-move", "mounted", "start-hole"].includes(name),
  ),
);

const questions: readonly (readonly [words: readonly string[], options: OptionTable])[] = [
  [["127"], options],
  [["97"], options],
  [["9999991"], options],
  [["2°54'"], options],
  [["2.9° ± 0.05°"], options],
  [["gives", "0 + 22/33"], options],
  [["spacing", "58,62,60"], options],
  [["spacing", "--propose", "6"], options],
  [["97", "--budget", "--radius", "50", "--run-out", "0.04"], options],
  [["table", "2-40"], options],
  [["heads"], options],
  [["completion", "bash"], {}],
  [["gear", "86", "--module", "2"], gearCommandOptions],
  [["gear", "86", "--outside", "176"], gearCommandOptions],
  [["repair", "86", "--module", "2", "--damaged", "31-33"], repairOptions],
  [["gear", "--chord", "63.1 over 8", "--height", "6.5"], gearCommandOptions],
  [["ratio", "--turns", "10", "--turned", "90°", "--within", "5°"], ratioOptions],
  [["kit", "2-60", "--want", "61,127"], kitOptions],
  [["plate", "97", "--diameter", "150"], plateOptions],
  [["plate", "--chords", "7.77 over 2, 84.16 over 24"], plateOptions],
  [["graduate", "100"], graduateOptions],
  [["graduate", "--space", "1", "--spaces", "20", "--lead", "5", "--marks", "250"], graduateOptions],
  [["flats", "hexagon", "--across", "17"], flatsOptions],
  [["bolt-circle", "7", "--diameter", "5in"], boltCircleOptions],
  [["booklet", "--job", "12", "--out", "-"], sheetOptions],
];

const values = [
  "1",
  "2",
  "3,2,1",
  "all",
  "1-9",
  "20",
  "0.5",
  "50",
  "2in",
  "1/7 rev",
  "46.5",
  "2°54'",
  "with",
  "against",
  "56/24",
  "31",
  "simple",
];

/** A line for the command: a right question with words put in, taken out and spoilt. */
export function wordsTyped(chance: Chance): readonly string[] {
  const [question, table] = chance.one(questions);
  const words = [...question];
  const names = Object.keys(table);
  for (let more = chance.below(4); more > 0 && names.length > 0; more -= 1) {
    const name = chance.one(names);
    // A file may only be written where the output is.
    if (name === "sheet") continue;
    words.push(`--${name}`);
    if (table[name]?.type === "string") words.push(chance.happens(0.6) ? chance.one(values) : junkText(chance));
  }
  if (chance.happens(0.5)) words[chance.below(words.length)] = chance.happens(0.5) ? junkText(chance) : chance.one(values);
  if (chance.happens(0.2)) words.splice(chance.below(words.length), 1);
  if (chance.happens(0.2)) words.splice(chance.below(words.length), 0, junkText(chance));
  // What was made of it may not name a file to write either.
  return words.filter((word) => !/^--(?:sheet|out|force)/.test(word) || words[words.indexOf(word) + 1] === "-");
}
