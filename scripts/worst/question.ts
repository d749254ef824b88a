import {
  type AnswerOptions,
  defineHead,
  dialReadings,
  exactSettings,
  type HeadSpec,
  indexAngle,
  indexDivisions,
  indexTable,
  nearSettings,
  type PlanOptions,
  planJob,
  prove,
  revolutions,
  type TableOptions,
  unequalSpacing,
} from "../../src/index.ts";

/** A question to a head, as plain data: what the search for the worst makes, changes and keeps. */
export interface Question {
  readonly head: HeadSpec;
  readonly ask: Ask;
}

/** An angle as the two terms of a part of a turn. */
export type Terms = readonly [numerator: number, denominator: number];

/** What is asked; each as its function takes it. */
export type Ask =
  | { readonly kind: "count"; readonly divisions: number; readonly options: AnswerOptions }
  | { readonly kind: "angle"; readonly angle: Terms; readonly options: AnswerOptions }
  | { readonly kind: "first"; readonly divisions: number; readonly options: AnswerOptions }
  | { readonly kind: "near"; readonly divisions: number }
  | { readonly kind: "table"; readonly range: TableOptions }
  | { readonly kind: "plan"; readonly divisions: number; readonly options: PlanOptions }
  | { readonly kind: "walk"; readonly divisions: number }
  | { readonly kind: "readings"; readonly divisions: number }
  | { readonly kind: "spacing"; readonly steps: readonly Terms[] };

/** Puts a question to its head; what it answers is not looked at here. */
export function put({ head: spec, ask }: Question): unknown {
  const head = defineHead(spec);
  switch (ask.kind) {
    case "count":
      return indexDivisions(head, ask.divisions, ask.options);
    case "angle":
      return indexAngle(head, revolutions(...ask.angle), ask.options);
    case "first":
      return exactSettings(head, { divisions: ask.divisions }, ask.options).next();
    case "near":
      return nearSettings(head, { divisions: ask.divisions });
    case "table":
      return indexTable(head, ask.range);
    case "plan":
      return planJob(head, { divisions: ask.divisions }, ask.options);
    case "walk": {
      const [setting] = indexDivisions(head, ask.divisions, { limit: 1 }).settings;
      return setting && prove(setting, { walkOn: head });
    }
    case "readings":
      return dialReadings(head, ask.divisions);
    case "spacing":
      return unequalSpacing(
        head,
        ask.steps.map(([n, d]) => revolutions(n, d)),
      );
  }
}
