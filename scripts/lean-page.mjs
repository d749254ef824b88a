/*
 * What the page leaves out of the library, since it has to be small. The build stops where something is left out that is called after all, or that
 * is no longer there.
 */

/** Methods of fraction.js that the page never calls, and that no packer leaves out, since they stand in one object. */
const neverCalled = [
  "pow",
  "log",
  "mod",
  "lcm",
  "gcd",
  "lt",
  "lte",
  "gte",
  "roundTo",
  "divisible",
  "gt",
  "round",
  "clone",
  "simplify",
  "toLatex",
  "toContinued",
  "toFraction",
  "toString",
];

/**
 * What fraction.js makes numbers of besides, text, decimals and lists: each from where it is read to where the next begins. The library gives it
 * whole numbers alone (`src/number/ratio.ts`), so that on the page it refuses them. Last, a world without BigInt and tables of what is never called.
 */
const neverGiven = [
  {
    from: '  } else if (typeof p1 === "string") {\n',
    to: '  } else if (typeof p1 === "bigint") {\n    n = p1;\n    s',
    instead: "",
  },
  { from: "} else if (0 in p1) {\n", to: '} else if (typeof p1 === "bigint") {\n      n = p1;\n    } else', instead: "" },
  { from: "if (typeof BigInt === 'undefined')", to: "const C_ZERO", instead: "" },
  { from: "const FACTORSTEPS", to: "function factorize", instead: "" },
  { from: "\n      let z = 1;\n", to: "    }\n\n  } else if", instead: "      throw NonIntegerParameter();\n" },
];

/** A text without what stands in it from here to there. */
function cutOut(text, { from, to, instead }, missing) {
  const start = text.indexOf(from);
  const end = text.indexOf(to, start);
  if (start < 0 || end < 0) missing(from.trim());
  return text.slice(0, start) + instead + text.slice(end);
}

