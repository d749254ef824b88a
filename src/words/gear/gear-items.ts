import { overPins, pinFits } from "../../gear/over-pins.ts";
import type { SpurGear } from "../../gear/spur-gear.ts";
import type { Item } from "../item.ts";
import type { LengthWords } from "../lengths.ts";
import { plain } from "../numbers.ts";
import { depthRuleWords } from "./depth-rule.ts";

/** The pitch of a gear by its own name: `2 module`, `12 DP`. */
export function pitchName({ system, module, diametralPitch }: Pick<SpurGear, "system" | "module" | "diametralPitch">): string {
  return system === "module" ? `${plain(module, 4)} module` : `${plain(diametralPitch, 4)} DP`;
}

/** The measures of a gear, the ones most used first. */
export function gearItems(gear: SpurGear, length: LengthWords): readonly Item[] {
  const thinned = gear.thinning === 0 ? "" : `, ${length(gear.thinning)} thinner than full`;
  return [
    {
      term: "Pitch",
      text: `module ${plain(gear.module, 4)}, ${plain(gear.diametralPitch, 4)} DP, circular pitch ${length(gear.circularPitch)}`,
    },
    { term: "Pressure angle", text: pressureAngle(gear) },
    { term: "Outside diameter", text: `${length(gear.tipDiameter)} over the tips` },
    { term: "Pitch diameter", text: length(gear.referenceDiameter) },
    { term: "Root diameter", text: length(gear.rootDiameter) },
    { term: "Base diameter", text: `${length(gear.baseDiameter)}, base pitch ${length(gear.basePitch)}` },
    { term: "Whole depth", text: `${length(gear.wholeDepth)}, ${depthRule(gear)}` },
    {
      term: "Tooth",
      text: `${length(gear.toothThickness)} thick along the pitch circle${thinned}; space ${length(gear.spaceWidth)}`,
    },
    { term: "Across the tooth", text: chord(gear, length) },
    ...(gear.span === null ? [] : [{ term: "Span", text: `${length(gear.span.length)} over ${gear.span.teeth} teeth` }]),
    ...overUsualPins(gear, length),
  ];
}

/** What a gear is, in few words: for the head of a sheet. */
export function gearInShort(gear: SpurGear): string {
  return `${gear.teeth} teeth, ${pitchName(gear)}, ${pressureAngle(gear)}`;
}

function pressureAngle({ pressureAngle, profileShift }: SpurGear): string {
  const shift = profileShift === 0 ? "" : `, profile shift ${profileShift > 0 ? "+" : "−"}${plain(Math.abs(profileShift))}`;
  return `${plain(pressureAngle)}°${shift}`;
}

function depthRule({ wholeDepthRule }: SpurGear): string {
  const words = depthRuleWords(wholeDepthRule);
  return wholeDepthRule.code === "depth-as-given" ? words : `by the rule ${words}`;
}

function chord({ chordalThickness, chordalAddendum }: SpurGear, length: LengthWords): string {
  return chordalAddendum < 0
    ? "no chord to measure: the tips are below the pitch circle"
    : `${length(chordalThickness)} by the gear tooth caliper, its blade set to ${length(chordalAddendum)}`;
}

function overUsualPins(gear: SpurGear, length: LengthWords): readonly Item[] {
  const pin = length.asShown(gear.usualPinDiameter);
  if (!pinFits(gear, pin)) return [];
  const spaces = gear.teeth % 2 === 0 ? "opposite spaces" : "spaces as nearly opposite as there are";
  return [{ term: "Over pins", text: `${length(overPins(gear, pin))} over two pins of ${length(pin)}, in ${spaces}` }];
}
