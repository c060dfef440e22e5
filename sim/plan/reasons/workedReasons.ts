import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { RADPS_PER_RPM, W_PER_KW, WH_PER_KWH } from "../../../shared/units.ts";
import { accessories_W } from "../../step/prepare.ts";
import { bandOf } from "../answer/band.ts";
import type { Candidate, SteadyRow } from "../driveReport.ts";
import { rollingLine } from "../going/rollingLine.ts";
import { gearSpeedReason } from "./gearSpeedReason.ts";
import type { Format, ReasonFacts, WorkedReason } from "./reasonFacts.ts";

type Explanation = (facts: ReasonFacts, format: Format, units: UnitHabit) => WorkedReason | undefined;

/** The result of an explanation in the reader's units, with its sum; nothing where that is not known yet. */
export function workedReason(key: string, facts: ReasonFacts, units: UnitHabit): WorkedReason | undefined {
  const format: Format = (kind, value, digits) => writeQuantity(kind, value, units, digits);
  return works[key]?.(facts, format, units);
}

/** Weighed to the kilogram, so that a sum of masses comes out. */
const MASS_DIGITS = 4;
/** Effects told one by one; the rest are taken together. */
const TOLD_AT_MOST = 6;

const works: Readonly<Record<string, Explanation>> = {
  testMass_kg: ({ job: { vehicle, module, packs }, run, packIndex }, format) => {
    const mass = (value_kg: number) => format("mass", value_kg, MASS_DIGITS);
    const { seriesModules, parallelModules, boxes_frac, whole } = packs[packIndex];
    const bare =
      vehicle.converted_kg === undefined
        ? `${mass(vehicle.kerb_kg)} kerb weight - ${mass(vehicle.removed_kg)} removed + ${mass(vehicle.added_kg)} added`
        : `${mass(vehicle.converted_kg)} as converted, without pack`;
    const roof = vehicle.roof ? ` + ${mass(vehicle.roof.mass_kg)} on the roof` : "";
    return {
      value: format("mass", run.testMass_kg),
      lines: [
        whole
          ? `pack: ${format("energy", whole.energy_kWh)} × ${num(whole.mass_kgpkWh)} kg/kWh = ${mass(run.pack.mass_kg)}`
          : `pack: ${seriesModules} × ${parallelModules} modules × ${mass(module.mass_kg)} × (1 + ${num(boxes_frac)}) = ${mass(run.pack.mass_kg)}`,
        `${bare} + ${mass(run.pack.mass_kg)} pack + ${mass(vehicle.load_kg)} load${roof} = ${mass(run.testMass_kg)}`,
      ],
    };
  },
  rolling_N: ({ job, run, steady }, format, units) =>
    steady && {
      value: `${format("force", steady.rolling_N)} at ${format("speed", steady.speed_kmh)}`,
      lines: rollingLine(job, run.testMass_kg, steady, units),
    },
  wheelPositive_Whpkm: ({ run }, format) => overDistance(run.wheelPositive_Whpkm, run, format),
  battery_Whpkm: ({ run }, format) => overDistance(run.battery_Whpkm, run, format),
  wall_Whpkm: ({ job, run }, format) => ({
    value: format("energyUse", run.wall_Whpkm),
    lines:
      run.distance_km > 0
        ? [
            `${format("energyUse", run.ledger_Wh.total / run.distance_km)} from the cells / ${num(job.charger.efficiency_frac)} = ${format("energyUse", run.wall_Whpkm)}`,
          ]
        : [],
  }),
  range_km: ({ run }, format) => {
    const cells_Whpkm = run.ledger_Wh.total / run.distance_km;
    const atLeast = run.rangeEnd === "time" ? "at least " : "";
    const rough = format("distance", (run.pack.usable_kWh * WH_PER_KWH) / cells_Whpkm);
    return {
      value: `${atLeast}${format("distance", run.range_km)}`,
      lines:
        run.distance_km > 0
          ? [
              `cross-check, not used: ${format("energy", run.pack.usable_kWh)} × 1000 / ${format("energyUse", cells_Whpkm)} from the cells = ${rough}`,
            ]
          : [],
    };
  },
  usable_kWh: ({ job: { module, packs }, run: { pack }, packIndex }, format) => {
    const { ceiling_frac, floor_frac, parallelModules } = packs[packIndex];
    const capacity_Ah = parallelModules * module.capacity_Ah;
    const mean_V = (pack.usable_kWh * WH_PER_KWH) / (capacity_Ah * (ceiling_frac - floor_frac));
    return {
      value: format("energy", pack.usable_kWh),
      lines: [
        `capacity: ${parallelModules} × ${format("charge", module.capacity_Ah)} = ${format("charge", capacity_Ah)}`,
        `average of the curve ${format("voltage", mean_V)} × ${format("charge", capacity_Ah)} × (${num(ceiling_frac)} - ${num(floor_frac)}) / 1000 = ${format("energy", pack.usable_kWh)}`,
      ],
    };
  },
  needed_km: ({ job: { usualDay_km, allowance, conditions }, needed_km }, format) => ({
    value: format("distance", needed_km),
    lines: [
      conditions?.winter
        ? `${format("distance", usualDay_km)} × ${num(needed_km / usualDay_km)} = ${format("distance", needed_km)}`
        : `${format("distance", usualDay_km)} × ${num(allowance.winter_ratio)} / ${num(allowance.aged_frac)} = ${format("distance", needed_km)}`,
    ],
    isOfEveryPack: true,
  }),
  dayUse_frac: ({ job: { usualDay_km }, run }, format) => {
    const share = format("fraction", usualDay_km / run.range_km);
    return {
      value: share,
      lines: [`100 × ${format("distance", usualDay_km)} / ${format("distance", run.range_km)} = ${share}`],
    };
  },
  missed_km: ({ run }, format) => ({
    value: format("distance", run.missed_km),
    lines: [
      `${format("distance", run.distance_km + run.missed_km)} asked - ${format("distance", run.distance_km)} driven = ${format("distance", run.missed_km)}`,
    ],
  }),
  regen_Wh: ({ run }, format) => ({ value: format("energy", run.regen_Wh / WH_PER_KWH), lines: [] }),
  peakBattery_A: ({ run }, format) => {
    const value = format("current", run.peak.battery_A);
    const { channels } = run;
    if (!channels) return { value, lines: [] };
    let at = 0;
    for (let i = 1; i < channels.length; i++) if (channels.battery_A[i] > channels.battery_A[at]) at = i;
    const volts_V = channels.battery_V[at];
    const power_kW = channels.battery_W[at] / W_PER_KW;
    return {
      value,
      lines: [
        `at that step: ${format("electricPower", power_kW)} × 1000 / ${format("voltage", volts_V)} at the terminals = ${format("current", channels.battery_A[at])}`,
      ],
    };
  },
  gearSpeed_kmh: ({ job }, format, units) => gearSpeedReason(job, format, units),
  motor_Nm: ({ job: { motor }, run, envelope }, format, units) => {
    const driving = envelope?.filter(({ torque_Nm }) => torque_Nm >= 0) ?? [];
    if (driving.length === 0) return undefined;
    const peak_Nm = Math.max(...driving.map(({ torque_Nm }) => torque_Nm));
    const value = `${format("torque", peak_Nm)} at the ${format("voltage", run.pack.nominal_V)} of the pack`;
    if (motor.envelope.kind !== "peak") return { value, lines: [] };
    const { torque_Nm, power_kW } = motor.envelope;
    const corner_rpm = (power_kW * W_PER_KW) / torque_Nm / RADPS_PER_RPM;
    // 60 000 / 2 pi for kW and Nm; 33 000 / 2 pi for horsepower and pound-feet.
    const factor = units === "metric" ? 60_000 : 33_000;
    return {
      value,
      lines: [
        `peak power is reached at ${format("power", power_kW)} × ${factor} / (2 × 3.14 × ${format("torque", torque_Nm)}) = ${format("rotation", corner_rpm)}, at ${format("voltage", motor.reference_V)}`,
      ],
    };
  },
  motorLoss_W: ({ steady }, format) => {
    if (!steady) return undefined;
    const power_kW = controller_kW(steady);
    const loss = format("electricPower", power_kW * (1 - steady.efficiency_frac));
    return {
      value: `${loss} at a steady ${format("speed", steady.speed_kmh)}`,
      lines: [`${format("electricPower", power_kW)} taken in × (1 - ${num(steady.efficiency_frac)}) = ${loss}`],
    };
  },
  steady_Whpkm: ({ job, steady }, format) => {
    if (!steady) return undefined;
    const value = format("energyUse", steady.battery_Whpkm);
    const accessories = format("electricPower", accessories_W(job) / W_PER_KW);
    const speed = format("speed", steady.speed_kmh);
    return {
      value: `${value} at ${speed}`,
      lines: [
        `(${format("electricPower", controller_kW(steady))} at the controller + ${accessories} of accessories) × 1000 / ${speed} = ${value}`,
      ],
    };
  },
  band_km: ({ unknowns, run: { range_km } }, format) => {
    if (!unknowns) return undefined;
    const driven = unknowns.filter(({ failsAtLow, failsAtHigh }) => !failsAtLow && !failsAtHigh);
    const ends = driven.map(({ atLow_km, atHigh_km }) => ({ atLow: atLow_km, atHigh: atHigh_km }));
    const { low, high } = bandOf(range_km, ends);
    const drops_km = ends.map(({ atLow, atHigh }) => Math.max(0, range_km - Math.min(atLow, atHigh)));
    const rises_km = ends.map(({ atLow, atHigh }) => Math.max(0, Math.max(atLow, atHigh) - range_km));
    return {
      value: `${format("distance", low)} to ${format("distance", high)}`,
      lines: [...squaresLine("less", drops_km, format), ...squaresLine("more", rises_km, format)],
    };
  },
};

