import * as z from "zod";
import { across } from "./across.ts";
import { BandKm } from "./band.ts";
import { above0, between, line } from "./number.ts";

/** How a frozen prediction is laid out; a higher one is of a newer program, and `readJob` refuses it in one sentence. */
export const PREDICTION_LAYOUT = 1;

/** SHA-256 in hexadecimal [FIPS180-4]. */
const Digest = z.string().regex(/^[0-9a-f]{64}$/, "64 hexadecimal digits wanted");

/** Watt-hours, amperes or volts of one pass: wide enough for any car, and finite. */
const figure = between(-1e7, 1e7);

/** By condition: `new`, `winter`, `tenYearsWinter`. A record, so that a condition more is no other layout. */
const ByCondition = z.record(z.string().max(40), BandKm);

/** What was predicted of one pack. Energies and peaks are of one pass of the road from full. */
const PredictedPack = z.strictObject({
  name: line,
  /** Absent where it must not be used. */
  verdict: line.optional(),
  mass_kg: between(0, 20_000),
  testMass_kg: between(0, 50_000),
  usable_kWh: between(0, 1000),
  distance_km: between(0, 1e5),
  battery_Whpkm: figure,
  wall_Whpkm: figure,
  regen_Wh: figure,
  rmsBattery_A: figure,
  peak: z.strictObject({
    battery_A: figure,
    charge_A: figure,
    motor_Nm: figure,
    motor_kW: figure,
    motor_rpm: figure,
    min_V: figure,
  }),
  /** Where the energy of the pass went, by the names of the ledger. */
  ledger_Wh: z.record(z.string().max(40), figure),
  /** Absent where the car does not drive the road, or must not. */
  range_km: ByCondition.optional(),
  left_km: ByCondition.optional(),
  isAtLeast: z.boolean().optional(),
});
export type PredictedPack = z.infer<typeof PredictedPack>;

/**
 * The schema of a prediction as it was frozen, never to be written over: what it was made from (`state`, what of a job decides its
 * answer), the road it was made on, which program made it and when, and its results pack by pack.
 */
export function predictionOf<State extends z.ZodType>(state: State) {
  return z
    .strictObject({
      layout: z.literal(PREDICTION_LAYOUT),
      /** When it was frozen, as an ISO 8601 date and time. */
      at: line,
      /** The version of the program that made it: 0.1.0. */
      program: z.string().regex(/^\d{1,6}\.\d{1,6}\.\d{1,6}$/, "a version such as 0.1.0 wanted"),
      /** Of `state` and road together, as text in one canonical form [RFC8785]. */
      digest: Digest,
      /** What it was frozen for, in the workshop's words: the quote, after the visit. */
      note: z.string().max(200).optional(),
      state,
      road: z.strictObject({
        id: line,
        title: line,
        /** Of the road as it lay in the job. */
        digest: Digest,
        distance_km: above0(1e5),
        duration_s: above0(1e8),
        climb_m: between(0, 1e6),
      }),
      /** The pack it spoke for, by name. */
      recommended: line.optional(),
      packs: z.array(PredictedPack).min(1).max(12),
    })
    .check(
      across(["at"], ({ at }, fault) => {
        if (Number.isNaN(Date.parse(at)))
          fault(["at"], `found "${at}", a date and time such as 2026-03-01T09:30:00Z wanted`);
      }),
    );
}
