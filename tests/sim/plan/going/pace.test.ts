import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { paceOf } from "../../../../sim/plan/going/pace.ts";
import { paceRows, paceWords } from "../../../../sim/plan/going/paceWords.ts";
import { standingStart, timeTo_s } from "../../../../sim/plan/going/standingStart.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const gears = [
  { name: "low", gear_ratio: 3, efficiency_frac: 1 },
  { name: "high", gear_ratio: 1, efficiency_frac: 1 },
];
const changing = bareJob({
  driveline: { gears, shifting: { kind: "bySpeed", gears: ["low", "high"], up_kmh: [36] } },
  motor: { envelope: { kind: "peak", torque_Nm: 35, power_kW: 2000 } },
});

describe("a change of gear under way", () => {
  it("leaves the wheels without drive for its time: with nothing that resists that much later, no more", () => {
    const model = prepare(changing, changing.packs[0]);
    const [quick, slow] = [0, 2.5].map((change_s) => standingStart(model, 40, 0.05, 0, undefined, change_s));
    expect((timeTo_s(slow, 15) ?? 0) - (timeTo_s(quick, 15) ?? 0)).toBeCloseTo(2.5, 6);
    expect(timeTo_s(slow, 9)).toBe(timeTo_s(quick, 9));
  });

  it("takes 0.8 s with the clutch, 2.5 s without, and what is typed before either", () => {
    const timed = (driveline: Partial<Job["driveline"]>) =>
      paceOf({ ...changing, driveline: { ...changing.driveline, ...driveline } }, 0).change;
    expect(timed({})).toMatchObject({ change_s: 0.8, isAssumed: true, coupling: "clutch" });
    expect(timed({ coupling: "direct" })).toMatchObject({ change_s: 2.5, isAssumed: true });
    expect(timed({ coupling: "direct", change_s: 1.5 })).toMatchObject({ change_s: 1.5, isAssumed: false });
    expect(timed({ shifting: { kind: "fixed", gear: "low" } })).toBeUndefined();
  });

  it("without a clutch has the rotor's turning energy and the torque that takes it in that time", () => {
    const motor = { ...changing.motor, rotorInertia_kgm2: 0.05 };
    const driveline = { ...changing.driveline, coupling: "direct" as const, change_s: 2 };
    const [change] = paceOf({ ...changing, motor, driveline }, 0).change?.changes ?? [];
    // 10 m/s at 60 and 20 turns (radians) a metre: from 600 to 200 rad/s.
    expect(change?.rotor_J).toBeCloseTo(0.5 * 0.05 * (600 ** 2 - 200 ** 2), 6);
    expect(change?.synchro_Nm).toBeCloseTo((0.05 * 400) / 2, 9);
    const [atOnce] = paceOf({ ...changing, motor, driveline: { ...driveline, change_s: 0 } }, 0).change?.changes ?? [];
    expect(atOnce?.synchro_Nm).toBe(0);
  });
});

describe("the pace of the piano tuner's saloon", () => {
  const job = demoJob();
  const pace = paceOf(job, 0);

  it("is told in round speeds of the reader's unit, beside the old engine's", () => {
    expect(paceRows(pace, "metric").map(({ to_kmh }) => to_kmh)).toEqual([50, 100, 80, 100]);
    const british = paceRows(pace, "british");
    expect(british[1].to_kmh).toBeCloseTo(96.56, 2);
    // Its start is steady enough that 30 mph comes a little before 50 km/h.
    expect(british[0].motor_s).toBeLessThan(paceRows(pace, "metric")[0].motor_s ?? 0);
    const [start] = paceWords(pace, "british");
    expect(start).toMatch(
      /^From rest the car does not reach 60 mph in two minutes; with the old engine it took about \d\d s\.$/,
    );
  });

  it("names what to type where the engine is not known, and what was assumed where half of it is", () => {
    const { engine: _engine, ...unknown } = job;
    expect(paceWords(paceOf(unknown, 0), "metric").join(" ")).toContain(
      "How it went with the old engine is not known: type its rated power and its rated torque, under Motor.",
    );
    const peaks = { ratedTorque_Nm: 115, ratedPower_kW: 44 };
    expect(paceWords(paceOf({ ...job, engine: peaks }, 0), "metric").join(" ")).toContain(
      "Not known of the engine: the speed of its best torque and the speed of its best power; assumed from the rest",
    );
  });

  it("has a top speed that its start reaches and nothing beyond", () => {
    const { start, top } = pace.motor;
    expect(top.speed_mps).toBe(Math.max(...start.speed_mps));
    expect(top).toMatchObject({ gear: "third", because: "pull", limit: "pack" });
  });
});
