import * as z from "zod";
import { across } from "./across.ts";
import { above0, between, line } from "./number.ts";

/** Road load from the body and the tyres. */
export const PhysicalRoadLoad = z.strictObject({
  kind: z.literal("physical"),
  drag_coeff: between(0, 2),
  frontalArea_m2: between(0, 15),
  /** Drag torque of hubs, brakes and undriven shafts, all wheels together, while turning. */
  wheelDrag_Nm: between(0, 500).default(0),
});

/** Drag coefficient times frontal area as one figure, as wind tunnels and some tests print it. */
const DragAreaRoadLoad = z.strictObject({
  kind: z.literal("dragArea"),
  dragArea_m2: between(0, 15),
  wheelDrag_Nm: between(0, 500).default(0),
});

/** Up to here the terms of a coast-down must not push the car. */
const fastest_kmh = 150;

/** Road load measured by coast-down: F = f0 + f1 v + f2 v^2, at 20 degC, 100 kPa, with the mass it was found at. */
const CoastDownRoadLoad = z
  .strictObject({
    kind: z.literal("coastDown"),
    f0_N: between(0, 5000),
    f1_Npkmh: between(-20, 50),
    f2_Npkmh2: between(0, 2),
    mass_kg: above0(20_000),
  })
  .check(
    across(["f0_N", "f1_Npkmh", "f2_Npkmh2"], ({ f0_N, f1_Npkmh, f2_Npkmh2 }, fault) => {
      // The parabola's lowest point, where it lies on the way; no road load pushes a car.
      const least_kmh = f1_Npkmh < 0 ? Math.min(fastest_kmh, -f1_Npkmh / (2 * f2_Npkmh2)) : 0;
      const least_N = f0_N + f1_Npkmh * least_kmh + f2_Npkmh2 * least_kmh ** 2;
      if (least_N >= 0) return;
      const found = `found terms that make ${Math.round(least_N)} N at ${Math.round(least_kmh)} km/h`;
      fault(["f1_Npkmh"], `${found}, 0 N or more wanted up to ${fastest_kmh} km/h`);
    }),
  );

export const Tyres = z.strictObject({
  name: line.optional(),
  /** Rolling radius under load: rolling circumference over 2 pi. */
  loadedRadius_mm: between(100, 900),
  rolling_coeff: between(0, 0.2),
  /** What is added to the rolling coefficient at 100 km/h; it grows with the square of speed. */
  rollingRise_coeff: between(0, 0.05).default(0),
  /** Whether cold air makes the tyres stiffer (0.86 % a kelvin below 20 degC). */
  followsTemperature: z.boolean().default(true),
  /** Moment of inertia of all wheels and tyres together. */
  wheelsInertia_kgm2: between(0, 200).default(0),
});

/** Rotating parts: counted part by part, or as one factor on the mass (1.03 in UN GTR 15). */
const Inertia = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("parts") }),
  z.strictObject({ kind: z.literal("massFactor"), mass_ratio: between(1, 2) }),
]);

/** Where the weight sits; without it grip is not worked out. */
const Balance = z.strictObject({
  wheelbase_mm: between(800, 8000),
  /** Height of the centre of gravity above the road. */
  gravityHeight_mm: between(50, 3000),
  /** Share of the weight that the front axle carries on level ground, as driven. */
  frontShare_frac: between(0.05, 0.95),
});

export const Vehicle = z.strictObject({
  name: line,
  /** Ready to drive as it arrives, nobody aboard. */
  kerb_kg: above0(20_000),
  /** Engine, tank, exhaust and the like taken out. */
  removed_kg: between(0, 10_000).default(0),
  /** Motor, controller, adapter, charger, heater put in; without modules and their boxes. */
  added_kg: between(0, 10_000).default(0),
  /** Weighed as converted, without modules and their boxes, nobody aboard; it counts in place of the three above. */
  converted_kg: above0(20_000).optional(),
  /** People and luggage as driven. */
  load_kg: between(0, 10_000).default(0),
  /** Gross mass on the plate. */
  gross_kg: above0(40_000).optional(),
  tyres: Tyres,
  roadLoad: z.discriminatedUnion("kind", [PhysicalRoadLoad, DragAreaRoadLoad, CoastDownRoadLoad]),
  inertia: Inertia.default({ kind: "parts" }),
  balance: Balance.optional(),
  /** Of an open car: the state that its road load holds for, and how much more drag area it has with the hood down. */
  hood: z.strictObject({ isDown: z.boolean(), downDrag_ratio: between(0.7, 2) }).optional(),
  roof: z.strictObject({ mass_kg: between(0, 1000), dragArea_m2: between(0, 5) }).optional(),
  trailer: z
    .strictObject({ mass_kg: between(0, 20_000), dragArea_m2: between(0, 10), rolling_coeff: between(0, 0.2) })
    .optional(),
});
export type Vehicle = z.infer<typeof Vehicle>;
