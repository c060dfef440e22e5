import type { Job } from "../../../shared/job/job.ts";
import { atPath, withPath } from "../../../shared/job/path.ts";
import type { Model } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import { type Band, bandOf, type Ends } from "../answer/band.ts";
import { bandEnds, isOpen, isQuantity, NO_RANGE, NOT_TODAY, USUAL_BAND_frac } from "../unknowns.ts";
import { adjustModel, noChange } from "./adjustModel.ts";
import { driveAsMeasured, scratchFor } from "./driveAsMeasured.ts";
import type { PackSamples } from "./packSamples.ts";
import { type Quantities, quantitiesOf, quantityIds } from "./quantities.ts";
import type { DrivePart } from "./recording.ts";

/**
 * What a job promises of the very drive that was recorded, each with the band that its inputs leave open: every value with a band, measured
 * ones too, is put to either end of it while all others stay, and the effects add up as squares do.
 */
export function predictedBands(
  job: Job,
  packIndex: number,
  parts: readonly DrivePart[],
  samples: PackSamples,
  startSoc_frac: number,
): Readonly<Record<keyof Quantities, Band>> {
  const scratch = scratchFor(parts);
  const of = (model: Model) => quantitiesOf(driveAsMeasured(model, parts, startSoc_frac, scratch), samples, "model");
  const model = prepare(job, job.packs[packIndex]);
  const asTaken = of(model);
  const ends = openModels(job, packIndex, model).map(([low, high]) => [of(low), of(high)] as const);
  const band = (id: keyof Quantities) =>
    bandOf(
      asTaken[id],
      ends.map(([low, high]): Ends => ({ atLow: low[id], atHigh: high[id] })),
    );
  return Object.fromEntries(quantityIds.map((id) => [id, band(id)])) as Record<keyof Quantities, Band>;
}

/** The car with each open value at either end of its band; losses and accessories, which are lists, scaled as a whole. */
function openModels(job: Job, packIndex: number, model: Model): (readonly [Model, Model])[] {
  return Object.entries(job.origins).flatMap(([path, origin]): (readonly [Model, Model])[] => {
    const band_frac = origin.plusMinus_frac ?? (isOpen(origin) ? USUAL_BAND_frac : 0);
    if (band_frac === 0 || NO_RANGE.test(path) || NOT_TODAY.test(path)) return [];
    if (path === "motor.loss") {
      const at = (motorLoss_ratio: number) => adjustModel(model, { ...noChange, motorLoss_ratio });
      return [[at(1 - band_frac), at(1 + band_frac)]];
    }
    if (path === "accessories.items") {
      const items_W = model.accessories_W - job.accessories.standing_W / job.accessories.dcdcEfficiency_frac;
      const at = (accessories_W: number) => adjustModel(model, { ...noChange, accessories_W });
      return [[at(-band_frac * items_W), at(band_frac * items_W)]];
    }
    const value = atPath(job, path);
    if (typeof value !== "number" || !isQuantity(path)) return [];
    const at = (end: number) => {
      const changed = withPath(job, path, end);
      return prepare(changed, changed.packs[packIndex]);
    };
    const [low, high] = bandEnds(path, value, origin);
    return low === high ? [] : [[at(low), at(high)]];
  });
}
