import * as z from "zod";
import { across } from "./across.ts";
import { above0, between, checkRise, line } from "./number.ts";

const Gear = z.strictObject({ name: line, gear_ratio: between(0.2, 25), efficiency_frac: between(0.3, 1) });

const Shifting = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("fixed"), gear: line }),
  /** The road speeds at which the next higher of the listed gears is taken; one fewer than the gears. */
  z
    .strictObject({
      kind: z.literal("bySpeed"),
      gears: z.array(line).min(1).max(20),
      up_kmh: z.array(between(0, 300)).max(19),
    })
    .check(
      across(["gears", "up_kmh"], ({ gears, up_kmh }, fault) => {
        if (up_kmh.length !== gears.length - 1)
          fault(["up_kmh"], `found ${up_kmh.length} speeds, ${gears.length - 1} wanted: one fewer than the gears`);
      }),
      across(["up_kmh"], ({ up_kmh }, fault) => checkRise(up_kmh, " km/h", fault, ["up_kmh"])),
    ),
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
    /** From the motor's shaft to the wheels, in every gear; it counts in place of those of gears, transfer box and final drive. */
    wholeEfficiency_frac: between(0.3, 1).optional(),
    shifting: Shifting,
    /** Drag torque at the gearbox input while it turns, driving or not. */
    noLoadDrag_Nm: between(0, 100).default(0),
    transferBox: TransferBox.optional(),
    /** Whether the old clutch is kept between motor and gearbox, or the motor turns the gearbox's input shaft at all times. */
    coupling: z.enum(["clutch", "direct"]).optional(),
    /** How long a change of gear leaves the wheels without drive. */
    change_s: between(0, 10).optional(),
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
  .check(
    across(["gears.*.name"], ({ gears }, fault) => {
      const names = gears.map(({ name }) => name);
      names.forEach((name, i) => {
        if (names.indexOf(name) < i) fault(["gears", i, "name"], `found "${name}" twice, names must differ`);
      });
    }),
    across(["gears.*.name", "shifting.kind", "shifting.gear", "shifting.gears.*"], ({ gears, shifting }, fault) => {
      const names = gears.map(({ name }) => name);
      const known = `the gears are ${names.join(", ")}`;
      if (shifting.kind === "fixed" && !names.includes(shifting.gear))
        fault(["shifting", "gear"], `found "${shifting.gear}", ${known}`);
      if (shifting.kind === "fixed") return;
      shifting.gears.forEach((name, i) => {
        if (!names.includes(name)) fault(["shifting", "gears", i], `found "${name}", ${known}`);
      });
    }),
    across(["transferBox", "drivenAxle"], ({ transferBox, drivenAxle }, fault) => {
      if (transferBox && drivenAxle !== "rear") {
        const found = `found ${drivenAxle} with a part-time transfer box`;
        fault(["drivenAxle"], `${found}, rear wanted: the front axle is engaged there`);
      }
    }),
  );
export type Driveline = z.infer<typeof Driveline>;
