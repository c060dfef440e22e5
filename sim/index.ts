/** The only door of sim/ for web/, and what scripts import from the package. */

import { characteristics } from "./trace/characteristics.ts";
import { cycleTrace, standardCycles } from "./trace/standardCycles.ts";

export { packMass_kg } from "./battery/packMass.ts";
export { firstWhere } from "./math/halving.ts";
export { type Answer, answerFor } from "./plan/answer/answer.ts";
export type { Band } from "./plan/answer/band.ts";
export { CONDITIONS, type ConditionId, conditionNames } from "./plan/answer/conditions.ts";
export { leftBetween, leftCell } from "./plan/answer/leftWords.ts";
export type { PackAnswer, Use } from "./plan/answer/packAnswer.ts";
export { packsToSample } from "./plan/answer/packsToSample.ts";
export type { SampledRange } from "./plan/answer/sampledRange.ts";
export { type AnswerWords, answerWords, largestWords, settlementWords } from "./plan/answer/sentence.ts";
export type { Settlement, WorthMeasuring } from "./plan/answer/settle.ts";
export type { Stop } from "./plan/answer/stops.ts";
export { packsInQuestion, scaledConditions, scaledUnknowns, unknownsOfPacks } from "./plan/answer/unknownsOfPacks.ts";
export { chargesFromEmpty, type FromEmptyJob } from "./plan/charging/chargeFromEmpty.ts";
export { type ChargePlan, chargePlan } from "./plan/charging/chargePlan.ts";
export type { ChargeFigures, ChargeRow } from "./plan/charging/chargeRow.ts";
export type { DayByHour } from "./plan/charging/dayByHour.ts";
export { usualDays } from "./plan/charging/usualDays.ts";
export { coastDownNotes } from "./plan/coastDown/coastDownNotes.ts";
export { readBands } from "./plan/coastDown/readBands.ts";
export { roadLoadFrom } from "./plan/coastDown/roadLoadFrom.ts";
export { type Condition, fuelPerHour_l } from "./plan/conditions/condition.ts";
export {
  type ConditionDrive,
  type ConditionDrives,
  driveConditions,
  type InConditions,
} from "./plan/conditions/driveConditions.ts";
export type { LongHill } from "./plan/currents/courses.ts";
export type { CurrentsPlan } from "./plan/currents/currentsPlan.ts";
export { currentCautions, currentsSentence, startingPoints } from "./plan/currents/currentWords.ts";
export { driveJob, drivePacks, reportOf } from "./plan/drive/driveJob.ts";
export { roadTrace } from "./plan/drive/roadTrace.ts";
export type { Candidate, DriveReport, Enough, LedgerWh, MotorSurface, SteadyRow } from "./plan/driveReport.ts";
export { enoughFor } from "./plan/enough.ts";
export type { GearboxStudy } from "./plan/gearbox/gearboxStudy.ts";
export type { GearRow } from "./plan/gears/gearTable.ts";
export { gearName } from "./plan/gears/oneGear.ts";
export { continuousHeat } from "./plan/going/continuousHeat.ts";
export { fuelCheck, fuelCheckWords } from "./plan/going/fuelCheck.ts";
export { knownEngine } from "./plan/going/knownEngine.ts";
export { engineFigures, paceRows, paceWords } from "./plan/going/paceWords.ts";
export type { HeatLine } from "./plan/heat/heatLines.ts";
export { surfaces } from "./plan/hills/gripOnHill.ts";
export { notStarting } from "./plan/hills/lowestUsed.ts";
export type { DaysFailed } from "./plan/layouts/daysFailed.ts";
export type { PackStudy } from "./plan/layouts/packStudy.ts";
export { packsBesideWords } from "./plan/layouts/packsBesideWords.ts";
export type { Measured, MeasuredLines } from "./plan/measured/measure.ts";
export type { OutlookRow } from "./plan/measured/outlookRows.ts";
// What the conversion costs and saves.
export { type CostPlan, costPlan, type PackCosts } from "./plan/money/costPlan.ts";
export { BESIDES, costNotes, costSentences } from "./plan/money/costWords.ts";
export { type Quote, quotesOf } from "./plan/money/quote.ts";
export { quoteTable } from "./plan/money/quoteTable.ts";
export type { Span } from "./plan/money/span.ts";
export { type FittedMotor, fitDatasheet } from "./plan/motorMap/fitMotor.ts";
export type { MotorMap } from "./plan/motorMap/readMotorMap.ts";
export { besideWords, frozenOn, rangeWords } from "./plan/predictions/besideWords.ts";
export { type Beside, compare } from "./plan/predictions/compare.ts";
export { freeze, withPrediction } from "./plan/predictions/freeze.ts";
export type { ReasonFacts } from "./plan/reasons/reasonFacts.ts";
export { type SettingsSheet, settingsSheet } from "./plan/settings/settingsSheet.ts";
export { openValues, type Unknown, unknownsByEffect } from "./plan/unknowns.ts";
export type { Draw } from "./plan/vary/variants.ts";
export type { VariedPack } from "./plan/vary/varyPack.ts";
export { varyWords } from "./plan/vary/varyWords.ts";
export { placesOfWeek } from "./plan/week/placesOfWeek.ts";
export type { PackWeek, WeekReport } from "./plan/week/weekReport.ts";
export { roadsOfWeek } from "./plan/week/weekRoadIds.ts";
export { lowestWords, weekNotes, weekSentences } from "./plan/week/weekWords.ts";
export { bayFits, clearanceOf_mm, POSTURES } from "./plan/weight/bayFit.ts";
export { bayWords } from "./plan/weight/bayWords.ts";
export { overPlate, overPlateWords } from "./plan/weight/overPlate.ts";
export { heaviestPack_kg, overWords, splitWords } from "./plan/weight/splitWords.ts";
export { axleLoads, type Load } from "./plan/weight/weigh.ts";
export { plateNotes, weightNotes } from "./plan/weight/weightNotes.ts";
export { drivenDaysAWeek } from "./plan/year/daysAWeek.ts";
export { middleDay_km } from "./plan/year/drivenDays.ts";
export { drivenDaysWords } from "./plan/year/drivenDaysWords.ts";
export { yearOf, yearRanges } from "./plan/year/driveYear.ts";
export type { YearRanges, YearReport } from "./plan/year/yearReport.ts";
export { type AgedPack, agedPack, packUse } from "./plan/years/ageing.ts";
export type { PackLife } from "./plan/years/packLife.ts";
export { packLifeWords } from "./plan/years/packLifeWords.ts";
export type { BuiltCarLogs } from "./route/builtCarLogs.ts";
export type { CleanedWithout } from "./route/clean/repairEffects.ts";
export type { CleanedLog, Quality } from "./route/clean/report/cleanedLog.ts";
// Logs and typed roads. The types and lists are here; the work itself is a piece of its own, fetched when first asked for.
export { Mended, PARKED_s, type Repair, type RepairKind, repairKinds } from "./route/clean/report/cleanedLog.ts";
export {
  type ColumnRole,
  columnRoles,
  type LogFile,
  type Question,
  type ReadLogOptions,
} from "./route/log/logFile.ts";
export type { Steps } from "./route/log/steps.ts";
export type { TypedDriving } from "./route/roads/typedRoad.ts";
export type { DriveParts } from "./route/trips/drivePartsOf.ts";
export type { Place } from "./route/trips/findPlaces.ts";
export type { Trip, Trips } from "./route/trips/splitTrips.ts";
export { type Channels, createChannels } from "./step/channels.ts";
export { LIMITS, type Limit } from "./step/limits.ts";
export { BEHIND_mps } from "./step/run.ts";
export { cycleTrace, standardCycles } from "./trace/standardCycles.ts";
export { type Pitch, steepestPitch } from "./trace/steepestPitch.ts";
export type { Profile, Trace } from "./trace/trace.ts";
export { airDensity_kgpm3 } from "./vehicle/airDensity.ts";
export type { CoastBand, CoastDown } from "./vehicle/coastDown/evaluateCoastDown.ts";

