import * as z from "zod";
import { across } from "./across.ts";
import { above0, between, line, risingAxis, sameLength } from "./number.ts";

/** The charger in the car. Its voltage, power and current are at its DC side unless said otherwise. */
export const Charger = z
  .strictObject({
    name: line,
    /** One figure for all loads; what it takes from the wall where no table says more. */
    efficiency_frac: between(0.3, 1),
    /** Efficiency by what it gives over its power. */
    efficiencyByLoad: z
      .strictObject({ load_frac: risingAxis(0, 1), efficiency_frac: z.array(between(0.3, 1)) })
      .check(
        sameLength("efficiency_frac", "load_frac"),
        across(["load_frac.*", "efficiency_frac.*"], ({ load_frac, efficiency_frac }, fault) => {
          const taken = load_frac.map((load, i) => load / (efficiency_frac[i] ?? 1));
          const falling = taken.findIndex((value, i) => i > 0 && value <= (taken[i - 1] ?? 0));
          if (falling < 0) return;
          const found = `found ${efficiency_frac[falling]} after ${efficiency_frac[falling - 1]}`;
          fault(["efficiency_frac", falling], `${found}: giving more, the charger would take less from the wall`);
        }),
      )
      .optional(),
    max_V: above0(1500).optional(),
    /** It does not begin to charge a pack below this. */
    min_V: between(0, 1500).optional(),
    /** Most that it gives; not known where left out, and the supply alone then sets the pace. */
    power_kW: above0(100).optional(),
    maxDc_A: above0(1000).optional(),
    /** Most that it takes from each phase. */
    maxAc_A: above0(200).optional(),
    /** Takes all three phases where there are three; one where left out. */
    isThreePhase: z.boolean().optional(),
    /** Charging ends when its current has fallen to this at full voltage; a twentieth of the capacity, as amperes, where left out. */
    tail_A: above0(200).optional(),
    /** What the car itself draws while it charges; its always-on load where left out. */
    carDraw_W: between(0, 5000).optional(),
  })
  .check(
    across(["min_V", "max_V"], ({ min_V, max_V }, fault) => {
      if (min_V !== undefined && max_V !== undefined && min_V >= max_V)
        fault(["min_V"], `found ${min_V} V, below max_V (${max_V} V) wanted`);
    }),
    across(["efficiencyByLoad", "power_kW"], ({ efficiencyByLoad, power_kW }, fault) => {
      if (efficiencyByLoad && power_kW === undefined)
        fault(["power_kW"], "found none, the charger's power wanted: its efficiency goes by its share of that");
    }),
  );
export type Charger = z.infer<typeof Charger>;
