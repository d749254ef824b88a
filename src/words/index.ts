/**
 * The sentences: what the library returns as codes and values, in English and in the person's unit.
 *
 * @packageDocumentation
 */
export * from "./answer-words.ts";
export * from "./caution-words.ts";
export * from "./check-words.ts";
export * from "./gear/index.ts";
export * from "./gear-train-words.ts";
export * from "./item.ts";
export * from "./kinds.ts";
export * from "./lengths.ts";
export * from "./methods.ts";
export * from "./near-words.ts";
export * from "./numbers.ts";
export * from "./place-columns.ts";
export * from "./place-words.ts";
export * from "./plates.ts";
export * from "./reading-words.ts";
export * from "./refusals.ts";
export * from "./setting-words.ts";
export * from "./way-words.ts";
