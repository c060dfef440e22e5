import { type Draws, drawsOf } from "../support/draws.ts";
import type { LogRow } from "./logMaker.ts";
import { radiiAt_m, type TrafficTruth } from "./trafficDrive.ts";

/** How a phone on the dashboard spoils a drive. */
export interface PhoneSpoiling {
  readonly seed: number;
  readonly sampling_s: number;
  /** Standard deviation per axis of the correlated noise. */
  readonly position_m: number;
  readonly hasSpeed: boolean;
  readonly height: "barometer" | "satellite" | "none";
  /** Fixes at uneven times, and hardly any while the phone lies still. */
  readonly isDutyCycled: boolean;
  /** Between houses positions slide across the street and speeds get worse. */
  readonly hasCanyons: boolean;
  readonly hasTunnels: boolean;
}

/** A phone on a good day. */
export const phone: Omit<PhoneSpoiling, "seed"> = {
  sampling_s: 1,
  position_m: 3,
  hasSpeed: true,
  height: "satellite",
  isDutyCycled: true,
  hasCanyons: true,
  hasTunnels: true,
};

/**
 * What a phone makes of a drive. Its positions drift by a spectrum, not by a first-order process: 120 waves of periods of 5 to
 * 1500 s spread evenly on a log scale, the power of each as its period to the power 0.5.
 */
export function phoneLog(truth: TrafficTruth, spoiling: PhoneSpoiling, start_s = 1_720_000_000): LogRow[] {
  const draw = drawsOf(spoiling.seed * 104_729 + 7);
  const last_s = truth.time_s.length - 1;
  const axes = [correlatedNoise(draw, 5, 1500, 0.25), correlatedNoise(draw, 5, 1500, 0.25)] as const;
  const drift = correlatedNoise(draw, 60, 6000, 0.5);
  const up = correlatedNoise(draw, 20, 3000, 0.3);
  const canyons = spoiling.hasCanyons ? canyonsOf(truth, draw) : [];
  const tunnels = spoiling.hasTunnels ? spansOf(draw, 900, last_s, 15, 70) : [];
  const rows: LogRow[] = [];
  let [canyonNoise_m, asleepSince_s, wakesAt_s] = [0, Number.NaN, 0];
  for (let time_s = 0; time_s <= last_s; ) {
    const at = rowAt(truth, time_s);
    const canyon = canyons.find(({ from_m, to_m }) => at.distance_m >= from_m && at.distance_m < to_m);
    const keep = Math.exp(-spoiling.sampling_s / 8);
    canyonNoise_m = keep * canyonNoise_m + 3 * Math.sqrt(1 - keep * keep) * draw.normal();
    let north_m = spoiling.position_m * axes[0](time_s) + 0.2 * draw.normal();
    let east_m = spoiling.position_m * axes[1](time_s) + 0.2 * draw.normal();
    if (canyon) {
      const share = (at.distance_m - canyon.from_m) / (canyon.to_m - canyon.from_m);
      const across_m = 0.5 * (1 - Math.cos(2 * Math.PI * share)) * (canyon.size_m + canyonNoise_m);
      north_m -= across_m * Math.sin(at.heading_rad);
      east_m += across_m * Math.cos(at.heading_rad);
    }
    const speedNoise_mps = (canyon ? 0.35 : 0.1) * draw.normal();
    const elevation_m =
      spoiling.height === "barometer"
        ? Math.round((at.elevation_m + 2.5 * drift(time_s) + 0.15 * draw.normal()) * 10) / 10
        : at.elevation_m + 2 * spoiling.position_m * up(time_s) + 0.4 * draw.normal();
    const isDark = tunnels.some(({ from_s, to_s }) => time_s >= from_s && time_s < to_s);
    if (!isDark && time_s >= wakesAt_s) {
      const radii = radiiAt_m(at.latitude_deg);
      rows.push({
        time_s: start_s + time_s,
        latitude_deg: at.latitude_deg + ((north_m / radii.north) * 180) / Math.PI,
        longitude_deg: at.longitude_deg + ((east_m / radii.east) * 180) / Math.PI,
        speed_mps: spoiling.hasSpeed ? Math.max(0, at.speed_mps + (at.speed_mps > 0 ? speedNoise_mps : 0)) : Number.NaN,
        elevation_m: spoiling.height === "none" ? Number.NaN : elevation_m,
      });
    }
    // Still for half a minute, the phone looks up from time to time only; it is late to see that the car moves again.
    if (spoiling.isDutyCycled) {
      if (at.speed_mps > 0.5) {
        if (time_s - asleepSince_s > 30 && wakesAt_s > time_s + 5) wakesAt_s = time_s + draw.between(1, 5);
        asleepSince_s = Number.NaN;
      } else {
        if (Number.isNaN(asleepSince_s)) asleepSince_s = time_s;
        if (time_s - asleepSince_s > 30 && time_s >= wakesAt_s) wakesAt_s = time_s + draw.between(15, 40);
      }
    }
    const late_s = spoiling.isDutyCycled && draw.between(0, 1) < 0.05 ? Math.round(draw.between(0, 900)) / 1000 : 0;
    time_s = Math.round(1000 * (time_s - (time_s % 1) + spoiling.sampling_s + late_s)) / 1000;
  }
  return rows;
}

