import { spawnSync } from "node:child_process";

/*
 * Checks the types of each room with what it may use: the library with nothing but the language, the screen edition with a browser, all
 * of it and its tests with Node.
 */
const compiler = "node_modules/typescript-native/bin/tsc";
const failed = ["src", "booklet/screen", "test"].filter((room) => {
  const { status } = spawnSync(process.execPath, [compiler, "--noEmit", "--checkers", "2", "-p", room], { stdio: "inherit" });
  return status !== 0;
});
process.exitCode = failed.length === 0 ? 0 : 1;
