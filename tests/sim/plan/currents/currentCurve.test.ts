import { describe, expect, it } from "vitest";
import { type CurrentCurve, currentCurve, greatestOf } from "../../../../sim/plan/currents/currentCurve.ts";
import { createChannels } from "../../../../sim/step/channels.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";

/** Channels of a drive of a second a row with these amps of the battery, torque a tenth of them; memory behind them is not the drive's. */
function drove(amps: readonly number[]) {
  const channels = createChannels(amps.length + 50);
  channels.length = amps.length + 1;
  channels.time_s.fill(1e6);
  channels.battery_A.fill(999);
  [0, ...amps].forEach((each, i) => {
    channels.time_s[i] = i;
    channels.battery_A[i] = each;
    channels.motorTorque_Nm[i] = each / 10;
    channels.motorSpeed_radps[i] = 10;
    channels.battery_V[i] = 400;
  });
  return channels;
}
const times = (count: number, value: number) => Array.from({ length: count }, () => value);
const curveOf = (amps: readonly number[], fullCurrent_A?: number): CurrentCurve => {
  const job = bareJob({
    motor: {
      kind: "magnetBrushed",
      envelope: { kind: "peak", torque_Nm: 100, power_kW: 2000 },
      ...(fullCurrent_A !== undefined && { fullCurrent_A }),
    },
  });
  return currentCurve(job, prepare(job, job.packs[0]), drove(amps));
};

it("is drawn at durations that rise from a second to ten minutes, at most two and a half times the one before", () => {
  const drawn = curveOf(times(700, 10)).drawn.map(({ duration_s }) => duration_s);
  expect([drawn[0], drawn.at(-1)]).toEqual([1, 600]);
  for (const [i, each] of drawn.entries()) {
    if (i === 0) continue;
    expect(each).toBeGreaterThan(drawn[i - 1]);
    expect(each).toBeLessThanOrEqual(2.5 * drawn[i - 1]);
  }
});

it("lasts as long as the drive, whenever its clock begins", () => {
  const job = bareJob();
  const model = prepare(job, job.packs[0]);
  const channels = drove(times(90, 10));
  const later = drove(times(90, 10));
  for (let i = 0; i < later.length; i++) later.time_s[i] += 1000;
  expect([channels, later].map((each) => currentCurve(job, model, each).duration_s)).toEqual([90, 90]);
});

describe("the currents of a drive by how long they last", () => {
  // Twenty minutes: 600 s at 30 A, within which ten seconds are at 120 A, two of them at 300 A; then 600 s at 10 A, 5 s of braking at 80 A.
  const amps = [
    ...times(300, 30),
    ...times(8, 120),
    ...times(2, 300),
    ...times(290, 30),
    ...times(595, 10),
    ...times(5, -80),
  ];
  const { points, drawn, whole, charge_A, duration_s } = curveOf(amps);
  const at = (seconds: number) => points.find((point) => point.duration_s === seconds)?.battery_A;
  const rms = (...parts: readonly (readonly [seconds: number, amps: number])[]) =>
    Math.sqrt(
      parts.reduce((sum, [seconds, each]) => sum + seconds * each * each, 0) /
        parts.reduce((sum, [seconds]) => sum + seconds, 0),
    );
  it("are the peak, and the greatest root mean square over each span", () => {
    expect(points.map((point) => point.duration_s)).toEqual([0, 2, 10, 60, 600]);
    expect(at(0)).toBe(300);
    expect(at(2)).toBeCloseTo(300, 9);
    expect(at(10)).toBeCloseTo(rms([8, 120], [2, 300]), 9);
    expect(at(60)).toBeCloseTo(rms([8, 120], [2, 300], [50, 30]), 9);
    expect(at(600)).toBeCloseTo(rms([8, 120], [2, 300], [590, 30]), 9);
    expect(points[2].motor_Nm).toBeCloseTo(rms([8, 12], [2, 30]), 9);
  });
  it("have the whole of it, and the most that goes in", () => {
    expect(duration_s).toBe(1200);
    expect(whole.duration_s).toBe(1200);
    expect(whole.battery_A).toBeCloseTo(rms([8, 120], [2, 300], [590, 30], [595, 10], [5, 80]), 9);
    expect(charge_A).toBe(80);
    expect(curveOf(times(20, 30)).charge_A).toBe(0);
  });
  it("are drawn from a second on", () => {
    expect(drawn[0]).toEqual({ duration_s: 1, battery_A: expect.closeTo(300, 9) });
    expect(drawn.at(-1)?.battery_A).toBeCloseTo(at(600) ?? 0, 9);
  });
  it("have the motor's where that of its peak torque is known: 400 A at 100 Nm", () => {
    expect(points[0]).not.toHaveProperty("motor_A");
    // 300 A of the battery were 30 Nm.
    expect(curveOf(amps, 400).points[0].motor_A).toBeCloseTo(120, 9);
  });
});

describe("the greater of several drives", () => {
  it("is taken at each duration by itself", () => {
    const [short, long] = [curveOf([...times(10, 200), ...times(700, 10)]), curveOf(times(710, 50))];
    const found = greatestOf([short, long]);
    expect(found.map(({ duration_s }) => duration_s)).toEqual([0, 2, 10, 60, 600]);
    expect(found[2].battery_A).toBeCloseTo(200, 9);
    expect(found[4].battery_A).toBeCloseTo(50, 9);
    expect(found[4].motor_Nm).toBeCloseTo(5, 9);
    expect(found[0]).not.toHaveProperty("motor_A");
    expect(greatestOf([short, curveOf(times(710, 50), 400)])[0].motor_A).toBeCloseTo(20, 9);
  });
});
