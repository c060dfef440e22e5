import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { peakEnvelope } from "../../../../sim/motor/envelope.ts";
import type { CurrentPoint } from "../../../../sim/plan/currents/currentCurve.ts";
import { currentsPlan } from "../../../../sim/plan/currents/currentsPlan.ts";
import { currentCautions, currentsSentence, startingPoints } from "../../../../sim/plan/currents/currentWords.ts";
import { fuseFor } from "../../../../sim/plan/currents/fuse.ts";
import { motorCurrent_A } from "../../../../sim/plan/currents/motorCurrent.ts";
import { preChargeShelf } from "../../../../sim/plan/currents/preChargeShelf.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const { wiring: _wiring, motor, ...demo } = demoJob();
const { fullCurrent_A: _full, ...bareMotor } = motor;
/** A demo of which nobody knows cable, capacitors or the motor's current. */
const job: Job = { ...demo, motor: bareMotor };
const trace = roadTrace(job.roads[0], cycleTexts);
const plan = currentsPlan(job, 1, trace);
const inMetric = (sentences: readonly Parameters<typeof messageIn>[0][]) =>
  sentences.map((each) => messageIn(each, "metric")).join("\n");

describe("currents of a drive", () => {
  it("fall as they last, and stay within what controller and pack let through", () => {
    for (const { points, whole } of [plan.road, plan.hill]) {
      const battery_A = points.map((each) => each.battery_A);
      expect(battery_A).toEqual([...battery_A].sort((a, b) => b - a));
      expect(battery_A[0]).toBeLessThanOrEqual(plan.packPeak_A + 1e-6);
      expect(whole.battery_A).toBeLessThanOrEqual(battery_A[0]);
      expect(points[0].motor_Nm).toBeLessThanOrEqual(110 + 1e-6);
    }
    expect(plan.greatest.map(({ battery_A }, i) => battery_A - plan.hill.points[i].battery_A >= 0)).not.toContain(
      false,
    );
  });

  it("grow with the hill and with the load, and the fuse with them", () => {
    const on = (changes: Partial<Job>) => currentsPlan({ ...job, ...changes }, 1, trace);
    const steep = on({ requirement: { longHill_ratio: 0.09, longHill_km: 12 } });
    const last = plan.greatest.length - 1;
    expect(steep.greatest[last].battery_A).toBeGreaterThan(1.2 * plan.greatest[last].battery_A);
    expect(steep.fuse.rating_A).toBeGreaterThan(plan.fuse.rating_A);
    expect(steep.longHill.isAssumed).toBe(false);
    const laden = on({ vehicle: { ...job.vehicle, load_kg: job.vehicle.load_kg + 250 } });
    expect(laden.greatest[last].battery_A).toBeGreaterThan(plan.greatest[last].battery_A);
  });

  it("are those of the motor too where its current at peak torque is known", () => {
    const known = currentsPlan({ ...job, motor: { ...job.motor, fullCurrent_A: 400 } }, 1, trace);
    expect(known.hasMotorCurrent).toBe(true);
    // The torque cap of 110 Nm is 11/12 of the motor's 120 Nm.
    expect(known.greatest[0].motor_A).toBeGreaterThan((400 * 110) / 120 - 1e-6);
    expect(known.greatest[0].motor_A).toBeLessThanOrEqual(400);
    expect(inMetric(currentCautions(known))).not.toMatch(/phases are not known/);
    expect(inMetric(currentCautions(plan))).toMatch(/phases are not known/);
  });

  it("of a car that cannot drive the road say so", () => {
    const weak = { ...job, controller: { ...job.controller, torqueCap_Nm: 8 } };
    const limp = currentsPlan(weak, 1, trace);
    expect(limp.isBehind).toBe(true);
    expect(inMetric([currentsSentence(limp)])).toMatch(/does not keep up with this road: one that did would draw more/);
    expect(inMetric([currentsSentence(plan)])).not.toMatch(/keep up/);
  });
});

describe("current of a motor from its torque", () => {
  const envelope = peakEnvelope(100, 120, 36_000); // base speed 300 rad/s
  it("goes with torque for magnets, with its root in series, and with the envelope's share where the field is weakened", () => {
    expect(motorCurrent_A("magnetBrushed", envelope, 400, -60, 100, 100)).toBeCloseTo(200, 9);
    expect(motorCurrent_A("seriesBrushed", envelope, 400, 30, 100, 100)).toBeCloseTo(200, 9);
    expect(motorCurrent_A("interiorMagnet", envelope, 400, 60, 100, 100)).toBeCloseTo(200, 9);
    // At 600 rad/s the envelope gives 60 Nm: all of its current. At half of the voltage base speed is 150 rad/s.
    expect(motorCurrent_A("induction", envelope, 400, 60, 600, 100)).toBeCloseTo(400, 9);
    expect(motorCurrent_A("induction", envelope, 400, 60, 300, 50)).toBeCloseTo(400, 9);
    expect(motorCurrent_A("induction", envelope, 400, 0, 0, 0)).toBe(0);
    expect(motorCurrent_A("induction", envelope, 400, 5, 10, 0)).toBe(400);
  });
});

