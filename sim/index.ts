/** The only door of sim/ for web/. */

export { driveJob } from "./plan/driveJob.ts";
export type { Candidate, DriveReport, Enough, Finding, LedgerWh, MotorSurface, SteadyRow } from "./plan/driveReport.ts";
export { type EngineCurve, engineCurve } from "./plan/engineCurve.ts";
export { type Explanation, explanations } from "./plan/explanations.ts";
export { HIGH_VOLTAGE_V } from "./plan/findings.ts";
export { type Datasheet, type FittedMotor, fitDatasheet } from "./plan/fitMotor.ts";
export { motorSurface } from "./plan/motorSurface.ts";
export { lossTableOf, type MotorMap, readMotorMap } from "./plan/readMotorMap.ts";
export { roadTrace } from "./plan/roadTrace.ts";
export { type StandingStart, standingStart, timeTo_s } from "./plan/standingStart.ts";
export { steadyTable } from "./plan/steadyTable.ts";
export { type Unknown, unknownsByEffect } from "./plan/unknowns.ts";
export { type Channels, createChannels, LIMITS, type Limit } from "./step/channels.ts";
export { prepare } from "./step/prepare.ts";
export { type StandardCycle, standardCycles } from "./trace/standardCycles.ts";
export type { Profile, Trace } from "./trace/trace.ts";
