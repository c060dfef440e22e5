import { C_PER_AH } from "../../../shared/units.ts";
import type { PackModel } from "../../battery/packModel.ts";
import { covarianceOf, leastSquares } from "../../math/leastSquares.ts";
import { lookUp } from "../../math/uniformTable.ts";
import type { Band } from "../answer/band.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import { atSample, type PackSamples } from "./packSamples.ts";
import { NINE_OF_TEN } from "./parameters.ts";

/** What a drive's volts and amps show of the pack itself. */
export interface PackFound {
  /** From the steps of volts with amps; absent where there are too few. */
  readonly resistance_ohm?: Band;
  /** Of the job, by the steps of the predicted drive: as warm and as charged as the pack was. */
  readonly predicted_ohm: number;
  /** Full capacity, where the drive used enough of it. */
  readonly capacity_Ah?: Band;
  readonly predicted_Ah: number;
  /** Share of the predicted capacity that the drive used. */
  readonly used_frac: number;
}

/** Steps in current below this share of the largest say nothing of the resistance. */
const LEAST_STEP_frac = 0.08;
const LEAST_STEPS = 30;
/** Steps follow one another, so that fewer are independent than there are. Assumed. */
const DEPENDENT_ratio = 2;
/** A drive must use so much of the charge before its volts show the capacity. Assumed. */
const LEAST_USED_frac = 0.12;
/** A band wider than this is none. */
const WIDEST_frac = 0.3;

/** Resistance and capacity of a pack from a drive, each with the band that holds it nine times of ten. */
export function packFromLog(
  pack: PackModel,
  samples: PackSamples,
  predicted: DrivenAsMeasured,
  startSoc_frac: number,
): PackFound {
  const counted = chargeOf(samples, predicted);
  const used_C = counted.charge_C[samples.count - 1] ?? 0;
  const used_frac = used_C / pack.capacity_C;
  const resistance_ohm = resistanceOf(samples);
  const capacity_Ah =
    used_frac >= LEAST_USED_frac ? capacityOf(pack, samples, predicted, counted, startSoc_frac) : undefined;
  return {
    ...(resistance_ohm && { resistance_ohm }),
    predicted_ohm:
      resistanceOf(asPredicted(samples, predicted))?.value ??
      lookUp(pack.resistance_ohm, startSoc_frac) + pack.leads_ohm,
    ...(capacity_Ah && { capacity_Ah }),
    predicted_Ah: pack.capacity_C / C_PER_AH,
    used_frac,
  };
}

/** Charge taken by each sample since the first, and how much of it was not logged. */
interface CountedCharge {
  readonly charge_C: Float64Array;
  /** Of gaps of the logger while the car drove: as the model has it. */
  readonly guessed_C: number;
  /** Samples after which a break came of which nothing is known: the car may have been charged. */
  readonly breaks: readonly number[];
}

/** Shorter silences are between samples. */
const SILENT_s = 3;

function chargeOf(samples: PackSamples, predicted: DrivenAsMeasured): CountedCharge {
  const { count, weight_s, current_A, time_s, row } = samples;
  const charge_C = new Float64Array(count);
  const breaks: number[] = [];
  let guessed_C = 0;
  const model = asPredicted(samples, predicted).current_A;
  const sum = (amps: Float64Array) => amps.reduce((total, each, k) => total + weight_s[k] * each, 0);
  const ratio = sum(model) > 0 ? Math.max(0, sum(current_A) / sum(model)) : 1;
  for (let k = 1; k < count; k++) {
    charge_C[k] = charge_C[k - 1] + 0.5 * (weight_s[k - 1] * current_A[k - 1] + weight_s[k] * current_A[k]);
    const step_s = time_s[k] - time_s[k - 1];
    const silent_s = step_s - 0.5 * (weight_s[k - 1] + weight_s[k]);
    if (silent_s <= SILENT_s) continue;
    if (predicted.part[row[k]] !== predicted.part[row[k - 1]]) {
      breaks.push(k);
      continue;
    }
    let silent_C = 0;
    for (let i = row[k - 1] + 1; i <= row[k]; i++) silent_C += predicted.current_A[i];
    silent_C *= (ratio * silent_s) / step_s;
    charge_C[k] += silent_C;
    guessed_C += Math.abs(silent_C);
  }
  return { charge_C, guessed_C, breaks };
}

