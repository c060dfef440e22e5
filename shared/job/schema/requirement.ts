import * as z from "zod";
import { above0, between } from "./number.ts";

/** What the client asks of the car beside the day's distance; what is absent is not asked. */
export const Requirement = z.strictObject({
  topSpeed_kmh: above0(250).optional(),
  /** The steepest hill it must start on, as rise over run, with the load and the pack aboard. */
  startHill_ratio: between(0.001, 0.6).optional(),
  /** How long that hill is; the steepest of the road where only this is given. */
  hillLength_km: between(0.005, 200).optional(),
  /** The longest climb of the client's roads, and its gradient: what currents are judged by beside the road. */
  longHill_km: above0(200).optional(),
  longHill_ratio: between(0.001, 0.6).optional(),
  /** The hot day that motor and pack are judged on. */
  hotDay_degC: between(15, 55).optional(),
});
