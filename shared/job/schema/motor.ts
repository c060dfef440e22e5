import * as z from "zod";
import { engineRatings } from "../engineRatings.ts";
import { across, type Fault } from "./across.ts";
import { above0, between, lengthMessage, line, risingAxis, sameLength } from "./number.ts";

/** Peak torque against speed at the reference voltage. */
const Envelope = z.discriminatedUnion("kind", [
  /** Constant torque up to where the peak power is reached, constant power above. */
  z.strictObject({ kind: z.literal("peak"), torque_Nm: above0(10_000), power_kW: above0(2000) }),
  z
    .strictObject({
      kind: z.literal("points"),
      speed_rpm: risingAxis(0, 30_000),
      torque_Nm: z.array(between(0, 10_000)),
    })
    .check(sameLength("torque_Nm", "speed_rpm")),
]);

interface Table {
  readonly speed_rpm: readonly number[];
  readonly torque_Nm: readonly number[];
}

/** Says where a table, whose rows go by speed and whose columns go by torque, does not fit its axes. */
function checkShape(axes: Table, rows: readonly (readonly number[])[], key: string, fault: Fault): void {
  const speeds = axes.speed_rpm.length;
  const torques = axes.torque_Nm.length;
  if (rows.length !== speeds) fault([key], lengthMessage(rows.length, speeds, "speed_rpm"));
  rows.forEach((row, i) => {
    if (Array.isArray(row) && row.length !== torques) fault([key, i], lengthMessage(row.length, torques, "torque_Nm"));
  });
}

const LossTable = z
  .strictObject({
    kind: z.literal("lossTable"),
    speed_rpm: risingAxis(0, 30_000),
    torque_Nm: risingAxis(-10_000, 10_000),
    loss_W: z.array(z.array(between(0, 1e6))).max(500),
  })
  .check(
    across(["speed_rpm", "torque_Nm", "loss_W"], (table, fault) => checkShape(table, table.loss_W, "loss_W", fault)),
  );

/** Of a node above no speed and no torque; below it the loss is more than a hundred times what reaches the shaft: a slip. Assumed. */
const LEAST_EFFICIENCY = 0.01;

const EfficiencyMap = z
  .strictObject({
    kind: z.literal("efficiencyMap"),
    speed_rpm: risingAxis(0, 30_000),
    torque_Nm: risingAxis(0, 10_000),
    /** Rows by speed, columns by torque. Nodes at no speed or no torque are not read: efficiency means nothing there. */
    efficiency_frac: z.array(z.array(between(0, 1))).max(500),
  })
  .check(
    across(["speed_rpm", "torque_Nm", "efficiency_frac"], (map, fault) =>
      checkShape(map, map.efficiency_frac, "efficiency_frac", fault),
    ),
    across(
      ["speed_rpm.*", "torque_Nm.*", "efficiency_frac.*.*"],
      ({ speed_rpm, torque_Nm, efficiency_frac }, fault) => {
        efficiency_frac.forEach((row, i) => {
          row.forEach((value, j) => {
            if (value < LEAST_EFFICIENCY && (speed_rpm[i] ?? 0) > 0 && (torque_Nm[j] ?? 0) > 0)
              fault(["efficiency_frac", i, j], `found ${value}, ${LEAST_EFFICIENCY} to 1 allowed`);
          });
        });
      },
    ),
    across(["speed_rpm.*"], ({ speed_rpm }, fault) => {
      if (inner(speed_rpm) < 2) fault(["speed_rpm"], `found ${inner(speed_rpm)}, at least 2 speeds above 0 wanted`);
    }),
    across(["torque_Nm.*"], ({ torque_Nm }, fault) => {
      if (inner(torque_Nm) < 2) fault(["torque_Nm"], `found ${inner(torque_Nm)}, at least 2 torques above 0 wanted`);
    }),
  );

function inner(axis: readonly number[]): number {
  return axis.filter((value) => value > 0).length;
}

