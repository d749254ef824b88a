#!/usr/bin/env node
import { type ChildProcess, fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import { type Tried, targets } from "./hostile/tried.ts";

const help = `Thousands of hostile inputs, from seeds: none may end in a stack trace, steer the terminal, or take over two seconds.

  npm run hostile                     5,000 of them
  npm run hostile -- COUNT [SEED]     so many, from this seed on
`;

const program = fileURLToPath(new URL("hostile/child.js", import.meta.url));
const mostMilliseconds = 2000;
const patience = 20_000;

/** Gives a seed to the child; null where nothing comes back. */
function asked(child: ChildProcess, seed: number): Promise<Tried | null> {
  return new Promise((done) => {
    const timer = setTimeout(() => finish(null), patience);
    const finish = (tried: Tried | null) => {
      clearTimeout(timer);
      child.removeAllListeners();
      if (tried === null) child.kill("SIGKILL");
      done(tried);
    };
    child.once("message", (tried) => finish(tried as Tried));
    child.once("exit", () => finish(null));
    child.send(seed);
  });
}

/** @returns How many were at fault. */
async function throwAll(count: number, first: number): Promise<number> {
  const all: Tried[] = [];
  let atFault = 0;
  const fault = (text: string) => {
    atFault += 1;
    process.stdout.write(`${text}\n`);
  };
  let child = fork(program);
  for (let seed = first; seed < first + count; seed += 1) {
    const tried = await asked(child, seed);
    if (tried === null) {
      fault(`seed ${seed}: nothing came back within ${patience / 1000} s`);
      child = fork(program);
      continue;
    }
    all.push(tried);
    if (tried.ended === "at-fault") fault(`seed ${seed}: ${tried.fault}`);
    if (tried.milliseconds > mostMilliseconds) fault(`seed ${seed}: took ${Math.round(tried.milliseconds)} ms`);
  }
  child.kill();
  for (const target of targets)
    process.stdout.write(
      `${figures(
        target,
        all.filter((each) => each.target === target),
      )}\n`,
    );
  process.stdout.write(`${count} inputs, ${atFault} at fault\n`);
  return atFault;
}

function figures(target: string, tried: readonly Tried[]): string {
  const ended = (how: Tried["ended"]) => tried.filter((each) => each.ended === how).length;
  const slowest = Math.round(tried.reduce((most, { milliseconds }) => Math.max(most, milliseconds), 0));
  return `${target}: ${tried.length}, answered ${ended("answered")}, refused ${ended("refused")}, at fault ${ended("at-fault")}, the slowest ${slowest} ms`;
}

const [count = "5000", seed = "1"] = process.argv.slice(2);
if (/^\d+$/.test(count) && /^\d+$/.test(seed)) process.exitCode = (await throwAll(Number(count), Number(seed))) === 0 ? 0 : 1;
else process.stdout.write(help);
