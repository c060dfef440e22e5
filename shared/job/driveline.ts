import * as z from "zod";
import { above0, between, line } from "./number.ts";

const Gear = z.strictObject({ name: line, gear_ratio: between(0.2, 25), efficiency_frac: between(0.3, 1) });

const Shifting = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("fixed"), gear: line }),
  /** The road speeds at which the next higher of the listed gears is taken; one fewer than the gears. */
  z.strictObject({
    kind: z.literal("bySpeed"),
    gears: z.array(line).min(1).max(20),
    up_kmh: z.array(between(0, 300)).max(19),
  }),
]);

/** A part-time four-wheel-drive transfer box: high and low range, front axle engaged or not, hubs free or locked. */
const TransferBox = z.strictObject({
  high_ratio: between(0.5, 5),
  highEfficiency_frac: between(0.3, 1),
  low_ratio: between(0.5, 8),
  lowEfficiency_frac: between(0.3, 1),
  range: z.enum(["high", "low"]),
  /** Front axle engaged: both axles drive. */
  isFrontEngaged: z.boolean(),
  /** Freewheeling hubs; `none` where the car has none and its front shafts always turn. */
  hubs: z.enum(["free", "locked", "none"]),
  /** Drag torque at the front wheels, both together, while their shafts turn undriven. */
  frontShaftDrag_Nm: between(0, 200).default(0),
  /** Efficiency of the path to the front axle, on top of the rest, when it is engaged. */
  frontEfficiency_frac: between(0.3, 1).default(1),
});

export const Driveline = z
  .strictObject({
    /** The axle that drives (with the front axle of a part-time car engaged, both do). */
    drivenAxle: z.enum(["front", "rear", "both"]),
    gears: z.array(Gear).min(1).max(20),
    finalDrive_ratio: between(0.5, 20),
    finalDriveEfficiency_frac: between(0.3, 1),
    shifting: Shifting,
    /** Drag torque at the gearbox input while it turns, driving or not. */
    noLoadDrag_Nm: between(0, 100).default(0),
    transferBox: TransferBox.optional(),
    /** What the old parts stand, either way. */
    limits: z
      .strictObject({
        gearboxInput_Nm: above0(5000).optional(),
        propellerShaft_Nm: above0(20_000).optional(),
        /** Each half-shaft of a driven axle. */
        halfShaft_Nm: above0(20_000).optional(),
      })
      .default({}),
  })
  .check((ctx) => {
    const { gears, shifting, transferBox, drivenAxle } = ctx.value;
    const fault = (path: (string | number)[], message: string) => {
      ctx.issues.push({ code: "custom", input: ctx.value, path, message });
    };
    const names = gears.map((gear) => gear.name);
    const listed = `the gears are ${names.join(", ")}`;
    names.forEach((name, i) => {
      if (names.indexOf(name) < i) fault(["gears", i, "name"], `found ${name} twice, names must differ`);
    });
    if (shifting.kind === "fixed") {
      if (!names.includes(shifting.gear)) fault(["shifting", "gear"], `found ${shifting.gear}, ${listed}`);
    } else {
      shifting.gears.forEach((name, i) => {
        if (!names.includes(name)) fault(["shifting", "gears", i], `found ${name}, ${listed}`);
      });
      if (shifting.up_kmh.length !== shifting.gears.length - 1) {
        fault(["shifting", "up_kmh"], `found ${shifting.up_kmh.length} speeds, one fewer than the gears wanted`);
      }
      shifting.up_kmh.forEach((speed_kmh, i) => {
        const before_kmh = shifting.up_kmh[i - 1];
        if (before_kmh !== undefined && speed_kmh <= before_kmh) {
          fault(["shifting", "up_kmh", i], `found ${speed_kmh} after ${before_kmh}, speeds must rise`);
        }
      });
    }
    if (transferBox && drivenAxle !== "rear") {
      fault(
        ["drivenAxle"],
        `found ${drivenAxle} with a part-time transfer box, rear wanted: the front axle is engaged there`,
      );
    }
  });
export type Driveline = z.infer<typeof Driveline>;
