import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { S_PER_H } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import type { PackLog } from "../../trace/packLog.ts";
import type { Band } from "../answer/band.ts";
import { adjustModel } from "./adjustModel.ts";
import { anotherCarWords } from "./anotherCar.ts";
import { checkDriven, checkPackLog } from "./checkPackLog.ts";
import type { CarFit } from "./describeFit.ts";
import { type DrivenAsMeasured, driveAsMeasured } from "./driveAsMeasured.ts";
import { effectWords } from "./effectWords.ts";
import { fitCar } from "./fitCar.ts";
import { type HeldDoing, heldDoings } from "./heldDoings.ts";
import { type LinedUp, lineUp } from "./lineUp.ts";
import { logExtras } from "./logExtras.ts";
import { LONGEST_s, loggedParts } from "./loggedParts.ts";
import { type Verdict, verdictOf, verdictWords } from "./measureWords.ts";
import { misfitWords } from "./misfitWords.ts";
import { mixedWords } from "./mixedWords.ts";
import { observe, predictedEnergy_J } from "./observations.ts";
import { type PackFound, packFromLog } from "./packFromLog.ts";
import { type PackSamples, packSamples } from "./packSamples.ts";
import { parametersOf } from "./parameters.ts";
import { predictedBands } from "./predictedBands.ts";
import { type QuantityId, quantitiesOf, quantityIds } from "./quantities.ts";
import { readingRemarks } from "./readingRemarks.ts";
import type { DrivePart } from "./recording.ts";
import { segmentsOf } from "./segments.ts";
import { startCharge_frac } from "./startCharge.ts";
import { windShare } from "./windShare.ts";
import { type ZeroOffset, zeroOffset } from "./zeroOffset.ts";

/** A recorded drive of a built car. */
export interface RecordedDrive {
  readonly parts: readonly DrivePart[];
  readonly hasHeights: boolean;
  readonly log: PackLog;
  /** Added to the clock of volts and amps; found where not given. */
  readonly offset_s?: number | undefined;
}

/** One figure of the log against the same of the prediction, on this very drive. */
export interface HeldQuantity {
  readonly id: QuantityId;
  readonly measured: number;
  readonly predicted: Band;
  readonly corrected: number;
  readonly isInside: boolean;
}

/** A built car's log compared with what was predicted. */
export interface Measured {
  readonly pack: string;
  /** When the first drive that is compared began, on the motion's clock. */
  readonly start_s: number;
  /** Of what volts and amps were logged of. */
  readonly distance_km: number;
  readonly linedUp: LinedUp;
  readonly zero: ZeroOffset;
  readonly quantities: readonly HeldQuantity[];
  readonly doings: readonly HeldDoing[];
  readonly fit: CarFit;
  readonly packFound: PackFound;
  /** Whether the log can hardly be of this car: the sentences say how. What it corrects is then nothing to go by. */
  readonly isDoubted: boolean;
  readonly verdict: Verdict;
  /** Verdict first, then what is corrected and what to look at, largest effect first. */
  readonly sentences: readonly Message[];
  readonly notTold: readonly Message[];
  /** How the log was read: clocks, sign, zero, gaps. */
  readonly remarks: readonly Message[];
  /** Second by second, for drawing: on the motion's clock from the drive's start. */
  readonly lines: MeasuredLines;
}

/** The same seconds as logged, as predicted and as corrected. */
export interface MeasuredLines {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  /** NaN where not logged. */
  readonly measured_W: Float64Array;
  readonly predicted_W: Float64Array;
  readonly corrected_W: Float64Array;
}

/** Noise of a good meter: what a measured figure may be off by itself. Common practice, no source. */
const METER_frac = 0.01;

/**
 * Compares a recorded drive with a job: the same speed and height are driven by the car as predicted, both are compared as wholes and by
 * what the car was doing, and as many values as the log carries are corrected. `predictedAs` names the prediction: "predicted on 3 March".
 * Throws InputError where the log is not of such a drive of this car.
 */
