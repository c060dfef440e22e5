import type { Model } from "../../step/model.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import { type EnergyErrors, energyErrors } from "./energyErrors.ts";
import { atSample, type PackSamples } from "./packSamples.ts";
import type { Segment } from "./segments.ts";

/** A drive as a fit sees it: one energy a segment, and how far each may be off, alone and together with its neighbours. */
export interface Observations {
  readonly segments: readonly Segment[];
  /** Energy from the pack as measured, by segment. */
  readonly energy_J: Float64Array;
  /** Time that samples stand for, by segment. */
  readonly time_s: Float64Array;
  /** Segment of each sample, -1 for none. */
  readonly segmentOf: Int32Array;
  readonly errors: EnergyErrors;
}

/** The measured energy of each segment of which half was logged, and how far it may be off. */
export function observe(
  drive: DrivenAsMeasured,
  segments: readonly Segment[],
  samples: PackSamples,
  model: Model,
  hasHeights: boolean,
): Observations {
  const segmentOfRow = new Int32Array(drive.count).fill(-1);
  segments.forEach(({ from, to }, s) => {
    segmentOfRow.fill(s, from, to);
  });
  const all = Int32Array.from(
    { length: samples.count },
    (_, k) => segmentOfRow[samples.row[k] + Math.round(samples.part_frac[k])],
  );
  const seen_s = new Float64Array(segments.length);
  all.forEach((s, k) => {
    if (s >= 0) seen_s[s] += samples.weight_s[k];
  });
  // A segment of which half was not logged has no energy.
  const isSeen = (s: number) => seen_s[s] >= 0.5 * (segments[s].to - segments[s].from);
  const number = new Int32Array(segments.length).fill(-1);
  const kept = segments.filter((_, s) => isSeen(s));
  let next = 0;
  segments.forEach((_, s) => {
    if (isSeen(s)) number[s] = next++;
  });
  const segmentOf = all.map((s) => (s < 0 ? -1 : number[s]));
  const n = kept.length;
  const energy_J = new Float64Array(n);
  const time_s = new Float64Array(n);
  segmentOf.forEach((s, k) => {
    if (s < 0) return;
    energy_J[s] += samples.weight_s[k] * samples.power_W[k];
    time_s[s] += samples.weight_s[k];
  });
  const errors = energyErrors(drive, kept, samples, segmentOf, model, hasHeights);
  return { segments: kept, energy_J, time_s, segmentOf, errors };
}

/** What a model's power comes to in each segment, weighed as the samples are. */
export function predictedEnergy_J(
  drive: DrivenAsMeasured,
  samples: PackSamples,
  { segmentOf, energy_J }: Observations,
): Float64Array {
  const predicted_J = new Float64Array(energy_J.length);
  for (let k = 0; k < samples.count; k++) {
    const s = segmentOf[k];
    if (s >= 0) predicted_J[s] += samples.weight_s[k] * atSample(samples, drive.power_W, k);
  }
  return predicted_J;
}