/** Everything of sim/route that a page needs, and what sim/trace says about a trace. */
export async function openRoutes() {
  const pieces = await Promise.all([
    import("./route/readLog.ts"),
    import("./route/clean/cleanLog.ts"),
    import("./route/clean/repairEffects.ts"),
    import("./route/joinLogs.ts"),
    import("./route/trips/splitTrips.ts"),
    import("./route/trips/summariseDays.ts"),
    import("./route/trips/findPlaces.ts"),
    import("./route/clean/spreadOfTrips.ts"),
    import("./route/roads/toTrace.ts"),
    import("./route/roads/routeShape.ts"),
    import("./route/roads/readTypedRoad.ts"),
    import("./route/roads/typedRoad.ts"),
    import("./route/roads/repeatCycle.ts"),
    import("./route/roads/layHillsUnder.ts"),
    import("./route/roads/standardCycleLike.ts"),
    import("./route/log/steps.ts"),
  ]);
  const [
    read,
    clean,
    effects,
    join,
    split,
    days,
    places,
    open,
    trace,
    shape,
    readTyped,
    typed,
    repeat,
    hills,
    like,
    steps,
  ] = pieces;
  return {
    ...read,
    ...clean,
    ...effects,
    ...join,
    ...split,
    ...days,
    ...places,
    ...open,
    ...trace,
    ...shape,
    ...readTyped,
    ...typed,
    ...repeat,
    ...hills,
    ...like,
    ...steps,
    standardCycles,
    cycleTrace,
    characteristics,
  };
}

