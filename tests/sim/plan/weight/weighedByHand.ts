import type * as z from "zod";
import { Weights } from "../../../../shared/job/schema/weights.ts";
import { bareJob } from "../../../support/bareCar.ts";

export type Written = z.input<typeof Weights>;

/** A saloon of 2400 mm wheelbase, 500 kg on its front axle and 450 kg on its rear one. */
export const written: Written = {
  wheelbase_mm: 2400,
  weighed: { front_kg: 500, rear_kg: 450 },
  out: [
    { name: "engine", mass_kg: 150, place_mm: 0 },
    { name: "tank", mass_kg: 30, place_mm: 2700 },
  ],
  in: [{ name: "motor", mass_kg: 60, place_mm: 200 }],
  driver: { name: "driver", mass_kg: 75, place_mm: 1300 },
  load: [{ name: "three aboard and bags", mass_kg: 255, place_mm: 2000 }],
  boxes: [
    { name: "front box", place_mm: -100, share_frac: 0.4 },
    { name: "boot box", place_mm: 2600, share_frac: 0.6 },
  ],
};

export const weightsOf = (changes: Partial<Written> = {}) => Weights.parse({ ...written, ...changes });

/** 200 kg of pack. */
export const job = bareJob({
  vehicle: { kerb_kg: 950, removed_kg: 180, added_kg: 60 },
  module: { mass_kg: 50 },
  pack: { seriesModules: 4 },
});
