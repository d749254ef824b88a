import {
  type Answer,
  type AnswerOptions,
  type Head,
  indexAngle,
  indexDivisions,
  type PreparedHead,
  parseAngle,
  type Target,
} from "../src/index.ts";
import { fault, optionNames, wholeNumber } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import { withOptionNames } from "./read-options.ts";
import { searchAsked } from "./shared-options.ts";

/** Puts a count or an angle to the library, as the options ask. */
export function lookUp(head: Head | PreparedHead, question: string, options: Options): Answer {
  const target = targetAsked(question);
  const asked = answerOptions(options);
  return withOptionNames(optionNames, () =>
    "divisions" in target ? indexDivisions(head, target.divisions, asked) : indexAngle(head, target.angle, asked),
  );
}

/** Reads what is asked for: a count, or an angle. */
export function targetAsked(question: string): Target {
  const text = question.trim();
  if (/^\d{1,8}$/.test(text)) return { divisions: Number(text) };
  if (/^[+\d][\d.,/\s]*$/.test(text)) throw notACount(text);
  if (!/\d/.test(text)) {
    throw fault(
      "unreadable",
      "",
      `${JSON.stringify(text.slice(0, 40))} is neither a count nor an angle; give a whole number such as 127, or an angle such as 2°54'`,
    );
  }
  return { angle: parseAngle(text) };
}

function answerOptions({ limit, all = false, near = false, ...search }: Options): AnswerOptions {
  return { all, near, ...searchAsked(search), ...(limit !== undefined && { limit: wholeNumber(limit, "--limit") }) };
}

function notACount(text: string) {
  const shown = text.slice(0, 40);
  if (/^\d+$/.test(text))
    return fault("out-of-range", "", `${shown} is too great a count; give a whole number from 1 to 10,000,000`);
  const angle = /^\d+(\.\d+)?$/.test(text) ? `${text}°` : /^\d+\/0*[1-9]\d*$/.test(text) ? `"${text} rev"` : "2°54'";
  return fault(
    "unreadable",
    "",
    `${shown} is not a whole number of divisions; give one such as 127, or write an angle with its unit, such as ${angle}`,
  );
}
