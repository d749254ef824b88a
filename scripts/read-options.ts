import { type ParseArgsConfig, parseArgs } from "node:util";
import { type Fault, InputError } from "../src/index.ts";

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
  const { values, positionals, tokens } = parsed(words, options, help);
  const names = tokens.flatMap((token) => (token.kind === "option" ? [token.name] : []));
  const twice = new Set(names.filter((name, index) => names.indexOf(name) < index));
  if (twice.size > 0) {
    throw new InputError(
      [...twice].map((name): Fault => ({ code: "twice", place: `--${name}`, problem: "is given twice; give it once" })),
    );
  }
  return { values: values as Given<Options>, positionals };
}

function parsed(words: readonly string[], options: Spec, help: string) {
  try {
    return parseArgs({ args: [...words], options, allowPositionals: true, tokens: true });
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
    throw withOptionName(names, error);
  }
}

/** What the library refused, named as {@link withOptionNames} does; any other error as it is. */
export function withOptionName(names: Readonly<Record<string, string>>, error: unknown): unknown {
  if (!(error instanceof InputError)) return error;
  return new InputError(
    error.faults.map((each) => ({
      ...each,
      place: names[each.place] ?? names[each.place.split(/[.[]/)[0] ?? ""] ?? each.place,
    })),
  );
}
