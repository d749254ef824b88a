#!/usr/bin/env node
import { allFaults } from "./file-faults/faults.ts";
import { killAll } from "./file-faults/kills.ts";

// Runs of the command that are ended by force while they print, and files that cannot be read or written: nothing may be lost, nothing be
// there by half, and whoever waits gets one sentence. In a folder of its own; takes some minutes.
const [count = "100", seed = "1"] = process.argv.slice(2);

const faults = allFaults();
const wrong = faults.filter(({ fault }) => fault !== null);
for (const { what, fault } of wrong) process.stdout.write(`${what}: ${fault}\n`);
process.stdout.write(`${faults.length} file faults, ${wrong.length} not as they should be\n`);

const { kills, tooLate, old, made, empty, beside, faults: lost } = await killAll(Number(count), Number(seed));
for (const each of lost) process.stdout.write(`${each}\n`);
process.stdout.write(
  `${kills} kills (${tooLate} runs ended before): the old file whole ${old}, the new one whole ${made}, none there before or after ${empty}, ` +
    `under a name of its own ${beside}; lost or by half ${lost.length}\n`,
);
process.exitCode = wrong.length + lost.length === 0 ? 0 : 1;
