import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { controllerDrive, regenLimits } from "../../../../sim/plan/settings/controllerDrive.ts";
import { type BasisChanges, basisOf, rowOf } from "./basisByHand.ts";

// The invented motor gives 120 Nm and turns 8000 rpm; gears 1.4 and 1 behind 4.2, tyres of 290 mm.
const row = (key: string, changes: BasisChanges = {}) => rowOf(controllerDrive(basisOf(changes)), key);
const { driveline, controller } = basisOf().job;
const box = (gearboxInput_Nm: number): NonNullable<BasisChanges["driveline"]> => ({
  limits: { ...driveline.limits, gearboxInput_Nm },
});

describe("the torque cap", () => {
  it("is the motor's peak where nobody has said anything", () => {
    expect(row("torqueCap")).toEqual([
      "120 Nm",
      "the motor's peak",
      "Nobody has said what the gearbox takes: the old engine's peak is where to begin.",
    ]);
  });
  it("is the job's, with what the gearbox takes beside it", () => {
    expect(row("torqueCap", { controller: { torqueCap_Nm: 90 } }).slice(0, 2)).toEqual(["90 Nm", "in the job"]);
    expect(row("torqueCap", { controller: { torqueCap_Nm: 90 }, driveline: box(100) })).toEqual([
      "90 Nm",
      "in the job; the gearbox takes 100 Nm",
      "",
    ]);
    expect(row("torqueCap", { controller: { torqueCap_Nm: 100 }, driveline: box(100) })[2]).toBe("");
    expect(row("torqueCap", { controller: { torqueCap_Nm: 101 }, driveline: box(100) })[2]).toBe(
      "More than the gearbox's input limit of 100 Nm: lower it.",
    );
  });
  it("is the gearbox's limit where the job has no cap", () => {
    expect(row("torqueCap", { driveline: box(100) })).toEqual([
      "100 Nm",
      "no cap is in the job: the gearbox's input limit",
      "",
    ]);
    expect(row("torqueCap", { driveline: box(120) })[1]).toBe("no cap is in the job: the gearbox's input limit");
  });
  it("is never above the motor's peak, and then that is what it is from", () => {
    expect(row("torqueCap", { controller: { torqueCap_Nm: 200 } }).slice(0, 2)).toEqual(["120 Nm", "the motor's peak"]);
    expect(row("torqueCap", { controller: { torqueCap_Nm: 120 } })[1]).toBe("in the job");
    expect(row("torqueCap", { driveline: box(200) })).toEqual(["120 Nm", "the motor's peak", ""]);
  });
});

describe("what follows from the cap", () => {
  it("is the motor's current in proportion, where that of its peak is known", () => {
    expect(row("motorCurrent").slice(0, 2)).toEqual([
      "by the sheet, for 120 Nm",
      "not in the job: by the maker's sheet",
    ]);
    // 400 A at 120 Nm are 300 A at 90 Nm.
    const known = { motor: { fullCurrent_A: 400 }, controller: { torqueCap_Nm: 90 } };
    expect(row("motorCurrent", known).slice(0, 2)).toEqual([
      "300 A, root mean square",
      "400 A at the motor's 120 Nm, in proportion to the cap (assumed)",
    ]);
  });
  it("is half of it for reversing, at a tenth of the motor's speed where the motor turns back", () => {
    expect(row("reverse", { controller: { torqueCap_Nm: 90 } })[0]).toBe(
      "by the gearbox, 45 Nm at most; the motor backwards only without a reverse gear, to 800 rpm",
    );
  });
});

describe("the ramp of torque", () => {
  it("is the job's, or seven tenths of a second where it has none", () => {
    expect(row("torqueRamp", { controller: { ramp_s: 0.4 } }).slice(0, 2)).toEqual(["0.4 s", "in the job"]);
    expect(row("torqueRamp", { controller: { ramp_s: 0 } }).slice(0, 2)).toEqual([
      "0.7 s",
      "none is in the job: half a second to one, common practice, no source",
    ]);
  });
});

describe("speeds", () => {
  it("of the motor: its limit, with the torque falling before it", () => {
    expect(row("motorSpeed", { motor: { rollBack_rpm: 300 } })[0]).toBe("8000 rpm, torque falling from 7700 rpm");
  });
  it("of the road: the motor's limit in the highest of the gears used, nine tenths of it for hours", () => {
    // 8000 rpm are 837.8 rad/s; times 0.29 m over 1.4 x 4.2 they are 41.3 m/s, 148.7 km/h; in the gear of 1 208.2 km/h.
    expect(row("roadSpeed")[0]).toBe("149 km/h; below 134 km/h for hours");
    const bySpeed = (gears: string[]): BasisChanges => ({
      driveline: { shifting: { kind: "bySpeed", gears, up_kmh: gears.slice(1).map(() => 40) } },
    });
    expect(row("roadSpeed", bySpeed(["3", "4"]))[0]).toBe("208 km/h; below 187 km/h for hours");
    expect(row("roadSpeed", bySpeed(["3"]))[0]).toBe("149 km/h; below 134 km/h for hours");
    expect(controllerDrive(basisOf()).find(({ key }) => key === "roadSpeed")?.name).toBe("Speed that is, in 3");
  });
});

describe("the motor's temperature", () => {
  it("is by the job where that knows it", () => {
    const heat = { capacity_kJpK: 10, cooling_WpK: 5, derateFrom_degC: 120, derateTo_degC: 140 };
    expect(row("motorTemperature", { motor: { heat } }).slice(0, 2)).toEqual([
      "from 120 °C, none at 140 °C",
      "in the job",
    ]);
    expect(row("motorTemperature").slice(0, 2)).toEqual(["by its sheet", "not in the job: by the maker's sheet"]);
  });
});

describe("limits of braking by the motor in words", () => {
  const words = (limits: Partial<typeof controller.regen>) => {
    const { torque_Nm: _, ...regen } = controller.regen;
    return messageIn(regenLimits({ regen: { ...regen, ...limits } }), "metric");
  };
  it("are all that hold, one after another", () => {
    expect(words({})).toBe("no limit but motor and pack");
    expect(words({ power_kW: 12 })).toBe("12 kW at the controller");
    expect(words({ torque_Nm: 40, power_kW: 12, current_A: 90, wheelForce_N: 1500 })).toBe(
      "40 Nm at the motor, 12 kW at the controller, 90 A at the controller, 1500 N at the tyres",
    );
  });
});
