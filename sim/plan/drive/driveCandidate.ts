import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { J_PER_WH, M_PER_KM, RADPS_PER_RPM, W_PER_KW, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { type Channels, createChannels } from "../../step/channels.ts";
import { LIMITS } from "../../step/limits.ts";
import { prepare } from "../../step/prepare.ts";
import type { Ledger, Totals } from "../../step/totals.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Candidate, LedgerWh } from "../driveReport.ts";
import { findingsFor } from "../findings/findings.ts";
import { refusedBraking } from "../findings/refusedBraking.ts";
import { driveOn } from "../going/range.ts";
import { packFigures } from "./packFigures.ts";
import { standsWhere } from "./standsWhere.ts";

/**
 * One candidate pack of a job driven over a road: once from the ceiling for its figures, and on to the floor for its range.
 * Per-kilometre figures are over the driven distance, and 0 where the car never moved.
 */
export function driveCandidate(job: Job, pack: Pack, trace: Trace, withChannels: boolean): Candidate {
  const model = prepare(job, pack);
  const channels: Channels | undefined = withChannels ? createChannels(trace.time_s.length) : undefined;
  const { once, range } = driveOn(model, trace, channels);
  const { totals, endSoc_frac } = once;
  const stands = totals.reachedFloor || totals.behind_s === 0 ? undefined : standsWhere(model, trace, channels);
  const { ledger } = totals;
  const perKm = (energy_J: number) =>
    totals.distance_m > 0 ? energy_J / J_PER_WH / (totals.distance_m / M_PER_KM) : 0;
  const candidate: Candidate = {
    name: pack.name,
    pack: packFigures(pack, job.module, model.pack),
    testMass_kg: model.testMass_kg,
    wheelPositive_Whpkm: perKm(totals.wheelPositive_J),
    battery_Whpkm: perKm(totals.terminal_J),
    wall_Whpkm: perKm(ledger.total_J) / job.charger.efficiency_frac,
    range_km: range.distance_m / M_PER_KM,
    rangeEnd: range.end,
    isThereAndBack: range.isThereAndBack,
    ...(trace.spread && { roadEnergy_ratio: trace.spread.energy_ratio }),
    ...(stands && { stands }),
    refused: refusedBraking(model, trace, totals),
    soc: { start_frac: model.pack.ceiling_frac, end_frac: endSoc_frac, min_frac: totals.lowestSoc_frac },
    distance_km: totals.distance_m / M_PER_KM,
    regen_Wh: totals.regen_J / J_PER_WH,
    frictionBrake_Wh: ledger.frictionBrake_J / J_PER_WH,
    ledger_Wh: inWattHours(ledger),
    peak: {
      battery_A: totals.dischargePeak_A,
      charge_A: totals.chargePeak_A,
      motor_Nm: totals.motorPeak_Nm,
      motor_kW: totals.motorPeak_W / W_PER_KW,
      motor_rpm: totals.motorPeak_radps / RADPS_PER_RPM,
      min_V: totals.lowest_V,
      motor_degC: totals.hottestMotor_K - ZERO_CELSIUS_K,
      pack_degC: totals.hottestPack_K - ZERO_CELSIUS_K,
    },
    rmsBattery_A: Math.sqrt(totals.current_A2s / totals.time_s),
    missed_km: Math.max(0, totals.target_m - totals.distance_m) / M_PER_KM,
    behind_s: totals.behind_s,
    reachedFloor: totals.reachedFloor,
    shed_Wh: totals.shed_J / J_PER_WH,
    limited_s: limitedSeconds(totals),
    findings: [],
    ...(channels ? { channels } : {}),
  };
  return { ...candidate, findings: findingsFor(job, model, trace, candidate, range) };
}

function inWattHours(ledger: Ledger): LedgerWh {
  return {
    aero: ledger.aero_J / J_PER_WH,
    rolling: ledger.rolling_J / J_PER_WH,
    climb: ledger.climb_J / J_PER_WH,
    speed: ledger.speed_J / J_PER_WH,
    driveline: ledger.driveline_J / J_PER_WH,
    motor: ledger.motor_J / J_PER_WH,
    packHeat: ledger.packHeat_J / J_PER_WH,
    accessories: ledger.accessories_J / J_PER_WH,
    frictionBrake: ledger.frictionBrake_J / J_PER_WH,
    total: ledger.total_J / J_PER_WH,
  };
}

function limitedSeconds(totals: Totals): Candidate["limited_s"] {
  const at = (limit: (typeof LIMITS)[number]) => totals.limited_s[LIMITS.indexOf(limit)];
  return {
    grip: at("grip"),
    driveline: at("driveline"),
    motor: at("motor"),
    controller: at("controller"),
    pack: at("pack"),
    heat: at("heat"),
  };
}
