import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";

const folder = "booklet/screen";
const digestOf = (text) => `sha256-${createHash("sha256").update(text).digest("base64")}`;

/** A style without what is there for its reader alone. */
function packedStyle(text) {
  return text
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\s+/g, " ")
    .replace(/ ?([{};,]) ?/g, "$1")
    .replace(/: /g, ":")
    .replaceAll(";}", "}")
    .trim();
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
<noscript>This page works everything out by itself: let its script run.</noscript>
<script type="application/json" id="filled">{{filled}}</script>
<script>${script}</script>
`;

/**
 * Makes one page of the packed script: script and style stand in it, and its policy lets nothing else run or load. What is left to fill in
 * is the head, as data.
 */
export const screenPage = {
  name: "screen-page",
  generateBundle(_, bundle) {
    const [[name, { code }]] = Object.entries(bundle);
    const script = code.trim();
    if (/<\/script|<!--/i.test(script)) this.error("the script holds what would end it in a page");
    const style = packedStyle(readFileSync(`${folder}/style.css`, "utf8"));
    delete bundle[name];
    this.emitFile({ type: "asset", fileName: "page.html", source: pageOf(script, style) });
  },
};

/** Methods of fraction.js that the page never calls, and that no packer leaves out, since they stand in one object. */
const neverCalled = [
  "pow",
  "log",
  "lcm",
  "gcd",
  "lt",
  "lte",
  "gte",
  "roundTo",
  "divisible",
  "clone",
  "simplify",
  "toLatex",
  "toContinued",
  "toFraction",
  "toString",
];

/**
 * What fraction.js makes numbers of besides, text and decimals: each from where it is read to where the next begins. The library gives it
 * whole numbers alone (`src/number/ratio.ts`), so that on the page it refuses them.
 */
const neverGiven = [
  {
    from: '  } else if (typeof p1 === "string") {\n',
    to: '  } else if (typeof p1 === "bigint") {\n    n = p1;\n    s',
    instead: "",
  },
  { from: "\n      let z = 1;\n", to: "    }\n\n  } else if", instead: "      throw NonIntegerParameter();\n" },
];

/** A text without what stands in it from here to there. */
function cutOut(text, { from, to, instead }, missing) {
  const start = text.indexOf(from);
  const end = text.indexOf(to, start);
  if (start < 0 || end < 0) missing(from.trim());
  return text.slice(0, start) + instead + text.slice(end);
}

/** Leaves them out of the page, which has to be small; stops where one of them is called after all. */
export const leanFractions = {
  name: "lean-fractions",
  transform(code, id) {
    const called = neverCalled.find((name) => id.includes("/src/") && new RegExp(`\\.${name}\\(`).test(code));
    if (called !== undefined)
      this.error(`${id} calls ${called}, which is left out of the page: take it off the list in screen-page.mjs`);
    if (!id.endsWith("fraction.mjs")) return null;
    const lean = neverCalled.reduce((text, name) => {
      const method = new RegExp(`^  (["'])${name}\\1: function[\\s\\S]*?^  \\},?\n`, "m");
      if (!method.test(text)) this.error(`fraction.js has no ${name}: take it off the list in screen-page.mjs`);
      return text.replace(method, "");
    }, code);
    const inside = neverCalled.find((name) => new RegExp(`\\[["']${name}["']\\]`).test(lean));
    if (inside !== undefined) this.error(`fraction.js itself calls ${inside}: take it off the list in screen-page.mjs`);
    const given = neverGiven.reduce(
      (text, part) =>
        cutOut(text, part, (what) => this.error(`fraction.js has no ${what}: take it off the list in screen-page.mjs`)),
      lean,
    );
    return { code: given, map: null };
  },
};
