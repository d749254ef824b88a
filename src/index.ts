/**
 * Exact dividing-head indexing: which plate and circle, how many turns and spaces, which change
 * gears, for any count on the head described; each setting proved on a model of the mechanism.
 *
 * Everything here is a pure function on plain readonly data. Exact values are text, `"p/q"`.
 *
 * @module turns-and-holes
 */

export {
  type Answer,
  type Answered,
  type AnswerOptions,
  type Found,
  indexAngle,
  indexDivisions,
  type NotPossible,
} from "./answer.ts";
export type { DepthRule, DepthRuleName } from "./gear/depth-rule.ts";
export { depthRules } from "./gear/depth-rules.ts";
export {
  type ErrorBudget,
  type ErrorGrades,
  type ErrorItem,
  type ErrorSource,
  type ErrorSum,
  errorBudget,
} from "./gear/error-budget.ts";
export type { ErrorSources, HoleErrors, SettingErrors } from "./gear/error-sources.ts";
export { type FormCutter, type FormCutters, formCutters } from "./gear/form-cutter.ts";
export type { GearNote } from "./gear/gear-notes.ts";
export type { PitchedGear } from "./gear/graded.ts";
export type { Measure, Residual } from "./gear/identify/gear-evidence.ts";
export type { Finding, MeasuresNote } from "./gear/identify/gear-findings.ts";
export type { Fragment, GearMeasures } from "./gear/identify/gear-measures.ts";
export type { TipExplanation, ToothForm } from "./gear/identify/gear-trial.ts";
export { type GearCandidate, type Identification, type IdentifyOptions, identifyGear } from "./gear/identify/identify-gear.ts";
export type { PitchByMeasure, PitchMeasured } from "./gear/identify/pitch-measured.ts";
export { countsFromMarks, type MarksMeet } from "./gear/identify/tooth-count.ts";
export { overPins, type PinRange, pinRange } from "./gear/over-pins.ts";
export {
  finestGrade,
  finestTotalGrade,
  singlePitchDeviation,
  totalPitchDeviation,
} from "./gear/pitch-deviation.ts";
export { type DamageOptions, type Flank, type RecutPlan, recutPlan, type SpaceToRecut } from "./gear/repair/damaged-teeth.ts";
export { type FlankDisplacement, flankDisplacement, type SettingError } from "./gear/repair/flank-displacement.ts";
export type { CheckCondition, CheckLimits, PinsToCheck, RebuiltCheck, SpanToCheck } from "./gear/repair/rebuilt-checks.ts";
export type { RepairNote } from "./gear/repair/repair-notes.ts";
export { type RepairOnHead, type RepairOnHeadOptions, repairOnHead } from "./gear/repair/repair-on-head.ts";
export {
  type RepairPlace,
  type RepairPlaceOptions,
  type RepairPurpose,
  repairPlaces,
  repairPlan,
} from "./gear/repair/repair-places.ts";
export { type SawCut, type SawNote, type SawOptions, slittingSaw } from "./gear/repair/slitting-saw.ts";
export { type BacklashOptions, type ThicknessCheck, type ToothMeasures, thicknessCheck } from "./gear/repair/thickness-check.ts";
export { type RepairOptions, type ToothRepair, toothRepair } from "./gear/repair/tooth-repair.ts";
export { type SettingBudgetOptions, settingBudget } from "./gear/setting-budget.ts";
export { type Span, type SpanOnFlanks, spanOver, thinningFromSpan } from "./gear/span.ts";
export { type SpurGear, spurGear, type WholeDepthRule } from "./gear/spur-gear.ts";
export type { SpurGearSpec } from "./gear/spur-gear-spec.ts";
export { type LookAlike, lookAlikes, type StandardPitch, standardPitches } from "./gear/standard-pitch.ts";
export {
  type Chord,
  type CutTooth,
  chordAt,
  type InvoluteTooth,
  spaceWidthAt,
  toothThicknessAt,
} from "./gear/tooth-thickness.ts";
export { type CheckedHead, checkHead, defineHead } from "./head/define-head.ts";
export type { DirectForm, DirectPlate, DirectPlateSpec } from "./head/direct-plate.ts";
export type { Gearing, GearingSpec } from "./head/gearing.ts";
export {
  type CrankedHead,
  type Head,
  type HeadInShort,
  type HeadSpec,
  type OwnedCircle,
  ownedCircles,
  wormRatioOf,
} from "./head/head.ts";
export { type IdlerTrial, idlersFromTrial } from "./head/idlers-from-trial.ts";
export type { CirclesSpec, Face, Plate, PlateSpec } from "./head/plate.ts";
export { type RatioCandidate, type RatioFound, type RatioTrial, ratioFromTrial } from "./head/ratio-from-trial.ts";
export { readyHead, readyHeads } from "./head/ready-heads.ts";
export type { Scale, ScaleSpec } from "./head/scale.ts";
export type { SmallCrank } from "./head/small-crank.ts";
export type { AddDirectPlate } from "./instead/direct-plate-to-add.ts";
export type { Impossible, Reason } from "./instead/impossible.ts";
export type { AddGears, BestNear, DrillCircle, OtherCount, OtherMethod, Route } from "./instead/routes.ts";
export type { CircleToAdd } from "./kit/circles-to-add.ts";
export { type Coverage, coverage, type WantedCounts } from "./kit/coverage.ts";
export type { UntriedOfKit } from "./kit/efforts.ts";
export type { Expectation, ExpectedCount } from "./kit/expected.ts";
export type { GearsToBuy } from "./kit/gears-to-buy.ts";
export type { CoverageOptions } from "./kit/kit-options.ts";
export type { Adds } from "./kit/lacking.ts";
export type { PlateToAdd } from "./kit/plates-to-add.ts";
export type { WithoutPlate } from "./kit/without-plate.ts";
export { countsFromAngle, type PossibleCount } from "./machine/angle-by-eye.ts";
export { type Caution, cautionsFor } from "./machine/caution.ts";
export {
  type CheckedChord,
  checkPlate,
  type MeasuredChord,
  type PlateCheck,
  type PlateCheckOptions,
} from "./machine/check-plate.ts";
export type { Check } from "./machine/checks.ts";
export { type CheckChord, type CircleLayout, type Coordinate, checkChords, chord, coordinates } from "./machine/coordinates.ts";
export { cuttingOrder, roundsOfOrder } from "./machine/cutting-order.ts";
export { type DrillOptions, drilledBy } from "./machine/drill-options.ts";
export {
  type DrilledByCoordinates,
  type DrilledHole,
  type DrilledOnHead,
  type DrilledPlate,
  drillPlate,
  type HoleByCoordinates,
  type HoleOnHead,
} from "./machine/drill-plate.ts";
export { type Flats, type FlatsSpec, flats } from "./machine/flats.ts";
export {
  type Graduated,
  type GraduatedRound,
  type GraduatedStraight,
  type GraduateOptions,
  graduate,
  type RoundLine,
  type RoundScale,
  type StraightScale,
} from "./machine/graduate.ts";
export type { PlateErrors } from "./machine/hole-errors.ts";
export type { AnyPlace, MoveBetween, Place, PlaceByCranks, PlaceByHole, PlaceByMoves, PlaceByScale } from "./machine/place.ts";
export { type NoJob, type Plan, type PlannedJob, planJob } from "./machine/plan.ts";
export type { PlanOptions } from "./machine/plan-options.ts";
export { type CircleChords, type FaceChords, type HoleChord, plateChords } from "./machine/plate-chords.ts";
export { type ProposalOptions, type ProposedSpacing, proposeSpacing } from "./machine/propose-spacing.ts";
export {
  type DialPosition,
  type DialTable,
  dialReadings,
  leastCountArcSeconds,
  stepsAddedUp,
  type WorstReading,
} from "./machine/readings.ts";
export type { LineStyle, ScaleLine } from "./machine/scale-lines.ts";
export type { BothScales, Reading } from "./machine/scale-reader.ts";
export type { Counted, Counter, ScrewDial, ScrewGeared, StraightLine, StraightLines } from "./machine/straight-scale.ts";
export { type NearestTooth, type RingRead, type TeethAlike, toothAt } from "./machine/tooth-at.ts";
export { type SpacedPlace, type SpacingOptions, type UnequalSpacing, unequalSpacing } from "./machine/unequal-spacing.ts";
export { type PlateCandidate, plateFromChords, type UnknownPlate, type UnknownPlateOptions } from "./machine/unknown-plate.ts";
export { type Vernier, type VernierSpec, vernier } from "./machine/vernier.ts";
export { type RankedWay, type Way, type WayByMoves, type WayFromZero, wayOf, waysBy } from "./machine/way.ts";
export type { Side, ZeroOptions } from "./machine/zero.ts";
export { spindleTurnsPerMove } from "./mechanism/identity.ts";
export type { SetMove } from "./mechanism/motion.ts";
export { type ProofOptions, prove } from "./mechanism/prove.ts";
export { gearsForgotten, type MoveGives, whatMoveGives } from "./mechanism/reverse.ts";
export { type GearBox, gearBox } from "./methods/gear-box.ts";
export type { Products } from "./methods/gear-products.ts";
export { type GearTrain, shaftRoom } from "./methods/gear-train.ts";
export { allMethods, checkOwned, orderOfPreference } from "./methods/registry.ts";
export type { WhyNot } from "./methods/why-not.ts";
export { nearSettings } from "./near/near.ts";
export { arcSeconds, formatAngle } from "./number/angle.ts";
export { errorAtRadius, type Length } from "./number/error-at-radius.ts";
export { type Fault, type FaultCode, InputError } from "./number/errors.ts";
export { ratio, revolutions, toDegrees, toNumber } from "./number/exact.ts";
export type { LengthSentence, SaidLength } from "./number/length-sentence.ts";
export type { LengthUnit } from "./number/length-unit.ts";
export { parseAngle } from "./number/parse-angle.ts";
export { type Exact, fromExact, type Ratio, type Revolutions } from "./number/ratio.ts";
export type { Untried } from "./search/efforts.ts";
export { exactSettings, type SearchOptions } from "./search/exact-settings.ts";
export { type PreparedHead, prepare } from "./search/prepare.ts";
export { type Kind, type KindOf, kindOf } from "./setting/kind.ts";
export type {
  ByBothCranks,
  ByNearestDirect,
  ByNearestHole,
  ByScale,
  NearBy,
  NearError,
  NearFigures,
  NearFromZero,
  NearKind,
  NearMove,
  NearSetting,
  UnprovedNearMove,
} from "./setting/near-setting.ts";
export type { Proof } from "./setting/proof.ts";
export type {
  CompoundWay,
  Crank,
  DialWay,
  DifferentialWay,
  DirectWay,
  Fouling,
  Method,
  OfCrankMove,
  OfMove,
  OnHoles,
  Proved,
  SecondMove,
  Setting,
  SettingBy,
  SettingGears,
  SimpleWay,
  SmallMove,
  UnprovedSetting,
  WholeTurns,
  WideRangeWay,
} from "./setting/setting.ts";
export type { Target } from "./setting/target.ts";
export { indexRows, indexTable, type Stop, type TableOptions, type TableRow, type TableWatch } from "./table.ts";
