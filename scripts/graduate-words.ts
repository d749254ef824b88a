import type { Graduated, GraduatedRound, GraduatedStraight, Head } from "../src/index.ts";
import {
  capital,
  cautionsBesides,
  checkFromZero,
  headLine,
  type LengthWords,
  legendWords,
  scaleCautions,
  scaleItems,
  scaleWords,
  straightCells,
  straightHeads,
  straightLegend,
  wayItems,
  wayTitle,
} from "../src/words/index.ts";
import { type LeadColumn, placeTable } from "./place-table.ts";
import { table } from "./table.ts";
import { apart, itemLines, paragraph } from "./words.ts";

/** A scale line by line, in words. */
export function graduatedLines(scale: Graduated, head: Head, length: LengthWords): readonly string[] {
  const isOnHead = scale.shape === "round" || scale.counter.by === "crank";
  return [
    capital(scaleWords(scale, length)),
    ...(isOnHead ? [headLine(head)] : []),
    "",
    ...(scale.shape === "round" ? setUp(scale, head) : []),
    ...itemLines(scaleItems(scale, length)),
    "",
    ...(scale.shape === "round" ? roundLines(scale, head) : straightLines(scale, length)),
    "",
    ...itemLines(scaleCautions(scale.shape)),
    ...(scale.shape === "round" ? ["", paragraph(cautionsBesides(scale.plan.cautions))] : []),
  ];
}

function setUp({ plan: { way, exact } }: GraduatedRound, head: Head): readonly string[] {
  return [`  ${wayTitle(way)}: ${exact ? "exact" : "NEAR ONLY, NOT EXACT"}`, "", ...itemLines(wayItems(way, head))];
}

function leads({ lines }: Graduated): readonly LeadColumn[] {
  return [
    { head: "line", cells: lines.map(({ line }) => String(line)) },
    { head: "length", cells: lines.map(({ length }) => length) },
    { head: "figure", cells: lines.map(({ figure }) => figure ?? "") },
  ];
}

function roundLines(scale: GraduatedRound, head: Head): readonly string[] {
  const plan = { ...scale.plan, places: scale.lines.map(({ place }) => place) };
  const side = (plan.start.ring ?? plan.start.dial)?.side ?? "plus";
  const legend = legendWords(plan, { after: null, side, head });
  return [
    ...(legend === "" ? [] : [paragraph(legend), ""]),
    ...placeTable(plan, head, leads(scale)),
    ...apart(itemLines(plan.checks.map((check) => checkFromZero(check, plan.way, { noun: "line" })))),
  ];
}

function straightLines(scale: GraduatedStraight, length: LengthWords): readonly string[] {
  const rows = scale.lines.map((each) => straightCells(each, scale, length));
  const columns = straightHeads(scale).map((head, index) => ({ head, cells: rows.map((row) => row[index] ?? "") }));
  return [paragraph(straightLegend(scale, length)), "", ...table([...leads(scale), ...columns])];
}
