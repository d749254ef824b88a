import {
  appendFileSync,
  chmodSync,
  chownSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { FileError } from "../../booklet/file-error.ts";
import { jobSheetPdf, plateDrawings, screenPage } from "../../booklet/index.ts";
import { placeFor } from "../../scripts/own-file.ts";
import { writeAll, writeWhole } from "../../scripts/write-whole.ts";
import { type Head, readyHeads } from "../../src/index.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "own-file-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string) => join(folder, name);
const [head, other] = readyHeads as readonly [Head, Head];
const sheetOf = (divisions: number) => jobSheetPdf(head, { divisions, teeth: [1, 2] });
const [sheet, otherSheet] = await Promise.all([sheetOf(127), sheetOf(97)]);
const again = await jobSheetPdf(head, { divisions: 127, teeth: [3] });
const write = (name: string, bytes: Uint8Array, force = false) => writeWhole(placeFor(at(name), force), bytes);
const isAdministrator = process.getuid?.() === 0;

describe("what is there already", () => {
  it("the same job's sheet is written over", () => {
    write("sheet.pdf", sheet);
    write("sheet.pdf", again);
    expect(readFileSync(at("sheet.pdf")).equals(again)).toBe(true);
  });

  it("another job's is not, unless forced", () => {
    write("sheet.pdf", sheet);
    expect(() => write("sheet.pdf", otherSheet)).toThrow(/is there already, of another head or job; .*--force/);
    expect(readFileSync(at("sheet.pdf")).equals(sheet)).toBe(true);
    write("sheet.pdf", otherSheet, true);
    expect(readFileSync(at("sheet.pdf")).equals(otherSheet)).toBe(true);
  });

  it.each([
    ["written on", () => appendFileSync(at("sheet.pdf"), "\n9 0 obj\n<<>>\nendobj\nstartxref\n9\n%%EOF\n")],
    ["cut short", () => writeFileSync(at("sheet.pdf"), sheet.subarray(0, -9))],
    [
      "moved within",
      () => writeFileSync(at("sheet.pdf"), Buffer.concat([sheet.subarray(0, 20), Buffer.from("  "), sheet.subarray(20)])),
    ],
  ])("a sheet that was %s since is not lost, even to the same job", (_, change) => {
    write("sheet.pdf", sheet);
    change();
    const before = readFileSync(at("sheet.pdf"));
    expect(() => write("sheet.pdf", sheet)).toThrow(/was filled in or changed since it was printed; .*--force/);
    expect(readFileSync(at("sheet.pdf")).equals(before)).toBe(true);
  });

  it("the page or the drawing of another head is not lost", async () => {
    const [page, otherPage] = [Buffer.from(screenPage(head)), Buffer.from(screenPage(other))];
    write("page.html", page);
    write("page.html", page);
    expect(() => write("page.html", otherPage)).toThrow(/of another head or job/);
    const [first, second] = (await plateDrawings(head)).map(({ svg }) => Buffer.from(svg));
    write("plate.svg", first as Buffer);
    write("plate.svg", first as Buffer);
    expect(() => write("plate.svg", second as Buffer)).toThrow(/of another head or job/);
  });

  it("what comes while the work is done stays, forced or not", () => {
    for (const force of [false, true]) {
      const place = placeFor(at(`sheet-${force}.pdf`), force);
      writeFileSync(place.path, "somebody else's");
      expect(() => writeWhole(place, sheet)).toThrow(/has come or was changed while this was being made/);
      expect(readFileSync(place.path, "utf8")).toBe("somebody else's");
    }
    write("sheet.pdf", sheet);
    const place = placeFor(at("sheet.pdf"), false);
    appendFileSync(at("sheet.pdf"), "a note");
    expect(() => writeWhole(place, sheet)).toThrow(/was changed while this was being made/);
    expect(readFileSync(at("sheet.pdf"), "latin1").endsWith("a note")).toBe(true);
  });

  it("of several files none is written where one may not be", () => {
    write("b.pdf", sheet);
    const places = ["a.pdf", "b.pdf"].map((name) => placeFor(at(name), false));
    expect(() => writeAll(places.map((place) => ({ place, bytes: otherSheet })))).toThrow(/b\.pdf.*of another/);
    expect(readdirSync(folder)).toEqual(["b.pdf"]);
  });
});

describe("what is kept", () => {
  it("a link, also one to what is not there yet", () => {
    mkdirSync(at("shelf"));
    symlinkSync("shelf/real.pdf", at("link.pdf"));
    write("link.pdf", sheet);
    write("link.pdf", again);
    expect(readlinkSync(at("link.pdf"))).toBe("shelf/real.pdf");
    expect(readFileSync(at("shelf/real.pdf")).equals(again)).toBe(true);
    expect([readdirSync(folder).sort(), readdirSync(at("shelf"))]).toEqual([["link.pdf", "shelf"], ["real.pdf"]]);
  });

  it("who may read it", () => {
    write("sheet.pdf", sheet);
    chmodSync(at("sheet.pdf"), 0o640);
    write("sheet.pdf", again);
    expect(statSync(at("sheet.pdf")).mode & 0o777).toBe(0o640);
  });

  it.runIf(isAdministrator)("whose it is", () => {
    write("sheet.pdf", sheet);
    chownSync(at("sheet.pdf"), 65_534, 65_533);
    write("sheet.pdf", again, true);
    expect([statSync(at("sheet.pdf")).uid, statSync(at("sheet.pdf")).gid]).toEqual([65_534, 65_533]);
  });

  it("a name as long as the disk takes", () => {
    const name = `${"n".repeat(246)}.pdf`;
    write(name, sheet);
    expect(readdirSync(folder)).toEqual([name]);
  });
});

describe("a place that cannot be written to is told in one sentence", () => {
  it.each([
    ["no name", () => "", /no name was given/],
    ["a missing directory", () => at("no/such.pdf"), /there is no directory/],
    ["a directory", () => folder, /is a directory/],
    ["a device", () => "/dev/full", /is not a plain file/],
    ["links in a circle", () => at("circle"), /its links lead in a circle/],
    ["a file for a directory", () => at("file/sheet.pdf"), /there is no directory|a part of its path is a file/],
    ["too long a name", () => at("ü".repeat(250)), /the name is too long/],
  ])("%s", (_, path, told) => {
    symlinkSync("circle", at("circle"));
    writeFileSync(at("file"), "");
    const refused = () => placeFor(path(), true);
    expect(refused).toThrow(FileError);
    expect(refused).toThrow(told);
    expect(readdirSync(folder).sort()).toEqual(["circle", "file"]);
  });

  it.skipIf(isAdministrator)("a directory or a file that may not be written", () => {
    write("sheet.pdf", sheet);
    chmodSync(at("sheet.pdf"), 0o400);
    expect(() => placeFor(at("sheet.pdf"), true)).toThrow(/its permissions/);
    chmodSync(folder, 0o500);
    expect(() => placeFor(at("new.pdf"), false)).toThrow(/its permissions/);
    chmodSync(folder, 0o700);
    expect(lstatSync(at("sheet.pdf")).isFile()).toBe(true);
  });
});
