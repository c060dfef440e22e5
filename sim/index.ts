/** The only door of sim/ for web/. */

export type { Candidate, DriveReport, Enough, Finding, LedgerWh, MotorMap, SteadyRow } from "./plan/driveReport.ts";
export { type Channels, createChannels, LIMITS, type Limit } from "./step/channels.ts";
export type { Profile, Trace } from "./trace/trace.ts";