/** What a model's volts and amps are at the moments of the samples. */
function asPredicted(samples: PackSamples, drive: DrivenAsMeasured): PackSamples {
  const at = (column: Float64Array) =>
    Float64Array.from({ length: samples.count }, (_, k) => atSample(samples, column, k));
  return { ...samples, current_A: at(drive.current_A), voltage_V: at(drive.voltage_V) };
}

/** R = -Σ ΔU ΔI / Σ ΔI² over steps from one sample to the next: what the open-circuit voltage does in a second is nothing. */
function resistanceOf({ count, current_A, voltage_V, time_s, interval_s }: PackSamples): Band | undefined {
  if (interval_s > 2.5) return undefined;
  const steps: { current_A: number; voltage_V: number }[] = [];
  for (let k = 1; k < count; k++)
    if (time_s[k] - time_s[k - 1] <= 2.5)
      steps.push({ current_A: current_A[k] - current_A[k - 1], voltage_V: voltage_V[k] - voltage_V[k - 1] });
  const most_A = steps.reduce((most, step) => Math.max(most, Math.abs(step.current_A)), 0);
  const large = steps.filter((step) => Math.abs(step.current_A) > LEAST_STEP_frac * most_A);
  if (large.length < LEAST_STEPS || most_A < 5) return undefined;
  const currents = large.reduce((sum, step) => sum + step.current_A ** 2, 0);
  const value = -large.reduce((sum, step) => sum + step.current_A * step.voltage_V, 0) / currents;
  const left = large.reduce((sum, step) => sum + (step.voltage_V + value * step.current_A) ** 2, 0);
  const half = NINE_OF_TEN * DEPENDENT_ratio * Math.sqrt(left / (large.length - 1) / currents);
  return value > 0 ? { value, low: Math.max(0, value - half), high: value + half } : undefined;
}

/** How far the job's open-circuit curve may be from the cells', and its slope over the whole charge: of the voltage. Assumed. */
const CURVE_frac = 0.002;
const SLOPE_frac = 0.004;
/** A clamp or a shunt is good to 1 %; common practice, no source. */
const METER_frac = 0.01;
/** Charge that was not logged is known from the model to so much, nine times of ten. Assumed. */
const GUESSED_frac = 0.15;
/** Volts of a minute hang together: what is left of them after a load dies away slowly. */
const TOGETHER_s = 60;
const VOLTAGE_frac = 0.004;

/**
 * Capacity from how far the volts fall with the charge taken, sag by resistance put back:
 *
 *   U + k I R(s, T) = (1 + a + b s) OCV(s),  s = s0 - q / Q
 *
 * with s0, Q, k and, within what a curve may be off, a and b fitted by least squares to means of a minute. R is that of the job's cells, as
 * charged and as warm as the predicted drive has them: a pack that warms up sags less and less, which would pass for capacity.
 */
