import { afterEach, describe, expect, it, vi } from "vitest";
import { recutPlan } from "../../../src/gear/repair/damaged-teeth.ts";
import { flankDisplacement } from "../../../src/gear/repair/flank-displacement.ts";
import { repairOnHead } from "../../../src/gear/repair/repair-on-head.ts";
import { sawCut } from "../../../src/gear/repair/slitting-saw.ts";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { ready } from "../../support/ready.ts";

vi.mock("../../../src/gear/repair/damaged-teeth.ts", { spy: true });
vi.mock("../../../src/gear/repair/flank-displacement.ts", { spy: true });
vi.mock("../../../src/gear/repair/slitting-saw.ts", { spy: true });

const gear = spurGear({ teeth: 97, module: 2 });
const damaged = [31, 32];
const geared = ready("ratio-40-plates-15-49");
const dialOnly = ready("ratio-90-dial");

describe("each part of a repair is worked out once", () => {
  afterEach(() => {
    vi.clearAllMocks();
  });

  it.each([
    ["on a head, exact", () => repairOnHead(geared, gear, { damaged })],
    ["on a head, near", () => repairOnHead(dialOnly, gear, { damaged, saw: { width: 1 } })],
    ["by itself", () => toothRepair(gear, { damaged, settingError: { arcSeconds: 60 } })],
  ])("%s", (_, ask) => {
    ask();
    for (const part of [recutPlan, sawCut, flankDisplacement]) expect(vi.mocked(part)).toHaveBeenCalledTimes(1);
  });
});
