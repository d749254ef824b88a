#!/usr/bin/env node
import { wrongOnNodes } from "./versions/nodes.ts";
import { wrongTypes } from "./versions/types.ts";

// The package under every version that it is promised for: its types as a program sees them that installs it, and the
// library's tests on each line of Node. Fetches compilers and Nodes by npm; takes some minutes.
const [which = "all"] = process.argv.slice(2);

const wrong = [...(which === "nodes" ? [] : wrongTypes(tell)), ...(which === "types" ? [] : wrongOnNodes(tell))];
for (const each of wrong) process.stdout.write(`${each}\n`);
process.stdout.write(`${wrong.length} not as they should be\n`);
process.exitCode = wrong.length === 0 ? 0 : 1;

function tell(what: string): void {
  process.stderr.write(`${what}\n`);
}
