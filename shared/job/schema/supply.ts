import * as z from "zod";
import { common_h } from "../hoursOfDay.ts";
import { across } from "./across.ts";
import { Hours } from "./clock.ts";
import { above0, between, line } from "./number.ts";

/**
 * Most current of each phase by mode [IEC61851-1, clause 6]: mode 1 (no communication) 16 A, mode 2 (a box in the cable) 32 A; mode 3
 * as the largest inlet for alternating current takes, 70 A from one phase and 63 A from three [IEC62196-2, type 2].
 */
const most_A = { mode1: 16, mode2: 32, mode3: 70 } as const;
const MOST_THREE_PHASE_A = 63;
/** The largest household plug of any country. */
const MOST_HOUSEHOLD_A = 16;

/** Where the lead goes in, when, and for how much. */
export const Supply = z
  .strictObject({
    name: line,
    kind: z.enum(["household", "singlePhase", "threePhase"]),
    /** Mode of charging by IEC 61851. */
    mode: z.enum(["mode1", "mode2", "mode3"]),
    /** Of one phase against neutral, or between the two hot wires of a split phase. */
    voltage_V: between(90, 300),
    /** Of each phase, for hours. */
    current_A: above0(70),
    /** When the car stands there and may charge; the whole day where left out. */
    hours: Hours.optional(),
    /** Of a kilowatt-hour, outside the cheap hours where there are some. */
    price_perkWh: between(0, 10_000).optional(),
    /** Hours in which a kilowatt-hour costs less. */
    cheap: z.strictObject({ ...Hours.shape, price_perkWh: between(0, 10_000).optional() }).optional(),
  })
  .check(
    across(["kind", "mode", "current_A"], ({ kind, mode, current_A }, fault) => {
      if (kind === "household" && mode === "mode3")
        fault(["mode"], "found mode 3 at a household socket, mode 1 or 2 wanted: mode 3 has a wall unit of its own");
      else if (kind === "household" && current_A > MOST_HOUSEHOLD_A)
        fault(["current_A"], `found ${current_A} A at a household socket, at most ${MOST_HOUSEHOLD_A} A allowed`);
      else if (current_A > most_A[mode])
        fault(["current_A"], `found ${current_A} A, mode ${mode.slice(-1)} allows at most ${most_A[mode]} A`);
      else if (kind === "threePhase" && current_A > MOST_THREE_PHASE_A)
        fault(["current_A"], `found ${current_A} A on three phases, at most ${MOST_THREE_PHASE_A} A allowed`);
    }),
    across(["hours"], ({ hours }, fault) => {
      if (hours && hours.from === hours.to)
        fault(["hours", "to"], `found ${hours.from} to ${hours.to}, an end later than the beginning wanted`);
    }),
    across(["cheap"], ({ cheap }, fault) => {
      if (cheap && cheap.from === cheap.to)
        fault(["cheap", "to"], `found ${cheap.from} to ${cheap.to}, an end later than the beginning wanted`);
    }),
    across(["hours", "cheap"], ({ hours, cheap }, fault) => {
      if (!hours || !cheap || hours.from === hours.to || cheap.from === cheap.to || common_h(hours, cheap) > 0) return;
      const found = `found cheap hours from ${cheap.from} to ${cheap.to}`;
      fault(["cheap"], `${found}, but the car charges there from ${hours.from} to ${hours.to}`);
    }),
    across(["price_perkWh", "cheap"], ({ hours, price_perkWh, cheap }, fault) => {
      if (cheap?.price_perkWh === undefined || price_perkWh !== undefined) return;
      const isAllCheap = hours !== undefined && hours.from === cheap.from && hours.to === cheap.to;
      if (!isAllCheap)
        fault(["price_perkWh"], `found a price from ${cheap.from} to ${cheap.to} and none for the hours outside it`);
    }),
  );
export type Supply = z.infer<typeof Supply>;
