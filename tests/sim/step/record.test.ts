import { expect, it } from "vitest";
import { createChannels } from "../../../sim/step/channels.ts";
import { CONTROLLER, MOTOR, NONE } from "../../../sim/step/limits.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { addToRow, beginRow, recordRow, recordStart } from "../../../sim/step/record.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob, driven, evenSlope, steadyTrace, traceOf } from "../../support/bareCar.ts";

/** A car whose pack rises from 300 V empty to 400 V full, half charged. */
function contextOf() {
  const job = bareJob({ module: { openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] } } });
  return createRunContext(prepare(job, job.packs[0]), 0.5);
}

/** An interval of which 3 s were driven, and one of half a second with other forces. */
const long = {
  driven_s: 3,
  wheel_N: 700,
  brake_N: -210,
  motor_radps: 70,
  motor_Nm: 35,
  loss_W: 140,
  controller_W: 2100,
  current_A: 7,
  terminal_V: 350,
  limit: NONE,
};
const short = {
  driven_s: 0.5,
  wheel_N: -1400,
  brake_N: -840,
  motor_radps: 14,
  motor_Nm: -28,
  loss_W: 70,
  controller_W: -1050,
  current_A: -7,
  terminal_V: 364,
  limit: NONE,
};

/** A row of both intervals, ended at 12 s, 40 m further on than the row before. */
function recorded(limits: readonly number[] = [NONE, NONE]) {
  const context = contextOf();
  const out = createChannels(2);
  const { row } = context.scratch;
  beginRow(row);
  for (const [i, interval] of [long, short].entries())
    addToRow(row, Object.assign(context.interval, interval, { limit: limits[i] }));
  Object.assign(context.state, { distance_m: 40, elevation_m: 24, speed_mps: 9, motor_K: 320 });
  context.state.pack.temperature_K = 310;
  context.start.gear = 2;
  recordRow(out, context, 1, 12, 10);
  return { out, context };
}

it("has means over the time driven in a row: each interval by its seconds", () => {
  const { out } = recorded();
  // (3 x first + 0.5 x second) / 3.5
  expect(out.wheelForce_N[1]).toBeCloseTo(400, 12);
  expect(out.brakeForce_N[1]).toBeCloseTo(-300, 12);
  expect(out.motorSpeed_radps[1]).toBeCloseTo(62, 12);
  expect(out.motorTorque_Nm[1]).toBeCloseTo(26, 12);
  expect(out.motorLoss_W[1]).toBeCloseTo(130, 12);
  expect(out.controller_W[1]).toBeCloseTo(1650, 12);
  expect(out.battery_A[1]).toBeCloseTo(5, 12);
  expect(out.battery_V[1]).toBeCloseTo(352, 12);
});

it("has as power the mean of volts times amperes, not the product of their means", () => {
  // (3 x 7 x 350 - 0.5 x 7 x 364) / 3.5
  expect(recorded().out.battery_W[1]).toBeCloseTo(1736, 10);
});

it("has in a row what is at its end: time, distance, speeds, height, gear, charge and temperatures", () => {
  const { out } = recorded();
  const ends = {
    time_s: 12,
    distance_m: 40,
    target_mps: 10,
    speed_mps: 9,
    elevation_m: 24,
    gear: 2,
    soc_frac: 0.5,
    motor_K: 320,
    pack_K: 310,
  };
  for (const [column, value] of Object.entries(ends)) expect(out[column as keyof typeof ends][1], column).toBe(value);
  expect(out.length).toBe(2);
});

it("has as gradient rise over level run, from rise over the way along the road: 24 m on 40 m are 3 in 4", () => {
  expect(recorded().out.grade_ratio[1]).toBeCloseTo(0.75, 12);
});

it("has no gradient where the car did not move, nor where the heights rise more than the way is long", () => {
  const { out, context } = recorded();
  context.state.distance_m = 20;
  recordRow(out, context, 1, 12, 10);
  expect(out.grade_ratio[1]).toBe(0);
  const standing = driven(bareJob(), steadyTrace(0, 3, 1, evenSlope(0.1, 100))).channels;
  expect([...standing.grade_ratio]).toEqual([0, 0, 0, 0]);
});

it("names in a row the last limit that held the car back in it, and none once the next row begins", () => {
  expect(recorded([MOTOR, NONE]).out.limit[1]).toBe(MOTOR);
  expect(recorded([MOTOR, CONTROLLER]).out.limit[1]).toBe(CONTROLLER);
  expect(recorded([NONE, NONE]).out.limit[1]).toBe(NONE);
});

it("begins every row with nothing of the row before", () => {
  const { context } = recorded([MOTOR, CONTROLLER]);
  const { row } = context.scratch;
  beginRow(row);
  expect(Object.values(row)).toEqual(Object.values(row).map(() => 0));
});

it("shows the pack's open-circuit voltage, and no forces, in a row of which nothing was driven", () => {
  const context = contextOf();
  const out = createChannels(2);
  beginRow(context.scratch.row);
  recordRow(out, context, 1, 12, 10);
  expect(out.battery_V[1]).toBeCloseTo(350, 9);
  expect([out.wheelForce_N[1], out.battery_A[1], out.battery_W[1]]).toEqual([0, 0, 0]);
});

it("has in row 0 the car as it stands before it drives, at no time and no distance", () => {
  const context = contextOf();
  Object.assign(context.state, { speed_mps: 5, elevation_m: 30, motor_K: 300 });
  context.state.pack.temperature_K = 305;
  const out = createChannels(3);
  recordStart(
    out,
    context,
    traceOf([
      [0, 36],
      [1, 72],
    ]),
  );
  const start = {
    time_s: 0,
    distance_m: 0,
    target_mps: 10,
    speed_mps: 5,
    elevation_m: 30,
    soc_frac: 0.5,
    motor_K: 300,
    pack_K: 305,
    wheelForce_N: 0,
    battery_W: 0,
  };
  for (const [column, value] of Object.entries(start)) expect(out[column as keyof typeof start][0], column).toBe(value);
  expect(out.battery_V[0]).toBeCloseTo(350, 9);
  expect(out.length).toBe(1);
});
