import { describe, expect, it } from "vitest";
import { prepareRoadLoad } from "../../../sim/vehicle/prepareRoadLoad.ts";
import { drag_N, rolling_N } from "../../../sim/vehicle/roadLoad.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";
import { demoJob } from "../../support/demoJob.ts";

const G = 9.81;
/** Tyres are softer by this at 10 degC, 10 K below the reference. [GTR15, Annex 4] */
const COLD_ratio = 1 - 0.0086 * 10;
const tyres = { loadedRadius_mm: 300, rolling_coeff: 0.012, rollingRise_coeff: 0.003, followsTemperature: true };
const trailer = { mass_kg: 300, rolling_coeff: 0.02, dragArea_m2: 0.4 };
const physical = { kind: "physical", drag_coeff: 0.4, frontalArea_m2: 2, wheelDrag_Nm: 0 } as const;
const measured = { kind: "coastDown", f0_N: 120, f1_Npkmh: 0.5, f2_Npkmh2: 0.04, mass_kg: 1200 } as const;

const car = (vehicle: NonNullable<Changes["vehicle"]>, environment: NonNullable<Changes["environment"]> = {}) =>
  bareJob({ vehicle, environment });

describe("the road load of a car", () => {
  it("of one drag area is that of a drag coefficient and a frontal area whose product it is", () => {
    const job = demoJob();
    const withLoad = (roadLoad: typeof job.vehicle.roadLoad) =>
      prepareRoadLoad({ ...job, vehicle: { ...job.vehicle, roadLoad } }, 1000, 3);
    const both = withLoad({ kind: "physical", drag_coeff: 0.45, frontalArea_m2: 1.75, wheelDrag_Nm: 0 });
    const one = withLoad({ kind: "dragArea", dragArea_m2: 0.45 * 1.75, wheelDrag_Nm: 0 });
    expect(one).toEqual(both);
    expect(both.drag_Npmps2).toBeGreaterThan(0);
  });

  it("by coefficients is that of the textbook, at rest and at 100 km/h", () => {
    const road = prepareRoadLoad(car({ roadLoad: physical, tyres: { ...tyres, followsTemperature: false } }), 1000, 6);
    expect(road.mass_kg).toBe(1000);
    expect(road.weight_N).toBeCloseTo(1000 * G, 9);
    expect(rolling_N(road, 0, 1)).toBeCloseTo(1000 * G * 0.012, 9);
    expect(rolling_N(road, 100 / 3.6, 1)).toBeCloseTo(1000 * G * 0.015, 9);
    expect(rolling_N(road, 100 / 3.6, 0.9)).toBeCloseTo(0.9 * 1000 * G * 0.015, 9);
    expect(drag_N(road, 20)).toBeCloseTo(0.5 * 1.189 * 0.8 * 400, 9);
    expect(road.wheelDrag_N).toBeCloseTo(6 / 0.3, 9);
    const dragging = { ...physical, wheelDrag_Nm: 9 };
    expect(prepareRoadLoad(car({ roadLoad: dragging, tyres }), 1000, 6).wheelDrag_N).toBeCloseTo(15 / 0.3, 9);
  });

  it("rolls the same in the cold where its tyres are said not to follow the temperature", () => {
    const still = { ...tyres, followsTemperature: false };
    const road = prepareRoadLoad(car({ roadLoad: physical, tyres: still }, { temperature_degC: 10 }), 1000, 0);
    expect(rolling_N(road, 0, 1)).toBeCloseTo(1000 * G * 0.012, 9);
  });

  it("rolls harder in the cold by the law of tyre temperature, trailer and rise with speed alike", () => {
    const cold = { temperature_degC: 10 };
    const road = prepareRoadLoad(car({ roadLoad: physical, tyres: tyres, trailer }, cold), 1000, 0);
    expect(rolling_N(road, 0, 1)).toBeCloseTo((1000 * G * 0.012 + 300 * G * 0.02) / COLD_ratio, 9);
    expect(rolling_N(road, 100 / 3.6, 1)).toBeCloseTo((1000 * G * 0.015 + 300 * G * 0.02) / COLD_ratio, 9);
    expect(road.mass_kg).toBe(1300);
    expect(road.weight_N).toBeCloseTo(1300 * G, 9);
  });

  it("has the drag of roof and trailer on top, in the air of the day", () => {
    const roof = { mass_kg: 20, dragArea_m2: 0.25 };
    const high = { pressure_kPa: 80, headWind_kmh: 36 };
    const road = prepareRoadLoad(car({ roadLoad: physical, roof, trailer }, high), 1000, 0);
    expect(drag_N(road, 10)).toBeCloseTo(0.5 * 0.8 * 1.189 * (0.8 + 0.25 + 0.4) * 20 * 20, 9);
    expect(drag_N(road, -20)).toBeCloseTo(-0.5 * 0.8 * 1.189 * 1.45 * 10 * 10, 9);
  });

  it("takes the pressure from the altitude where one is given", () => {
    const sea = prepareRoadLoad(car({ roadLoad: physical }, { altitude_m: 0 }), 1000, 0);
    expect(sea.drag_Npmps2).toBeCloseTo(0.5 * 1.189 * 1.01325 * 0.8, 9);
    const high = prepareRoadLoad(car({ roadLoad: physical }, { altitude_m: 1000 }), 1000, 0);
    expect(high.drag_Npmps2).toBeCloseTo(sea.drag_Npmps2 * (1 - (0.0065 * 1000) / 288.15) ** 5.255_88, 6);
  });
});

describe("a measured road load", () => {
  it("is its own coefficients at reference conditions and the mass they were found at, wheel-side drag inside", () => {
    const road = prepareRoadLoad(car({ roadLoad: measured, tyres: tyres }), 1200, 9);
    expect(rolling_N(road, 20, 1)).toBeCloseTo(120 + 0.5 * 72, 9);
    expect(drag_N(road, 20)).toBeCloseTo(0.04 * 72 * 72, 9);
    expect(road.wheelDrag_N).toBe(0);
  });

  it("has only its first coefficient go with the mass, and not with the slope", () => {
    const road = prepareRoadLoad(car({ roadLoad: measured, tyres: tyres }), 1500, 0);
    expect(rolling_N(road, 20, 0.8)).toBeCloseTo(150 + 0.5 * 72, 9);
  });

  it("rolls harder in the cold, and drags by the day's air and what is towed", () => {
    const day = { temperature_degC: 10, pressure_kPa: 90 };
    const road = prepareRoadLoad(car({ roadLoad: measured, tyres: tyres, trailer }, day), 1200, 0);
    const air_kgpm3 = (1.189 * 0.9 * 293.15) / 283.15;
    expect(rolling_N(road, 20, 1)).toBeCloseTo((120 + 0.5 * 72 + 300 * G * 0.02) / COLD_ratio, 9);
    expect(drag_N(road, 20)).toBeCloseTo((0.04 * 72 * 72 * air_kgpm3) / 1.189 + 0.5 * air_kgpm3 * 0.4 * 400, 9);
  });
});
