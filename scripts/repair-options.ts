import { gearOptions } from "./gear-option-table.ts";
import { headOptions, startOptions } from "./head-options.ts";
import { everywhere, type TableOf, toldAsData } from "./option-table.ts";
import { sheetOptions } from "./sheet-options.ts";

/** Every option of the repair command. */
export const repairOptions: typeof gearOptions &
  typeof headOptions &
  typeof startOptions &
  typeof sheetOptions &
  typeof everywhere &
  TableOf<
    "damaged" | "start-space" | "backlash" | "mate-thinning" | "saw" | "saw-depth" | "leave" | "off-centre" | "setting-error",
    "json"
  > = {
  ...gearOptions,
  damaged: { type: "string", value: "LIST", says: "the built-up teeth: 31,32,33 or 31-33" },
  "start-space": { type: "string", value: "N", says: "a sound space to set the cutter by" },
  backlash: { type: "string", value: "LENGTH", says: "the most that the pair may have: how thin is too thin" },
  "mate-thinning": { type: "string", value: "LENGTH", says: "the mate's part of it (half)" },
  saw: { type: "string", value: "LENGTH", says: "the width of the slitting saw at hand" },
  "saw-depth": { type: "string", value: "LENGTH", says: "how deep it is to cut" },
  leave: { type: "string", value: "LENGTH", says: "what it is to leave for the cutter" },
  "off-centre": { type: "string", value: "LENGTH", says: "how far the cutter may be off" },
  "setting-error": { type: "string", value: "ANGLE", says: `how far the work may be off besides: 0°2' or 30"` },
  ...headOptions,
  ...startOptions,
  ...sheetOptions,
  ...toldAsData,
  ...everywhere,
};