/** Loss of motor and controller together, in watts. */
const Loss = z.discriminatedUnion("kind", [
  /** kc T^2 + ki w + kw w^3 + c0, with T in Nm and w in rad/s; c0 is drawn only while turning. */
  z.strictObject({
    kind: z.literal("fourTerm"),
    copper_coeff: between(0, 100),
    iron_coeff: between(0, 100),
    windage_coeff: between(0, 0.1),
    constant_W: between(0, 10_000),
  }),
  LossTable,
  EfficiencyMap,
  /** One efficiency everywhere, driving and regenerating: all that many workshops have. */
  z.strictObject({ kind: z.literal("flat"), efficiency_frac: between(0.2, 1) }),
]);

/** One thermal mass, cooled towards the air; torque falls from full to none between two temperatures. */
export const Heat = z
  .strictObject({
    capacity_kJpK: above0(2000),
    cooling_WpK: between(0, 5000),
    derateFrom_degC: between(20, 250),
    derateTo_degC: between(20, 250),
  })
  .check(
    across(["derateFrom_degC", "derateTo_degC"], ({ derateFrom_degC, derateTo_degC }, fault) => {
      if (derateTo_degC <= derateFrom_degC) {
        const wanted = `above derateFrom_degC (${derateFrom_degC} degC) wanted`;
        fault(["derateTo_degC"], `found ${derateTo_degC} degC, ${wanted}`);
      }
    }),
  );

/** What the maker prints of power at the shaft: continuous, and for a while. */
const Rating = z
  .strictObject({
    continuous_kW: above0(2000),
    peak_kW: above0(2000).optional(),
    /** How long the peak may last. */
    peak_s: above0(7200).optional(),
  })
  .check(
    across(["continuous_kW", "peak_kW"], ({ continuous_kW, peak_kW }, fault) => {
      if (peak_kW !== undefined && peak_kW < continuous_kW)
        fault(["peak_kW"], `found ${peak_kW} kW, continuous_kW (${continuous_kW} kW) or more wanted`);
    }),
    across(["peak_kW", "peak_s"], ({ peak_kW, peak_s }, fault) => {
      if ((peak_kW === undefined) !== (peak_s === undefined))
        fault(
          [peak_kW === undefined ? "peak_kW" : "peak_s"],
          "found one of peak_kW and peak_s, both wanted or neither",
        );
    }),
  );

export const Motor = z
  .strictObject({
    name: line,
    kind: z.enum(["induction", "interiorMagnet", "surfaceMagnet", "seriesBrushed", "magnetBrushed"]),
    /** Where its figures come from: a published law, common practice, invented, a datasheet. */
    origin: line,
    mass_kg: between(1, 1000),
    /** Phase current (root mean square; of the armature where brushed) at the peak torque, by the sheet of motor or controller. */
    fullCurrent_A: above0(5000).optional(),
    envelope: Envelope,
    /** DC voltage at which the envelope holds; base speed moves in proportion to the voltage under load. */
    reference_V: above0(1500),
    maxSpeed_rpm: between(100, 30_000),
    /** Torque fades to none over this band below the top speed. */
    rollBack_rpm: between(1, 5000).default(200),
    rotorInertia_kgm2: between(0, 10).default(0),
    canRegenerate: z.boolean().default(true),
    loss: Loss,
    heat: Heat.optional(),
    rating: Rating.optional(),
  })
  .check(
    across(
      ["envelope", "envelope.speed_rpm.*", "envelope.torque_Nm.*", "rating.continuous_kW"],
      ({ envelope, rating }, fault) => {
        if (rating === undefined) return;
        const peak_kW = envelope.kind === "peak" ? envelope.power_kW : engineRatings(envelope).ratedPower_kW;
        if (rating.continuous_kW <= peak_kW) return;
        const wanted = `at most ${Number(peak_kW.toPrecision(4))} kW wanted, the motor's peak power`;
        fault(["rating", "continuous_kW"], `found ${rating.continuous_kW} kW, ${wanted}`);
      },
    ),
  );
export type Motor = z.infer<typeof Motor>;
export type MotorLoss = z.infer<typeof Loss>;
