// @ts-check
const { readFileSync } = require("node:fs");
const { relative } = require("node:path");

const mostNamed = 50;

/**
 * Counts the branches that the tests take, room by room, and fails where a room has too few. What stands
 * after `??` is left out, as it is of the mutants: the compiler asks for it where the code knows better.
 *
 * A reporter of coverage, as vitest takes them: CommonJS, by its path.
 */
module.exports = class Decisions {
  /** @param {{ readonly least: Readonly<Record<string, number>>, readonly projectRoot: string }} options */
  constructor({ least, projectRoot }) {
    this.least = least;
    this.root = projectRoot;
  }

  /** @param {any} context */
  execute(context) {
    /** @type {Map<string, { all: number, missed: string[] }>} */
    const rooms = new Map();
    const onDetail = (/** @type {any} */ node) => this.count(node.getFileCoverage().data, rooms);
    context.getTree("flat").visit({ onDetail }, context);
    for (const [room, { all, missed }] of rooms) {
      const share = 100 * (1 - missed.length / all);
      const least = this.least[room] ?? 0;
      process.stdout.write(`${room}: ${share.toFixed(2)} % of ${all} branches, but for what stands after ??\n`);
      if (share >= least) continue;
      process.stderr.write(
        `${room}: fewer than ${least} %; not taken are\n${missed
          .slice(0, mostNamed)
          .map((each) => `  ${each}\n`)
          .join("")}`,
      );
      process.exitCode = 1;
    }
  }

  /**
   * @param {any} file
   * @param {Map<string, { all: number, missed: string[] }>} rooms
   */
  count({ path, branchMap, b }, rooms) {
    const place = relative(this.root, path).replaceAll("\\", "/");
    const name = place.split("/")[0] ?? "";
    const room = rooms.get(name) ?? { all: 0, missed: [] };
    rooms.set(name, room);
    const lines = readFileSync(path, "utf8").split("\n");
    for (const [id, { type, loc, locations }] of Object.entries(branchMap)) {
      for (const [index, each] of locations.entries()) {
        const line = each.start.line ?? loc.start.line;
        const text = (lines[line - 1] ?? "").trim();
        if (type === "binary-expr" && text.includes("??")) continue;
        room.all += 1;
        if (b[id][index] === 0) room.missed.push(`${place}:${line}: ${text}`);
      }
    }
  }
};
