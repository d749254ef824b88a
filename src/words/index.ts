/**
 * The sentences: what the library returns as codes and values, said in English and in the person's unit.
 *
 * @module turns-and-holes/words
 */
export { handOf } from "../head/hand.ts";
export {
  headLine,
  isShownImpossible,
  notFoundWords,
  passedOverItems,
  placeNoun,
  reasonItems,
  routeItems,
  shownImpossible,
  targetWords,
  triedWords,
  untriedWords,
} from "./answer-words.ts";
export { countsByEyeItems, moveGivesItems } from "./backwards-words.ts";
export { budgetGradeNote, budgetItems, budgetTitle, untoldItems } from "./budget-words.ts";
export { capital } from "./capital.ts";
export { type Coded, cautionItem, cautionItems, cautionItemsBesides, cautionsBesides } from "./caution-words.ts";
export { type CheckTelling, checkItem } from "./check-words.ts";
export { boltCircleWords, chordItem, coordinatesWords } from "./coordinate-words.ts";
export { stopPinIn } from "./crank-items.ts";
export { type DirectNouns, directNouns } from "./direct-nouns.ts";
export { circleFigure, compoundFigures, crankFigures, dialFigures, directFigures, type Figure, teethFigures } from "./figures.ts";
export {
  flatMeasures,
  flatsCautions,
  flatsHeading,
  flatsHow,
  flatsItems,
  flatsTitle,
  withoutHeadCautions,
} from "./flats-words.ts";
export { cutterItems } from "./gear/cutter-items.ts";
export { depthRuleWords } from "./gear/depth-rule.ts";
export { findingWords, measuresNoteWords } from "./gear/finding-words.ts";
export { gearInShort, gearItems, pitchName } from "./gear/gear-items.ts";
export {
  candidateItems,
  fitExplained,
  isOfTips,
  type MarksCounted,
  marksItems,
  measuredItems,
  pitchAndForm,
} from "./gear/identify-words.ts";
export { measureWords } from "./gear/measure-words.ts";
export { noteWords } from "./gear/note-words.ts";
export { type CheckInWords, checkItems, checksInWords, conditionItems } from "./gear/rebuilt-check-words.ts";
export { cuttingCautions, heatCautions } from "./gear/repair-cautions.ts";
export {
  blankItems,
  centringItems,
  errorAtPitch,
  numbering,
  runsOf,
  sawItems,
  teethInRuns,
  thinItems,
  withTheMate,
} from "./gear/repair-items.ts";
export { betweenWords, provingWords, purposeWords, startWords } from "./gear/repair-place-words.ts";
export { gearWithTexts, identificationWithTexts, repairWithTexts, type WithText } from "./gear/with-texts.ts";
export { foulingWords, trainItems, trainShort } from "./gear-train-words.ts";
export { scaleCautions, scaleItems, scaleWords, straightCells, straightHeads, straightLegend } from "./graduate-items.ts";
export type { Item } from "./item.ts";
export { eachPlaceItem, offByItems, otherWayItems, startItem } from "./job-words.ts";
export { answerWithWhys, drilledWithWhys, graduatedWithWhys, planWithWhys, tableWithWhys } from "./json.ts";
export { kindWords, nearNames, settingTitle } from "./kinds.ts";
export {
  circleItems,
  countRuns,
  coverageWithWhys,
  expectedItems,
  expectedWhy,
  kitDoneItem,
  kitGearItems,
  kitMissingItem,
  kitTitle,
  plateItems,
  untriedOfKitWords,
  wantItems,
  withoutPlateItems,
} from "./kit-words.ts";
export { backWords, holesUsedWords, type ListOf, legendWords, noPlaces, secondRoundWords } from "./legend-words.ts";
export { type LengthWords, lengthsIn, type Unit } from "./lengths.ts";
export type { KindWords, MethodWords, Section } from "./method-words.ts";
export { methodWords } from "./methods.ts";
export {
  type AtRadius,
  asNearAsRead,
  gradeNote,
  lengthOf,
  nearErrorWords,
  nearHow,
  nearItems,
  noNear,
  offBy,
} from "./near-words.ts";
export {
  arcUpTo,
  counted,
  fixed,
  listed,
  mixed,
  plain,
  roundedDown,
  roundedUp,
  shortAngle,
  signedArc,
  signedSeconds,
  whole,
  withPlus,
} from "./numbers.ts";
export { orderItems } from "./order-items.ts";
export type { ColumnHead, PlaceColumn, ScaleColumn } from "./place-column.ts";
export { placeColumns, scaleColumns } from "./place-columns.ts";
export { type GoesBy, goesBy, goOnWords, holeStands, moveWords } from "./place-words.ts";
export {
  between,
  boltCircleCautions,
  checkedCells,
  checkedHeads,
  checkFromZero,
  chordItems,
  chordsHow,
  circleWords,
  coordinateErrors,
  eachHoleItem,
  otherPlateItems,
  plateCheckItems,
  plateErrorItems,
  plateFoundItems,
  slidesOneWay,
} from "./plate-items.ts";
export { circlesOf, type OnPlate, plateName, plateShort, plateWithCircles } from "./plates.ts";
export { readingShort, readingWords, scalesStand } from "./reading-words.ts";
export { faultIn } from "./refusals.ts";
export {
  countWithoutGears,
  eachMove,
  givesWords,
  marksAmong,
  proofShort,
  proofShownWords,
  proofWords,
  settingFigures,
  settingItems,
  settingItemsAmong,
  shortSetting,
} from "./setting-words.ts";
export { proposedItems, spacingItems, spacingScale, spacingTitle } from "./spacing-words.ts";
export type { TextColumn } from "./spreadsheet/columns.ts";
export { boltCircleColumns, coordinateColumns } from "./spreadsheet/coordinates.ts";
export { csvOf, markdownOf } from "./spreadsheet/delimited.ts";
export { plateColumns, scaleLineColumns } from "./spreadsheet/made.ts";
export { positionColumns, spacingColumns } from "./spreadsheet/places.ts";
export { tableColumns } from "./spreadsheet/settings.ts";
export { standingItems } from "./standing-words.ts";
export { wayFigures, wayItems, wayName, wayShort, wayTitle } from "./way-words.ts";
export { whyNotWords } from "./why-not-words.ts";
export { largeCrankStays } from "./wide-range-words.ts";
