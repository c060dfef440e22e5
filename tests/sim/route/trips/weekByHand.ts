import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { splitTrips } from "../../../../sim/route/trips/splitTrips.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

export const H_s = 3600;

export const MONDAY_s = Date.UTC(2024, 3, 29) / 1000;

/** A drive of 600 s at up to 15 m/s with recorded speeds, north where `sense` is 1, back where -1; about 8.6 km. */
export function leg(start_s: number, from_m: number, sense: 1 | -1) {
  let north_m = from_m;
  return Array.from({ length: 601 }, (_, i) => {
    const speed_mps = Math.max(0, Math.min(15, i, 600 - i));
    north_m += sense * speed_mps;
    return { time_s: start_s + i, north_m, speed_mps, elevation_m: 100 + north_m / 100 };
  });
}

export const far_m = leg(0, 0, 1)[600].north_m;

/** Two days of home to work at 8:00 and back at 17:00, the logger off in between. */
export const week = [0, 24].flatMap((day) => [
  ...leg(MONDAY_s + (day + 8) * H_s, 0, 1),
  ...leg(MONDAY_s + (day + 17) * H_s, far_m, -1),
]);

export const cleaned = cleanLog(madeLog(week));
export const found = splitTrips(cleaned);
