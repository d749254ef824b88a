import {
  type Exact,
  fromExact,
  type Head,
  indexAngle,
  type NearMove,
  nearSettings,
  ownedCircles,
  type Setting,
} from "../../src/index.ts";
import type { Block, Cell, Part, Row } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { nothing } from "./setting-cells.ts";
import { degreesPerTurn, exact, plateOf, shortAngle } from "./words.ts";

const minutesPerTurn = 21_600n;
/** Steps of the table in minutes; the finest that keeps to the rows of a page or two is taken. */
const steps = [1n, 5n, 10n, 15n, 30n, 60n, 300n];
const mostRows = 60n;

/** Angles to turns, spaces and circle, and what one space of each circle is worth. */
export function anglesPart({ head }: Desk): Part | null {
  if (head.plates.length === 0) return null;
  return {
    id: "angles",
    title: "Angles",
    blocks: [
      {
        kind: "paragraph",
        text: `One turn of the crank is ${degreesPerTurn(head)}. For a larger angle take off as many whole turns as go into it, and look up the rest. Exact where it says so; else the nearest hole and how far it leaves the work from the angle.`,
      },
      { kind: "heading", text: "What one space is worth" },
      spacesTable(head),
      { kind: "heading", text: "Angles within a turn of the crank" },
      anglesTable(head),
    ],
  };
}

function spacesTable(head: Head): Block {
  const worm = fromExact(head.wormRatio);
  return {
    kind: "table",
    summary: "What one space of each circle is worth",
    columns: [
      { head: "plate", align: "left", strong: true, wraps: true },
      { head: "circle", align: "right", strong: true },
      { head: "one space", align: "right" },
      { head: "1°", group: "SPACES FOR", align: "right" },
      { head: "30′", group: "SPACES FOR", align: "right" },
      { head: "10′", group: "SPACES FOR", align: "right" },
      { head: "1′", group: "SPACES FOR", align: "right" },
    ],
    rows: ownedCircles(head).map((circle): Row => {
      const perTurn = worm.mul(circle.holes);
      const spacesFor = (minutes: bigint): Cell => {
        const spaces = perTurn.mul(Number(minutes)).div(Number(minutesPerTurn));
        return { text: spaces.d === 1n ? String(spaces.n) : nothing };
      };
      return {
        cells: [
          { text: plateOf(head, circle) },
          { text: String(circle.holes) },
          { text: shortAngle(exact(perTurn.d, perTurn.n)) },
          spacesFor(60n),
          spacesFor(30n),
          spacesFor(10n),
          spacesFor(1n),
        ],
      };
    }),
  };
}

function anglesTable(head: Head): Block {
  return {
    kind: "table",
    summary: "Angles to turns, spaces and circle",
    columns: [
      { head: "angle", align: "right", strong: true },
      { head: "plate", group: "SET UP", align: "left", strong: true, wraps: true },
      { head: "circle", group: "SET UP", align: "right", strong: true },
      { head: "turns", group: "CRANK", align: "right", strong: true },
      { head: "spaces", group: "CRANK", align: "right", strong: true },
      { head: "enclose\nholes", group: "ARMS", align: "right" },
      { head: "leaves the work", align: "right" },
    ],
    rows: anglesWithinATurn(head).flatMap((angle) => angleRow(head, angle)),
  };
}

function anglesWithinATurn(head: Head): readonly Exact[] {
  const worm = fromExact(head.wormRatio);
  const minutes = (minutesPerTurn * worm.d) / worm.n;
  const step = steps.find((each) => minutes / each <= mostRows) ?? 300n;
  return Array.from({ length: Number(minutes / step) }, (_, index) => exact(BigInt(index + 1) * step, minutesPerTurn));
}

function angleRow(head: Head, angle: Exact): readonly Row[] {
  const [closes] = indexAngle(head, angle, { methods: ["simple"], limit: 1 }).settings;
  const near = closes ? undefined : nearSettings(head, { angle }, { methods: ["simple"] }).find(isSimpleMove);
  const setting = closes ?? near;
  if (!setting) return [];
  return [
    {
      cells: [
        { text: shortAngle(angle) },
        { text: plateOf(head, setting) },
        { text: setting.circle === null ? "any" : String(setting.circle) },
        { text: String(setting.turns) },
        { text: String(setting.spaces) },
        { text: setting.armsEnclose === null ? nothing : String(setting.armsEnclose) },
        { text: near ? offBy(near) : "exact" },
      ],
    },
  ];
}

function isSimpleMove(setting: { readonly kind: string }): setting is NearMove {
  return setting.kind === "simple";
}

/** How far one move misses: `too far by 12″`. */
function offBy({ spindleTurned, spindlePerMove }: NearMove & Pick<Setting, "spindlePerMove">): string {
  const error = fromExact(spindleTurned).sub(fromExact(spindlePerMove)).mul(1_296_000);
  const seconds = Math.round(error.abs().valueOf() * 10) / 10;
  return `${seconds}″ ${error.s > 0n ? "too far" : "short"}`;
}
