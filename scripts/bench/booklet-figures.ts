import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import PDFDocument from "pdfkit";
import { bookOf } from "../../booklet/content/book.ts";
import { partIds } from "../../booklet/content/parts.ts";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { editionOf } from "../../booklet/edition.ts";
import { bookletPdf } from "../../booklet/index.ts";
import { flattened, type Page } from "../../booklet/layout/marks.ts";
import { setInPages } from "../../booklet/layout/pages.ts";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { readyHeads } from "../../src/index.ts";
import { projectFile } from "./child.ts";
import { type Figure, figure } from "./figure.ts";
import { times } from "./stopwatch.ts";

const contents = { from: 2, to: 400, parts: partIds, degreeTables: [] } as const;

/** The whole book, from the head to its bytes, against bare pdfkit drawing the same marks already placed. */
export async function bookletFigures(): Promise<Figure[]> {
  const [head] = readyHeads;
  if (!head) return [];
  const paper = paperNamed("a4");
  const shop = await openPrintShop();
  const book = bookOf(head, editionOf(head, { paper: paper.name, ...contents }), contents);
  const pages = [...setInPages(book, paper, shop.measure).pages()];
  const [ours, bare]: [number[], number[]] = [[], []];
  for (let run = 0; run < 6; run += 1) {
    const start = performance.now();
    await bookletPdf(head);
    const between = performance.now();
    await drawnBare(pages);
    if (run > 0) {
      ours.push(between - start);
      bare.push(performance.now() - between);
    }
  }
  const [small, large] = [memoryOf(400), memoryOf(4000)];
  const note = `${pages.length} pages; a process printing to 400 keeps ${small} MB at most, to 4000 ${large} MB`;
  return [
    figure(
      "book of the default head, counts 2–400, all parts",
      { ours: times(ours), baseline: times(bare) },
      "bare pdfkit with the same marks",
      1.6,
      note,
    ),
  ];
}

/** The same text, lines and shapes with pdfkit's own calls, with nothing to work out, measure, prove or link. */
async function drawnBare(pages: readonly Page[]): Promise<void> {
  const font = createRequire(import.meta.url).resolve(
    "@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf",
  );
  const document = new PDFDocument({ autoFirstPage: false, margin: 0, font });
  const ended = new Promise((resolve) => document.on("data", () => {}).on("end", resolve));
  for (const { width, height, marks } of pages) {
    document.addPage({ size: [width, height], margin: 0 });
    for (const mark of flattened(marks)) {
      if (mark.kind === "text") document.fontSize(mark.size).text(mark.text, mark.x, mark.y, { lineBreak: false });
      else if (mark.kind === "rule")
        document
          .lineWidth(mark.width)
          .moveTo(...mark.from)
          .lineTo(...mark.to)
          .stroke();
      else if (mark.kind === "band") document.rect(mark.x, mark.y, mark.width, mark.height).fill();
      else if (mark.kind === "shape") document.path(mark.path).stroke();
      else if (mark.kind === "dots") for (const [x, y] of mark.at) document.circle(x, y, mark.diameter / 2).fill();
    }
  }
  document.end();
  await ended;
}

/** The most memory of a process that prints counts 2 to `to`, in megabytes. */
function memoryOf(to: number): number {
  const program = `import { bookletPdf } from ${JSON.stringify(projectFile("dist/booklet/index.js"))};
    import { readyHeads } from ${JSON.stringify(projectFile("dist/src/index.js"))};
    await bookletPdf(readyHeads[0], { to: ${to} }); console.log(process.resourceUsage().maxRSS);`;
  const { stdout } = spawnSync(process.execPath, ["--input-type=module", "-e", program], { encoding: "utf8" });
  return Math.round(Number(stdout) / 1024);
}
