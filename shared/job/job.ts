import * as z from "zod";
import { keysOf } from "./path.ts";
import { across } from "./schema/across.ts";
import { BandKm } from "./schema/band.ts";
import { Module, Pack } from "./schema/battery.ts";
import { Charger } from "./schema/charger.ts";
import { OwnChart } from "./schema/chart.ts";
import { Conditions } from "./schema/conditions.ts";
import { Controller } from "./schema/controller.ts";
import { Costs } from "./schema/costs.ts";
import { Driveline } from "./schema/driveline.ts";
import { Engine } from "./schema/engine.ts";
import { Motor } from "./schema/motor.ts";
import { above0, between, line } from "./schema/number.ts";
import { predictionOf } from "./schema/predictions.ts";
import { Requirement } from "./schema/requirement.ts";
import { Road } from "./schema/road.ts";
import { Sizing } from "./schema/sizing.ts";
import { Supply } from "./schema/supply.ts";
import { Vehicle } from "./schema/vehicle.ts";
import { unknownRoads, unknownSupplies, Week } from "./schema/week.ts";
import { Weights, weighedFault } from "./schema/weights.ts";
import { Wiring } from "./schema/wiring.ts";
import { Year } from "./schema/year.ts";
import { isInSchema } from "./schemaAt.ts";

export const JOB_FORMAT = "bellhousing-job";
export const JOB_VERSION = 1;

/** Where a value came from, how it was typed, and how far it may be off. `typed`: nobody has told where from. */
const Origin = z.strictObject({
  from: z.enum(["typed", "measured", "handbook", "usual", "guessed"]),
  typed: z.string().max(200).optional(),
  plusMinus_frac: between(0, 2).optional(),
  note: z.string().max(500).optional(),
  /** Unusual, and its owner says that it is right. */
  isConfirmed: z.boolean().optional(),
});
export type Origin = z.infer<typeof Origin>;

export const Accessory = z.strictObject({
  name: line,
  power_W: between(0, 10_000),
  /** On for this share of the drive. */
  duty_frac: between(0, 1).default(1),
  /** The same share in winter: dark, wet and misted up; as ever where left out. */
  winterDuty_frac: between(0, 1).optional(),
  supply: z.enum(["12V", "pack"]),
});

const Accessories = z
  .strictObject({
    /** Contactors, controller, pump: on whenever the car is. Drawn at 12 V. */
    standing_W: between(0, 5000),
    dcdcEfficiency_frac: between(0.3, 1),
    /** Between these the DC-DC converter works; not known where left out. */
    dcdcMin_V: between(0, 1500).optional(),
    dcdcMax_V: above0(1500).optional(),
    items: z.array(Accessory).max(30).default([]),
  })
  .check(
    across(["dcdcMin_V", "dcdcMax_V"], ({ dcdcMin_V, dcdcMax_V }, fault) => {
      if (dcdcMin_V !== undefined && dcdcMax_V !== undefined && dcdcMin_V >= dcdcMax_V)
        fault(["dcdcMin_V"], `found ${dcdcMin_V} V, below dcdcMax_V (${dcdcMax_V} V) wanted`);
    }),
  );

const Environment = z
  .strictObject({
    temperature_degC: between(-40, 55).default(20),
    /** Of the air; 100 kPa where neither this nor the altitude is given. */
    pressure_kPa: between(40, 110).optional(),
    /** Height above the sea, from which the standard atmosphere gives the pressure. */
    altitude_m: between(-430, 5000).optional(),
    /** Positive against the car. */
    headWind_kmh: between(-120, 120).default(0),
    gravity_mps2: between(9.7, 9.9).default(9.81),
    /** Tyre on road, sliding just avoided. */
    grip_coeff: between(0.05, 1.5).default(0.8),
    /** Of the cells at the start; the air's where not given. */
    pack_degC: between(-40, 60).optional(),
  })
  .check(
    across(["pressure_kPa", "altitude_m"], ({ pressure_kPa, altitude_m }, fault) => {
      if (pressure_kPa !== undefined && altitude_m !== undefined)
        fault(["altitude_m"], "found a pressure and an altitude, one of them wanted: each says how dense the air is");
    }),
  );

const Note = z.strictObject({ after: line, text: z.string().max(20_000) });

/** What of a job decides its answer, beside the roads. */
const decides = {
  /** The usual day, and the longest of the year: two different numbers. */
  usualDay_km: above0(2000),
  longestDay_km: above0(2000).optional(),
  /** How often in a year the longest day comes. */
  longestDaysAYear: z.int().min(1).max(366).optional(),
  /** The year that every evening is worked out for; an invented one where left out. */
  year: Year.optional(),
  requirement: Requirement.prefault({}),
  sizing: Sizing.prefault({}),
  vehicle: Vehicle,
  /** The engine that came out; no result hangs on it. */
  engine: Engine.optional(),
  driveline: Driveline,
  motor: Motor,
  controller: Controller,
  module: Module,
  packs: z.array(Pack).min(1).max(12),
  accessories: Accessories,
  charger: Charger,
  environment: Environment.prefault({}),
  /** What a pack must allow for beside the day itself; usual values, common practice, no source. */
  allowance: z
    .strictObject({
      /** Energy in winter over that of the day calculated. */
      winter_ratio: between(1, 3).default(1.33),
      /** Capacity left when the pack is old, as a share of what it was tested at. */
      aged_frac: between(0.3, 1).default(0.75),
    })
    .prefault({}),
  /** What the packs are driven in beside the job's own weather; the factors of the allowance hold where left out. */
  conditions: Conditions.optional(),
  /** Id of the road that the packs are judged on; the first where none is said. */
  drivenRoad: line.optional(),
  /** By path, such as `vehicle.load_kg`. */
  origins: z.record(z.string().max(200), Origin).default({}),
};

