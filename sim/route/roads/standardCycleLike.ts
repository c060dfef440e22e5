import { rootMeanSquare } from "simple-statistics";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { Characteristics } from "../../trace/characteristics.ts";

/** A standard cycle and what driving it asks for. */
export interface CycleCharacteristics {
  readonly id: string;
  readonly characteristics: Characteristics;
}

export interface Likeness {
  readonly id: string;
  /** 1 where all characteristics agree, towards 0 as they part. */
  readonly likeness_frac: number;
  /** How the trip differs, for a person: `15 % faster, 0.8 stops a km fewer`. */
  readonly difference: string;
}

/**
 * The standard cycles by likeness to a trip, the likest first. Compared are mean speed while moving, top speed, relative
 * positive acceleration (each as the logarithm of its ratio) and stops a km (as a difference, half a stop counting like
 * 20 %); likeness is exp(-d) with d their root mean square. A plain measure of our own, no source.
 */
export function standardCycleLike(trip: Characteristics, cycles: readonly CycleCharacteristics[]): readonly Likeness[] {
  return cycles
    .map(({ id, characteristics }) => ({
      id,
      likeness_frac: Math.exp(-distance(trip, characteristics)),
      difference: words(trip, characteristics),
    }))
    .sort((a, b) => b.likeness_frac - a.likeness_frac);
}

function distance(a: Characteristics, b: Characteristics): number {
  return rootMeanSquare([
    logRatio(a.moving_mps, b.moving_mps),
    logRatio(a.max_mps, b.max_mps),
    logRatio(a.relativePositiveAcceleration_mps2, b.relativePositiveAcceleration_mps2),
    0.4 * (stopsPerKm(a) - stopsPerKm(b)),
  ]);
}

/** Speeds and accelerations of something that hardly moves are held off zero, so that the logarithm stays finite. */
function logRatio(a: number, b: number): number {
  return Math.log(Math.max(a, 0.01) / Math.max(b, 0.01));
}

function stopsPerKm(of: Characteristics): number {
  return of.distance_m > 0 ? of.stops / (of.distance_m / M_PER_KM) : 0;
}

function words(trip: Characteristics, cycle: Characteristics): string {
  const speed = 100 * (trip.moving_mps / cycle.moving_mps - 1);
  const stops = stopsPerKm(trip) - stopsPerKm(cycle);
  const parts: string[] = [];
  if (Math.abs(speed) >= 3) {
    parts.push(`${Math.abs(speed).toFixed(0)} % ${speed > 0 ? "faster" : "slower"}`);
  }
  if (Math.abs(stops) >= 0.15) {
    parts.push(`${formatNumber(Math.abs(stops), 2)} stops a km ${stops > 0 ? "more" : "fewer"}`);
  }
  return parts.length > 0 ? parts.join(", ") : "much the same";
}