/** Noise correlated in time, of standard deviation 1 in time: many waves, each as large as its period to the power given, in random phases. */
function correlatedNoise(draw: Draws, least_s: number, most_s: number, power: number): (time_s: number) => number {
  const COUNT = 120;
  const waves = Array.from({ length: COUNT }, (_, i) => {
    const period_s = least_s * (most_s / least_s) ** ((i + draw.between(0, 1)) / COUNT);
    return { period_s, size: period_s ** power, phase_rad: draw.between(0, 2 * Math.PI) };
  });
  const scale = Math.sqrt(2 / waves.reduce((sum, { size }) => sum + size * size, 0));
  return (time_s) =>
    scale * waves.reduce((sum, w) => sum + w.size * Math.sin((2 * Math.PI * time_s) / w.period_s + w.phase_rad), 0);
}

/** Half of the city's streets stand between high houses, 80 to 300 m at a time. */
function canyonsOf(truth: TrafficTruth, draw: Draws) {
  const canyons: { from_m: number; to_m: number; size_m: number }[] = [];
  for (let from_m = 0; from_m < truth.distance_m[truth.distance_m.length - 1]; ) {
    const to_m = from_m + draw.between(80, 300);
    const row = truth.distance_m.findIndex((each) => each >= from_m);
    const side = draw.between(0, 1) < 0.5 ? -1 : 1;
    if (truth.isCity[row] && draw.between(0, 1) < 0.5)
      canyons.push({ from_m, to_m, size_m: side * draw.between(5, 20) });
    from_m = to_m;
  }
  return canyons;
}

function spansOf(draw: Draws, every_s: number, last_s: number, least_s: number, most_s: number) {
  const spans: { from_s: number; to_s: number }[] = [];
  for (let at_s = draw.between(60, every_s); at_s < last_s; at_s += draw.between(0.4 * every_s, 1.6 * every_s)) {
    spans.push({ from_s: at_s, to_s: Math.min(last_s - 30, at_s + draw.between(least_s, most_s)) });
  }
  return spans;
}

/** The drive at a time between its rows. */
function rowAt(truth: TrafficTruth, time_s: number) {
  const i = Math.min(truth.time_s.length - 2, Math.floor(time_s));
  const share = time_s - i;
  const of = (column: Float64Array) => column[i] * (1 - share) + column[i + 1] * share;
  return {
    latitude_deg: of(truth.latitude_deg),
    longitude_deg: of(truth.longitude_deg),
    speed_mps: of(truth.speed_mps),
    elevation_m: of(truth.elevation_m),
    distance_m: of(truth.distance_m),
    heading_rad: of(truth.heading_rad),
  };
}
