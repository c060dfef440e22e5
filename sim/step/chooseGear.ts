import type { Gear } from "../vehicle/gear.ts";

/** For so long after a change of gear the next one back asks for more than the bare speed. Assumed: nobody changes to and fro faster. */
const UNDECIDED_s = 10;
/** How far beyond the speed of a change the car must be to change back within that time. Assumed. */
const BEYOND_frac = 0.05;

/** The gear a car is in, the one before, and for how long. */
export interface GearState {
  gear: number;
  gearBefore: number;
  inGear_s: number;
}

/** In the lowest gear, with no change behind it. */
export function createGearState(): GearState {
  return { gear: 0, gearBefore: 0, inGear_s: Number.POSITIVE_INFINITY };
}

/** Back to the lowest gear, with no change behind it. */
export function resetGearState(state: GearState): void {
  state.gear = 0;
  state.gearBefore = 0;
  state.inGear_s = Number.POSITIVE_INFINITY;
}

/**
 * The gear for a mean speed, by the speeds at which the next one follows. Where the speed dithers round one of them, as recorded speeds
 * do, the car stays in its gear: a change back within 10 s of a change asks for a speed 5 % beyond, or for a speed that the lower gear
 * does not reach.
 */
export function chooseGear(
  gears: readonly Gear[],
  gearUp_mps: Float64Array,
  state: GearState,
  mean_mps: number,
): number {
  let gear = 0;
  while (gear < gearUp_mps.length && mean_mps > gearUp_mps[gear]) gear++;
  const { gear: now, gearBefore } = state;
  if (gear === now || state.inGear_s >= UNDECIDED_s) return gear;
  if (gear < now && gearBefore < now) return mean_mps < (1 - BEYOND_frac) * gearUp_mps[now - 1] ? gear : now;
  if (gear > now && gearBefore > now) {
    const isFast = mean_mps > (1 + BEYOND_frac) * gearUp_mps[now] || mean_mps > gears[now].top_mps;
    return isFast ? gear : now;
  }
  return gear;
}

/** Notes a time in a gear. */
export function advanceGear(state: GearState, gear: number, dt_s: number): void {
  if (gear !== state.gear) {
    state.gearBefore = state.gear;
    state.gear = gear;
    state.inGear_s = 0;
  }
  state.inGear_s += dt_s;
}
