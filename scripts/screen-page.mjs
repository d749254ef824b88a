import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { minify } from "terser";

const folder = "booklet/screen";
const digestOf = (text) => `sha256-${createHash("sha256").update(text).digest("base64")}`;

/** A style without what is there for its reader alone, its colours by a letter each. */
function packedStyle(text) {
  const colours = [...new Set(text.match(/--[a-z]+(?=:)/g))];
  return colours
    .reduce((all, name, index) => all.replaceAll(new RegExp(`${name}\\b`, "g"), `--${index.toString(36)}`), text)
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\s+/g, " ")
    .replace(/ ?([{};,]) ?/g, "$1")
    .replace(/: /g, ":")
    .replaceAll(";}", "}")
    .trim();
}

/**
 * Which names of properties may be shortened: those that neither stand in text anywhere, as they would to be looked up by it, nor are keys of a head,
 * which comes and goes as data; and of those in one word only such as the page itself never names, for those are of links, of attributes and of the browser.
 */
function shortened(script) {
  const ofPage = readdirSync(folder).flatMap((file) => readFileSync(`${folder}/${file}`, "utf8").match(/\b[a-z]+\b/g) ?? []);
  const inText = [...script.matchAll(/["'`]([A-Za-z]\w*)["'`]/g)].map(([, name]) => name);
  const ofHeads = [...readFileSync("booklet/head.schema.json", "utf8").matchAll(/"(\$?\w+)"/g)].map(([, name]) => name);
  return { keep_quoted: true, reserved: [...inText, ...ofHeads, ...ofPage] };
}

/** The page. `{{filled}}` is left for the head, as data. */
const pageOf = (script, style) => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src '${digestOf(script)}'; style-src '${digestOf(style)}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Turns &amp; Holes</title>
<style>${style}</style>
<body>
<noscript>Let the script of this page run.</noscript>
<script type="application/json" id="filled">{{filled}}</script>
<script>${script}</script>
`;

/**
 * Makes one page of the packed script: script and style stand in it, and its policy lets nothing else run or load. What is left to fill in
 * is the head, as data.
 */
export const screenPage = (fileName) => ({
  name: "screen-page",
  async generateBundle(_, bundle) {
    const [[name, { code: packed }]] = Object.entries(bundle);
    // Once more, since what the packer's own making small leaves is a fiftieth of the page.
    const { code } = await minify(packed, {
      ecma: 2020,
      compress: { passes: 2, unsafe_arrows: true, pure_getters: true },
      mangle: { properties: shortened(packed) },
    });
    const script = code.trim();
    if (/<\/script|<!--/i.test(script)) this.error("the script holds what would end it in a page");
    const style = packedStyle(readFileSync(`${folder}/style.css`, "utf8"));
    delete bundle[name];
    this.emitFile({ type: "asset", fileName, source: pageOf(script, style) });
  },
});
