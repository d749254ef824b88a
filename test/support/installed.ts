import { fileURLToPath } from "node:url";

/** The folder of the house. */
export const root: string = fileURLToPath(new URL("../..", import.meta.url));

/** The command as it is installed. */
export const command: string = `${root}dist/scripts/turns-and-holes.cjs`;
