import { describe, expect, it } from "vitest";
import { balance, excess_Nm } from "../../../sim/step/balance.ts";
import { beginInterval } from "../../../sim/step/beginInterval.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

/** 1400 kg at 10 m/s in a gear of 20 rad a metre, with a motor of 50 Nm. */
function contextOf(changes: Changes = {}) {
  const envelope = { kind: "peak" as const, torque_Nm: 50, power_kW: 2000 };
  const job = bareJob({ motor: { envelope }, ...changes });
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  beginRoad(context, undefined, 10);
  beginInterval(context, 10, 1);
  return context;
}

describe("a drive", () => {
  it("breaks the worst limit by what it asks beyond it", () => {
    // 1400 N are 70 Nm.
    const context = contextOf();
    expect(balance(context, 11, 1)).toBeCloseTo(20, 9);
    expect(context.interval).toMatchObject({ brake_N: 0, driveline_N: context.interval.wheel_N });
  });
  it("asks the pack for all that it takes", () => {
    const context = contextOf();
    balance(context, 10.5, 1);
    // 35 Nm at 20 x 10.25 rad/s.
    expect(context.interval.terminal_W).toBeCloseTo(35 * 205, 6);
  });
});

describe("braking", () => {
  it("breaks no limit, and leaves to the friction brakes what the motor may not take", () => {
    const context = contextOf();
    expect(balance(context, 9, 1)).toBeCloseTo(-70 - 50, 9);
    expect(context.interval.brake_N).toBeCloseTo(-1400, 9);
    expect(context.interval.end_mps).toBe(9);
  });
  it("is not shared out for a search, whose end speed is then no number", () => {
    const context = contextOf();
    expect(excess_Nm(context, 9, 1)).toBeCloseTo(-120, 9);
    expect(context.interval.end_mps).toBeNaN();
  });
});

it("asks the tyres' grip only where it is known where the weight sits", () => {
  const unknown = contextOf();
  balance(unknown, 10, 1);
  expect(unknown.interval.grip_N).toBe(Number.POSITIVE_INFINITY);
  const known = contextOf({
    vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 500, frontShare_frac: 0.5 } },
    environment: { grip_coeff: 0.8 },
  });
  balance(known, 10, 1);
  // Half of the weight on the driven axle.
  expect(known.interval.grip_N).toBeCloseTo(0.8 * 0.5 * 1400 * 9.81, 6);
});
