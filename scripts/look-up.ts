import {
  type Answer,
  type AnswerOptions,
  type Head,
  indexAngle,
  indexDivisions,
  type PreparedHead,
  parseAngle,
} from "../src/index.ts";
import { fault, type Options, optionNames, wholeNumber } from "./command-line.ts";
import { withOptionNames } from "./read-options.ts";
import { searchAsked } from "./shared-options.ts";

/** Puts a count or an angle to the library, as the options ask. */
export function lookUp(head: Head | PreparedHead, question: string, options: Options): Answer {
  const text = question.trim();
  const asked = answerOptions(options);
  const named = <Found>(ask: () => Found) => withOptionNames(optionNames, ask);
  if (/^\d{1,8}$/.test(text)) return named(() => indexDivisions(head, Number(text), asked));
  if (/^[+\d][\d.,/\s]*$/.test(text)) throw notACount(text);
  if (!/\d/.test(text)) {
    throw fault(
      "unreadable",
      "",
      `${JSON.stringify(text.slice(0, 40))} is neither a count nor an angle; give a whole number such as 127, or an angle such as 2°54'`,
    );
  }
  const angle = parseAngle(text);
  return named(() => indexAngle(head, angle, asked));
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
