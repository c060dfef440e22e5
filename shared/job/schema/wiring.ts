import * as z from "zod";
import { above0, between } from "./number.ts";

/** Traction cable and pre-charge between pack and controller. What is left out is usual or proposed, and says so. */
export const Wiring = z.strictObject({
  /** Of one pole there and of the other back, together. */
  cable_m: above0(100).optional(),
  /** As fitted; proposed from the currents where left out. */
  cable_mm2: above0(1000).optional(),
  /** The hottest that the conductor may get at work: what its insulation stands. */
  conductor_degC: between(20, 250).optional(),
  /** At the controller's input, by its sheet. */
  capacitance_uF: above0(200_000).optional(),
  /** As fitted; proposed from a shelf of values where left out. */
  precharge_ohm: above0(100_000).optional(),
  /** Drawn on the controller's side of the contactor while it is pre-charged: a DC-DC converter awake. */
  prechargeLoad_W: between(0, 10_000).optional(),
  /** The converter wakes at this voltage; at any where left out. */
  loadWakes_V: between(0, 1500).optional(),
});
