import { currentWithin_A } from "../battery/currentLimit.ts";
import { left_frac, setHeatFactors, warmed_K } from "../math/heatLump.ts";
import type { UniformTable } from "../math/uniformTable.ts";
import { envelopeTorque_Nm } from "../motor/envelope.ts";
import { motorLoss_W } from "../motor/loss.ts";
import type { Trace } from "../trace/trace.ts";
import { heaterPower_W } from "../vehicle/cabin.ts";
import { SHORT_m, STEEPEST } from "./elevation.ts";
import { NONE } from "./limits.ts";
import type { RunContext } from "./runContext.ts";
import { stepsIn } from "./stepsIn.ts";
import type { Totals } from "./totals.ts";

/** How near to what the pack gives or takes a current may come and still be clear of it, rounding apart. */
const CLEARLY = 1 - 1e-9;

/**
 * Drives intervals of a trace from its sample `from` on for as long as it can be shown that nothing holds the car back and
 * it stays in its gear, and adds them to the totals. Returns the first sample that it left undone: the trace's length where it drove to the end. What it leaves is for `step`.
 *
 * Here the physics of `step` and `finishInterval` stands once more, for such an interval alone: the same laws in the same order of
 * operations, so that both give the same numbers to the last digit, which `tests/sim/step/driveFreely.test.ts` holds over random
 * cars and roads. It is here for speed only: what goes on from interval to interval stands in local variables, nothing is searched,
 * and hardly anything is called, since a call that is not inlined costs as much as the law in it. Read `step`; change both.
 */
