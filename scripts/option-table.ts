/** An option: how it is read, and what help and the shell's completion say of it. One table a command. */
export interface OptionSpec {
  readonly type: "string" | "boolean";
  readonly short?: string;
  /** What is written after it, as help names it: `N`, `LENGTH`. */
  readonly value?: string;
  readonly says: string;
  /** What may stand after it, where that is one of a few words. */
  readonly words?: readonly string[];
  /** Whether a file may stand after it. */
  readonly file?: boolean;
}

/** The options of one command, by name. */
export type OptionTable = Readonly<Record<string, OptionSpec>>;

/** A table of options that take a word or more, and of flags. */
export type TableOf<Worded extends string, Flag extends string = never> = {
  readonly [Name in Worded]: OptionSpec & { readonly type: "string" };
} & { readonly [Name in Flag]: OptionSpec & { readonly type: "boolean" } };

/** Options that stand together in help. */
export interface HelpSection<Name extends string> {
  readonly title: string;
  readonly says?: string;
  readonly options: readonly Name[];
}

/** What help says of a command, around the options of its table. */
export interface HelpPage<Name extends string> {
  readonly about: string;
  /** A line to type, and what it does. */
  readonly uses: readonly (readonly [typed: string, does: string])[];
  readonly examples?: readonly (readonly [typed: string, does: string])[];
  readonly sections: readonly HelpSection<Name>[];
  /** Paragraphs at the end. */
  readonly end: readonly string[];
}

/** Every option has to stand in a section: the compiler names what is missing. */
export function helpPage<const Table extends OptionTable, const Page extends HelpPage<keyof Table & string>>(
  _: Table,
  page: Page & ([Exclude<keyof Table, Page["sections"][number]["options"][number]>] extends [never] ? unknown : never),
): Page {
  return page;
}

/** That of a command whose answer is told as data as well. */
export const toldAsData: TableOf<never, "json"> = {
  json: { type: "boolean", says: "the answer as data, and a refusal too" },
};

/** Those of a command whose answer is a table as well. */
export const toldAsTable: TableOf<never, "csv" | "markdown"> = {
  csv: { type: "boolean", says: "the table alone, for a spreadsheet: one value a cell" },
  markdown: { type: "boolean", says: "the same table in Markdown" },
};

/** Options that every command has. */
export const everywhere: TableOf<never, "help" | "version"> = {
  help: { type: "boolean", short: "h", says: "this text" },
  version: { type: "boolean", says: "which version this is" },
};