describe("a fuse", () => {
  const points = (...list: readonly number[]) =>
    [0, 2, 10, 60, 600].map((duration_s, i): CurrentPoint => ({ duration_s, battery_A: list[i], motor_Nm: 0 }));

  it("carries ten minutes within three quarters of its rating, a minute within it, ten seconds within twice", () => {
    // By hand: 100 / 0.75 = 133 -> 160; 170 -> 200; 450 / 2 = 225 -> 250.
    expect(fuseFor(points(300, 250, 200, 120, 100))).toMatchObject({ rating_A: 160, because: "steady" });
    expect(fuseFor(points(300, 250, 200, 170, 100))).toMatchObject({ rating_A: 200, because: "minute" });
    expect(fuseFor(points(600, 500, 450, 170, 100))).toMatchObject({ rating_A: 250, because: "tenSeconds" });
    expect(fuseFor(points(300, 250, 200, 120, 100)).tenSeconds_ratio).toBeCloseTo(1.25, 9);
  });

  it("beyond the list is said to be no usual size", () => {
    expect(fuseFor(points(3000, 3000, 2000, 1500, 1200))).toMatchObject({ rating_A: 1600, isBeyondList: true });
  });
});

describe("a pre-charge resistor from the shelf", () => {
  it("is the one whose time lies best between half a second and two", () => {
    const choice = preChargeShelf({ source_V: 126, capacitance_uF: 2000 });
    // tau ln 20: 150 ohm 0.90 s, 220 ohm 1.32 s; 1.00 s is nearest to the first.
    expect(choice.chosen).toMatchObject({ resistance_ohm: 150, rating_W: 15 });
    expect(choice.chosen?.time_s).toBeCloseTo(0.8987, 3);
    expect(choice.timeout_s).toBeCloseTo(2.696, 2);
    expect(choice).toMatchObject({ isCapacitanceAssumed: false, isFitted: false });
  });

  it("never gets there with a converter awake, and does once that is wired before the contactor", () => {
    const wiring = { capacitance_uF: 2000, prechargeLoad_W: 120 };
    const loaded = currentsPlan({ ...job, wiring }, 1, trace);
    expect(loaded.preCharge).not.toHaveProperty("chosen");
    const [, , , , preCharge] = startingPoints(loaded);
    const words = messageIn(preCharge.sentence, "metric");
    expect(words).toMatch(
      /120 W drawn on the controller's side 10 Ω settles at 92 %, below 95 %, and never gets there/,
    );
    expect(words).toMatch(/Wire that load before the contactor, or let it wake after it: 150 Ω takes 0\.90 s to 95 %/);
  });

  it("that is fitted is judged as it is", () => {
    const fitted = preChargeShelf({ source_V: 126, capacitance_uF: 2000, fitted_ohm: 1000 });
    expect(fitted).toMatchObject({ isFitted: true, chosen: { resistance_ohm: 1000 } });
    expect(fitted.chosen?.time_s).toBeCloseTo(5.99, 2);
  });
});

describe("what is said", () => {
  const text = (of: typeof plan) => inMetric(startingPoints(of).map(({ sentence }) => sentence));

  it("names every part with its basis", () => {
    const points = startingPoints(plan);
    expect(points.map(({ part }) => part)).toEqual(["fuse", "contactor", "cable", "lug", "pre-charge"]);
    for (const { basis } of points) expect(basis).toMatch(/common practice, no source|from memory/);
    expect(text(plan)).toMatch(/Fuse: 250 A, for direct current of 126 V or more, breaking more than 7400 A/);
    expect(text(plan)).toMatch(/\d A over|70 mm² copper, which carries 250 A in free air\. At 70 °C/);
  });

  it("warns of a cable as fitted that its fuse does not protect", () => {
    const thin = currentsPlan({ ...job, wiring: { cable_mm2: 20, cable_m: 3 } }, 1, trace);
    expect(text(thin)).toMatch(
      /20 mm² copper, as fitted, which carries 114 A .* That is less than the fuse lets through/,
    );
  });

  it("calls a voltage dangerous strictly above 60 V", () => {
    // 16 iron phosphate cells of 3.65 V are 58.4 V, 20 are 73 V; exactly 60 V is not above it. [ISO6469-3], from memory.
    const at = (full_V: number) => inMetric(currentCautions({ ...plan, full_V }));
    expect(at(60)).toMatch(/60 V is not above 60 V, yet a short circuit gives/);
    expect(at(60.1)).toMatch(/60\.1 V of direct current can kill/);
    expect(at(58.4)).not.toMatch(/can kill/);
  });
});

describe("bad input", () => {
  it.each([
    ["precharge_ohm", 0, /wiring\.precharge_ohm: found 0.* above 0 and at most 100000 ohm allowed/],
    ["cable_m", -2, /wiring\.cable_m: found -2 m, above 0 and at most 100 m allowed/],
    ["capacitance_uF", "big", /wiring\.capacitance_uF: found "big", a number above 0/],
    ["fuse_A", 100, /wiring\.fuse_A: found a key this program does not know/],
  ])("%s of %s is one sentence", (key, value, sentence) => {
    try {
      readJob({ ...job, wiring: { [key]: value } });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.problems.map(({ where, message }) => `${where}: ${message}`)).toEqual([
        expect.stringMatching(sentence),
      ]);
    }
  });
});
