import { describe, expect, it } from "vitest";
import { beginInterval } from "../../../sim/step/beginInterval.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import { solveElectrical, solveWithLoss } from "../../../sim/step/solveElectrical.ts";
import { bareJob } from "../../support/bareCar.ts";

/** 400 V behind 0.1 ohm, 0.2 when charging; a motor of 90 %; at 100 rad/s, accessories of so many watts. */
function contextOf(standing_W: number) {
  const job = bareJob({
    motor: { loss: { kind: "flat", efficiency_frac: 0.9 } },
    module: { resistance: { soc_frac: [0, 1], module_mohm: [100, 100] }, charging_ratio: 2 },
    accessories: { standing_W },
  });
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  beginRoad(context, undefined, 5);
  beginInterval(context, 5, 1);
  context.interval.motor_radps = 100;
  return context;
}

describe("a torque at the motor shaft", () => {
  it("asks its power over the efficiency of the controller, and the accessories beside it of the pack", () => {
    const context = contextOf(500);
    solveElectrical(context, 36);
    const { interval } = context;
    expect(interval).toMatchObject({
      motor_Nm: 36,
      loss_W: expect.closeTo(400, 9),
      controller_W: expect.closeTo(4000, 9),
    });
    expect(interval.terminal_W).toBeCloseTo(4500, 9);
    // I (400 - 0.1 I) = 4500
    expect(interval.current_A * (400 - 0.1 * interval.current_A)).toBeCloseTo(4500, 8);
    expect(interval.terminal_V).toBeCloseTo(400 - 0.1 * interval.current_A, 9);
    expect(interval.resistance_ohm).toBeCloseTo(0.1, 12);
  });

  it("that brakes brings its power less the loss, and meets the resistance of charging", () => {
    const context = contextOf(600);
    solveElectrical(context, -40);
    const { interval } = context;
    expect(interval.controller_W).toBeCloseTo(-3600, 9);
    expect(interval.terminal_W).toBeCloseTo(-3000, 9);
    expect(interval.resistance_ohm).toBeCloseTo(0.2, 12);
    expect(interval.current_A * (400 - 0.2 * interval.current_A)).toBeCloseTo(-3000, 8);
    expect(interval.terminal_V).toBeGreaterThan(400);
  });

  it("of none loses nothing at rest, and what is drawn, however little, is discharging", () => {
    for (const standing_W of [0, 0.5]) {
      const context = contextOf(standing_W);
      context.interval.motor_radps = 0;
      solveElectrical(context, 0);
      expect(context.interval).toMatchObject({ loss_W: 0, controller_W: 0, terminal_W: standing_W });
      expect(context.interval.resistance_ohm).toBeCloseTo(0.1, 12);
    }
  });
});

it("with the controller off only the accessories draw, though the motor turns", () => {
  const context = contextOf(200);
  solveWithLoss(context, 0, 0);
  expect(context.interval).toMatchObject({ motor_Nm: 0, loss_W: 0, controller_W: 0, terminal_W: 200 });
});
