import { randomNormal, randomUniform } from "d3-random";
import type { Job } from "../../shared/job/job.ts";
import { withPath } from "../../shared/job/path.ts";
import { straightAt } from "../../sim/math/straightAt.ts";
import type { CarFit, Fitted } from "../../sim/plan/measured/describeFit.ts";
import { driveAsMeasured } from "../../sim/plan/measured/driveAsMeasured.ts";
import { fitCar } from "../../sim/plan/measured/fitCar.ts";
import { type LinedUp, lineUp } from "../../sim/plan/measured/lineUp.ts";
import { measure } from "../../sim/plan/measured/measure.ts";
import { observe } from "../../sim/plan/measured/observations.ts";
import { packSamples } from "../../sim/plan/measured/packSamples.ts";
import { type ParameterId, parametersOf } from "../../sim/plan/measured/parameters.ts";
import { segmentsOf } from "../../sim/plan/measured/segments.ts";
import { builtCarLogs } from "../../sim/route/builtCarLogs.ts";
import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { joinLogs } from "../../sim/route/joinLogs.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { toTrace } from "../../sim/route/roads/toTrace.ts";
import { drivePartsOf } from "../../sim/route/trips/drivePartsOf.ts";
import { prepare } from "../../sim/step/prepare.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { demoJob } from "../support/demoJob.ts";
import { type BuiltCar, type BuiltLog, drivenAndLogged, motionCsv, packCsv } from "./builtCar.ts";
import { makeLog, makeTruth, openSky, seeded } from "./logMaker.ts";
import { writeGpx } from "./logWriter.ts";

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
  readonly seed: number;
  readonly truth: Truth;
  readonly fit: CarFit;
  readonly linedUp: Pick<LinedUp, "offset_s"> & { readonly sign: number };
}

/** How a drive reaches the fit: as a trace that is clean already, or as files through readers and cleaning. */
export type Way = "traces" | "table" | "receiver";

/** What is hidden in the car of the recovery table; all else is as in the job. */
export const namedTruth: Truth = {
  rolling: 1.2,
  drag: 1.1,
  accessories: 120,
  regen: 0.5,
  gain: 1.01,
  zero: 0,
  motorLoss: 1,
  meshLoss: 1,
  mass: 1,
};

/**
 * What a workshop does not know, drawn anew for each seed as the job's bands have it: losses, mass, the ammeter's gain and zero; the hidden
 * changes are drawn around the named ones.
 */
export function drawnTruth(job: Job, seed: number): Truth {
  const parameters = parametersOf(job, prepare(job, job.packs[builtPack]));
  const source = seeded(1000 + seed);
  const normal = randomNormal.source(source)(0, 1);
  const between = (low: number, high: number) => randomUniform.source(source)(low, high)();
  const unknown = (id: ParameterId) => {
    const parameter = parameters.find((each) => each.id === id);
    return 1 + (parameter?.before ?? 0) * normal();
  };
  return {
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
}

/** A car built otherwise than its job, driven, logged with noise, and recovered. */
export function recover(
  job: Job,
  trace: Trace,
  seed: number,
  way: Way = "traces",
  truth = drawnTruth(job, seed),
): Recovery {
  const built: BuiltCar = {
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
    isCleaned: way === "traces",
  };
  const log = drivenAndLogged(job, builtPack, trace, built);
  if (way === "traces") return { seed, truth, ...fromTrace(job, log) };
  const motion =
    way === "table"
      ? ([encoder.encode(motionCsv(log)), "motion.csv"] as const)
      : ([receiverGpx(job, trace, built), "motion.gpx"] as const);
  return { seed, truth, ...fromFiles(job, [motion, [encoder.encode(packCsv(log)), "pack.csv"]]) };
}

const encoder = new TextEncoder();

/** The same drive along a road with bends, as an ordinary receiver under the open sky has it. */
function receiverGpx(job: Job, trace: Trace, built: BuiltCar): Uint8Array {
  const exact = drivenAndLogged(job, builtPack, trace, { ...built, speedNoise_mps: 0, heightNoise_m: 0 });
  const { distance_m, elevation_m } = trace.profile ?? { distance_m: [0, 1], elevation_m: [0, 0] };
  const height = (at_m: number) => straightAt(distance_m, elevation_m, at_m);
  return writeGpx(makeLog(makeTruth(exact.speed_mps, built.seed, height), { ...openSky, seed: built.seed }, 0));
}

function fromTrace(job: Job, log: BuiltLog) {
  const model = prepare(job, job.packs[builtPack]);
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
  const parameters = parametersOf(job, model);
  const fit = fitCar({ model, parts, startSoc_frac: model.pack.ceiling_frac, samples, observations, parameters });
  return { fit, linedUp };
}

/** As the command and the page do it: read, sorted, cleaned, held against the job. */
function fromFiles(job: Job, files: readonly (readonly [Uint8Array, string])[]) {
  const logs = builtCarLogs(files.map(([bytes, name]) => readLog(name, bytes, { isPackWanted: true })));
  const cleaned = cleanLog({ ...joinLogs(logs.motion), file: "motion" });
  const { fit, linedUp } = measure(job, builtPack, { ...drivePartsOf(cleaned), log: logs.pack });
  // The reader may have turned the amps round already.
  return { fit, linedUp: { ...linedUp, sign: linedUp.sign * logs.pack.fileSign } };
}

/**
 * What a log can tell of a value: the truth of it, and of all that looks like it, which then counts as it. A loss that is larger than in the
 * job asks for as much more rolling as the fit would come out less with if the job had it.
 */
function togetherWith({ alike }: Fitted, is: number, truth: Truth): number {
  return alike.reduce((sum, { id, slope_ratio }) => sum - slope_ratio * (truth[id] - START[id]), is);
}

const START: Truth = {
  rolling: 1,
  drag: 1,
  accessories: 0,
  regen: 1,
  motorLoss: 1,
  meshLoss: 1,
  mass: 1,
  gain: 1,
  zero: 0,
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
      ownBias: mean(({ value, sum }) => value - sum),
      widest: Math.max(...found.map(({ ownHalf }) => ownHalf)),
      ownError: Math.sqrt(mean(({ value, sum }) => (value - sum) ** 2)),
    };
  });
}
