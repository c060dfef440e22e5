import { describe, expect, it } from "vitest";
import { engineCurve } from "../../../../sim/plan/going/engineCurve.ts";
import { drawnEngine, knownEngine } from "../../../../sim/plan/going/knownEngine.ts";

const RADPS = (2 * Math.PI) / 60;

describe("an old engine of which not all is known", () => {
  it("is as typed where all four figures are", () => {
    const typed = { ratedTorque_Nm: 115, torque_rpm: 2500, ratedPower_kW: 44, power_rpm: 4700 };
    expect(knownEngine(typed)).toEqual({
      engine: drawnEngine({ ...typed, idle_rpm: undefined, limit_rpm: undefined }),
      assumed: [],
      missing: [],
    });
  });

  it("has its speeds by the rule where its two peaks alone are typed: P = 0.8 T n2, n1 = 0.55 n2", () => {
    const { engine, assumed } = knownEngine({ ratedTorque_Nm: 100, ratedPower_kW: 40 });
    const rating = engine?.rating;
    const power_rpm = 40_000 / 80 / RADPS;
    expect(rating?.power_rpm).toBeCloseTo(power_rpm, 6);
    expect(rating?.torque_rpm).toBeCloseTo(0.55 * power_rpm, 6);
    expect(assumed).toEqual(["torque_rpm", "power_rpm"]);
  });

  it("has its torque by the rule where power and its speed alone are typed", () => {
    const { engine, assumed } = knownEngine({ ratedPower_kW: 40, power_rpm: 5000 });
    expect(engine?.rating.ratedTorque_Nm).toBeCloseTo(40_000 / (5000 * RADPS) / 0.8, 6);
    expect(assumed).toEqual(["ratedTorque_Nm", "torque_rpm"]);
  });

  it.each([
    ["nothing", undefined, ["engine.ratedPower_kW", "engine.ratedTorque_Nm"]],
    ["torque alone", { ratedTorque_Nm: 100, torque_rpm: 2000 }, ["engine.ratedPower_kW"]],
    ["power alone", { ratedPower_kW: 40 }, ["engine.ratedTorque_Nm"]],
    // By the rule 1000 Nm would be at 262 rpm, below its own idle: the speeds are wanted.
    [
      "a figure that the rule does not go with",
      { ratedTorque_Nm: 1000, ratedPower_kW: 40 },
      ["engine.torque_rpm", "engine.power_rpm"],
    ],
  ])("says what to type where %s is known", (_, engine, missing) => {
    expect(knownEngine(engine)).toEqual({ assumed: [], missing });
  });

  it("makes a curve of anything that it completes", () => {
    let made = 0;
    for (let torque = 40; torque <= 600; torque += 40) {
      for (let power = 15; power <= 150; power += 15) {
        const { engine } = knownEngine({ ratedTorque_Nm: torque, ratedPower_kW: power });
        if (engine === undefined) continue;
        const { rating } = engine;
        made++;
        expect(Math.max(...engineCurve(rating).torque_Nm)).toBeCloseTo(torque, 6);
        expect(Math.max(...engineCurve(rating).power_kW)).toBeCloseTo(power, 6);
      }
    }
    expect(made).toBeGreaterThan(50);
  });
});

describe("an old engine whose curve is typed", () => {
  const curve = { speed_rpm: [1000, 2000, 3000, 5000], torque_Nm: [80, 100, 96, 70] };

  it("needs nothing else: its best torque and power are the ratings", () => {
    const { engine, assumed, missing } = knownEngine({ curve });
    expect([assumed, missing]).toEqual([[], []]);
    expect(engine?.isTyped).toBe(true);
    expect(engine?.curve).toEqual(curve);
    // 70 Nm at 5000 rpm are 36.65 kW; 96 Nm at 3000 rpm are 30.16.
    expect(engine?.rating).toMatchObject({ ratedTorque_Nm: 100, torque_rpm: 2000, power_rpm: 5000 });
    expect(engine?.rating.ratedPower_kW).toBeCloseTo((70 * 5000 * RADPS) / 1000, 9);
  });

  it("keeps the ratings that are typed beside it", () => {
    const typed = { ratedTorque_Nm: 104, torque_rpm: 2200, ratedPower_kW: 40, power_rpm: 4800 };
    expect(knownEngine({ ...typed, curve }).engine?.rating).toMatchObject(typed);
  });

  it("is driven from idle to its limit, by straight lines between the points", () => {
    // 1500 rpm: half way from 80 to 100 Nm; 4000 rpm: half way from 96 to 70 Nm.
    expect(knownEngine({ idle_rpm: 1500, limit_rpm: 4000, power_rpm: 4000, curve }).engine?.curve).toEqual({
      speed_rpm: [1500, 2000, 3000, 4000],
      torque_Nm: [90, 100, 96, 83],
    });
  });

  it("is not carried on beyond its ends", () => {
    expect(knownEngine({ idle_rpm: 700, limit_rpm: 6000, curve }).engine?.curve).toEqual(curve);
  });
});
