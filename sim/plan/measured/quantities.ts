import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import { C_PER_AH, J_PER_KWH, J_PER_WH, M_PER_KM, RADPS_PER_RPM } from "../../../shared/units.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import { atSample, type PackSamples } from "./packSamples.ts";

/** What is compared with the log, in the order of the table. */
export const quantityIds = [
  "distance_km",
  "discharge_kWh",
  "regen_kWh",
  "net_kWh",
  "use_Whpkm",
  "net_Ah",
  "peak_A",
  "charge_A",
  "lowest_V",
  "motor_rpm",
  "standing_W",
  "socUsed_frac",
] as const;
export type QuantityId = (typeof quantityIds)[number];

export type Quantities = Readonly<Record<QuantityId, number>>;

export const quantityWords: Readonly<Record<QuantityId, readonly [string, QuantityKind]>> = {
  distance_km: ["Distance", "distance"],
  discharge_kWh: ["Drawn from the pack", "energy"],
  regen_kWh: ["Returned by braking", "energy"],
  net_kWh: ["Net from the pack", "energy"],
  use_Whpkm: ["Net over distance", "energyUse"],
  net_Ah: ["Charge taken", "charge"],
  peak_A: ["Highest current out", "current"],
  charge_A: ["Highest current in", "current"],
  lowest_V: ["Lowest voltage", "voltage"],
  motor_rpm: ["Highest motor speed", "rotation"],
  standing_W: ["Drawn while standing", "accessoryPower"],
  socUsed_frac: ["Charge used, of the pack", "fraction"],
};

/** Of these the log's loudest second says little: noise alone makes peaks. */
const PEAK_frac = 0.002;

/** Sums and extremes of a drive: of the log's own samples, or of a model's at the same moments. */
export function quantitiesOf(
  drive: DrivenAsMeasured,
  samples: PackSamples,
  source: "log" | "model",
  extras: { readonly motor_radps?: number; readonly socUsed_frac?: number } = {},
): Quantities {
  const isLog = source === "log";
  const power: number[] = [];
  const current: number[] = [];
  const voltage: number[] = [];
  let [out_J, in_J, charge_C, standing_J, standing_s, fastest_radps] = [0, 0, 0, 0, 0, 0];
  for (let k = 0; k < samples.count; k++) {
    const power_W = isLog ? samples.power_W[k] : atSample(samples, drive.power_W, k);
    const current_A = isLog ? samples.current_A[k] : atSample(samples, drive.current_A, k);
    const weight_s = samples.weight_s[k];
    power.push(power_W);
    current.push(current_A);
    voltage.push(isLog ? samples.voltage_V[k] : atSample(samples, drive.voltage_V, k));
    if (power_W > 0) out_J += weight_s * power_W;
    else in_J -= weight_s * power_W;
    charge_C += weight_s * current_A;
    fastest_radps = Math.max(fastest_radps, atSample(samples, drive.motor_radps, k));
    if (isDeepStanding(drive, samples.row[k])) {
      standing_J += weight_s * power_W;
      standing_s += weight_s;
    }
  }
  const distance_km = drivenDistance_km(drive, samples);
  const net_J = out_J - in_J;
  const first = drive.soc_frac[samples.row[0]];
  const last = drive.soc_frac[samples.row[samples.count - 1]];
  const fastest = isLog ? (extras.motor_radps ?? Number.NaN) : fastest_radps;
  return {
    distance_km,
    discharge_kWh: out_J / J_PER_KWH,
    regen_kWh: in_J / J_PER_KWH,
    net_kWh: net_J / J_PER_KWH,
    use_Whpkm: net_J / J_PER_WH / distance_km,
    net_Ah: charge_C / C_PER_AH,
    peak_A: Math.max(0, extreme(current, 1)),
    charge_A: Math.max(0, -extreme(current, -1)),
    lowest_V: extreme(voltage, -1),
    motor_rpm: fastest / RADPS_PER_RPM,
    standing_W: standing_s > 0 ? standing_J / standing_s : Number.NaN,
    socUsed_frac: isLog ? (extras.socUsed_frac ?? Number.NaN) : first - last,
  };
}

/** Standing for a while on both sides, so that neither the clocks nor a creep are in it. */
const DEEP = 2;

function isDeepStanding({ target_mps, count }: DrivenAsMeasured, row: number): boolean {
  for (let i = Math.max(0, row - DEEP); i <= Math.min(count - 1, row + DEEP + 1); i++)
    if (target_mps[i] >= 0.3) return false;
  return true;
}

/** Distance of the time that samples stand for: what was driven in a gap of the logger has no energy to be compared with. */
function drivenDistance_km({ distance_m, target_mps }: DrivenAsMeasured, samples: PackSamples): number {
  let sum_m = 0;
  for (let k = 0; k < samples.count; k++) sum_m += samples.weight_s[k] * target_mps[samples.row[k]];
  const whole_m = distance_m[distance_m.length - 1] ?? 0;
  return (samples.cover_frac > 0.995 ? whole_m : Math.min(whole_m, sum_m)) / M_PER_KM;
}

/** The highest (or lowest) value but for the few of two in a thousand. */
function extreme(values: readonly number[], sense: 1 | -1): number {
  const sorted = [...values].sort((a, b) => sense * (b - a));
  return sorted[Math.min(sorted.length - 1, Math.floor(PEAK_frac * sorted.length))] ?? Number.NaN;
}
