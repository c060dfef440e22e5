import * as z from "zod";
import { across } from "./across.ts";
import { CellPrice } from "./costs.ts";
import { Heat } from "./motor.ts";
import { above0, between, line, risingAxis, sameLength } from "./number.ts";

/** What a module may give or take: for ever, and for `peak_s` seconds. */
const CurrentLimit = z
  .strictObject({ continuous_A: above0(5000), peak_A: above0(5000), peak_s: between(0, 600) })
  .check(
    across(["continuous_A", "peak_A"], ({ continuous_A, peak_A }, fault) => {
      if (peak_A < continuous_A)
        fault(["peak_A"], `found ${peak_A} A, continuous_A (${continuous_A} A) or more wanted`);
    }),
  );

export const Module = z
  .strictObject({
    name: line,
    chemistry: z.enum(["nickel", "ironPhosphate"]),
    condition: z.enum(["new", "reclaimed"]),
    /** Where its figures come from: a published law, common practice, invented, a test. */
    origin: line,
    seriesCells: z.int().min(1).max(200),
    parallelCells: z.int().min(1).max(200),
    /** The whole module's full capacity as tested: state of charge 1 means this. */
    capacity_Ah: above0(2000),
    /**
     * Of reclaimed modules the capacity of each, as tested. The best are used, and a pack holds what its weakest gives: it counts in
     * place of `capacity_Ah`, and no pack has more modules than were tested.
     */
    tested: z
      .array(z.strictObject({ capacity_Ah: above0(2000) }))
      .min(1)
      .max(400)
      .optional(),
    /** Open-circuit voltage of one cell at 25 degC. */
    openCircuit: z
      .strictObject({ soc_frac: risingAxis(0, 1), cell_V: z.array(between(0.5, 5)) })
      .check(sameLength("cell_V", "soc_frac")),
    /** Resistance of the whole module at 25 degC when discharging. */
    resistance: z
      .strictObject({ soc_frac: risingAxis(0, 1), module_mohm: z.array(above0(10_000)) })
      .check(sameLength("module_mohm", "soc_frac")),
    /** Resistance at a temperature over that at 25 degC. */
    resistanceByTemperature: z
      .strictObject({ temperature_degC: risingAxis(-40, 80), resistance_ratio: z.array(between(0.2, 20)) })
      .check(sameLength("resistance_ratio", "temperature_degC")),
    /** Charging resistance over discharging resistance. */
    charging_ratio: between(0.2, 5).default(1),
    discharge: CurrentLimit,
    charge: CurrentLimit,
    /**
     * Charging current is none at and below `none_degC` and full from `full_degC`. Both chemistries are lithium: 0 and 10 degC unless
     * the sheet says otherwise (common practice, no source).
     */
    coldCharge: z
      .strictObject({ none_degC: between(-40, 40), full_degC: between(-40, 50) })
      .check(
        across(["none_degC", "full_degC"], ({ none_degC, full_degC }, fault) => {
          if (full_degC <= none_degC)
            fault(["full_degC"], `found ${full_degC} degC, above none_degC (${none_degC} degC) wanted`);
        }),
      )
      .default({ none_degC: 0, full_degC: 10 }),
    cellMin_V: between(0.5, 5),
    cellMax_V: between(0.5, 5),
    mass_kg: above0(500),
    length_mm: between(10, 3000),
    width_mm: between(10, 3000),
    height_mm: between(10, 3000),
    /** Of one module; current falls from full to none between the two temperatures. */
    heat: Heat.optional(),
  })
  .check(
    across(["cellMin_V", "cellMax_V"], ({ cellMin_V, cellMax_V }, fault) => {
      if (cellMax_V <= cellMin_V) fault(["cellMax_V"], `found ${cellMax_V} V, above cellMin_V (${cellMin_V} V) wanted`);
    }),
    across(["openCircuit.soc_frac.*"], ({ openCircuit: { soc_frac } }, fault) => {
      if (soc_frac[0] !== 0 || soc_frac.at(-1) !== 1)
        fault(["openCircuit", "soc_frac"], `found ${soc_frac[0]} to ${soc_frac.at(-1)}, 0 to 1 wanted`);
    }),
    across(["openCircuit.cell_V.*"], ({ openCircuit: { cell_V } }, fault) => {
      const falling = cell_V.findIndex((value_V, i) => i > 0 && value_V < (cell_V[i - 1] ?? 0));
      if (falling < 0) return;
      const found = `found ${cell_V[falling]} V after ${cell_V[falling - 1]} V`;
      fault(["openCircuit", "cell_V", falling], `${found}, open-circuit voltage may not fall as charge rises`);
    }),
  );
export type Module = z.infer<typeof Module>;

export const Pack = z
  .strictObject({
    name: line,
    seriesModules: z.int().min(1).max(400),
    parallelModules: z.int().min(1).max(100),
    /** The whole pack in three figures, in place of modules; its cells behave as those of the job's module. */
    whole: z
      .strictObject({
        energy_kWh: above0(1000),
        nominal_V: between(10, 1200),
        /** Mass for each kWh, boxes, bars and lids in it. */
        mass_kgpkWh: between(2, 100),
      })
      .optional(),
    /** Top and bottom of the usable window, as shares of the tested capacity. */
    ceiling_frac: between(0.05, 1).default(0.95),
    floor_frac: between(0, 0.95).default(0.1),
    /** Charge up to which braking by the motor may charge the pack; `ceiling_frac`, where a charger stops, if not given. */
    regenTo_frac: between(0.05, 1).optional(),
    /** Mass of boxes, bars and lids over that of the modules. */
    boxes_frac: between(0, 2).default(0.28),
    /** Leads, fuses, contactors, disconnect. */
    leads_mohm: between(0, 1000).default(5),
    /** Of its cells, where it is not that of every pack; no result but its price hangs on it. */
    cellPrice: CellPrice.optional(),
    /** The client asked for this one: it is always among those shown. No result hangs on it. */
    isAskedFor: z.boolean().optional(),
  })
  .check(
    across(["ceiling_frac", "floor_frac"], ({ ceiling_frac, floor_frac }, fault) => {
      if (ceiling_frac <= floor_frac)
        fault(["ceiling_frac"], `found ${ceiling_frac}, above floor_frac (${floor_frac}) wanted`);
    }),
    across(["regenTo_frac", "floor_frac"], ({ regenTo_frac, floor_frac }, fault) => {
      if (regenTo_frac !== undefined && regenTo_frac <= floor_frac)
        fault(["regenTo_frac"], `found ${regenTo_frac}, above floor_frac (${floor_frac}) wanted`);
    }),
  );
export type Pack = z.infer<typeof Pack>;
