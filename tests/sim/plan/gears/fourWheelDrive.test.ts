import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { fourWheelDrive, hubWords } from "../../../../sim/plan/gears/fourWheelDrive.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";

const road = steadyTrace(10, 60, 1);
const transferBox = {
  high_ratio: 1,
  highEfficiency_frac: 1,
  low_ratio: 2,
  lowEfficiency_frac: 1,
  range: "high",
  isFrontEngaged: false,
  hubs: "free",
  frontShaftDrag_Nm: 9,
} as const;
const jobOf = (changes: object = {}) =>
  bareJob({
    driveline: { transferBox: { ...transferBox, ...changes } },
    vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.02, followsTemperature: false } },
  });

describe("a part-time four-wheel drive", () => {
  it("pays the front shafts' drag where they turn: 9 Nm over 0.3 m are 30 N, 8.3 Wh a kilometre", () => {
    const [free, locked, engaged] = fourWheelDrive(jobOf(), 0, road);
    // No losses between pack and road.
    expect((locked.battery_Whpkm ?? 0) - (free.battery_Whpkm ?? 0)).toBeCloseTo(30 / 3.6, 3);
    expect(engaged.battery_Whpkm).toBeCloseTo(locked.battery_Whpkm ?? 0, 6);
    expect([free.isAsSet, locked.isAsSet, engaged.isAsSet]).toEqual([true, false, false]);
    expect([free, locked, engaged].map(({ drivenAxle }) => drivenAxle)).toEqual(["rear", "rear", "both"]);
    expect([free.shaftDrag_Nm, locked.shaftDrag_Nm]).toEqual([0, 9]);
  });

  it("says what free hubs save, or that the drag is not known", () => {
    const words = (changes: object) => {
      const found = hubWords(fourWheelDrive(jobOf(changes), 0, road));
      return found && messageIn(found, "metric");
    };
    // 0.02 of 1400 kg is 274.7 N, to which 30 N come.
    expect(words({})).toMatch(/^With the hubs free the car takes 8\.3 Wh\/km \(9\.8 %\) less on this road/);
    expect(words({ frontShaftDrag_Nm: 0 })).toMatch(/^What the turning front shafts drag is not known/);
    expect(words({ hubs: "none" })).toBeUndefined();
  });

  it("has no row with free hubs where there are none, and none at all without a transfer box", () => {
    expect(fourWheelDrive(jobOf({ hubs: "none" }), 0, road).map(({ name }) => name)).toEqual([
      "hubs locked",
      "front axle engaged",
    ]);
    expect(fourWheelDrive(bareJob(), 0, road)).toEqual([]);
  });
});
