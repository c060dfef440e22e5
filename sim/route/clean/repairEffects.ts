import { InputError } from "../../../shared/problems.ts";
import { runSteps, type Steps } from "../log/steps.ts";
import { writeFar } from "../log/writeFar.ts";
import { cleanLogInSteps } from "./cleanLog.ts";
import { usualRoadLoad, wheelEnergy_J } from "./draws/wheelEnergy.ts";
import { climbOf } from "./heights/cleanHeights.ts";
import type { CleanedLog, CleanInput, CleanOptions, RepairKind } from "./report/cleanedLog.ts";
import type { RoadLoadTerms } from "./report/spread.ts";

/** Without these no drive can be made: time must rise, and a stand without a log is no drive. */
const neverOff: ReadonlySet<RepairKind> = new Set<RepairKind>(["backwardTime", "duplicate", "parked"]);

/** What one class of repair moved: the log as cleaned, less the same log cleaned without that class. */
export interface RepairEffect {
  readonly distance_m: number;
  /** Energy at the wheel, as a share of that without the repair; undefined where that was none. */
  readonly energy_frac: number | undefined;
  readonly climb_m: number;
}

/** The mean of the draws scatters by some tenths of a percent: less than this is no effect of a repair. Seen in made logs. */
const LEAST_ENERGY_frac = 0.01;
const LEAST_DISTANCE_frac = 0.001;
const LEAST_CLIMB_m = 1;

/** What a cleaned log needs in all. */
interface Totals {
  readonly distance_m: number;
  /** At the wheel, of the road that was taken. */
  readonly taken_J: number;
  /** The mean over all drives drawn, which scatters less; undefined where none were drawn, or without their heights. */
  readonly drawn_J: number | undefined;
  readonly climb_m: number;
}

/**
 * What each class of repair moved in distance, energy and climb, by cleaning the log again without it: as many cleanings as there were
 * repairs that can be left out. A class is not among them where no drive can be made without it.
 */
export function repairEffects(
  log: CleanInput,
  cleaned: CleanedLog,
  options: CleanOptions = {},
  progress?: (fraction_frac: number) => void,
): ReadonlyMap<RepairKind, RepairEffect> {
  return runSteps(repairEffectsInSteps(log, cleaned, options), progress);
}

function* repairEffectsInSteps(
  log: CleanInput,
  cleaned: CleanedLog,
  options: CleanOptions,
): Steps<ReadonlyMap<RepairKind, RepairEffect>> {
  const load = options.roadLoad ?? usualRoadLoad;
  const kinds = cleaned.repairs.map(({ kind }) => kind).filter((kind) => !neverOff.has(kind));
  const off = options.off ?? [];
  const effects = new Map<RepairKind, RepairEffect>();
  for (let i = 0; i < kinds.length; i++) {
    try {
      const without = [...off, kinds[i]];
      const steps = cleanLogInSteps(log, { ...options, off: without });
      let next = steps.next();
      for (; !next.done; next = steps.next()) yield (i + next.value) / kinds.length;
      effects.set(kinds[i], repairEffect({ log: cleaned, off }, { log: next.value, off: without }, load));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  return effects;
}

/** `distance -1.2 km, energy at the wheel -3 %, climb -340 m`, of what moved enough to be seen. */
export function effectWords({ distance_m, energy_frac, climb_m }: RepairEffect, whole_m: number): string {
  const signed = (value: number, words: string) => `${value < 0 ? "-" : "+"}${words}`;
  const moved = [
    ...(Math.abs(distance_m) < Math.max(1, LEAST_DISTANCE_frac * whole_m)
      ? []
      : [`distance ${signed(distance_m, writeFar(Math.abs(distance_m)))}`]),
    ...(energy_frac === undefined || Math.abs(energy_frac) < LEAST_ENERGY_frac
      ? []
      : [`energy at the wheel ${signed(energy_frac, `${Math.abs(100 * energy_frac).toFixed(0)} %`)}`]),
    ...(Math.abs(climb_m) < LEAST_CLIMB_m ? [] : [`climb ${signed(climb_m, `${Math.abs(climb_m).toFixed(0)} m`)}`]),
  ];
  return moved.length === 0 ? "hardly any distance, energy or climb" : moved.join(", ");
}

/** A cleaned log, and the repairs that were left out of it. */
export interface CleanedWithout {
  readonly log: CleanedLog;
  readonly off: readonly RepairKind[];
}

/**
 * A log cleaned with a repair, less the same log cleaned without it. The drawn drives tell energies apart best; where one of the two has none
 * with its heights in, the roads that were taken do.
 */
export function repairEffect(withIt: CleanedWithout, without: CleanedWithout, load = usualRoadLoad): RepairEffect {
  return lessThan(totalsOf(withIt.log, load, withIt.off), totalsOf(without.log, load, without.off));
}

function lessThan(withIt: Totals, without: Totals): RepairEffect {
  const isDrawn = withIt.drawn_J !== undefined && without.drawn_J !== undefined;
  const energyOf_J = ({ drawn_J, taken_J }: Totals) => (isDrawn && drawn_J !== undefined ? drawn_J : taken_J);
  return {
    distance_m: withIt.distance_m - without.distance_m,
    energy_frac: energyOf_J(without) > 0 ? energyOf_J(withIt) / energyOf_J(without) - 1 : undefined,
    climb_m: withIt.climb_m - without.climb_m,
  };
}

function totalsOf({ series, pieces }: CleanedLog, load: RoadLoadTerms, off: readonly RepairKind[]): Totals {
  const { speed_mps, elevation_m, distance_m, count } = series;
  const begins = new Set(series.breaks);
  let taken_J = 0;
  for (let i = 1; i < count; i++) {
    const rise_m = elevation_m[i] - elevation_m[i - 1];
    if (!begins.has(i))
      taken_J += wheelEnergy_J(load, speed_mps[i - 1], speed_mps[i], Number.isNaN(rise_m) ? 0 : rise_m);
  }
  const isDrawn = pieces.length > 0 && !off.includes("heightNoise");
  const mean = (values: Float64Array) => values.reduce((sum, each) => sum + each, 0) / values.length;
  return {
    distance_m: distance_m[count - 1] ?? 0,
    taken_J,
    drawn_J: isDrawn ? pieces.reduce((sum_J, { energy_J }) => sum_J + mean(energy_J), 0) : undefined,
    climb_m: climbOf(elevation_m),
  };
}
