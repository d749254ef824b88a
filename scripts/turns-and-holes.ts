#!/usr/bin/env node
import { fileError } from "../booklet/file-error.ts";
import { type Outlet, run } from "./run.ts";

/** The output and the error stream of this process. */
const streams: Outlet = {
  isTerminal: process.stdout.isTTY === true,
  columns: process.stdout.columns,
  write: (what) =>
    new Promise((done, failed) => {
      process.stdout.write(what, (error) => {
        // A reader that closes early, such as a pager, is no fault.
        if (error && !("code" in error && error.code === "EPIPE")) failed(fileError("the output", "written", error));
        else done();
      });
    }),
  complain: (text) => void process.stderr.write(text),
};

// Each is told to whoever writes.
process.stdout.on("error", () => {});
process.stderr.on("error", () => {});

// Not awaited at the top: the command is packed as a CommonJS file, which starts sooner and cannot.
void run(process.argv.slice(2), streams).then((status) => {
  process.exitCode = status;
});
