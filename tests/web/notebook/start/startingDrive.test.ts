import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { Conditions } from "../../../../shared/job/schema/conditions.ts";
import { driveFor, firstUse_Whpkm, isScaled, packsFor } from "../../../../web/notebook/start/startingDrive.ts";
import { demoJob } from "../../../support/demoJob.ts";

const demo = demoJob();

describe("the drive for a weight", () => {
  it("has 40 W a kilogram, and all that goes with the motor's size in the same proportion", () => {
    // 1140 kg: 45.6, rounded 46 kW, 46/38 of the demo's motor of 120 Nm with its controller of 110 Nm and 420 A, braking by 35 Nm and
    // 120 A, and a gearbox of 115 Nm.
    const { motor, controller, driveline } = driveFor(demo, 1140);
    expect(motor.envelope).toEqual({ kind: "peak", torque_Nm: 145, power_kW: 46 });
    expect(motor.name).toBe("Low-voltage induction, 46 kW");
    expect(controller).toMatchObject({ torqueCap_Nm: 133, current_A: 508, regen: { torque_Nm: 42, current_A: 145 } });
    expect(driveline.limits).toMatchObject({ gearboxInput_Nm: 139, propellerShaft_Nm: 545 });
    expect([isScaled(motor), isScaled(demo.motor)]).toEqual([true, false]);
  });

  it("is no smaller and no larger than a motor may be drawn: a third of the demo's 38 kW to three times that", () => {
    const power_kW = (kerb_kg: number) => {
      const { envelope } = driveFor(demo, kerb_kg).motor;
      return envelope.kind === "peak" ? envelope.power_kW : undefined;
    };
    // 12 kW would be 0.316 of it, 140 kW 3.7 times.
    expect([power_kW(300), power_kW(3500)]).toEqual([13, 114]);
  });

  it("makes up no limit that was not there, and leaves a motor alone that is known by its curve", () => {
    const { torqueCap_Nm: _cap, ...controller } = demo.controller;
    const bare = driveFor({ ...demo, controller, driveline: { ...demo.driveline, limits: {} } }, 1140);
    expect(bare.controller).not.toHaveProperty("torqueCap_Nm");
    expect(bare.driveline.limits).toEqual({});
    const envelope = { kind: "points" as const, speed_rpm: [0, 3000], torque_Nm: [100, 80] };
    const measured = { ...demo, motor: { ...demo.motor, envelope } };
    expect(driveFor(measured, 1140).motor).toBe(measured.motor);
  });
});

/** A string is 5 modules of 6 cells at 4 V, 50 Ah: 6 kWh, 60 kg with its boxes; old cells hold four fifths. The car weighs 1 t. */
function start(usualDay_km: number, peak_A: number, winter?: object): Job {
  const { conditions: _conditions, ...job } = demo;
  return {
    ...job,
    usualDay_km,
    allowance: { winter_ratio: 1.25, aged_frac: 0.8 },
    ...(winter && { conditions: Conditions.parse({ winter }) }),
    vehicle: {
      ...job.vehicle,
      kerb_kg: 900,
      load_kg: 100,
      roadLoad: { ...job.vehicle.roadLoad, kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2, wheelDrag_Nm: 0 },
    },
    module: {
      ...job.module,
      openCircuit: { soc_frac: [0, 1], cell_V: [4, 4] },
      seriesCells: 6,
      capacity_Ah: 50,
      mass_kg: 10,
      discharge: { ...job.module.discharge, peak_A },
    },
    packs: [{ ...job.packs[0], seriesModules: 5, boxes_frac: 0.2 }],
  };
}
const strings = (job: Job) => packsFor(job).map(({ parallelModules }) => parallelModules);

describe("the packs to begin with", () => {
  it("take their first use from weight and drag", () => {
    // 30 + 0.07 × 1000 + 50 × 0.5 × 2 = 150 Wh/km.
    expect(firstUse_Whpkm(start(60, 300))).toBeCloseTo(150, 9);
  });

  it("stand about the one that the usual day asks for in winter with old cells", () => {
    // A string gives 6000 × 0.85 × 0.8 / 60 = 68 Wh/km and takes 0.07 × 60 = 4.2 itself; 150 × 1.25 / 63.8 = 2.9: 2 strings.
    expect(strings(start(60, 300))).toEqual([1, 2, 3]);
    expect(packsFor(start(60, 300)).map(({ name }) => name)).toEqual(["6 kWh", "12 kWh", "18 kWh"]);
  });

  it("give the motor its power", () => {
    // 0.75 × 120 V × 150 A = 13.5 kW a string, three for 38 kW; half as much again is 4.5, rounded 5.
    expect(strings(start(60, 150))).toEqual([2, 3, 4, 5]);
  });

  it("carry the heater of a winter that is known, and what of the window it leaves", () => {
    const winter = {
      temperature_degC: 0,
      heat: { kind: "thermostat", power_kW: 3, cabin_degC: 20, capacity_kJpK: 60, loss_WpK: 100 },
    };
    // 100 W/K × 20 K = 2 kW at 35 km/h are 57 Wh/km; (1.1 × 150 + 57) / 63.8 = 3.5: 3 strings; without a heater 2.6.
    expect(strings(start(60, 300, winter))).toEqual([2, 3, 4, 5]);
    expect(strings(start(60, 300, { temperature_degC: 0 }))).toEqual([1, 2, 3]);
    // Half the window: 34 - 4.2 = 29.8 Wh/km a string; 165 / 29.8 = 5.5: 5 strings.
    expect(strings(start(60, 300, { temperature_degC: 0, usable_frac: 0.5 }))).toEqual([4, 5, 6, 8]);
  });

  it("end at thirty strings, also where a string does not carry its own weight", () => {
    // 600 km: 6.8 - 4.2 = 2.6 Wh/km a string; 187.5 / 2.6 = 72. 2000 km: less than nothing.
    expect(strings(start(600, 300))).toEqual([29, 30, 31, 45]);
    expect(strings(start(2000, 300))).toEqual([29, 30, 31, 45]);
  });
});
