import type * as z from "zod";
import { Charger } from "../job/schema/charger.ts";
import { asDescribed, practice } from "./origin.ts";
import { partOf } from "./part.ts";

export const ChargerPart = partOf(Charger);
export type ChargerPart = z.infer<typeof ChargerPart>;

/** Chargers in the car, by class. The highest voltage must clear the pack's full voltage: set it for the pack. */
export const chargers: readonly ChargerPart[] = [
  charger("old-1-5-kw", "Older, 1.5 kW, up to 132 V", 1.5, 0.87, practice(0.85, 0.92), 132),
  charger("low-voltage-2-kw", "Low voltage, 2 kW, up to 160 V", 2, 0.9, practice(0.85, 0.92), 160),
  charger("low-voltage-3-kw", "Low voltage, 3.3 kW, up to 180 V", 3.3, 0.92, practice(0.9, 0.94), 180),
  charger("high-voltage-3-kw", "3.3 kW, up to 420 V", 3.3, 0.93, practice(0.92, 0.95), 420),
  charger("high-voltage-7-kw", "6.6 kW, up to 420 V", 6.6, 0.94, practice(0.92, 0.95), 420),
];

function charger(
  id: string,
  title: string,
  power_kW: number,
  efficiency_frac: number,
  efficiency: ChargerPart["origins"][string],
  max_V: number,
): ChargerPart {
  return {
    id,
    title,
    data: { name: title, efficiency_frac, max_V, power_kW },
    origins: {
      efficiency_frac: { ...efficiency, note: "worse below a quarter of its load" },
      max_V: asDescribed(),
      power_kW: asDescribed("at its DC side"),
    },
  };
}