const State = z.strictObject(decides);
/** What of a job decides its answer, roads aside: what is kept of a state that is pinned or predicted from. */
export type DecidingState = z.infer<typeof State>;
export const decidingKeys = Object.keys(decides) as readonly (keyof DecidingState)[];

/** A state of the job that was pinned: what decided its answer, and the answer as it was. Roads are the job's own. */
const Pinned = z.strictObject({
  /** When, as an ISO 8601 date and time. */
  at: line,
  state: State,
  answer: z.strictObject({
    road: line,
    packs: z
      .array(
        z.strictObject({
          name: line,
          verdict: line.optional(),
          /** Kilometres left of the usual day. */
          left_km: z.strictObject({ new: BandKm, winter: BandKm, tenYearsWinter: BandKm }).optional(),
        }),
      )
      .max(12),
  }),
});
export type Pinned = z.infer<typeof Pinned>;

/** A prediction as it was given to the client: kept to be compared with what comes later. Roads are the job's own. */
const Prediction = predictionOf(State);
export type Prediction = z.infer<typeof Prediction>;

const shape = z.strictObject({
  format: z.literal(JOB_FORMAT),
  version: z.literal(JOB_VERSION),
  title: line,
  /** True in demo jobs: an invented example. */
  isInvented: z.boolean().default(false),
  /** Names for the client sheet; nothing else hangs on them. */
  client: z.string().max(200).optional(),
  workshop: z.string().max(200).optional(),
  /** The client's own words for the use. */
  use: z.string().max(2000).default(""),
  ...decides,
  /** Where the masses sit; without it axle loads are not worked out. */
  weights: Weights.optional(),
  /** Cable and pre-charge; no range hangs on it. */
  wiring: Wiring.optional(),
  roads: z.array(Road).min(1).max(60),
  /** Where it is charged, the usual place first; a household socket where there is none. */
  supplies: z.array(Supply).max(8).default([]),
  /** A week by the clock, with what is charged between its trips; nothing else hangs on it. */
  week: Week.optional(),
  /** What prices are in, as it is printed: EUR. */
  currency: z.string().trim().max(10).optional(),
  /** What the conversion costs and what it saves; nothing else hangs on it. */
  costs: Costs.optional(),
  notes: z.array(Note).max(200).default([]),
  /** Charts of the workshop's own. */
  charts: z.array(OwnChart).max(40).default([]),
  /** The units the page speaks; what was typed keeps the way it was typed. */
  units: z.enum(["metric", "british", "american"]).default("metric"),
  hiddenSections: z.array(line).max(100).default([]),
  /** A state that the present one is compared with, if any. */
  pinned: Pinned.optional(),
  /** Predictions as they were frozen, the latest last; none is ever changed. */
  predictions: z.array(Prediction).max(24).default([]),
});

export const Job = shape.check(
  across(["origins"], ({ origins }, fault) => {
    for (const path of Object.keys(origins)) {
      if (!hasPlace(path)) fault(["origins", path], "found an origin of a value that no job has");
    }
  }),
  across(["packs.*.name"], ({ packs }, fault) => {
    packs.forEach(({ name }, i) => {
      if (packs.findIndex((other) => other.name === name) < i)
        fault(["packs", i, "name"], `found "${name}" twice, names must differ`);
    });
  }),
  across(["supplies.*.name"], ({ supplies }, fault) => {
    supplies.forEach(({ name }, i) => {
      if (supplies.findIndex((other) => other.name === name) < i)
        fault(["supplies", i, "name"], `found "${name}" twice, names must differ`);
    });
  }),
  across(["roads.*.id", "roads.*.kind"], ({ roads }, fault) => {
    roads.forEach(({ id }, i) => {
      if (roads.findIndex((other) => other.id === id) < i)
        fault(["roads", i, "id"], `found "${id}" twice, ids must differ`);
    });
  }),
  across(["drivenRoad", "roads.*.id"], ({ drivenRoad, roads }, fault) => {
    if (drivenRoad !== undefined && roads.every(({ id }) => id !== drivenRoad))
      fault(["drivenRoad"], `found "${drivenRoad}", the id of one of the roads wanted`);
  }),
  across(["week.days.*.trips.*.road", "roads.*.id"], ({ week, roads }, fault) => {
    for (const [path, message] of unknownRoads(week, roads)) fault(["week", ...path], message);
  }),
  across(["week.days.*.trips.*.parkedAt", "supplies.*.name"], ({ week, supplies }, fault) => {
    for (const [path, message] of unknownSupplies(week, supplies)) fault(["week", ...path], message);
  }),
  across(["weights.weighed.*", "vehicle.kerb_kg"], ({ weights, vehicle }, fault) => {
    const wrong = weights && weighedFault(weights, vehicle.kerb_kg);
    if (wrong !== undefined) fault(["weights", "weighed"], wrong);
  }),
  across(["vehicle.removed_kg", "vehicle.kerb_kg"], ({ vehicle: { removed_kg, kerb_kg } }, fault) => {
    if (removed_kg >= kerb_kg) {
      const found = `found ${removed_kg} kg taken out of ${kerb_kg} kg`;
      fault(["vehicle", "removed_kg"], `${found}, less than the whole car wanted`);
    }
  }),
);
export type Job = z.infer<typeof Job>;

/** Paths of origins that are known to lead somewhere, whatever the place in a list: each is looked up once. */
const places = new Map<string, boolean>();

function hasPlace(path: string): boolean {
  const place = path.replace(/\.\d+(?=\.|$)/g, ".0");
  const known = places.get(place) ?? isInSchema(shape, keysOf(place));
  if (places.size < 1000) places.set(place, known);
  return known;
}
