import { firstDemo } from "../../../shared/demos/firstDemo.ts";
import type { Job, Origin } from "../../../shared/job/job.ts";
import { NEW_TITLE } from "../../../shared/job/newTitle.ts";
import { atPath } from "../../../shared/job/path.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { type BodyPart, bodies } from "../../../shared/parts/bodies.ts";
import { heaters, usualWinter } from "../../../shared/parts/heaters.ts";
import { fieldList } from "../../editing/fieldTable/fieldList.ts";
import { placesOf } from "../../editing/fieldTable/placesOf.ts";
import { driveFor, isScaled, packsFor } from "./startingDrive.ts";
import { usualWeights } from "./usualWeights.ts";

/** What counts until somebody asks the client. Assumed. */
export const USUAL_DAY_km = 40;

const WEIGHT = "vehicle.kerb_kg";

/** Roads to begin with, until the client's own log is there. */
const roads: Job["roads"] = [
  {
    kind: "cycle",
    id: "lanes",
    title:
      "Country lanes and villages, also where nobody knows: part of the published mixed cycle, up to 77 km/h (48 mph)",
    cycle: "wltc-class-3b:medium",
  },
  { kind: "cycle", id: "town", title: "In town: the published urban cycle", cycle: "udds" },
  {
    kind: "cycle",
    id: "country",
    title: "Main roads: the published highway cycle, up to 96 km/h (60 mph)",
    cycle: "hwfet",
  },
  {
    kind: "cycle",
    id: "mixed",
    title: "Town, country and motorway: the published mixed cycle",
    cycle: "wltc-class-3b",
  },
];

let readFirst: Job | undefined;
/** The first demo's job, read once: the questions compare theirs with it at every key. */
function firstJob(): Job {
  readFirst ??= readJob(firstDemo.document);
  return readFirst;
}

/**
 * A job in which everything is still the usual value, to be typed over from the first phone call on. The kind of motor
 * and cells is the first demo's, as a workshop might begin with, in the size that a car of this kind and its day ask for.
 */
export function ownCar(body: BodyPart = bodies[0]): Job {
  const demo = startOf(firstJob());
  const { gross_kg: _gross, balance: _balance, ...vehicle } = demo.vehicle;
  const job: Job = {
    ...demo,
    title: NEW_TITLE,
    isInvented: false,
    use: "",
    usualDay_km: USUAL_DAY_km,
    conditions: { winter: usualWinter(heaters[2].heat), old: { resistance_ratio: 1.3 }, others: [] },
    vehicle: { ...vehicle, name: body.title, kerb_kg: 850, removed_kg: 150, added_kg: 90, load_kg: 150 },
    environment: { ...demo.environment, temperature_degC: 15, grip_coeff: 0.8 },
    roads,
    supplies: [],
    notes: [],
    hiddenSections: [],
    origins: {},
  };
  return readJob(withBody(withDrive({ ...job, origins: allUsual(job) }), body));
}

/** The first demo without what is said of its car and its client alone. */
function startOf(job: Job): Job {
  const { engine: _engine, weights: _weights, wiring: _wiring, year: _year, week: _week, costs: _costs, ...rest } = job;
  const { longestDay_km: _longest, longestDaysAYear: _times, currency: _currency, ...start } = rest;
  return { ...start, requirement: {}, predictions: [] };
}

/**
 * The job with the drag of another kind of body and, unless they were said or chosen, its weight, motor and packs: usual values with that
 * kind's bands.
 */
export function withBody(job: Job, body: BodyPart): Job {
  const origins = { ...job.origins };
  for (const key of Object.keys(origins)) if (key.startsWith("vehicle.roadLoad.")) delete origins[key];
  for (const [key, origin] of Object.entries(body.origins)) {
    origins[`vehicle.roadLoad.${key}`] = usualWithin(atPath(body.data, key), origin.low, origin.high, origin.note);
  }
  const weight = usualWeights[body.id];
  const isOpen = weight !== undefined && origins[WEIGHT]?.from === "usual";
  if (isOpen) origins[WEIGHT] = usualWithin(weight.usual_kg, weight.low_kg, weight.high_kg);
  const kerb_kg = isOpen ? weight.usual_kg : job.vehicle.kerb_kg;
  const dressed = { ...job, vehicle: { ...job.vehicle, kerb_kg, roadLoad: body.data }, origins };
  return isDriveOpen(job) ? withDrive(dressed) : dressed;
}

