import { type Answer, errorAtRadius, finestGrade, type NearSetting, type Route } from "../src/index.ts";
import { shortSetting } from "./setting-words.ts";
import { arcUpTo, line, paragraph } from "./words.ts";

/** The near settings of an answer, so worded that none can be taken for exact. */
export function nearLines({ near, target }: Answer, radius: number | null): string[] {
  if (near.length === 0) return [];
  const count = "divisions" in target ? target.divisions : null;
  const shown = near.slice(0, mostShown);
  return [
    "",
    "  NEAR ONLY, NOT EXACT: each leaves the error that it states",
    ...(radius === null ? [] : [paragraph(gradeNote(radius, count))]),
    "",
    ...shown.flatMap((setting) => [line(nearName(setting), how(setting)), line("", errorWords(setting, radius, count))]),
    ...(shown.length < near.length ? [line("", `and ${near.length - shown.length} that are worse; --json lists them`)] : []),
  ];
}

function gradeNote(radius: number, count: number | null): string {
  const lengths = `Lengths are those at a radius of ${radius} mm.`;
  if (count === null) return lengths;
  return `${lengths} Grades are those of ISO 1328-1:1995 (its formula from memory) for a gear of that pitch radius, for the indexing alone.`;
}

const names = {
  simple: "Simple",
  "one-pair": "One pair",
  "two-pair": "Two pairs",
  compound: "Compound",
  "may-foul": "May foul",
  "nearest-hole": "Nearest hole",
  dial: "By the dial",
  ring: "By the ring",
} as const;

function nearName({ kind }: NearSetting): string {
  return `~ ${names[kind]}`;
}

function how(setting: NearSetting): string {
  if (setting.moves === "equal") return shortSetting(setting);
  const listed = "every position by itself from one zero (--teeth all lists them)";
  if (setting.kind !== "nearest-hole") return listed;
  return `of ${setting.circle} (plate ${setting.plate}${setting.face === null ? "" : `, ${setting.face} face`}), ${listed}`;
}

function errorWords(setting: NearSetting, radius: number | null, count: number | null): string {
  const worst = off(setting.worstArcSeconds, radius);
  if (count === null) return `it leaves the angle up to ${worst} off`;
  const sums =
    setting.moves === "equal" ? `the last meets the first ${arcUpTo(setting.closingArcSeconds)} out` : "nothing adds up";
  const grade = radius === null ? "" : gradeWords(setting, radius, count);
  return `no position over ${worst} off (tooth ${setting.error.worstTooth}); ${sums}${grade}`;
}

function off(arcSeconds: number, radius: number | null): string {
  // Rounded upwards: nothing may be further off than is said.
  if (radius === null) return arcUpTo(arcSeconds);
  const { mm, inch } = errorAtRadius(arcSeconds, radius);
  return `${arcUpTo(arcSeconds)} (${mm.toFixed(4)} mm, ${inch.toFixed(5)} in)`;
}

/** For a gear of that pitch radius, the accuracy grade that the step from tooth to tooth would still allow. */
function gradeWords({ pitchArcSeconds }: NearSetting, radius: number, count: number): string {
  const gear = { module: (2 * radius) / count, diameterMm: 2 * radius };
  if (gear.module < 0.5 || gear.module > 70 || gear.diameterMm < 5 || gear.diameterMm > 10_000) return "";
  const grade = finestGrade(gear, pitchArcSeconds);
  return `; tooth to tooth ${grade === null ? "worse than grade 12" : `within grade ${grade}`}`;
}

const mostShown = 6;
const mostOfAKind = 4;

/** The ways on where a count is impossible, the least effort first. */
export function routeLines({ routes }: Answer): string[] {
  const lines: string[] = [];
  for (const [index, route] of routes.entries()) {
    const before = routes.slice(0, index).filter(({ kind }) => kind === route.kind).length;
    const shown = before < mostOfAKind ? routeWords(route) : null;
    if (shown) lines.push(line(before === 0 ? labels[route.kind] : "", shown));
  }
  return lines.length === 0 ? [] : ["", paragraph("What would help, the least effort first:"), ...lines];
}

const labels = {
  method: "Another way",
  gears: "Add gears",
  circle: "Drill a circle",
  count: "Another count",
  near: "Near settings",
} as const;

function routeWords(route: Route): string | null {
  if (route.kind === "method") return shortSetting(route.setting);
  if (route.kind === "gears") return `${route.add.join(" and ")} teeth: then ${shortSetting(route.setting)}`;
  if (route.kind === "count") return `${route.divisions} can be done: ${shortSetting(route.setting)}`;
  if (route.kind === "near") return `the best is ${arcUpTo(route.setting.worstArcSeconds)} off at its worst; see below`;
  const [first, ...others] = route.circles;
  return `of ${first} holes${others.length > 0 ? `, or ${others.join(", ")}` : ""}: then ${route.setting.turns} + ${route.setting.spaces} of ${first}`;
}
