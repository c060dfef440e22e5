import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { envelopeChoice } from "../../../../web/forms/motor/envelopeForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const kind = "#kind-motor-envelope";
const page = (change: Partial<Job["motor"]> = {}) => {
  const job = demoJob();
  return formPage({ ...job, motor: { ...job.motor, ...change } }, envelopeChoice);
};
// 120 Nm up to 38,000 W / 120 Nm = 316.67 rad/s, 3023.9 rpm.
const base_rpm = ((38_000 / 120) * 60) / (2 * Math.PI);

it("makes points of peak torque and power: level to where they meet, then the same power down to the top speed", () => {
  const { choose, job } = page();
  choose(kind, "points");
  const { envelope } = job().motor;
  if (envelope.kind !== "points") throw new Error(envelope.kind);
  const { speed_rpm, torque_Nm } = envelope;
  expect([speed_rpm[0], torque_Nm[0], torque_Nm[1]]).toEqual([0, 120, 120]);
  // Four figures are kept of each: half of the last one is 0.05 % at most.
  expect(Math.abs(speed_rpm[1] / base_rpm - 1)).toBeLessThan(0.0005);
  expect(speed_rpm.at(-1)).toBe(8000);
  const powers_kW = torque_Nm.slice(1).map((torque, i) => (torque * speed_rpm[i + 1] * 2 * Math.PI) / 60_000);
  expect(powers_kW).toHaveLength(5);
  for (const power of powers_kW) expect(Math.abs(power / 38 - 1)).toBeLessThan(0.001);
});

it("makes two points where the motor never reaches its peak power", () => {
  const { choose, job } = page({ maxSpeed_rpm: 3000 });
  choose(kind, "points");
  expect(job().motor.envelope).toEqual({ kind: "points", speed_rpm: [0, 3000], torque_Nm: [120, 120] });
});

it("makes the greatest torque and the greatest power of points, which need not be at one speed", () => {
  const points = { kind: "points" as const, speed_rpm: [0, 2000, 6000], torque_Nm: [100, 90, 40] };
  const { choose, job } = page({ envelope: points });
  choose(kind, "peak");
  // 90 Nm at 209.44 rad/s is 18.85 kW, 40 Nm at 628.32 rad/s is 25.13 kW.
  expect(job().motor.envelope).toEqual({ kind: "peak", torque_Nm: 100, power_kW: 25.13 });
});
