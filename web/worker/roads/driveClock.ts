import type { Routes } from "../../../sim/index.ts";
import type { LogSetting } from "./roadsApi.ts";

/** Where clocks of the computer and of the place driven differ by no more than this, the computer is taken to be at home. */
const SAME_PLACE_s = 5400;

/** The clock of the drive, and where it comes from. */
export interface Clock {
  readonly offset_s: number;
  readonly from: string;
}

/**
 * Local time less UTC: as said, as the file states it, none where its times are local already, this computer's own
 * where that fits the place driven, else whole hours by the longitude.
 */
export function driveClock(routes: Routes, joined: ReturnType<Routes["joinLogs"]>, setting: LogSetting): Clock {
  if (setting.utcOffset_s !== undefined) return { offset_s: setting.utcOffset_s, from: "as set here" };
  if (!joined.hasZone) return { offset_s: 0, from: "the log's times are local already" };
  if (joined.utcOffset_s !== 0) return { offset_s: joined.utcOffset_s, from: "written in the log" };
  const byPlace_s = routes.guessUtcOffset_s(joined.fixes.longitude_deg);
  const first_s = joined.fixes.time_s.find((time_s) => !Number.isNaN(time_s)) ?? 0;
  const here_s = -60 * new Date(first_s * 1000).getTimezoneOffset();
  if (Math.abs(here_s - byPlace_s) <= SAME_PLACE_s)
    return { offset_s: here_s, from: "a guess: this computer's own clock" };
  return { offset_s: byPlace_s, from: "a guess by the longitude" };
}