function capacityOf(
  pack: PackModel,
  samples: PackSamples,
  predicted: DrivenAsMeasured,
  { charge_C, guessed_C, breaks }: CountedCharge,
  startSoc_frac: number,
): Band | undefined {
  const [from, to] = longestSpan(charge_C, breaks);
  const span_C = charge_C[to - 1] - charge_C[from];
  if (span_C < LEAST_USED_frac * pack.capacity_C) return undefined;
  const means = minuteMeans(samples, sagOf_V(pack, samples, predicted), charge_C, from, to);
  const rows = means.length;
  if (rows < 8) return undefined;
  const nominal_V = lookUp(pack.openCircuit_V, 0.5);
  const sigma_V = VOLTAGE_frac * nominal_V;
  const start = [startSoc_frac, 1, 1, 0, 0];
  const priors = [0, 0, 0, CURVE_frac, SLOPE_frac];
  const fit = leastSquares({
    start,
    sizes: [0.1, 0.1, 0.3, CURVE_frac, SLOPE_frac],
    low: [0.02, 0.3, 0, -0.05, -0.05],
    high: [1.1, 2, 20, 0.05, 0.05],
    count: rows + 2,
    tolerance_ratio: 1e-8,
    residuals: (p, into) => {
      means.forEach(({ voltage_V, sag_V, used_C }, i) => {
        const soc_frac = p[0] - used_C / (p[1] * pack.capacity_C);
        const curve_V = lookUp(pack.openCircuit_V, soc_frac) * (1 + p[3] + p[4] * (soc_frac - 0.5));
        into[i] = (voltage_V + p[2] * sag_V - curve_V) / sigma_V;
      });
      into[rows] = p[3] / priors[3];
      into[rows + 1] = p[4] / priors[4];
    },
  });
  const count = start.length;
  const spread = Math.max(0.5, Math.sqrt(fit.sum / Math.max(1, rows - 3)));
  const own = spread * Math.sqrt(covarianceOf(fit.jacobian, count)[count + 1]);
  // An ampere-hour is as good as the ammeter that counts it.
  const half = Math.hypot(
    NINE_OF_TEN * own,
    METER_frac * fit.parameters[1],
    ((GUESSED_frac * guessed_C) / span_C) * fit.parameters[1],
  );
  const full_Ah = pack.capacity_C / C_PER_AH;
  if (!fit.isConverged || half > WIDEST_frac * fit.parameters[1]) return undefined;
  const at = (ratio: number) => ratio * full_Ah;
  return { value: at(fit.parameters[1]), low: at(fit.parameters[1] - half), high: at(fit.parameters[1] + half) };
}

/** What the measured current would cost in the job's cells, sample by sample. */
function sagOf_V(pack: PackModel, samples: PackSamples, predicted: DrivenAsMeasured): Float64Array {
  return samples.current_A.map((current_A, k) => {
    const row = samples.row[k];
    const cells_ohm =
      lookUp(pack.resistance_ohm, predicted.soc_frac[row]) * lookUp(pack.resistance_ratio, predicted.pack_K[row]);
    const charging_ratio = current_A < 0 ? pack.charging_ratio : 1;
    return current_A * (charging_ratio * cells_ohm + pack.leads_ohm);
  });
}

/** First sample of the span between breaks that took most charge, and the one after its last. */
function longestSpan(charge_C: Float64Array, breaks: readonly number[]): readonly [number, number] {
  const ends = [...breaks, charge_C.length];
  const spans = ends.map((to, b) => [b === 0 ? 0 : ends[b - 1], to] as const);
  const taken_C = ([from, to]: readonly [number, number]) => charge_C[to - 1] - charge_C[from];
  return spans.reduce((best, each) => (taken_C(each) > taken_C(best) ? each : best));
}

function minuteMeans(
  { time_s, voltage_V }: PackSamples,
  sags_V: Float64Array,
  charge_C: Float64Array,
  from: number,
  to: number,
) {
  const bins = new Map<number, { n: number; voltage_V: number; sag_V: number; used_C: number }>();
  for (let k = from; k < to; k++) {
    const minute = Math.floor((time_s[k] - time_s[0]) / TOGETHER_s);
    const bin = bins.get(minute) ?? { n: 0, voltage_V: 0, sag_V: 0, used_C: 0 };
    bins.set(minute, {
      n: bin.n + 1,
      voltage_V: bin.voltage_V + voltage_V[k],
      sag_V: bin.sag_V + sags_V[k],
      used_C: bin.used_C + charge_C[k],
    });
  }
  return [...bins.values()].map(({ n, ...sums }) => ({
    voltage_V: sums.voltage_V / n,
    sag_V: sums.sag_V / n,
    used_C: sums.used_C / n,
  }));
}
