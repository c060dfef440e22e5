import { describe, expect, it } from "vitest";
import { recommendLimit } from "../../../../sim/plan/torqueLimit/recommendLimit.ts";
import { usualCaps_Nm } from "../../../../sim/plan/torqueLimit/torqueSweep.ts";
import { torquesToCompare } from "../../../../sim/plan/torqueLimit/torquesToCompare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { box, motor } from "./boxesByHand.ts";

describe("the limit by the trade's rule", () => {
  const limitOf = (limits: object, engine_Nm?: number, gear = "high") =>
    recommendLimit({
      ...bareJob({ motor, driveline: { ...box, limits, shifting: { kind: "fixed", gear } } }),
      ...(engine_Nm !== undefined && { engine: { ratedTorque_Nm: engine_Nm } }),
    });

  it("is what the old engine gave, or what the gearbox is known to take, up to a fifth more than that", () => {
    expect(limitOf({}, 115.9)).toEqual({ torque_Nm: 115, because: "engine" });
    expect(limitOf({ gearboxInput_Nm: 130 }, 115)).toEqual({ torque_Nm: 130, because: "gearbox" });
    expect(limitOf({ gearboxInput_Nm: 150 }, 115)).toEqual({ torque_Nm: 138, because: "strong" });
    expect(limitOf({ gearboxInput_Nm: 150 })).toEqual({ torque_Nm: 150, because: "gearbox" });
  });

  it("goes by a typed curve of the engine where no rated torque is typed, and by nothing that is assumed of it", () => {
    const job = bareJob({ motor, driveline: { ...box, limits: {}, shifting: { kind: "fixed", gear: "high" } } });
    const curve = { speed_rpm: [1000, 2400, 5000], torque_Nm: [80, 96.5, 70] };
    expect(recommendLimit({ ...job, engine: { curve } })).toEqual({ torque_Nm: 96, because: "engine" });
    expect(recommendLimit({ ...job, engine: { ratedTorque_Nm: 104, curve } })?.torque_Nm).toBe(104);
    expect(usualCaps_Nm({ ...job, engine: { curve } })).toContain(96.5);
    expect(torquesToCompare({ ...job, engine: { curve } }, undefined)[0]).toEqual({
      name: "old engine",
      torque_Nm: 96.5,
    });
    expect(recommendLimit({ ...job, engine: { ratedPower_kW: 40, power_rpm: 5000 } })).toBeUndefined();
  });

  it("is never more than the shafts take in a gear in use, nor than the motor has; gears not in use do not count", () => {
    const shafts = { gearboxInput_Nm: 150, halfShaft_Nm: 500 };
    const inHigh_Nm = 500 / ((1.5 * 4.7 * 0.96 * 0.92) / 2) + 2;
    const inLow_Nm = 500 / ((3.5 * 4.7 * 0.95 * 0.92) / 2) + 2;
    expect(inHigh_Nm).toBeGreaterThan(150);
    expect(limitOf(shafts)).toEqual({ torque_Nm: 150, because: "gearbox" });
    expect(limitOf(shafts, undefined, "low")).toEqual({
      torque_Nm: Math.floor(inLow_Nm),
      because: "half-shaft",
      gear: { gear: "low" },
    });
    expect(limitOf({ gearboxInput_Nm: 900 })).toEqual({ torque_Nm: 200, because: "motor" });
    expect(limitOf({})).toBeUndefined();
  });
});
