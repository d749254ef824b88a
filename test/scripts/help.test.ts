import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { paperNames } from "../../booklet/index.ts";
import { boltCircleHelp } from "../../scripts/bolt-circle-help.ts";
import { boltCircleOptions } from "../../scripts/bolt-circle-options.ts";
import { bookletHelp } from "../../scripts/booklet-help.ts";
import { bookletOptions } from "../../scripts/booklet-options.ts";
import { completionAsked } from "../../scripts/completion.ts";
import { flatsHelp } from "../../scripts/flats-help.ts";
import { flatsOptions } from "../../scripts/flats-options.ts";
import { gearHelp } from "../../scripts/gear-help.ts";
import { gearCommandOptions } from "../../scripts/gear-option-table.ts";
import { graduateHelp } from "../../scripts/graduate-help.ts";
import { graduateOptions } from "../../scripts/graduate-options.ts";
import { help } from "../../scripts/help.ts";
import { kitHelp } from "../../scripts/kit-help.ts";
import { kitOptions } from "../../scripts/kit-options.ts";
import { options } from "../../scripts/look-up-options.ts";
import { plateHelp } from "../../scripts/plate-help.ts";
import { plateOptions } from "../../scripts/plate-options.ts";
import { ratioHelp } from "../../scripts/ratio-help.ts";
import { ratioOptions } from "../../scripts/ratio-options.ts";
import { repairHelp } from "../../scripts/repair-help.ts";
import { repairOptions } from "../../scripts/repair-options.ts";
import { readyHeads } from "../../src/index.ts";

const commands = {
  "": [help, options],
  gear: [gearHelp, gearCommandOptions],
  repair: [repairHelp, repairOptions],
  ratio: [ratioHelp, ratioOptions],
  plate: [plateHelp, plateOptions],
  kit: [kitHelp, kitOptions],
  flats: [flatsHelp, flatsOptions],
  "bolt-circle": [boltCircleHelp, boltCircleOptions],
  graduate: [graduateHelp, graduateOptions],
  booklet: [bookletHelp, bookletOptions],
} as const;

describe.each(Object.entries(commands))("help of %j", (_, [text, table]) => {
  it("tells every option once, with all that is said of it", () => {
    for (const columns of [30, 45, 80, 200]) {
      const told = text(columns);
      for (const [name, { says }] of Object.entries(table)) {
        expect(told.match(new RegExp(`^  (?:-h, )?--${name}(?= |$)`, "gm")), name).toHaveLength(1);
        const inOneLine = told.replace(/\s+/g, " ");
        expect(inOneLine).toContain(says.replace(/\s+/g, " "));
      }
    }
  });

  it("fits the terminal, but for what is typed as one word", () => {
    for (let columns = 30; columns < 130; columns += 1) {
      const over = text(columns)
        .split("\n")
        .filter((line) => line.length > Math.min(80, columns));
      expect(
        over.filter((line) => line.trim().split(" ").length > 3),
        `${columns} columns`,
      ).toEqual([]);
      if (columns >= 60) expect(over).toEqual([]);
    }
  });

  it("is the same where there is no terminal as where one has 80 columns", () => {
    expect(text()).toBe(text(80));
  });
});

/** What bash offers after the words, the last of them not finished. */
async function offered(...words: readonly string[]): Promise<readonly string[]> {
  const { text } = await completionAsked(["bash"]);
  const quoted = words.map((word) => `'${word}'`).join(" ");
  const { stdout, stderr } = spawnSync(
    "bash",
    [
      "--norc",
      "-c",
      `${text}\nCOMP_WORDS=(turns-and-holes ${quoted}); COMP_CWORD=${words.length}; _turns_and_holes; printf '%s\\n' "\${COMPREPLY[@]}"`,
    ],
    { encoding: "utf8" },
  );
  expect(stderr).toBe("");
  return stdout.split("\n").filter((word) => word !== "");
}

const hasBash = spawnSync("bash", ["--version"]).status === 0;

describe.runIf(hasBash)("bash completes", () => {
  it.each([
    [["ge"], ["gear"]],
    [["12", "--mou"], ["--mounted"]],
    [["12", "--head", "ratio-9"], readyHeads.map(({ id }) => id).filter((id) => id.startsWith("ratio-9"))],
    [["gear", "12", "--mod"], ["--module"]],
    [
      ["gear", "12", "--depth-rule", "2.1"],
      ["2.157", "2.167"],
    ],
    [["repair", "86", "--dam"], ["--damaged"]],
    [["repair", "86", "--paper", ""], [...paperNames]],
    [
      ["booklet", "--as", "p"],
      ["pages", "poster"],
    ],
    [["booklet", "--ver"], ["--version"]],
    [["12", "--teeth", ""], []],
  ])("%j", async (words, words_) => {
    expect([...(await offered(...words))].sort()).toEqual([...words_].sort());
  });
});

it.each(["zsh", "fish"])("%s is told every option of every command", async (shell) => {
  const { text } = await completionAsked([shell]);
  for (const [, table] of Object.values(commands)) {
    for (const name of Object.keys(table)) expect(text).toContain(shell === "zsh" ? `'--${name}[` : ` -l ${name} `);
  }
});

it.each([[[]], [["ksh"]], [["bash", "zsh"]], [["constructor"]]])("completion of %j is refused", async (words) => {
  await expect(completionAsked(words)).rejects.toThrow("completion is for bash, zsh, fish; name one of them");
});
