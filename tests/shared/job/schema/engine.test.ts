import { describe, expect, it } from "vitest";
import { Engine } from "../../../../shared/job/schema/engine.ts";

const handbook = { ratedTorque_Nm: 115, torque_rpm: 2500, ratedPower_kW: 44, power_rpm: 4700 };

/** What is said against an engine, each with the key it is said at. */
function faultsOf(engine: unknown): string[] {
  const result = Engine.safeParse(engine);
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
}

describe("the old engine's rating", () => {
  it("takes a handbook's four figures, any part of them, and none", () => {
    expect(faultsOf(handbook)).toEqual([]);
    for (const key of Object.keys(handbook)) expect(faultsOf({ ...handbook, [key]: undefined })).toEqual([]);
    expect(faultsOf({})).toEqual([]);
  });

  it("says that speed and torque were changed over, with what was likely meant", () => {
    expect(faultsOf({ ratedTorque_Nm: 2500, torque_rpm: 115 })).toEqual([
      "torque_rpm: found 2500 Nm at 115 rpm, likely changed over: 115 Nm at 2500 rpm",
    ]);
  });

  it("refuses a power that asks for more torque than the rated one", () => {
    // 115 Nm · 4700 rpm · 2π/60 = 56.6 kW
    expect(faultsOf({ ...handbook, ratedPower_kW: 57 }).join()).toContain("at most 56.6 kW wanted");
    expect(faultsOf({ ...handbook, ratedPower_kW: 56.5 })).toEqual([]);
  });

  it("refuses a power below the one that the rated torque is already", () => {
    // 115 Nm · 2500 rpm · 2π/60 = 30.11 kW
    expect(faultsOf({ ...handbook, ratedPower_kW: 30 }).join()).toContain("at least 30.11 kW wanted");
    expect(faultsOf({ ...handbook, ratedPower_kW: 30.2 })).toEqual([]);
  });

  it("wants idle below best torque, best power above it, and the limit from best power on", () => {
    expect(faultsOf({ ...handbook, idle_rpm: 2600 }).join()).toContain("idle_rpm: found 2600 rpm, below 2500 rpm");
    expect(faultsOf({ torque_rpm: 2500, power_rpm: 2400 }).join()).toContain("above the speed of best torque");
    expect(faultsOf({ ...handbook, limit_rpm: 4600 }).join()).toContain("4700 to below 9400 rpm wanted");
    expect(faultsOf({ ...handbook, idle_rpm: 700, limit_rpm: 5500 })).toEqual([]);
  });
});