/** Steady speeds, and what the motor can do: a piece of its own, asked for once the answer stands. */
export async function openOtherDrives() {
  const [{ steadyTable }, { motorSurface }] = await Promise.all([
    import("./plan/going/steadyTable.ts"),
    import("./plan/drive/motorSurface.ts"),
  ]);
  return { steadyTable, motorSurface };
}

/** Currents and what carries them: a piece of its own, asked for once the answer stands. */
export async function openCurrents() {
  return import("./plan/currents/currentsPlan.ts");
}

/** The reader of motor maps: a piece of its own too, as few jobs bring one. */
export async function openMotorMaps() {
  return import("./plan/motorMap/readMotorMap.ts");
}

/** A built car's log compared with a job: a piece of its own, fetched when the first such log is dropped. */
export async function openMeasuring() {
  const pieces = await Promise.all([
    import("./plan/measured/measure.ts"),
    import("./plan/measured/chargerFromLog.ts"),
    import("./plan/measured/checkPackLog.ts"),
    import("./plan/measured/correctedJob.ts"),
    import("./plan/measured/packWords.ts"),
    import("./plan/measured/quantities.ts"),
    import("./plan/measured/bothLines.ts"),
    import("./plan/measured/outlookRows.ts"),
    import("./plan/measured/serviceWords.ts"),
    import("./route/builtCarLogs.ts"),
    import("./route/trips/drivePartsOf.ts"),
  ]);
  const [measured, charger, check, corrected, pack, quantities, lines, outlook, service, logs, parts] = pieces;
  return {
    ...measured,
    ...charger,
    ...corrected,
    ...pack,
    ...lines,
    ...outlook,
    ...service,
    ...logs,
    ...parts,
    isCharging: check.isCharging,
    quantityWords: quantities.quantityWords,
  };
}

export type Measuring = Awaited<ReturnType<typeof openMeasuring>>;

/** Formulae, inputs and sources of results, with the sums: a piece of its own, fetched when somebody asks why. */
export async function openExplanations() {
  const [{ explanations }, { workedReason }] = await Promise.all([
    import("./plan/reasons/explanations.ts"),
    import("./plan/reasons/workedReasons.ts"),
  ]);
  return { explanations, workedReason };
}

/** What the old gearbox will stand, gear by gear: a piece of its own, as the answer does without. */
export async function openGearbox() {
  return import("./plan/gearbox/gearboxStudy.ts");
}

/** Motor and pack along a hot day: drives for one figure, of a working that few have open. */
export async function openHeat() {
  return import("./plan/heat/heatLines.ts");
}

/** Layouts of the module and the smallest pack that will do, its life, and how sure the answer is: a piece of its own, as the answer does without. */
export async function openPackStudies() {
  const [{ packStudy }, { daysFailed }, { packLife }, { varyPack }, { sampleRanges }] = await Promise.all([
    import("./plan/layouts/packStudy.ts"),
    import("./plan/layouts/daysFailed.ts"),
    import("./plan/years/packLife.ts"),
    import("./plan/vary/varyPack.ts"),
    import("./plan/answer/answerByDriving.ts"),
  ]);
  return { packStudy, daysFailed, packLife, varyPack, sampleRanges };
}

/** A week by the clock: a piece of its own, as few jobs have one and the answer does without. */
export async function openWeek() {
  return import("./plan/week/driveWeek.ts");
}

export type Explanations = Awaited<ReturnType<typeof openExplanations>>;

export type Routes = Awaited<ReturnType<typeof openRoutes>>;
