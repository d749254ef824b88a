import { gzipSync } from "node:zlib";
import { rolldown } from "rolldown";
import { expect, it } from "vitest";
import { root } from "./support/installed.ts";

/**
 * The most that a program carries for what it takes from the package, in bytes as a server sends them: packed
 * with fraction.js, which is 2,455 of them. What comes nearest and what would help, which every answer tells
 * where a count cannot be done, are the difference between the two.
 */
const most = {
  "defineHead, exactSettings": 15_750,
  "defineHead, indexDivisions": 22_150,
};

it.each(Object.entries(most))("a program that imports %s carries %i bytes at most", async (names, bytes) => {
  const entry = `export { ${names} } from "turns-and-holes";`;
  const packer = await rolldown({
    input: "entry",
    cwd: root,
    platform: "browser",
    plugins: [
      { name: "entry", resolveId: (id) => (id === "entry" ? "\0entry" : null), load: (id) => (id === "\0entry" ? entry : null) },
    ],
  });
  const { output } = await packer.generate({ minify: true });
  await packer.close();
  const [{ code, imports }, ...others] = output;
  expect({ imports, others }).toEqual({ imports: [], others: [] });
  expect(gzipSync(code, { level: 9 }).length).toBeLessThanOrEqual(bytes);
});
