import { M_PER_KM, MPS_PER_KMH, RADPS_PER_RPM, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { airDensity_kgpm3, standardPressure_Pa } from "../../../sim/vehicle/airDensity.ts";
import { bareJob, type Changes, driven, evenSlope, steadyTrace } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";

/** Pressure at 20 degC that gives this density by the program's own reference state of 1.189 kg/m³ at 100 kPa. */
const pressureFor_kPa = (density_kgpm3: number) => (100 * density_kgpm3) / 1.189;

/** Mean forces of a car that holds a speed on an even slope, from what the stepper booked. */
function steadyForces(changes: Changes, speed_mps: number, sinSlope: number) {
  const length_m = speed_mps * 10;
  const { totals } = driven(bareJob(changes), steadyTrace(speed_mps, 10, 1, evenSlope(sinSlope, length_m)));
  const { ledger, distance_m } = totals;
  return {
    rolling_N: ledger.rolling_J / distance_m,
    drag_N: ledger.aero_J / distance_m,
    climb_N: ledger.climb_J / distance_m,
    all_N: totals.wheelPositive_J / distance_m,
  };
}

const body = (test_kg: number, drag_coeff: number, frontalArea_m2: number, rolling_coeff: number): Changes => ({
  test_kg,
  vehicle: {
    kerb_kg: test_kg - 1,
    tyres: { loadedRadius_mm: 300, rolling_coeff, followsTemperature: false },
    roadLoad: { kind: "physical", drag_coeff, frontalArea_m2 },
  },
  environment: { pressure_kPa: pressureFor_kPa(1.2), gravity_mps2: 9.81 },
});

const SLOPE = Math.sin((8 * Math.PI) / 180);
const exercise: readonly (readonly [string, Changes, number, number, number | undefined, number])[] = [
  ["two-wheeler", body(200, 0.9, 0.6, 0.015), 22.5, 160, undefined, 273.06],
  ["three-wheeler", body(600, 0.45, 1.6, 0.015), 30, 213.33, 87.43, 819.17],
  ["four-wheeler", body(1500, 0.3, 2.5, 0.015), 31.25, 222.22, 218.57, 2047.93],
];

/** A car by its coast-down on a day of its own. */
const coastedOn = (f0_N: number, f2_Npkmh2: number, temperature_degC: number, pressure_kPa: number): Changes => ({
  vehicle: {
    kerb_kg: 1399,
    tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: true },
    roadLoad: { kind: "coastDown", f0_N, f1_Npkmh: 0, f2_Npkmh2, mass_kg: 1400 },
  },
  environment: { temperature_degC, pressure_kPa },
});

const altitudes: readonly (readonly [number, number, number])[] = [
  [0, 101_325, 1.225],
  [500, 95_460.8, 1.1673],
  [1000, 89_874.6, 1.1116],
  [1500, 84_556, 1.0581],
  [2000, 79_495.2, 1.0065],
  [2500, 74_682.5, 0.9569],
  [3000, 70_108.5, 0.9091],
];
const warmths: readonly (readonly [number, number])[] = [
  [-10, 1.3414],
  [0, 1.2923],
  [14, 1.2293],
  [15, 1.225],
  [20, 1.2041],
  [23, 1.1919],
  [30, 1.1644],
  [40, 1.1272],
];
const gearSpeeds: readonly (readonly [number, number])[] = [
  [1, 2137],
  [1.5, 3206],
  [2.3, 4916],
  [3.5, 7480],
];

function motorSpeed_rpm(gear_ratio: number): number {
  const { channels } = driven(
    bareJob({
      vehicle: { tyres: { loadedRadius_mm: 350, rolling_coeff: 0.012 } },
      driveline: { gears: [{ name: "only", gear_ratio, efficiency_frac: 0.96 }], finalDrive_ratio: 4.7 },
    }),
    steadyTrace(60 * MPS_PER_KMH, 5, 1),
  );
  return channels.motorSpeed_radps[5] / RADPS_PER_RPM;
}

const university = "a national e-learning course's exercise on vehicle forces, with its printed answers";

