import fc from "fast-check";
import { runs } from "./sweep.ts";

/**
 * Properties are tried on the same cases every time, so that a change is judged by what it changes.
 * `npm run soak` tries new cases at every run; `PROPERTY_SEED=…` repeats the run that it names.
 */
const asked = process.env.PROPERTY_SEED ?? "1";
const seed = asked === "new" ? Math.floor(Math.random() * 2 ** 31) : Number(asked);
if (!Number.isSafeInteger(seed)) throw new Error(`PROPERTY_SEED is ${asked}; give a whole number, or new`);
// A law that names no number is tried as often as any.
fc.configureGlobal({ seed, ...runs(100) });
