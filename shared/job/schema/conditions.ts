import * as z from "zod";
import { across } from "./across.ts";
import { between, line } from "./number.ts";

/** How the cabin is kept warm, and what that draws from the pack while driving. */
const CabinHeat = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("none") }),
  /** An electric heater that is simply on: so many kilowatts, by the hour and not by the kilometre. */
  z.strictObject({ kind: z.literal("byHour"), power_kW: between(0, 20) }),
  /** An electric heater with a thermostat in a cabin that is one lump of heat. */
  z.strictObject({
    kind: z.literal("thermostat"),
    power_kW: between(0, 20),
    cabin_degC: between(0, 35).default(18),
    capacity_kJpK: between(5, 2000),
    loss_WpK: between(1, 1000),
    /** Warm when it leaves home, from the socket; every later trip of the day begins cold. */
    isPreheated: z.boolean().default(false),
    /** Length of a trip, after which the cabin has gone cold; the whole way on one charge is one trip where left out. */
    trip_km: between(0.5, 1000).optional(),
  }),
  /** A heater that burns fuel: it takes litres, and from the pack only its fan and pump. */
  z.strictObject({
    kind: z.literal("fuel"),
    power_kW: between(0, 20),
    fan_W: between(0, 500).default(40),
    fuel: z.enum(["petrol", "diesel"]).default("diesel"),
    /** Heat into the cabin over heat in the fuel. */
    efficiency_frac: between(0.3, 1).default(0.8),
  }),
]);
export type CabinHeat = z.infer<typeof CabinHeat>;

const weather = {
  temperature_degC: between(-40, 55),
  /** Of the cells when the car leaves, where it stands in a garage; the air's where left out. */
  pack_degC: between(-40, 60).optional(),
  heat: CabinHeat.default({ kind: "none" }),
  /** Whether lights, wipers and demister are on as in winter: by their own share for it. */
  isDark: z.boolean().default(true),
  /** On top of what denser air does by the laws that are there. */
  drag_ratio: between(0.5, 3).default(1),
  /** On top of what cold tyres do: a wet road, snow. */
  rolling_ratio: between(0.5, 5).default(1),
  /** Share of the usable window that can be drawn in this weather. */
  usable_frac: between(0.2, 1).default(1),
  /** On top of what the module's own table says of its temperature. */
  resistance_ratio: between(0.2, 10).default(1),
  /** Against the car on the way out, with it on the way home. */
  wind_kmh: between(0, 120).default(0),
};
const Weather = z.strictObject(weather);
export type Weather = z.infer<typeof Weather>;

/** The states of pack and weather in which the packs are driven, beside new and in the weather of the job. */
export const Conditions = z
  .strictObject({
    /** A winter's day; the factor of the allowance stands for it where left out. */
    winter: Weather.optional(),
    /** The pack at ten years; its capacity is that of the allowance. */
    old: z.strictObject({ resistance_ratio: between(0.5, 10).default(1.3) }).prefault({}),
    /** Conditions of the workshop's own. */
    others: z
      .array(z.strictObject({ name: line, isOld: z.boolean().default(false), ...weather }))
      .max(6)
      .default([]),
  })
  .check(
    across(["others.*.name"], ({ others }, fault) => {
      others.forEach(({ name }, i) => {
        if (others.findIndex((other) => other.name === name) < i)
          fault(["others", i, "name"], `found "${name}" twice, names must differ`);
      });
    }),
  );
export type Conditions = z.infer<typeof Conditions>;