export const roadLoads: readonly Comparison[] = [
  {
    quantity: "drag and climbing by the textbook formula",
    source: "[Gillespie1992, ch. 4], F = ½ rho CdA v² and m g sin(atan(grade)); worked out by hand",
    as: "difference",
    unit: "N",
    tolerance: 0.005,
    why: "half of the last digit worked out",
    samples: 3,
    pairs: () => [
      {
        at: "1 m² of drag area at 1 m/s in 1.2 kg/m³",
        expected: 0.6,
        found: steadyForces(body(1400, 1, 1, 0), 1, 0).drag_N,
      },
      {
        at: "1500 kg on 8 %",
        expected: 1173.45,
        found: steadyForces(body(1500, 0, 0, 0), 10, Math.sin(Math.atan(0.08))).climb_N,
      },
      {
        at: "2200 kg on 15 %",
        expected: 3201.48,
        found: steadyForces(body(2200, 0, 0, 0), 10, Math.sin(Math.atan(0.15))).climb_N,
      },
    ],
  },
  {
    quantity: "drag, rolling and climbing of three vehicles",
    source: university,
    as: "difference",
    unit: "N",
    tolerance: 0.02,
    why: "printed digits; its one rolling figure without the slope's cosine is left out",
    samples: 11,
    pairs: () =>
      exercise.flatMap(([name, changes, slow_N, fast_N, rolls_N, climb_N]) => {
        const slow = steadyForces(changes, 30 * MPS_PER_KMH, SLOPE);
        const fast = steadyForces(changes, 80 * MPS_PER_KMH, SLOPE);
        return [
          { at: `${name}, drag at 30 km/h`, expected: slow_N, found: slow.drag_N },
          { at: `${name}, drag at 80 km/h`, expected: fast_N, found: fast.drag_N },
          ...(rolls_N === undefined ? [] : [{ at: `${name}, rolling`, expected: rolls_N, found: slow.rolling_N }]),
          { at: `${name}, climbing 8 deg`, expected: climb_N, found: slow.climb_N },
        ];
      }),
  },
  {
    quantity: "coast-down coefficients brought from reference conditions to a day",
    source:
      "[GTR15, Annex 4], f0 (1 + 0.0086 (T - 20)) and f2 (T/293 K)(100 kPa/P), T in whole kelvin, from memory; by hand",
    as: "ratio",
    unit: "N",
    tolerance: 1e-4,
    why: "digits worked out; 20 degC is 293 K there and 293.15 K here",
    samples: 5,
    pairs: () => {
      const cool = steadyForces(coastedOn(164.52, 0.0417887, 10, 98), 80 * MPS_PER_KMH, 0);
      const cold = steadyForces(coastedOn(180, 0.0424, 0, 101.325), 80 * MPS_PER_KMH, 0);
      return [
        { at: "10 degC, 98 kPa: f0", expected: 180, found: cool.rolling_N },
        { at: "10 degC, 98 kPa: f2 at 80 km/h", expected: 0.0424 * 6400, found: cool.drag_N },
        { at: "10 degC, 98 kPa: all at 80 km/h", expected: 451.36, found: cool.all_N },
        { at: "0 degC, 101.325 kPa: f0", expected: 217.39, found: cold.rolling_N },
        {
          at: "0 degC, 101.325 kPa: f2 at 80 km/h",
          expected: 0.0424 * (293 / 273) * 1.01325 * 6400,
          found: cold.drag_N,
        },
      ];
    },
  },
  {
    quantity: "pressure of the standard atmosphere",
    source: "[ISO2533, 2.7], constants from memory; worked out by hand",
    as: "difference",
    unit: "Pa",
    tolerance: 0.05 * (1 + 1e-6),
    why: "half of the last digit worked out",
    samples: 7,
    pairs: () =>
      altitudes.map(([elevation_m, expected]) => ({
        at: `${elevation_m} m`,
        expected,
        found: standardPressure_Pa(elevation_m),
      })),
  },
  {
    quantity: "density of the air by height and by temperature",
    source: "[ISO2533, 2.1], rho = p/(R T) with R 287.053 J/(kg K)",
    as: "ratio",
    unit: "kg/m³",
    tolerance: 1e-3,
    why: "the rounded 1.189 kg/m³ of the reference state is 0.05 % off the gas law",
    samples: 16,
    pairs: () => [
      ...altitudes.map(([elevation_m, , expected]) => ({
        at: `${elevation_m} m`,
        expected,
        found: airDensity_kgpm3(288.15 - (6.5 * elevation_m) / M_PER_KM, standardPressure_Pa(elevation_m)),
      })),
      ...warmths.map(([temperature_degC, expected]) => ({
        at: `${temperature_degC} degC`,
        expected,
        found: airDensity_kgpm3(temperature_degC + ZERO_CELSIUS_K, 101_325),
      })),
      { at: "20 degC, 100 kPa", expected: 1.1884, found: airDensity_kgpm3(293.15, 100_000) },
    ],
  },
  {
    quantity: "rolling with gravity 9.8 for 9.81 m/s²",
    source: "F = m g crr",
    as: "ratio",
    unit: "N",
    tolerance: 1e-9,
    why: "rounding",
    samples: 1,
    pairs: () => {
      const at = (gravity_mps2: number) =>
        steadyForces({ ...body(1540, 0, 0, 0.0048), environment: { gravity_mps2 } }, 10, 0).rolling_N;
      return [{ at: "9.8 over 9.81", expected: 9.8 / 9.81, found: at(9.8) / at(9.81) }];
    },
  },
  {
    quantity: "motor speed at 60 km/h in a gear",
    source: "v 60 G/(2 pi r), r 0.35 m, final drive 4.7; worked out by hand",
    as: "difference",
    unit: "rpm",
    tolerance: 0.5,
    why: "half of the last digit worked out",
    samples: 4,
    pairs: () =>
      gearSpeeds.map(([gear_ratio, expected]) => ({
        at: `${gear_ratio}:1`,
        expected,
        found: motorSpeed_rpm(gear_ratio),
      })),
  },
];
