import { spawn } from "node:child_process";
import { constants, setPriority } from "node:os";

/*
 * Runs scripts of the package side by side, each named by a word: one alone leaves a core idle for a third of its time. What the last
 * says is shown as it goes, what another says when it has ended and failed. Fails where any has. The last goes first where both want
 * the processor: it ends on one core, beside which the others still have another.
 */
const names = process.argv.slice(2);

/** Whether a script has passed. */
function passes(name, isShown) {
  return new Promise((ended) => {
    const child = spawn("npm", ["run", "--silent", name], {
      stdio: ["ignore", isShown ? "inherit" : "pipe", isShown ? "inherit" : "pipe"],
      shell: process.platform === "win32",
    });
    if (!isShown && child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
    const said = [];
    for (const from of [child.stdout, child.stderr]) from?.on("data", (text) => said.push(text));
    child.on("close", (code) => {
      if (code !== 0) process.stderr.write(`${Buffer.concat(said)}npm run ${name} has failed\n`);
      ended(code === 0);
    });
  });
}

const passed = await Promise.all(names.map((name, index) => passes(name, index === names.length - 1)));
process.exitCode = passed.every(Boolean) ? 0 : 1;