/** What is only said in examples is not called. */
const withoutComments = (code) => code.replace(/\/\*[\s\S]*?\*\//g, "");

/** Leaves them out of the page, which has to be small; stops where one of them is called after all. */
export const leanFractions = {
  name: "lean-fractions",
  renderChunk(_, { modules }) {
    for (const [id, { code }] of Object.entries(modules)) {
      const called =
        id.includes("/src/") &&
        neverCalled.find((name) => new RegExp(`(?<!Math)\\.${name}\\(`).test(withoutComments(code ?? "")));
      if (called) this.error(`${id} calls ${called}, which is left out of the page: take it off the list in lean-page.mjs`);
    }
  },
  transform(code, id) {
    if (!id.endsWith("fraction.mjs")) return null;
    const lean = neverCalled.reduce((text, name) => {
      const method = new RegExp(`^  (["'])${name}\\1: function[\\s\\S]*?^  \\},?\n`, "m");
      if (!method.test(text)) this.error(`fraction.js has no ${name}: take it off the list in lean-page.mjs`);
      return text.replace(method, "");
    }, code);
    const inside = neverCalled.find((name) => new RegExp(`\\[["']${name}["']\\]`).test(lean));
    if (inside !== undefined) this.error(`fraction.js itself calls ${inside}: take it off the list in lean-page.mjs`);
    const given = neverGiven.reduce(
      (text, part) =>
        cutOut(text, part, (what) => this.error(`fraction.js has no ${what}: take it off the list in lean-page.mjs`)),
      lean,
    );
    return { code: given, map: null };
  },
};

/**
 * What checks a caller in JavaScript, with what stands for it on the page: there every caller is compiled against the types, every
 * head comes through `checkHead`, every gear through `spurGear` or is graded, and every way out of the head's own answer; nobody prefers another order. What a person types or a link says is
 * checked where it is read.
 */
const checksOfCallers = [
  { file: "src/head/check-is-head.ts", instead: "export function checkIsHead() {}" },
  {
    file: "src/gear/check-is-gear.ts",
    instead: "export function checkIsInvolute() {} export function checkIsTooth() {} export function checkIsGear() {}",
  },
  {
    file: "src/gear/check-graded.ts",
    instead: "export function checkPitched() {} export function checkGraded() {}",
  },
  { file: "src/setting/check-move.ts", instead: "export function checkMove() {}" },
  {
    file: "src/search/preference.ts",
    instead: 'import { orderOfPreference } from "../methods/registry.ts"; export const preferenceFrom = () => orderOfPreference;',
  },
  {
    file: "src/search/check-lists.ts",
    instead: "export function checkLists() {} export function checkLimit(limit) { return limit; }",
  },
  { file: "src/mechanism/check-train.ts", instead: "export function checkTrain() {}" },
  {
    file: "src/machine/check-plan.ts",
    instead: "export function checkHow() {} export function checkMatters(matters) { return new Set(matters); }",
  },
  { file: "src/machine/way-chosen.ts", instead: 'import { wayOf } from "./way.ts"; export const wayChosen = wayOf;' },
  {
    file: "src/number/check-options.ts",
    instead: `export function checkKeys() {}
      export function oneOf(value) { return value; }
      /* @__NO_SIDE_EFFECTS__ */ export function keysOf(keys) { return Object.keys(keys); }`,
  },
];

/**
 * What only heads that few have need: a second crank, or none, a row of holes beside a direct plate, gears in the place of one. Their page has all of it; the page of all others leaves it out, and refuses such a
 * head where it is handed in.
 */
const notOnThisPage = '"is not for this page; print the page of that head by itself"';
const ofFewHeads = [
  {
    file: "src/head/small-crank.ts",
    instead: `export const mostSmallRatio = 0; export const mostSmallCircles = 0;
      export function readSmallCrank(value, faults) {
        if (value !== undefined && value !== null) faults.add("conflict", "smallCrank", ${notOnThisPage});
        return {};
      }`,
  },
  {
    file: "src/head/without-crank.ts",
    instead: `export function checkWithoutCrank(_, faults) { faults.add("conflict", "wormRatio", ${notOnThisPage}); }`,
  },
  {
    file: "src/methods/wide-range.ts",
    instead: `export const wideRange = { places: { "wide-range": 3 }, plain: true, find: () => [] };
      export function lacksSmall() {} export function wideRangeSetting() {} export function byCranking() {}`,
  },
  {
    file: "src/near/near-both-cranks.ts",
    instead: "export function nearWideRange() { return null; } export function nearestByBoth() { return null; }",
  },
  { file: "src/near/near-direct.ts", instead: "export function nearestDirect() { return null; }" },
  { file: "src/machine/by-cranks.ts", instead: "export function placesByCranks() {}" },
  {
    file: "src/words/wide-range-words.ts",
    instead: `export const wideRangeWords = { name: "Two cranks", kinds: { "wide-range": { name: "Two cranks" } } };
      export const bothTitle = ""; export function largeCrankStays() {} export function onBoth() {} export function bothFigures() {} export function bothItems() {}`,
  },
  { file: "src/mechanism/wide-range-motion.ts", instead: "export function wideRangeMotion() {}" },
  { file: "src/instead/direct-plate-to-add.ts", instead: "export function directPlate() { return []; }" },
  {
    file: "src/words/nearest-direct-words.ts",
    instead: `export function onDirect() {} export function directTitle() {} export function nearestDirectFigures() {}
      export function nearestDirectItems() {}`,
  },
  {
    file: "src/head/direct-extras.ts",
    instead: `export const mostVernierHoles = 0; export const directForms = [];
      const refuse = (value, place, faults) => {
        if (value !== undefined) faults.add("conflict", place, ${notOnThisPage});
        return {};
      };
      export function readVernier(value, place, faults) { return refuse(value, place, faults); }
      export function readForm(value, place, faults) { return refuse(value, place, faults); }`,
  },
  {
    file: "src/words/direct-nouns.ts",
    instead: 'export function directNouns() { return { what: "direct plate", place: "hole", places: "holes" }; }',
  },
  {
    file: "src/words/row-words.ts",
    instead: "export function rowItems() {} export function rowFigure() {} export function rowColumns() {}",
  },
  { file: "src/words/crank-columns.ts", instead: "export function smallColumn() {} export function cranksColumns() {}" },
];

const exported = (code) => [...code.matchAll(/export (?:function|const) (\w+)/g)].map(([, name]) => name).sort();

/** Puts something else in the place of modules, that has all that they have. */
const replaced = (name, modules) => ({
  name,
  transform(code, id) {
    const found = modules.find(({ file }) => id.replaceAll("\\", "/").endsWith(file));
    if (found === undefined) return null;
    const [there, here] = [exported(code).join(), exported(found.instead).join()];
    if (there !== here) this.error(`${found.file} has ${there}, and the page ${here} for it: see lean-page.mjs`);
    return { code: found.instead, map: null };
  },
});

/** Leaves the checks of callers out of the page. */
export const typedCallers = replaced("typed-callers", checksOfCallers);

/** Leaves out what only heads with two cranks or none have. */
export const oneCrank = replaced("one-crank", ofFewHeads);