/** A motor and packs for the car's weight and usual day, drawn from the first demo's. What the gearbox takes stays once it was said. */
export function withDrive(job: Job): Job {
  const start = firstJob();
  const { motor, controller, driveline } = driveFor(start, job.vehicle.kerb_kg);
  const given = Object.entries(job.driveline.limits ?? {}).filter(([key]) => {
    const from = job.origins[`driveline.limits.${key}`]?.from;
    return from !== undefined && from !== "usual";
  });
  const limits = { ...driveline.limits, ...Object.fromEntries(given) };
  const { torqueCap_Nm = Number.POSITIVE_INFINITY } = controller;
  const cap_Nm = Math.min(torqueCap_Nm, limits.gearboxInput_Nm ?? Number.POSITIVE_INFINITY);
  return {
    ...job,
    motor,
    controller: { ...controller, ...(Number.isFinite(cap_Nm) && { torqueCap_Nm: cap_Nm }) },
    driveline: { ...job.driveline, limits },
    packs: packsFor({ ...job, motor, packs: start.packs }),
  };
}

/** Nobody has chosen another motor, controller, module or pack than a job begins with. */
export function isDriveOpen(job: Job): boolean {
  const start = firstJob();
  const [{ name: _, parallelModules: __, ...first }] = start.packs;
  const isStarted = job.packs.every(({ name, parallelModules: ___, ...pack }) => {
    return /^\d+ kWh$/.test(name) && JSON.stringify(pack) === JSON.stringify(first);
  });
  return isStarted && isCellsOpen(job) && isMotorOpen(job) && job.controller.name === start.controller.name;
}

/** The motor is still the one that a job begins with, in whatever size. */
export function isMotorOpen({ motor }: Job): boolean {
  return isScaled(motor);
}

/** The modules are still those that a job begins with. */
export function isCellsOpen({ module }: Job): boolean {
  return JSON.stringify(module) === JSON.stringify(firstJob().module);
}

const BOUGHT_MOTOR = "Motor already bought";
const BOUGHT_CELLS = "Modules already bought";

/** The job with its motor or modules marked as bought, so that neither is fitted to the car any more; or open again. */
export function withoutStart(job: Job, hasMotor: boolean, hasCells: boolean): Job {
  const start = firstJob();
  const motor = hasMotor
    ? isMotorOpen(job)
      ? { ...job.motor, name: BOUGHT_MOTOR, origin: "the figures of a usual motor until its own are entered" }
      : job.motor
    : driveFor(start, job.vehicle.kerb_kg).motor;
  const module = hasCells ? (isCellsOpen(job) ? { ...job.module, name: BOUGHT_CELLS } : job.module) : start.module;
  return { ...job, motor, module };
}

/** Where a usual value comes from, with how far off it may be where the least and the most are known. */
export function usualWithin(value: unknown, low?: number, high?: number, note?: string): Origin {
  if (typeof value !== "number" || value === 0 || low === undefined || high === undefined) return { from: "usual" };
  return {
    from: "usual",
    plusMinus_frac: Math.min(2, Math.max(high - value, value - low) / value),
    ...(note !== undefined && { note }),
  };
}

/** What a first phone call leaves open: the car and its weather. Drive and cells are parts picked by the workshop. */
const OPEN = /^(vehicle|driveline|accessories)\.|^module\.capacity_Ah$|^charger\.efficiency_frac$/;

/** An efficiency is never a tenth off, which is what is taken where nothing is said. Assumed. */
const EFFICIENCY_BAND_frac = 0.03;

/** Origins that call every fact of the car usual, as far as the page has a field for it. */
function allUsual(job: Job): Job["origins"] {
  const origins: Record<string, Origin> = { usualDay_km: { from: "guessed" } };
  for (const [pattern, field] of Object.entries(fieldList)) {
    if (field.type !== "quantity" || field.isChosen || !OPEN.test(pattern)) continue;
    const usual: Origin =
      field.kind === "fraction" ? { from: "usual", plusMinus_frac: EFFICIENCY_BAND_frac } : { from: "usual" };
    for (const path of placesOf(job, pattern)) if (typeof atPath(job, path) === "number") origins[path] ??= usual;
  }
  return origins;
}