export function measure(job: Job, packIndex: number, drive: RecordedDrive, predictedAs = "predicted"): Measured {
  const { log, hasHeights } = drive;
  checkPackLog(log, job, packIndex);
  const model = prepare(job, job.packs[packIndex]);
  const whole = driveAsMeasured(model, drive.parts, model.pack.ceiling_frac);
  checkDriven(whole.distance_m[whole.count - 1] ?? 0, log);
  const linedUp = lineUp(whole, log, drive.offset_s);
  const parts = loggedParts(drive.parts, log, linedUp);
  const first = parts.length < drive.parts.length ? driveAsMeasured(model, parts, model.pack.ceiling_frac) : whole;
  const zero = zeroOffset(first, log, linedUp, model.accessories_W);
  const samples = packSamples(first, log, linedUp, zero.zero_A, zero.off);
  const start_frac = startCharge_frac(model.pack, samples, log.soc_frac);
  const predicted = driveAsMeasured(model, parts, start_frac);
  const segments = segmentsOf(predicted);
  const observations = observe(predicted, segments, samples, model, hasHeights);
  const parameters = parametersOf(job, model);
  const setting = { model, parts, startSoc_frac: start_frac, samples, observations, parameters };
  const fit = fitCar(setting);
  const correctedModel = adjustModel(model, fit.change);
  const corrected = driveAsMeasured(correctedModel, parts, start_frac);
  const predictedBand = predictedBands(job, packIndex, parts, samples, start_frac);
  const measured = quantitiesOf(predicted, samples, "log", logExtras(log, samples, linedUp));
  const doubts = anotherCarWords(setting, fit, predicted, measured.peak_A);
  const isDoubted = doubts.length > 0;
  const after = quantitiesOf(corrected, samples, "model");
  const quantities = quantityIds.flatMap((id): HeldQuantity[] => {
    const band = predictedBand[id];
    if (Number.isNaN(measured[id]) || Number.isNaN(band.value)) return [];
    const off = METER_frac * Math.abs(measured[id]);
    const isInside = measured[id] >= band.low - off && measured[id] <= band.high + off;
    return [{ id, measured: measured[id], predicted: band, corrected: after[id], isInside }];
  });
  const [before_J, after_J] = [predicted, corrected].map((each) => predictedEnergy_J(each, samples, observations));
  return {
    pack: job.packs[packIndex].name,
    start_s: parts[0]?.start_s ?? 0,
    distance_km: measured.distance_km,
    linedUp,
    zero,
    quantities,
    doings: heldDoings(observations, before_J, after_J),
    fit,
    packFound: packFromLog(model.pack, samples, predicted, start_frac),
    isDoubted,
    verdict: verdictOf(measured.net_kWh, predictedBand.net_kWh.value),
    sentences: [
      verdictWords(measured.use_Whpkm, predictedBand.use_Whpkm.value, predictedAs),
      ...doubts,
      ...misfitWords(
        isDoubted ? { misfit_ratio: 1 } : fit,
        measured.net_kWh,
        predictedBand.net_kWh.value,
        log.isClockCoarse === true,
      ),
      // What another car differs by is nothing to look at on this one.
      ...(isDoubted ? [] : effectWords(job, model, fit, { parts, samples, start_frac })),
    ],
    notTold: mixedWords(fit, {
      dragPerMps_frac: windShare(predicted),
      voltage_V: samples.voltage_V[samples.count >> 1] ?? 0,
      isZeroKnown: zero.how === "off",
      rolling_N: model.road.rollingWeight_N + model.road.rollingFixed_N,
    }),
    remarks: [
      ...(parts.length < drive.parts.length
        ? [
            message`Compared on ${parts.length} of the ${drive.parts.length} drives in the log: those with volts and amps, the longest, ${q("hours", LONGEST_s / S_PER_H)} at most.`,
          ]
        : []),
      ...readingRemarks({ log, linedUp, zero, samples, model, drive: predicted, hasHeights, start_frac }),
    ],
    lines: linesOf(predicted, corrected, samples),
  };
}

function linesOf(predicted: DrivenAsMeasured, corrected: DrivenAsMeasured, samples: PackSamples): MeasuredLines {
  const { count } = predicted;
  const measured_W = new Float64Array(count).fill(Number.NaN);
  for (let k = 0; k < samples.count; k++)
    measured_W[samples.row[k] + Math.round(samples.part_frac[k])] = samples.power_W[k];
  const start_s = predicted.time_s[0] ?? 0;
  return {
    time_s: predicted.time_s.map((time_s) => time_s - start_s),
    speed_mps: predicted.target_mps,
    measured_W,
    predicted_W: predicted.power_W,
    corrected_W: corrected.power_W,
  };
}
