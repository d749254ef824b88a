import { expect } from "vitest";
import { run } from "./command.ts";

/** The blocks of code in one language, of a text in Markdown. */
export function blocksIn(text: string, language: string): readonly string[] {
  return [...text.matchAll(new RegExp(`\`\`\`${language}\\n(.*?)\`\`\``, "gs"))].map(([, code = ""]) => code);
}

/** Holds what a block shows under a command against what that prints: every line in its order, with others between at `…`. */
export async function expectTold(block: string): Promise<void> {
  const [asked = "", ...shown] = block.trimEnd().split("\n");
  const words = [...asked.replace(/^\$ (?:npm start --silent --|turns-and-holes) /, "").matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, plain]) => quoted ?? plain ?? "",
  );
  const { stdout } = await run(words);
  let from = 0;
  for (const line of shown.filter((each) => each.trim() !== "…")) {
    const at = stdout.indexOf(`${line}\n`, from);
    expect(at, `${JSON.stringify(line)} after what came before`).toBeGreaterThanOrEqual(from);
    from = at + line.length;
  }
}
