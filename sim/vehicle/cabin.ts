import type { CabinHeat } from "../../shared/job/schema/conditions.ts";
import { M_PER_KM, W_PER_KW, ZERO_CELSIUS_K } from "../../shared/units.ts";
import type { HeatLump } from "../math/heatLump.ts";

/** A cabin as one lump of heat, with a heater that a thermostat holds to its power. In SI. */
export interface Cabin {
  readonly lump: HeatLump;
  readonly power_W: number;
  readonly wanted_K: number;
  readonly isPreheated: boolean;
  /** Way after which the cabin has gone cold again; infinite where the whole drive is one trip. */
  readonly trip_m: number;
}

/** The cabin of a condition's heater; nothing where no thermostat decides. */
export function prepareCabin(heat: CabinHeat | undefined): Cabin | undefined {
  if (heat?.kind !== "thermostat") return undefined;
  return {
    lump: { perCapacity_KpJ: 1 / (heat.capacity_kJpK * 1000), cooling_WpK: heat.loss_WpK },
    power_W: heat.power_kW * W_PER_KW,
    wanted_K: heat.cabin_degC + ZERO_CELSIUS_K,
    isPreheated: heat.isPreheated,
    trip_m: heat.trip_km === undefined ? Number.POSITIVE_INFINITY : heat.trip_km * M_PER_KM,
  };
}

/** Temperature of a cabin when the car leaves home. */
export function cabinAtStart_K({ isPreheated, wanted_K }: Cabin, ambient_K: number): number {
  return isPreheated ? Math.max(wanted_K, ambient_K) : ambient_K;
}

/**
 * Power of a heater over the next `dt_s`, in watts: all of it until the cabin is as warm as is wanted, then what holds it there.
 *
 *   C dT/dt = P − G (T − T₀);  P = G (T_w − T₀ − (T − T₀) e^(−G dt/C)) / (1 − e^(−G dt/C)) just reaches T_w, within nought and all of it
 *
 * `left_frac` is e^(−G dt/C).
 */
export function heaterPower_W(cabin: Cabin, cabin_K: number, ambient_K: number, left_frac: number): number {
  const { lump, wanted_K, power_W } = cabin;
  const asked_W =
    (lump.cooling_WpK * (wanted_K - ambient_K - (cabin_K - ambient_K) * left_frac)) / Math.max(1e-12, 1 - left_frac);
  return Math.min(power_W, Math.max(0, asked_W));
}