export function driveFreely(context: RunContext, totals: Totals, trace: Trace, from: number): number {
  if (context.ramp_frac < 1) return from;
  const { model, state, scratch, profile } = context;
  const { road, motor, controller, pack, grip, gears, gearUp_mps, ambient_K, inertia_kg, noLoadDrag_Nm } = model;
  const { envelope, loss, rotorInertia_kgm2, max_radps, rollBack_radps } = motor;
  const { discharge, charge, capacity_C, leads_ohm, charging_ratio } = pack;
  const { ledger, limited_s } = totals;
  const { time_s, speed_mps } = trace;
  const { motorHeat, packHeat } = scratch;
  const n = time_s.length;

  const { cabin } = model;
  const { cabinHeat } = scratch;
  let { accessories_W } = model;
  let heater_W = 0;
  const { rollingWeight_N, rollingWeight_Npmps2, rollingFixed_N, rolling_Npmps } = road;
  const { drag_Npmps2, headWind_mps, weight_N, wheelDrag_N } = road;
  const law = loss.form === "fourTerm" ? loss.law : undefined;
  const hasPeaks = envelope.points === undefined;
  const mostTorque_Nm = Math.min(controller.torque_Nm, envelope.peakTorque_Nm);
  const { fadeNone_mps, fadeFull_mps } = controller;
  const leastCalm_A = CLEARLY * Math.min(discharge.continuous_A, discharge.peak_A);
  const leastCalmCharge_A = CLEARLY * Math.min(charge.continuous_A, charge.peak_A);
  const dischargeSquared_A2 = discharge.continuous_A * discharge.continuous_A;
  const chargeSquared_A2 = charge.continuous_A * charge.continuous_A;
  const openTable_V = pack.openCircuit_V.values;
  const resistances_ohm = pack.resistance_ohm.values;
  const ratios = pack.resistance_ratio.values;
  // Of the weight on the driven axle: its share at rest, and which way it moves as the car speeds up.
  const gripShare_frac = grip === undefined || grip.drivenAxle === "both" ? 1 : grip.drivenShare_frac;
  const gripMoves =
    grip === undefined || grip.drivenAxle === "both"
      ? 0
      : grip.drivenAxle === "rear"
        ? grip.transfer_ratio
        : -grip.transfer_ratio;

  const gearIndex = state.gear.gear;
  let { inGear_s } = state.gear;
  const gear = gears[gearIndex];
  const { motor_radpm, efficiency_frac, top_mps } = gear;
  const gearFrom_mps = gearIndex > 0 ? gearUp_mps[gearIndex - 1] : Number.NEGATIVE_INFINITY;
  const gearTo_mps = gearIndex < gearUp_mps.length ? gearUp_mps[gearIndex] : Number.POSITIVE_INFINITY;
  const regenTorque_Nm = Math.min(gear.regen_Nm, controller.regen_Nm, mostTorque_Nm);

  let now_mps = state.speed_mps;
  let road_m = state.distance_m;
  let elevation_m = state.elevation_m;
  let leg = state.leg;
  let motor_K = state.motor_K;
  let soc_frac = state.pack.soc_frac;
  let pack_K = state.pack.temperature_K;
  let { cabin_K, trip_m } = state;
  let dischargeUse_A2s = state.pack.dischargeUse_A2s;
  let chargeUse_A2s = state.pack.chargeUse_A2s;

  let i = from;
  for (; i < n; i++) {
    const dt_s = time_s[i] - time_s[i - 1];
    const end_mps = speed_mps[i];
    if (stepsIn(dt_s, speed_mps[i - 1], end_mps) !== 1) break;
    const mean_mps = 0.5 * (now_mps + end_mps);
    if (mean_mps <= gearFrom_mps || mean_mps > gearTo_mps) break;
    if (motor_K > motor.heat.derateFrom_K || pack_K > pack.heat.derateFrom_K) break;

    // The pack as the interval finds it.
    const openAt = place(pack.openCircuit_V, soc_frac);
    const openCell = Math.trunc(openAt);
    const openCircuit_V =
      openTable_V[openCell] + (openAt - openCell) * (openTable_V[openCell + 1] - openTable_V[openCell]);
    const ohmAt = place(pack.resistance_ohm, soc_frac);
    const ohmCell = Math.trunc(ohmAt);
    const ratioAt = place(pack.resistance_ratio, pack_K);
    const ratioCell = Math.trunc(ratioAt);
    const cells_ohm =
      (resistances_ohm[ohmCell] + (ohmAt - ohmCell) * (resistances_ohm[ohmCell + 1] - resistances_ohm[ohmCell])) *
      (ratios[ratioCell] + (ratioAt - ratioCell) * (ratios[ratioCell + 1] - ratios[ratioCell]));

    // What the road asks, and the motor for it.
    let way_m = 0;
    let endElevation_m = elevation_m;
    let endLeg = leg;
    let rolling_N = 0;
    let drag_N = 0;
    let climb_N = 0;
    let inertia_N = 0;
    let wheel_N = 0;
    let driveline_N = 0;
    let brake_N = 0;
    let motor_radps = 0;
    let rotor_Nm = 0;
    let motor_Nm = 0;
    let wanted_Nm = 0;
    let faded_frac = 0;
    let loss_W = 0;
    if (now_mps !== 0 || end_mps !== 0) {
      const spare_radps = max_radps - end_mps * motor_radpm;
      if (end_mps > top_mps || spare_radps <= 0 || spare_radps < rollBack_radps) break;
      const accel_mps2 = (end_mps - now_mps) / dt_s;
      way_m = mean_mps * dt_s;
      let sinSlope = 0;
      let cosSlope = 1;
      if (profile !== undefined) {
        const { distance_m: along_m, elevation_m: heights_m } = profile;
        const end_m = road_m + way_m;
        let at = leg;
        while (at < along_m.length - 2 && along_m[at + 1] <= end_m) at++;
        const part = Math.min(1, Math.max(0, (end_m - along_m[at]) / (along_m[at + 1] - along_m[at])));
        endElevation_m = heights_m[at] + part * (heights_m[at + 1] - heights_m[at]);
        sinSlope = (endElevation_m - elevation_m) / way_m;
        if (way_m <= SHORT_m || Math.abs(sinSlope) > STEEPEST) break;
        cosSlope = Math.sqrt(1 - sinSlope * sinSlope);
        endLeg = at;
      }
      rolling_N =
        cosSlope * (rollingWeight_N + rollingWeight_Npmps2 * mean_mps * mean_mps) +
        rollingFixed_N +
        rolling_Npmps * mean_mps;
      const air_mps = mean_mps + headWind_mps;
      drag_N = drag_Npmps2 * air_mps * Math.abs(air_mps);
      climb_N = weight_N * sinSlope;
      inertia_N = inertia_kg * accel_mps2;
      wheel_N = rolling_N + drag_N + climb_N + wheelDrag_N + inertia_N;
      driveline_N = wheel_N;
      motor_radps = mean_mps * motor_radpm;
      rotor_Nm = rotorInertia_kgm2 * accel_mps2 * motor_radpm;
      const input_Nm =
        wheel_N >= 0 ? wheel_N / (motor_radpm * efficiency_frac) : (wheel_N * efficiency_frac) / motor_radpm;
      wanted_Nm = input_Nm + noLoadDrag_Nm + rotor_Nm;
      motor_Nm = wanted_Nm;

      let grip_N = Number.POSITIVE_INFINITY;
      if (grip !== undefined) {
        const { gravity_mps2 } = grip;
        const load_mps2 = gravity_mps2 * cosSlope * gripShare_frac + gripMoves * (accel_mps2 + gravity_mps2 * sinSlope);
        grip_N = Math.max(0, grip.grip_coeff * grip.mass_kg * load_mps2);
      }
      if (wanted_Nm >= 0) {
        if (wheel_N > grip_N || motor_Nm - rotor_Nm > gear.drive_Nm || motor_Nm > mostTorque_Nm) break;
      } else {
        // Braking, the motor takes what does not hang on voltage; the friction brakes have the rest.
        faded_frac =
          mean_mps <= fadeNone_mps
            ? 0
            : mean_mps >= fadeFull_mps
              ? 1
              : (mean_mps - fadeNone_mps) / (fadeFull_mps - fadeNone_mps);
        const beside_Nm = noLoadDrag_Nm + rotor_Nm;
        const passed_Nm = Math.min(gear.overrun_Nm - rotor_Nm, (grip_N * efficiency_frac) / motor_radpm - beside_Nm);
        motor_Nm = Math.min(0, Math.max(wanted_Nm, -(regenTorque_Nm * faded_frac), -passed_Nm));
        if (motor_Nm !== wanted_Nm) {
          const left_Nm = motor_Nm - beside_Nm;
          driveline_N =
            left_Nm >= 0 ? left_Nm * motor_radpm * efficiency_frac : (left_Nm * motor_radpm) / efficiency_frac;
          brake_N = wheel_N - driveline_N;
        }
      }
      loss_W =
        law !== undefined
          ? law.copper_coeff * motor_Nm * motor_Nm +
            motor_radps * (law.iron_coeff + law.windage_coeff * motor_radps * motor_radps) +
            law.constant_W
          : motorLoss_W(loss, motor_Nm, motor_radps);
    }

    if (cabin !== undefined) {
      heater_W = heaterPower_W(cabin, cabin_K, ambient_K, left_frac(cabinHeat, cabin.lump, dt_s));
      accessories_W = model.accessories_W + heater_W;
    }
    const shaft_W = motor_Nm * motor_radps;
    const controller_W = shaft_W + loss_W;
    const terminal_W = controller_W + accessories_W;
    const resistance_ohm = terminal_W >= 0 ? cells_ohm + leads_ohm : cells_ohm * charging_ratio + leads_ohm;
    const discriminant = openCircuit_V * openCircuit_V - 4 * resistance_ohm * terminal_W;
    const current_A = (2 * terminal_W) / (openCircuit_V + Math.sqrt(Math.max(discriminant, 0)));
    const terminal_V = openCircuit_V - resistance_ohm * current_A;

    // Clear of what the pack gives, were it the accessories alone, and of what it takes.
    const drawn_A = terminal_W >= accessories_W ? current_A : (2 * accessories_W) / openCircuit_V;
    if (drawn_A > leastCalm_A && drawn_A > CLEARLY * currentWithin_A(discharge, dischargeUse_A2s, dt_s)) break;
    const sagged_V = openCircuit_V - (cells_ohm + leads_ohm) * drawn_A;
    if (CLEARLY * sagged_V < pack.min_V || CLEARLY * sagged_V < 0.5 * openCircuit_V) break;
    if (terminal_W < 0) {
      if (pack_K < pack.coldChargeFull_K || pack_K <= pack.coldChargeNone_K) break;
      if (-current_A > leastCalmCharge_A && -current_A > CLEARLY * currentWithin_A(charge, chargeUse_A2s, dt_s)) break;
      if (-current_A * dt_s > CLEARLY * (pack.regenTo_frac - soc_frac) * capacity_C) break;
      if (terminal_V > CLEARLY * pack.max_V) break;
    }
    // Clear of what voltage and power leave the motor.
    if (motor_Nm !== 0) {
      const reference_radps = (motor_radps * envelope.reference_V) / terminal_V;
      const envelope_Nm = !hasPeaks
        ? envelopeTorque_Nm(envelope, motor_radps, terminal_V)
        : envelope.peakTorque_Nm * reference_radps <= envelope.peakPower_W
          ? envelope.peakTorque_Nm
          : envelope.peakPower_W / reference_radps;
      if (motor_Nm > 0) {
        if (motor_Nm > envelope_Nm || controller_W > controller.power_W) break;
        if (controller_W > controller.current_A * terminal_V) break;
        if (terminal_V <= controller.min_V || terminal_V < controller.rollBackBelow_V) break;
      } else {
        if (-motor_Nm > faded_frac * envelope_Nm || -motor_Nm > mostTorque_Nm) break;
        if (-controller_W > faded_frac * controller.regen_W) break;
        if (-controller_W > faded_frac * controller.regen_A * terminal_V) break;
        if (terminal_V > controller.rollBackAbove_V) break;
      }
    }
    const used_frac = (current_A * dt_s) / capacity_C;
    if (used_frac > 0 && used_frac >= soc_frac - pack.floor_frac) break;

    // Nothing holds it back: the car is at the interval's end.
    now_mps = end_mps;
    road_m += way_m;
    elevation_m = endElevation_m;
    leg = endLeg;
    inGear_s += dt_s;
    if (dt_s !== motorHeat.dt_s) setHeatFactors(motorHeat, motor.heat, dt_s);
    if (dt_s !== packHeat.dt_s) setHeatFactors(packHeat, pack.heat, dt_s);
    motor_K = motor_K - (1 - motorHeat.left_frac) * (motor_K - ambient_K) + motorHeat.perLoss_KpW * loss_W;
    const current_A2 = current_A * current_A;
    const cells_W = current_A2 * (resistance_ohm - leads_ohm);
    pack_K = pack_K - (1 - packHeat.left_frac) * (pack_K - ambient_K) + packHeat.perLoss_KpW * cells_W;
    soc_frac -= used_frac;
    if (cabin !== undefined) {
      cabin_K = warmed_K(cabin.lump, cabinHeat, cabin_K, heater_W, ambient_K, dt_s);
      trip_m += way_m;
      if (trip_m >= cabin.trip_m) {
        trip_m = 0;
        cabin_K = ambient_K;
      }
      totals.heater_J += heater_W * dt_s;
    }
    const given_A2 = current_A > 0 ? current_A2 : 0;
    const taken_A2 = current_A < 0 ? current_A2 : 0;
    dischargeUse_A2s = Math.min(
      discharge.budget_A2s,
      Math.max(0, dischargeUse_A2s + (given_A2 - dischargeSquared_A2) * dt_s),
    );
    chargeUse_A2s = Math.min(charge.budget_A2s, Math.max(0, chargeUse_A2s + (taken_A2 - chargeSquared_A2) * dt_s));

    const mesh_N = driveline_N >= 0 ? driveline_N * (1 / efficiency_frac - 1) : -driveline_N * (1 - efficiency_frac);
    ledger.aero_J += drag_N * way_m;
    ledger.rolling_J += rolling_N * way_m;
    ledger.climb_J += climb_N * way_m;
    ledger.speed_J += inertia_N * way_m + rotor_Nm * motor_radps * dt_s;
    ledger.driveline_J += (wheelDrag_N + mesh_N) * way_m + noLoadDrag_Nm * motor_radps * dt_s;
    ledger.motor_J += loss_W * dt_s;
    ledger.packHeat_J += current_A2 * resistance_ohm * dt_s;
    ledger.accessories_J += accessories_W * dt_s;
    ledger.frictionBrake_J -= brake_N * way_m;
    ledger.total_J += openCircuit_V * current_A * dt_s;

    totals.time_s += dt_s;
    totals.distance_m += way_m;
    totals.target_m += 0.5 * (speed_mps[i - 1] + end_mps) * dt_s;
    if (wheel_N > 0) totals.wheelPositive_J += wheel_N * way_m;
    totals.terminal_J += terminal_V * current_A * dt_s;
    if (controller_W < 0) totals.regen_J -= controller_W * dt_s;
    totals.current_A2s += current_A2 * dt_s;
    limited_s[NONE] += dt_s;
    const end_radps = end_mps * motor_radpm;
    if (current_A > totals.dischargePeak_A) totals.dischargePeak_A = current_A;
    if (-current_A > totals.chargePeak_A) totals.chargePeak_A = -current_A;
    if (motor_Nm > totals.motorPeak_Nm) totals.motorPeak_Nm = motor_Nm;
    if (shaft_W > totals.motorPeak_W) totals.motorPeak_W = shaft_W;
    if (end_radps > totals.motorPeak_radps) totals.motorPeak_radps = end_radps;
    if (terminal_V < totals.lowest_V) totals.lowest_V = terminal_V;
    if (soc_frac < totals.lowestSoc_frac) totals.lowestSoc_frac = soc_frac;
    if (motor_K > totals.hottestMotor_K) totals.hottestMotor_K = motor_K;
    if (pack_K > totals.hottestPack_K) totals.hottestPack_K = pack_K;
  }

  state.speed_mps = now_mps;
  state.distance_m = road_m;
  state.elevation_m = elevation_m;
  state.leg = leg;
  state.motor_K = motor_K;
  state.gear.inGear_s = inGear_s;
  state.pack.soc_frac = soc_frac;
  state.pack.temperature_K = pack_K;
  state.cabin_K = cabin_K;
  state.trip_m = trip_m;
  state.pack.dischargeUse_A2s = dischargeUse_A2s;
  state.pack.chargeUse_A2s = chargeUse_A2s;
  return i;
}

/** Where a value lies on a table's grid, in cells, kept within it. */
function place({ low, perUnit, values }: UniformTable, x: number): number {
  return Math.min(values.length - 2, Math.max(0, (x - low) * perUnit));
}
