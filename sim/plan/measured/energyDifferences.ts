import type { Model } from "../../step/model.ts";
import { adjustModel } from "./adjustModel.ts";
import { driveAsMeasured, scratchFor } from "./driveAsMeasured.ts";
import { type Observations, predictedEnergy_J } from "./observations.ts";
import type { PackSamples } from "./packSamples.ts";
import { changeOf, type Parameter } from "./parameters.ts";
import type { DrivePart } from "./recording.ts";

/** A drive as it was logged and the car as the job has it. */
export interface LoggedDrive {
  readonly model: Model;
  readonly parts: readonly DrivePart[];
  readonly startSoc_frac: number;
  readonly samples: PackSamples;
  readonly observations: Observations;
}

/** Writes measured less predicted energy by segment, in joules, for some values of some parameters. */
export type Differences = (active: readonly Parameter[], values: ArrayLike<number>, into: Float64Array) => void;

/** The differences of a logged drive; what a drive writes into is made once. */
export function differencesOf({ model, parts, startSoc_frac, samples, observations }: LoggedDrive): Differences {
  const scratch = scratchFor(parts);
  const zeroEnergy_Vs = new Float64Array(observations.energy_J.length);
  observations.segmentOf.forEach((s, k) => {
    if (s >= 0) zeroEnergy_Vs[s] += samples.weight_s[k] * samples.voltage_V[k];
  });
  return (active, values, into) => {
    const ids = active.map(({ id }) => id);
    const gain = ids.indexOf("gain");
    const zero = ids.indexOf("zero");
    const drive = driveAsMeasured(adjustModel(model, changeOf(ids, values)), parts, startSoc_frac, scratch);
    const predicted_J = predictedEnergy_J(drive, samples, observations);
    const gain_ratio = gain < 0 ? 1 : values[gain];
    const zero_A = zero < 0 ? 0 : values[zero];
    into.set(
      observations.energy_J.map((energy_J, s) => energy_J - gain_ratio * predicted_J[s] - zero_A * zeroEnergy_Vs[s]),
    );
  };
}

/** Slopes of `n` differences by each parameter, in joules each: central, over a tenth of what it was thought to lie off. */
export function slopesAt(
  differences: Differences,
  parameters: readonly Parameter[],
  at: readonly number[],
  n: number,
): Float64Array[] {
  const [above, below] = [new Float64Array(n), new Float64Array(n)];
  return parameters.map(({ before }, k) => {
    const by = 0.05 * before;
    const moved = (step: number) => at.map((value, l) => (l === k ? value + step : value));
    differences(parameters, moved(by), above);
    differences(parameters, moved(-by), below);
    return above.map((each, i) => (each - below[i]) / (2 * by));
  });
}
