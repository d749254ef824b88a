import { type ParseArgsConfig, parseArgs } from "node:util";
import { InputError } from "../src/index.ts";

type Spec = NonNullable<ParseArgsConfig["options"]>;

/** The options that were given, still in words. */
export type Given<Options extends Spec> = {
  readonly [Name in keyof Options]?: Options[Name]["type"] extends "boolean" ? boolean : string;
};

/** Reads the words after a command; each mistake is one sentence. */
export function readOptions<Options extends Spec>(
  words: readonly string[],
  options: Options,
  help: string,
): { readonly values: Given<Options>; readonly positionals: readonly string[] } {
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true });
    return { values: values as Given<Options>, positionals };
  } catch (error) {
    const said = error instanceof Error ? (error.message.split(". ")[0] ?? "") : String(error);
    throw new InputError([
      { code: "unknown-key", place: "", problem: `${said.replace(/\s+/g, " ").slice(0, 160)}; ${help} lists the options` },
    ]);
  }
}

/**
 * Asks the library, and names what it refuses by the option that the person wrote: the first part
 * of each place is looked up among the names given.
 */
export function withOptionNames<Result>(names: Readonly<Record<string, string>>, ask: () => Result): Result {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.faults.map(({ code, place, problem }) => ({
        code,
        place: names[place] ?? names[place.split(/[.[]/)[0] ?? ""] ?? place,
        problem,
      })),
    );
  }
}
