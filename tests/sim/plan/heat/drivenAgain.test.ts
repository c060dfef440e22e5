import { expect, it } from "vitest";
import { drivenAgain, shaftPower } from "../../../../sim/plan/heat/drivenAgain.ts";
import { createChannels } from "../../../../sim/step/channels.ts";
import { LIMITS } from "../../../../sim/step/limits.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, traceOf } from "../../../support/bareCar.ts";

/** Ten seconds at 10 m/s that take 1000 W all the time: 10 kJ. */
const course = traceOf([
  [0, 36],
  [10, 36],
]);

function model(capacity_Ah: number) {
  const roadLoad = { kind: "coastDown" as const, f0_N: 100, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 };
  const job = bareJob({ vehicle: { roadLoad }, module: { capacity_Ah }, pack: { ceiling_frac: 1, floor_frac: 0 } });
  return prepare(job, job.packs[0]);
}

it("drives as often as is asked, on one clock and from one charge", () => {
  const { passes, totals } = drivenAgain(model(2000), course, 3);
  expect(passes).toHaveLength(3);
  expect(totals.time_s).toBeCloseTo(30, 9);
  expect(totals.distance_m).toBeCloseTo(300, 9);
  const { time_s, shaft_W, heldBack_s } = shaftPower(passes);
  expect(time_s).toEqual([0, 10, 20, 30].map((at_s) => expect.closeTo(at_s, 9)));
  for (const power_W of shaft_W.slice(1)) expect(power_W).toBeCloseTo(1000, 6);
  expect(heldBack_s).toBe(0);
});

it("ends where the pack is empty", () => {
  // 400 V x 0.0175 Ah are 25.2 kJ: two passes and a half.
  const { passes, totals } = drivenAgain(model(0.0175), course, 9);
  expect(passes).toHaveLength(3);
  expect(totals.reachedFloor).toBe(true);
});

it("counts braking as nothing given, and the seconds that heat held the car back", () => {
  const channels = createChannels(3);
  channels.length = 3;
  channels.time_s.set([0, 2, 5]);
  channels.motorTorque_Nm.set([0, 40, -40]);
  channels.motorSpeed_radps.set([0, 100, 100]);
  channels.limit.set([0, LIMITS.indexOf("heat"), 0]);
  expect(shaftPower([channels])).toEqual({ time_s: [0, 2, 5], shaft_W: [0, 4000, 0], heldBack_s: 2 });
});
