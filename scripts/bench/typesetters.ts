import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Head, readyHeads } from "../../src/index.ts";
import { projectFile } from "./child.ts";
import { countParts, countTables, inCsv, inHtml, inLatex } from "./count-rows.ts";
import { type Figure, figure } from "./figure.ts";
import { times } from "./stopwatch.ts";

/** A way to come from rows to a PDF. */
interface Way {
  readonly name: string;
  /** Commands to be run one after the other, each a process. */
  readonly commands: readonly (readonly [program: string, ...words: string[]])[];
  readonly pdf: string;
}

const runs = 5;
const command = projectFile("dist/scripts/turns-and-holes.cjs");

/** The rows of the first ready head's counts 2 to 400, set by the book and by what else sets tables; whole processes, in turn. */
export function typesetterFigures(): Figure[] {
  const [head] = readyHeads;
  if (!head) return [];
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  try {
    const [ours, ...others] = [...ourWays(folder, head), ...otherWays(folder, head)].filter(works) as [Way, ...Way[]];
    const taken = new Map<Way, number[]>([ours, ...others].map((way) => [way, []]));
    for (let run = 0; run < runs; run += 1) for (const [way, each] of taken) each.push(timeTaken(way));
    const timesOf = (way: Way) => times(taken.get(way) ?? []);
    return others.map((other) =>
      figure(
        ours.name,
        { ours: timesOf(ours), baseline: timesOf(other) },
        other.name,
        null,
        `${size(ours)} against ${size(other)}`,
      ),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The counts alone, and the whole book. The command also works out and proves every row; the others are given the rows. */
function ourWays(folder: string, { id }: Head): readonly Way[] {
  const way = (name: string, pdf: string, words: readonly string[]): Way => ({
    name,
    commands: [[process.execPath, command, "booklet", "--head", id, "--force", "--out", pdf, ...words]],
    pdf,
  });
  return [
    way("counts 2–400 by the book, worked out and proved too", join(folder, "counts.pdf"), ["--parts", countParts.join(",")]),
    way("the whole book, all parts", join(folder, "book.pdf"), []),
  ];
}

function otherWays(folder: string, head: Head): readonly Way[] {
  const tables = countTables(head);
  const written = (name: string, text: string) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  const latex = [
    "pdflatex",
    "-interaction=batchmode",
    `-output-directory=${folder}`,
    written("latex.tex", inLatex(tables)),
  ] as const;
  return [
    {
      name: "bare pdfkit, the same rows",
      commands: [
        [
          process.execPath,
          projectFile("dist/scripts/bench/bare-rows.js"),
          written("rows.json", JSON.stringify(tables)),
          join(folder, "bare.pdf"),
        ],
      ],
      pdf: join(folder, "bare.pdf"),
    },
    { name: "a LaTeX longtable, two passes", commands: [latex, latex], pdf: join(folder, "latex.pdf") },
    exported("an office suite, from CSV", folder, written("csv.csv", inCsv(tables))),
    exported("an office suite, from HTML", folder, written("html.html", inHtml(tables))),
  ];
}

/** With a profile of its own, so that nobody's is touched. */
function exported(name: string, folder: string, file: string): Way {
  const profile = `-env:UserInstallation=file://${folder}/profile`;
  return {
    name,
    commands: [["soffice", profile, "--headless", "--convert-to", "pdf", "--outdir", folder, file]],
    pdf: file.replace(/\.\w+$/, ".pdf"),
  };
}

/** Runs a way once, unmeasured; where it makes no PDF it is left out, and that is said. */
function works(way: Way): boolean {
  timeTaken(way);
  if (statSync(way.pdf, { throwIfNoEntry: false })) return true;
  process.stderr.write(`left out, for it makes no PDF here: ${way.name}\n`);
  return false;
}

function timeTaken({ commands }: Way): number {
  const start = performance.now();
  for (const [program, ...words] of commands) spawnSync(program, words, { stdio: "ignore" });
  return performance.now() - start;
}

function size({ pdf }: Way): string {
  return `${Math.round(statSync(pdf).size / 1024)} KB`;
}
