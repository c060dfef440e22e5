import { randomNormal, randomUniform } from "d3-random";
import type { Job } from "../../shared/job/job.ts";
import { withPath } from "../../shared/job/path.ts";
import { driveAsMeasured } from "../../sim/plan/measured/driveAsMeasured.ts";
import { type CarFit, type Fitted, fitCar } from "../../sim/plan/measured/fitCar.ts";
import { type LinedUp, lineUp } from "../../sim/plan/measured/lineUp.ts";
import { observe } from "../../sim/plan/measured/observations.ts";
import { packSamples } from "../../sim/plan/measured/packSamples.ts";
import { type ParameterId, parametersOf } from "../../sim/plan/measured/parameters.ts";
import { segmentsOf } from "../../sim/plan/measured/segments.ts";
import { toTrace } from "../../sim/route/roads/toTrace.ts";
import { prepare } from "../../sim/step/prepare.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { demoJob } from "../support/demoJob.ts";
import { drivenAndLogged } from "./builtCar.ts";
import { seeded } from "./logMaker.ts";

/** The first demo's saloon with a motor whose losses were measured: what a workshop has that orders by datasheet. */
export function jobWithDatasheet(): Job {
  const job = demoJob(0);
  const origin = { from: "handbook" as const, plusMinus_frac: 0.08 };
  return { ...withPath(job, "isInvented", true), origins: { ...job.origins, "motor.loss": origin } };
}

export const builtPack = 2;
/** How far volts and amps are behind in every recovery, and what the ammeter's gain is. */
export const behind_s = 7;

type Truth = Readonly<Record<ParameterId, number>>;

/** One recovery: the truth of each value beside its band. */
export interface Recovery {
  readonly truth: Truth;
  readonly fit: CarFit;
  readonly linedUp: LinedUp;
}

/**
 * A car built otherwise than its job, driven, logged with noise, and recovered. What a workshop does not know is drawn anew for each seed as
 * the job's bands have it: losses, mass, the ammeter's gain; the hidden changes are drawn around the ones given.
 */
export function recover(job: Job, trace: Trace, seed: number): Recovery {
  const model = prepare(job, job.packs[builtPack]);
  const parameters = parametersOf(job, model);
  const source = seeded(1000 + seed);
  const normal = randomNormal.source(source)(0, 1);
  const between = (low: number, high: number) => randomUniform.source(source)(low, high)();
  const unknown = (id: ParameterId) => {
    const parameter = parameters.find((each) => each.id === id);
    return 1 + (parameter?.before ?? 0) * normal();
  };
  const truth: Truth = {
    rolling: between(0.95, 1.35),
    drag: between(0.95, 1.2),
    accessories: between(-30, 200),
    regen: between(0.4, 1.1),
    motorLoss: unknown("motorLoss"),
    meshLoss: unknown("meshLoss"),
    mass: unknown("mass"),
    gain: unknown("gain"),
    zero: unknown("zero") - 1,
  };
  const log = drivenAndLogged(job, builtPack, trace, {
    seed,
    change: {
      rolling_ratio: truth.rolling,
      drag_ratio: truth.drag,
      accessories_W: truth.accessories,
      regen_ratio: truth.regen,
      motorLoss_ratio: truth.motorLoss,
      meshLoss_ratio: truth.meshLoss,
      mass_ratio: truth.mass,
    },
    gain_ratio: truth.gain,
    zero_A: truth.zero,
    sign: seed % 2 === 0 ? 1 : -1,
    behind_s,
    isCleaned: true,
  });
  const parts = [{ start_s: 0, trace: toTrace(log, "log", "log") }];
  const drive = driveAsMeasured(model, parts, model.pack.ceiling_frac);
  const pack = {
    file: "log",
    time_s: log.electricTime_s,
    voltage_V: log.voltage_V,
    current_A: log.current_A,
    fileSign: 1 as const,
    clock: "same" as const,
    remarks: [],
  };
  const linedUp = lineUp(drive, pack);
  const samples = packSamples(drive, pack, linedUp, 0);
  const observations = observe(drive, segmentsOf(drive), samples, model, true);
  const fit = fitCar({ model, parts, startSoc_frac: model.pack.ceiling_frac, samples, observations, parameters });
  return { truth, fit, linedUp };
}

/**
 * What a log can tell of a value: the truth of it, and of all that looks like it, which then counts as it. A loss that is larger than in the
 * job asks for as much more rolling as the fit would come out less with if the job had it.
 */
function togetherWith({ alike }: Fitted, is: number, truth: Truth): number {
  return alike.reduce((sum, { id, slope_ratio }) => sum - slope_ratio * (truth[id] - START[id]), is);
}

const START: Truth = {
  ...{ rolling: 1, drag: 1, accessories: 0, regen: 1 },
  ...{ motorLoss: 1, meshLoss: 1, mass: 1, gain: 1, zero: 0 },
};

/** How often bands held their truths, by itself and together with what looks alike, and how wide they were, by value. */
export function coverageOf(recoveries: readonly Recovery[]) {
  const ids: readonly ParameterId[] = ["rolling", "drag", "accessories", "regen"];
  return ids.map((id) => {
    const found = recoveries.flatMap(({ truth, fit }) => {
      const fitted = fit.fitted.find((each) => each.id === id);
      return fitted ? [{ ...fitted, is: truth[id], sum: togetherWith(fitted, truth[id], truth) }] : [];
    });
    const mean = (of: (one: (typeof found)[number]) => number) =>
      found.reduce((sum, one) => sum + of(one), 0) / found.length;
    return {
      id,
      count: found.length,
      held_frac: mean(({ is, low, high }) => (is >= low && is <= high ? 1 : 0)),
      half: mean(({ low, high }) => (high - low) / 2),
      error: Math.sqrt(mean(({ value, is }) => (value - is) ** 2)),
      bias: mean(({ value, is }) => value - is),
      ownHeld_frac: mean(({ value, ownHalf, sum }) => (Math.abs(value - sum) <= ownHalf ? 1 : 0)),
      ownHalf: mean(({ ownHalf }) => ownHalf),
      ownError: Math.sqrt(mean(({ value, sum }) => (value - sum) ** 2)),
    };
  });
}
