import type { Track } from "../../web/charts/parts/track/trackOnPlane.ts";
import type { RawAgainstCleanedInput } from "../../web/charts/rawAgainstCleaned.ts";

/** An invented log on open sea (no road is there): a loop with a jump, a gap, and what a cleaning would make of them. */
const ROWS = 900;
const seconds = Float64Array.from({ length: ROWS }, (_, i) => i);
const isRepaired = Uint8Array.from({ length: ROWS }, (_, i) =>
  (i >= 300 && i < 340) || (i >= 610 && i < 616) ? 1 : 0,
);
const speed_mps = seconds.map((t) => 8 + 7 * Math.sin(t / 40) * Math.cos(t / 23));
const elevation_m = seconds.map((t) => 40 + 30 * Math.sin(t / 150));

export const inventedLog: RawAgainstCleanedInput = {
  raw: {
    time_s: seconds,
    speed_mps: speed_mps.map((speed, i) =>
      i >= 300 && i < 340 ? Number.NaN : i >= 610 && i < 616 ? 47 : speed + Math.sin(i * 2.1),
    ),
    elevation_m: elevation_m.map((height, i) => height + 3 * Math.sin(i * 1.3)),
  },
  cleaned: { time_s: seconds, speed_mps, elevation_m, isRepaired },
};

export const inventedTrack: Track = {
  time_s: seconds,
  longitude_deg: seconds.map((t) => -40 + 0.03 * Math.sin(t / 140) + 0.004 * Math.sin(t / 17)),
  latitude_deg: seconds.map((t) => 30 + 0.014 * Math.cos(t / 150)),
  speed_mps,
  isRepaired,
};
