/**
 * Exact dividing-head indexing: which plate and circle, how many turns and spaces, which change
 * gears, for any count on the head described; each setting proved on a model of the mechanism.
 *
 * Everything here is a pure function on plain readonly data. Exact values are text, `"p/q"`.
 *
 * @packageDocumentation
 */
export { arcSeconds, formatAngle, parseAngle } from "./angle.ts";
export { countsFromAngle, type PossibleCount } from "./angle-by-eye.ts";
export {
  type Answer,
  type AnswerOptions,
  indexAngle,
  indexDivisions,
  indexTable,
  type TableOptions,
  type TableRow,
} from "./answer.ts";
export { type CircleLayout, type Coordinate, chord, coordinates } from "./coordinates.ts";
export { errorAtRadius, type Length } from "./error-at-radius.ts";
export { type Fault, InputError } from "./errors.ts";
export { allMethods, exactSettings, type SearchOptions } from "./exact-settings.ts";
export { type DamageOptions, type Flank, type RecutPlan, recutPlan, type SpaceToRecut } from "./gear/damaged-teeth.ts";
export { type DepthRule, type DepthRuleName, depthRules } from "./gear/depth-rule.ts";
export { type FlankDisplacement, flankDisplacement, type SettingError } from "./gear/flank-displacement.ts";
export { type FormCutter, type FormCutters, formCutters } from "./gear/form-cutter.ts";
export type { Residual } from "./gear/gear-evidence.ts";
export type { GearMeasures } from "./gear/gear-measures.ts";
export type { TipExplanation, ToothForm } from "./gear/gear-trial.ts";
export { type GearCandidate, type Identification, type IdentifyOptions, identifyGear } from "./gear/identify-gear.ts";
export { type NearRecut, type NearRecutByMoves, type NearRecutMove, nearRecuts } from "./gear/near-recut.ts";
export { type PinRange, pinRange } from "./gear/over-pins.ts";
export type { NearRecutFromStart, NearRecutPlace } from "./gear/recut-from-start.ts";
export {
  type RecutHole,
  type RecutMove,
  type RecutOptions,
  type RecutPurpose,
  recutHoles,
  recutMoves,
} from "./gear/recut-moves.ts";
export { type RepairOnHead, type RepairOnHeadOptions, repairOnHead } from "./gear/repair-on-head.ts";
export { type SawCut, type SawOptions, slittingSaw } from "./gear/slitting-saw.ts";
export { type Span, type SpanOnFlanks, spanOver, thinningFromSpan } from "./gear/span.ts";
export { type SpurGear, spurGear } from "./gear/spur-gear.ts";
export type { SpurGearSpec } from "./gear/spur-gear-spec.ts";
export { type LookAlike, lookAlikes, type StandardPitch, standardPitches } from "./gear/standard-pitch.ts";
export { type BacklashOptions, type ThicknessCheck, type ToothMeasures, thicknessCheck } from "./gear/thickness-check.ts";
export { countsFromMarks, type MarksMeet } from "./gear/tooth-count.ts";
export { type RepairOptions, type SpanToCheck, type ToothRepair, toothRepair } from "./gear/tooth-repair.ts";
export {
  type Chord,
  type CutTooth,
  chordAt,
  type InvoluteTooth,
  spaceWidthAt,
  toothThicknessAt,
} from "./gear/tooth-thickness.ts";
export { type GearBox, gearBox } from "./gear-box.ts";
export { type GearTrain, shaftRoom } from "./gear-train.ts";
export type { Gearing, GearingSpec } from "./gearing.ts";
export { defineHead, type Head, type HeadSpec, type OwnedCircle, ownedCircles } from "./head.ts";
export type { Impossible, Reason } from "./impossible.ts";
export { prove, type SetMove, spindleTurnsPerMove } from "./mechanism.ts";
export { nearSettings } from "./near.ts";
export type { NearError, NearFigures, NearFromZero, NearKind, NearMove, NearSetting } from "./near-setting.ts";
export { type HolePosition, nearestHoles } from "./nearest-holes.ts";
export { checkOwned } from "./ownership.ts";
export { finestGrade, type PitchedGear, singlePitchDeviation } from "./pitch-deviation.ts";
export type { DirectPlate, Face, Plate, PlateSpec } from "./plate.ts";
export {
  checkPositions,
  type MoveBetween,
  type Position,
  type PositionOptions,
  positions,
  positionsAfter,
} from "./positions.ts";
export { type Kind, kindOf, orderOfPreference } from "./preference.ts";
export type { Proof } from "./proof.ts";
export { type Exact, fromExact } from "./ratio.ts";
export {
  type DialPosition,
  type DialTable,
  dialReadings,
  leastCountArcSeconds,
  type Reading,
  type Side,
  type WorstReading,
  type ZeroOptions,
} from "./readings.ts";
export { readyHeads } from "./ready-heads.ts";
export { gearsForgotten, type MoveGives, whatMoveGives } from "./reverse.ts";
export type { AddGears, BestNear, DrillCircle, OtherCount, OtherMethod, Route } from "./routes.ts";
export type { Scale, ScaleSpec } from "./scale.ts";
export type { Method, SecondMove, Setting, SettingGears, UnprovedSetting } from "./setting.ts";
export type { Target } from "./target.ts";
export { type NearestTooth, toothAt } from "./tooth-at.ts";
export { type SpacedPlace, type UnequalSpacing, unequalSpacing } from "./unequal-spacing.ts";
