import { drag_N, rolling_N } from "../vehicle/roadLoad.ts";
import { elevationAt_m, slopeOver } from "./elevation.ts";
import type { RunContext } from "./runContext.ts";

/**
 * Writes into the interval what the road asks of the tyres for its end speed and its time under way.
 *
 *   F = rolling + drag + m g sin θ + wheel-side drag + inertia · dv/dt, all at the mean speed       [GTR15, Annex 7, para 5]
 */
export function setRoadDemand(context: RunContext): void {
  const { model, profile, state, interval } = context;
  const { road } = model;
  const { end_mps, moving_s } = interval;
  const mean_mps = 0.5 * (state.speed_mps + end_mps);
  const accel_mps2 = (end_mps - state.speed_mps) / moving_s;
  const distance_m = mean_mps * moving_s;
  let sinSlope = 0;
  let cosSlope = 1;
  if (profile !== undefined) {
    const rise_m = elevationAt_m(profile, state.distance_m + distance_m, state.leg) - state.elevation_m;
    sinSlope = slopeOver(rise_m, distance_m, profile, state.leg);
    cosSlope = Math.sqrt(1 - sinSlope * sinSlope);
  }
  const rolls_N = rolling_N(road, mean_mps, cosSlope);
  const drags_N = drag_N(road, mean_mps);
  const climb_N = road.weight_N * sinSlope;
  const inertia_N = model.inertia_kg * accel_mps2;

  interval.mean_mps = mean_mps;
  interval.accel_mps2 = accel_mps2;
  interval.distance_m = distance_m;
  interval.sinSlope = sinSlope;
  interval.cosSlope = cosSlope;
  interval.rolling_N = rolls_N;
  interval.drag_N = drags_N;
  interval.climb_N = climb_N;
  interval.inertia_N = inertia_N;
  interval.wheel_N = rolls_N + drags_N + climb_N + road.wheelDrag_N + inertia_N;
}
