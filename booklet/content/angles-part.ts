import { wormRatioOf } from "../../src/head/head.ts";
import {
  formatAngle,
  fromExact,
  type Head,
  indexAngle,
  type NearMove,
  type NearSetting,
  nearSettings,
  ownedCircles,
  type PreparedHead,
  type Revolutions,
} from "../../src/index.ts";
import { arcSeconds } from "../../src/number/angle.ts";
import { rational, toRevolutions } from "../../src/number/ratio.ts";
import { arcUpTo, counted, listed, shortAngle } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { footRule } from "./foot-rule.ts";
import type { Desk } from "./parts.ts";
import { nothing } from "./setting-cells.ts";
import type { Cell, Column, Row } from "./table-block.ts";
import { degreesPerTurn, plateOf } from "./words.ts";

const minutesPerTurn = 21_600n;
/** Steps of the table in minutes; the finest that keeps to the rows of a page or two is taken. */
const steps = [1n, 5n, 10n, 15n, 30n, 60n, 300n];
const mostRows = 60n;

/** Angles to turns, spaces and circle, and what one space of each circle is worth. */
export function anglesPart({ head, on }: Desk): Part | null {
  if (head.plates.length === 0) return null;
  return {
    id: "angles",
    title: "Angles",
    joins: true,
    rule: footRule(head, { method: "simple", angle: true, near: true }),
    blocks: [
      {
        kind: "paragraph",
        text: `One turn of the crank is ${degreesPerTurn(head)}. For a larger angle take off as many whole turns as go into it, and look up the rest. Exact where it says so; else the nearest hole and how far it leaves the work from the angle.`,
      },
      { kind: "paragraph", style: "strong", text: wholeDegrees(head) },
      spacesTable(head),
      anglesTable(on),
    ],
  };
}

/** Parts of a degree that a table has a column for, where any circle gives them in whole spaces. */
const parts = [
  { head: "1°", minutes: 60 },
  { head: "30′", minutes: 30 },
  { head: "10′", minutes: 10 },
  { head: "5′", minutes: 5 },
  { head: "1′", minutes: 1 },
];

/** Spaces of a circle for so many minutes of the work, where they are whole. */
function spacesFor(head: Head, holes: number, minutes: number): number | null {
  const spaces = fromExact(wormRatioOf(head)).mul(holes).mul(minutes).div(Number(minutesPerTurn));
  return spaces.d === 1n ? Number(spaces.n) : null;
}

/** Which circles give whole degrees on this ratio. */
function wholeDegrees(head: Head): string {
  const giving = ownedCircles(head).flatMap(({ holes }) => {
    const spaces = spacesFor(head, holes, 60);
    return spaces === null ? [] : [`${holes} (${counted(spaces, "space")} a degree)`];
  });
  return giving.length === 0
    ? "No circle of this head gives whole degrees."
    : `Circles that give whole degrees: ${listed([...new Set(giving)])}.`;
}

function spacesTable(head: Head): Block {
  const worm = fromExact(wormRatioOf(head));
  const circles = ownedCircles(head);
  const shown = parts.filter(({ minutes }) => circles.some(({ holes }) => spacesFor(head, holes, minutes) !== null));
  return {
    kind: "table",
    folds: true,
    title: { text: "What one space is worth", anchor: "spaces" },
    summary: "What one space of each circle is worth",
    columns: [
      { head: "plate", align: "left", strong: true, wraps: true },
      { head: "circle", align: "right", strong: true },
      { head: "one space", align: "right" },
      ...shown.map((part): Column => ({ head: part.head, group: "SPACES FOR", align: "right" })),
    ],
    rows: circles.map((circle): Row => {
      const perTurn = worm.mul(circle.holes);
      return {
        cells: [
          { text: plateOf(head, circle) },
          { text: String(circle.holes) },
          { text: worthOf(toRevolutions(perTurn.inverse())) },
          ...shown.map(({ minutes }): Cell => ({ text: String(spacesFor(head, circle.holes, minutes) ?? nothing) })),
        ],
      };
    }),
  };
}

/** An angle to the second, or under a minute to a hundredth: so many spaces are so many times it. */
function worthOf(angle: Revolutions): string {
  if (arcSeconds(angle) >= 60) return shortAngle(angle);
  return formatAngle(angle, 2)
    .replace(/(\.\d*?)0+″$/, "$1″")
    .replace(/\.″$/, "″");
}

function anglesTable(on: PreparedHead): Block {
  return {
    kind: "table",
    folds: true,
    title: { text: "Angles within a turn of the crank", anchor: "within" },
    summary: "Angles to turns, spaces and circle",
    columns: [
      { head: "angle", align: "right", strong: true },
      { head: "plate", group: "SET UP", align: "left", strong: true, wraps: true },
      { head: "circle", group: "SET UP", align: "right", strong: true },
      { head: "turns", group: "CRANK", align: "right", strong: true },
      { head: "spaces", group: "CRANK", align: "right", strong: true },
      { head: "enclose\nholes", group: "ARMS", align: "right", spare: true },
      { head: "leaves the work", align: "right" },
    ],
    rows: anglesWithinATurn(on.head).flatMap((angle) => angleRow(on, angle)),
  };
}

function anglesWithinATurn(head: Head): readonly Revolutions[] {
  const worm = fromExact(wormRatioOf(head));
  const minutes = (minutesPerTurn * worm.d) / worm.n;
  const step = steps.find((each) => minutes / each <= mostRows) ?? 300n;
  return Array.from({ length: Number(minutes / step) }, (_, index) =>
    toRevolutions(rational(BigInt(index + 1) * step, minutesPerTurn)),
  );
}

function angleRow(on: PreparedHead, angle: Revolutions): readonly Row[] {
  const [closes] = indexAngle(on, angle, { methods: ["simple"], limit: 1 }).settings;
  const near = closes ? undefined : nearSettings(on, { angle }, { methods: ["simple"] }).find(isSimpleMove);
  const setting = closes ?? near;
  if (!setting) return [];
  return [
    {
      cells: [
        { text: shortAngle(angle) },
        { text: plateOf(on.head, setting) },
        { text: setting.circle === null ? "any" : String(setting.circle) },
        { text: String(setting.turns) },
        { text: String(setting.spaces) },
        { text: setting.armsEnclose === null ? nothing : String(setting.armsEnclose) },
        { text: near ? offBy(near) : "exact" },
      ],
    },
  ];
}

function isSimpleMove(setting: NearSetting): setting is NearMove {
  return setting.kind === "simple";
}

/** How far one move misses: `too far by 12″`. */
function offBy({ spindleTurned, spindlePerMove }: NearMove): string {
  const error = fromExact(spindleTurned).sub(fromExact(spindlePerMove)).mul(1_296_000);
  return `${arcUpTo(error.valueOf())} ${error.s > 0n ? "too far" : "short"}`;
}
