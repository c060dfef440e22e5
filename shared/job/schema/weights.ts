import * as z from "zod";
import { weighedAxles } from "../weighedAxles.ts";
import { across } from "./across.ts";
import { above0, between, line } from "./number.ts";

/** Places along the car: behind the centre of the front axle, negative before it. */
const place_mm = between(-3000, 15_000);
/** As far as a car reaches beyond its axles, before and behind. Assumed, generous. */
const OVERHANG_mm = { front: 1500, rear: 2500 };
/** Shares of a whole may be rounded by so much. */
const ROUNDED_frac = 0.005;
/** Corners weighed one after another may miss the axle by so much. */
const WEIGHED_frac = 0.02;

const Corners = z.strictObject({
  frontLeft_kg: between(0, 20_000),
  frontRight_kg: between(0, 20_000),
  rearLeft_kg: between(0, 20_000),
  rearRight_kg: between(0, 20_000),
});

/** What is taken out of the car, put in, or loaded. */
const Item = z.strictObject({ name: line, mass_kg: above0(5000), place_mm });

const weighedPaths = ["front_kg", "rear_kg", ...Object.keys(Corners.shape)].map((key) => `weighed.${key}`);

/** Where the masses of a car sit, and what its axles may carry. */
export const Weights = z
  .strictObject({
    wheelbase_mm: between(800, 8000),
    /** As the car arrived, nobody aboard: two axles, or four corners. */
    weighed: z.union([z.strictObject({ front_kg: above0(20_000), rear_kg: above0(20_000) }), Corners]),
    out: z.array(Item).max(60).default([]),
    in: z.array(Item).max(60).default([]),
    /** Aboard whenever it is driven. */
    driver: Item.optional(),
    /** Aboard beside the driver when it is fully laden. */
    load: z.array(Item).max(40).default([]),
    /** Where the pack's boxes sit, each with its share of the pack's mass. */
    boxes: z
      .array(
        z.strictObject({
          name: line,
          place_mm,
          share_frac: between(0, 1),
          /** Room inside, along the car, across it and up, for a first look at how many modules go in. */
          length_mm: above0(5000).optional(),
          width_mm: above0(3000).optional(),
          height_mm: above0(2000).optional(),
        }),
      )
      .min(1)
      .max(12),
    /** Kept free between modules, and between them and the walls of their box. */
    clearance_mm: between(0, 200).optional(),
    /** Ball load of a trailer, when towing. */
    ball: z.strictObject({ mass_kg: above0(1000), place_mm }).optional(),
    /** What may rest on each axle and on both, by the car's plate, and by the tyres of an axle. All of them bind. */
    plates: z
      .strictObject({
        front_kg: above0(20_000).optional(),
        rear_kg: above0(20_000).optional(),
        gross_kg: above0(40_000).optional(),
        frontTyres_kg: above0(20_000).optional(),
        rearTyres_kg: above0(20_000).optional(),
      })
      .default({}),
  })
  .check(
    across(["boxes.*.share_frac"], ({ boxes }, fault) => {
      const sum = boxes.reduce((total, { share_frac }) => total + share_frac, 0);
      if (Math.abs(sum - 1) > ROUNDED_frac)
        fault(
          ["boxes"],
          `found shares that sum to ${Number(sum.toPrecision(4))}, 1 wanted: all of the pack sits somewhere`,
        );
    }),
    across(
      ["wheelbase_mm", "out.*.place_mm", "in.*.place_mm", "load.*.place_mm", "boxes.*.place_mm", "driver.place_mm"],
      (weights, fault) => {
        const end_mm = weights.wheelbase_mm + OVERHANG_mm.rear;
        const check = (at_mm: number, path: readonly (string | number)[]) => {
          if (at_mm >= -OVERHANG_mm.front && at_mm <= end_mm) return;
          fault(path, `found ${at_mm} mm, beyond the bumpers: ${-OVERHANG_mm.front} to ${end_mm} mm allowed`);
        };
        for (const list of ["out", "in", "load", "boxes"] as const)
          weights[list].forEach(({ place_mm: at_mm }, i) => void check(at_mm, [list, i, "place_mm"]));
        if (weights.driver) check(weights.driver.place_mm, ["driver", "place_mm"]);
      },
    ),
    across(["wheelbase_mm", "ball.place_mm"], ({ wheelbase_mm, ball }, fault) => {
      const [from_mm, to_mm] = [wheelbase_mm, wheelbase_mm + OVERHANG_mm.rear];
      if (ball && (ball.place_mm <= from_mm || ball.place_mm > to_mm))
        fault(
          ["ball", "place_mm"],
          `found ${ball.place_mm} mm, behind the rear axle wanted: above ${from_mm} to ${to_mm} mm`,
        );
    }),
    across(["wheelbase_mm", ...weighedPaths, "out.*.mass_kg", "out.*.place_mm"], (weights, fault) => {
      const { wheelbase_mm, out } = weights;
      const { front_kg, rear_kg } = weighedAxles(weights);
      // Moments about one axle give the load on the other.
      const offRear_kg = out.reduce((sum, { mass_kg, place_mm: at_mm }) => sum + (mass_kg * at_mm) / wheelbase_mm, 0);
      const offFront_kg = out.reduce((sum, { mass_kg }) => sum + mass_kg, 0) - offRear_kg;
      for (const [axle, off_kg, carried_kg] of [
        ["front", offFront_kg, front_kg],
        ["rear", offRear_kg, rear_kg],
      ] as const) {
        if (off_kg < carried_kg) continue;
        const found = `found parts that take ${figures(off_kg)} kg off the ${axle} axle`;
        fault(["out"], `${found}, less than the ${figures(carried_kg)} kg it carried wanted`);
      }
    }),
  );
export type Weights = z.infer<typeof Weights>;

/** What is wrong between the axles as weighed and the mass of the car as it arrives; nothing where they agree within 2 %. */
export function weighedFault(weights: Weights, kerb_kg: number): string | undefined {
  const { front_kg, rear_kg } = weighedAxles(weights);
  const sum_kg = front_kg + rear_kg;
  if (Math.abs(sum_kg - kerb_kg) <= WEIGHED_frac * kerb_kg) return undefined;
  return `found ${figures(front_kg)} + ${figures(rear_kg)} = ${figures(sum_kg)} kg on the axles of a car of ${figures(kerb_kg)} kg, within 2 % wanted`;
}

function figures(value: number): string {
  return String(Number(value.toPrecision(5)));
}
