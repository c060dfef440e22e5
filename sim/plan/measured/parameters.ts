import type { Job } from "../../../shared/job/job.ts";
import type { Model } from "../../step/model.ts";
import { accessories_W } from "../../step/prepare.ts";
import { type Change, noChange } from "./adjustModel.ts";

/** What of a built car a log may correct, and what else moves the same figures. */
export const parameterIds = [
  "rolling",
  "drag",
  "accessories",
  "regen",
  "motorLoss",
  "meshLoss",
  "mass",
  "gain",
  "zero",
] as const;
export type ParameterId = (typeof parameterIds)[number];

/** One unknown of a fit: where it begins, how far it is thought to lie from there before the log speaks, what it may be at all. */
export interface Parameter {
  readonly id: ParameterId;
  readonly start: number;
  /** Standard deviation. */
  readonly before: number;
  readonly low: number;
  readonly high: number;
  /** Standard deviation of what the method itself is off by, whatever the log; nothing where not given. */
  readonly method?: number;
}

/** A band of a job is read as holding nine of ten: half of it over a standard deviation of the normal law. */
export const NINE_OF_TEN = 1.645;

/**
 * How far a built car may be from its job beside what the job's own bands say: brakes that drag, soft tyres, doors and mirrors put back,
 * things that stay on, a limit set otherwise. Standard deviations, assumed wide, so that the log decides and not the job.
 */
const BUILT = { rolling: 0.3, drag: 0.2, accessories_frac: 0.75, accessories_W: 120, regen: 0.5 };
/** A clamp or a shunt is good to 1 % nine times of ten; common practice, no source. */
const GAIN = 0.01 / NINE_OF_TEN;
/** What an ammeter that was zeroed still shows of nothing, in amperes; common practice, no source. */
const ZERO_A = 0.1 / NINE_OF_TEN;
/** Bands of what the job gives none for. Assumed. */
const USUAL = { motorLoss: 0.15, meshLoss: 0.2, mass: 0.02 };

/**
 * What fits of made drives without any noise are off by, from speeds of whole seconds (tests/bench/measureCoverage.ts): many segments do not make
 * it less.
 */
const METHOD = { rolling: 0.006, drag: 0.004, accessories_W: 2, regen: 0.015 };
/** A motor’s losses come out high from cleaned speeds, whose noise asks for peaks that no motor gave; then rolling comes out low. */
const MOTOR_LOSS_BY_METHOD = 0.1;

/** The unknowns of a job's car, each with what is known of it before the log. */
export function parametersOf(job: Job, model: Model): Parameter[] {
  const { regen_Nm, regen_W, regen_A } = model.controller;
  const gearLimit_Nm = Math.min(...model.gears.map((gear) => gear.regen_Nm));
  const isLimited = regen_Nm > 0 && Number.isFinite(Math.min(regen_Nm, regen_W, regen_A, gearLimit_Nm));
  const drawn_W = accessories_W(job);
  const ratio = (id: ParameterId, before: number, low = 0.2, high = 4): Parameter => ({
    id,
    start: 1,
    before,
    low,
    high,
  });
  return [
    { ...ratio("rolling", Math.max(BUILT.rolling, bandOf(job, ROLLING))), method: METHOD.rolling },
    { ...ratio("drag", Math.max(BUILT.drag, bandOf(job, DRAG))), method: METHOD.drag },
    {
      id: "accessories",
      start: 0,
      before: Math.max(BUILT.accessories_W, BUILT.accessories_frac * drawn_W),
      low: -drawn_W,
      high: 6000,
      method: METHOD.accessories_W,
    },
    ...(isLimited ? [{ ...ratio("regen", BUILT.regen, 0.02), method: METHOD.regen }] : []),
    { ...ratio("motorLoss", bandOf(job, /^motor\.loss/) || USUAL.motorLoss), method: MOTOR_LOSS_BY_METHOD },
    ratio("meshLoss", meshBand(job)),
    ratio("mass", massBand(job, model), 0.5, 2),
    ratio("gain", GAIN, 0.5, 2),
    { id: "zero", start: 0, before: ZERO_A, low: -50, high: 50 },
  ];
}

/** The change that some values of parameters mean; those that are not named stay. */
export function changeOf(ids: readonly ParameterId[], values: ArrayLike<number>): Change {
  const at = (id: ParameterId, otherwise: number) => {
    const k = ids.indexOf(id);
    return k < 0 ? otherwise : values[k];
  };
  return {
    ...noChange,
    rolling_ratio: at("rolling", 1),
    drag_ratio: at("drag", 1),
    accessories_W: at("accessories", 0),
    regen_ratio: at("regen", 1),
    motorLoss_ratio: at("motorLoss", 1),
    meshLoss_ratio: at("meshLoss", 1),
    mass_ratio: at("mass", 1),
  };
}

const ROLLING = /^vehicle\.(tyres\.rolling_coeff|roadLoad\.f0_N)$/;
const DRAG = /^vehicle\.roadLoad\.(drag_coeff|frontalArea_m2|dragArea_m2|f2_Npkmh2)$/;
const MASSES = ["kerb_kg", "removed_kg", "added_kg", "converted_kg", "load_kg"] as const;

/** Standard deviation of a product of values by their bands in the job; 0 where it gives none. */
function bandOf({ origins }: Job, path: RegExp): number {
  const bands = Object.entries(origins).flatMap(([at, { plusMinus_frac }]) =>
    path.test(at) ? [plusMinus_frac ?? 0] : [],
  );
  return Math.hypot(...bands) / NINE_OF_TEN;
}

/** That of what is lost between motor and road, from the bands of the efficiencies. */
function meshBand(job: Job): number {
  const bands = Object.entries(job.origins).flatMap(([at, { plusMinus_frac = 0 }]) =>
    /^driveline\.(gears\.\d+\.efficiency_frac|finalDriveEfficiency_frac|wholeEfficiency_frac)$/.test(at)
      ? [plusMinus_frac]
      : [],
  );
  const off_frac = bands.length > 0 ? Math.max(...bands) / NINE_OF_TEN : 0;
  const { gears, finalDriveEfficiency_frac, wholeEfficiency_frac } = job.driveline;
  const lost_frac =
    1 - (wholeEfficiency_frac ?? Math.min(...gears.map((gear) => gear.efficiency_frac)) * finalDriveEfficiency_frac);
  return off_frac > 0 && lost_frac > 0 ? Math.min(1, off_frac / lost_frac) : USUAL.meshLoss;
}

/** That of the mass as driven, from the bands of what it adds up from. */
function massBand(job: Job, model: Model): number {
  const off_kg = MASSES.map((key) => {
    const band_frac = job.origins[`vehicle.${key}`]?.plusMinus_frac ?? 0;
    return (job.vehicle[key] ?? 0) * band_frac;
  });
  const found = Math.hypot(...off_kg) / NINE_OF_TEN / model.testMass_kg;
  return found > 0 ? found : USUAL.mass;
}