/** The root of the sum of squares, the largest first; what is left of many is taken together. */
function squaresLine(words: string, effects_km: readonly number[], format: Format): string[] {
  const sorted_km = effects_km.filter((each_km) => each_km > 0).sort((a, b) => b - a);
  if (sorted_km.length === 0) return [];
  const rest_km = Math.hypot(...sorted_km.slice(TOLD_AT_MOST));
  const parts_km = [...sorted_km.slice(0, TOLD_AT_MOST), ...(rest_km > 0 ? [rest_km] : [])];
  const squares = parts_km.map((each_km) => `(${format("distance", each_km)})²`).join(" + ");
  const others = rest_km > 0 ? " for all others together" : "";
  return [`${words}: √(${squares}${others}) = ${format("distance", Math.hypot(...sorted_km))}`];
}

function num(value: number): string {
  return formatNumber(value);
}

/** An energy over distance from the energy of the whole drive. */
function overDistance(use_Whpkm: number, { distance_km }: Candidate, format: Format): WorkedReason {
  const energy = format("energy", (use_Whpkm * distance_km) / WH_PER_KWH);
  const value = format("energyUse", use_Whpkm);
  return { value, lines: distance_km > 0 ? [`${energy} × 1000 / ${format("distance", distance_km)} = ${value}`] : [] };
}

/** What the controller takes from the pack at a steady speed, in kW. */
function controller_kW({ motor_Nm, motor_rpm, efficiency_frac }: SteadyRow): number {
  const shaft_W = motor_Nm * motor_rpm * RADPS_PER_RPM;
  return efficiency_frac > 0 ? shaft_W / efficiency_frac / W_PER_KW : 0;
}
