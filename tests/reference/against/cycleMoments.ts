import { W_PER_KW } from "../../../shared/units.ts";
import type { Trace } from "../../../sim/trace/trace.ts";
import { bareJob, type Changes, driven } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";
import { fromOperations } from "./cycleEnergy.ts";

interface Body {
  readonly dragArea_m2: number;
  readonly rolling_coeff: number;
  readonly mass_kg: number;
}

/** The book's car: rho 1.2, g 9.81, no rotating parts, nothing lost; with perfect recovery or with none. */
function drivenFor(body: Body, trace: Trace, recovers: boolean) {
  const changes: Changes = {
    vehicle: {
      kerb_kg: body.mass_kg - 1,
      tyres: { loadedRadius_mm: 300, rolling_coeff: body.rolling_coeff, followsTemperature: false },
      roadLoad: { kind: "physical", drag_coeff: 1, frontalArea_m2: body.dragArea_m2 },
    },
    controller: { regen: { isOn: recovers, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
    environment: { pressure_kPa: (100 * 1.2) / 1.189, gravity_mps2: 9.81 },
  };
  return driven(bareJob(changes), trace, 0.5);
}

/** Energy at the pack's terminals for each metre; a hundred times that is kJ for 100 km. */
function terminal_Jpm(body: Body, recovers: boolean): number {
  const { totals } = drivenFor(body, nedc, recovers);
  return totals.terminal_J / totals.distance_m;
}

/** Mean power of traction over the whole cycle. */
function mean_kW(body: Body): number {
  const { totals } = drivenFor(body, nedc, false);
  return totals.wheelPositive_J / totals.time_s / W_PER_KW;
}

const ece = fromOperations(1, "ece-15");
const eudc = fromOperations(1, "eudc");
const nedc = fromOperations(1, "ece-15", "ece-15", "ece-15", "ece-15", "eudc");

/** The book's sums over a cycle, from what the stepper drove: mean square of speed by drag's energy, and those while not slowing. */
function moments(trace: Trace) {
  const { totals, channels, rows } = drivenFor({ dragArea_m2: 1, rolling_coeff: 0.01, mass_kg: 1000 }, trace, true);
  let air = 0;
  let rolled_m = 0;
  let sped = 0;
  for (let i = 1; i < rows; i++) {
    const before = channels.speed_mps[i - 1];
    const after = channels.speed_mps[i];
    if (after < before) continue;
    const moved_m = channels.distance_m[i] - channels.distance_m[i - 1];
    air += (0.5 * (before + after)) ** 2 * moved_m;
    rolled_m += moved_m;
    sped += 0.5 * (after * after - before * before);
  }
  const all_m = totals.distance_m;
  return {
    all: totals.ledger.aero_J / all_m / 0.6,
    air: air / all_m,
    rolled: rolled_m / all_m,
    sped: sped / all_m,
  };
}

const cycles = [
  { name: "ECE", trace: ece, all: 100, air: 82.9, rolled: 0.81, sped: 0.1426 },
  { name: "EUDC", trace: eudc, all: 515, air: 455, rolled: 0.88, sped: 0.0932 },
  { name: "NEDC", trace: nedc, all: 363, air: 319, rolled: 0.856, sped: 0.1114 },
];

const classes: readonly (readonly [string, Body, number, number, number, number])[] = [
  ["large off-roader", { dragArea_m2: 1.2, rolling_coeff: 0.017, mass_kg: 2000 }, 71_360, 59_754, 73_205, 59_435],
  ["full-size", { dragArea_m2: 0.7, rolling_coeff: 0.013, mass_kg: 1500 }, 44_680, 34_530, 46_139, 34_344],
  ["compact", { dragArea_m2: 0.6, rolling_coeff: 0.012, mass_kg: 1000 }, 31_480, 24_972, 32_442, 24_813],
  ["light", { dragArea_m2: 0.4, rolling_coeff: 0.008, mass_kg: 750 }, 20_140, 14_686, 20_892, 14_580],
];

/** Area, drag coefficient, rolling coefficient, mass; mean power, whole and worked out; percent for +10 % of drag, rolling, mass. */
const lecture: readonly (readonly [string, number, number, number, number, number, number, number, number, number])[] =
  [
    ["mid-range", 2.2, 0.26, 0.012, 1560, 4, 4.08, 2, 4, 9],
    ["compact", 2.0, 0.29, 0.01, 1120, 3, 3.06, 4, 3, 8],
    ["sports", 1.9, 0.29, 0.012, 1650, 4, 4.22, 2, 4, 9],
    ["large off-roader", 2.3, 0.41, 0.014, 2640, 7, 7.28, 2, 4, 9],
  ];

/** By how many percent the energy grows with a tenth more of one thing; mass carries area along by 5.7e-4 m² a kilogram. */
function sensitivities_percent(area_m2: number, drag_coeff: number, rolling_coeff: number, mass_kg: number) {
  const energy = (area: number, drag: number, rolling: number, mass: number) =>
    mean_kW({ dragArea_m2: area * drag, rolling_coeff: rolling, mass_kg: mass });
  const now = energy(area_m2, drag_coeff, rolling_coeff, mass_kg);
  const percent = (then: number) => 100 * (then / now - 1);
  return [
    percent(energy(area_m2, 1.1 * drag_coeff, rolling_coeff, mass_kg)),
    percent(energy(area_m2, drag_coeff, 1.1 * rolling_coeff, mass_kg)),
    percent(energy(area_m2 + 5.7e-5 * mass_kg, drag_coeff, rolling_coeff, 1.1 * mass_kg)),
  ];
}

const book = "[GuzzellaSciarretta2013, ch. 2], table of cycle parameters, from memory";
const slides = "[Mastinu2013], slides on weight and energy";

export const cycleMoments: readonly Comparison[] = [
  {
    quantity: "mean square of speed over a cycle, from the energy of drag with full recovery",
    source: book,
    as: "ratio",
    unit: "m²/s²",
    tolerance: 5e-3,
    why: "three printed digits",
    samples: 3,
    pairs: () => cycles.map(({ name, trace, all }) => ({ at: name, expected: all, found: moments(trace).all })),
  },
  {
    quantity: "mean square of speed over a cycle, in traction",
    source: book,
    as: "ratio",
    unit: "m²/s²",
    tolerance: 0.03,
    why: "the book counts gentle slowing as traction",
    samples: 3,
    pairs: () => cycles.map(({ name, trace, air }) => ({ at: name, expected: air, found: moments(trace).air })),
  },
  {
    quantity: "share of a cycle's road in traction",
    source: book,
    as: "ratio",
    unit: "",
    tolerance: 0.04,
    why: "the book counts gentle slowing as traction",
    samples: 3,
    pairs: () =>
      cycles.map(({ name, trace, rolled }) => ({ at: name, expected: rolled, found: moments(trace).rolled })),
  },
  {
    quantity: "work of speeding up over a cycle, per mass and distance",
    source: "[UNR83, Annex 4a], list of operations, integrated apart",
    as: "ratio",
    unit: "m/s²",
    tolerance: 2e-3,
    why: "four digits worked out",
    samples: 3,
    pairs: () => cycles.map(({ name, trace, sped }) => ({ at: name, expected: sped, found: moments(trace).sped })),
  },
  {
    quantity: "energy of four classes on the NEDC, no recovery",
    source: "[GuzzellaSciarretta2013, ch. 2], E = A cd 1.9e4 + m cr 8.4e2 + 10 m, from memory",
    as: "ratio",
    unit: "kJ/100 km",
    tolerance: 0.05,
    why: "rounded constants",
    samples: 4,
    pairs: () => classes.map(([at, body, expected]) => ({ at, expected, found: 100 * terminal_Jpm(body, false) })),
  },
  {
    quantity: "energy of four classes on the NEDC, full recovery",
    source: "[GuzzellaSciarretta2013, ch. 2], E = A cd 2.2e4 + m cr 9.81e2, from memory",
    as: "ratio",
    unit: "kJ/100 km",
    tolerance: 0.015,
    why: "rounded constants",
    samples: 4,
    pairs: () => classes.map(([at, body, , expected]) => ({ at, expected, found: 100 * terminal_Jpm(body, true) })),
  },
  {
    quantity: "energy of four classes on the NEDC, against the exact sums",
    source: "the same balance integrated apart over the list of operations of [UNR83, Annex 4a]",
    as: "ratio",
    unit: "kJ/100 km",
    tolerance: 1e-3,
    why: "digits worked out, and how finely the cycle is sampled",
    samples: 8,
    pairs: () =>
      classes.flatMap(([at, body, , , without, recovered]) => [
        { at: `${at}, none recovered`, expected: without, found: 100 * terminal_Jpm(body, false) },
        { at: `${at}, all recovered`, expected: recovered, found: 100 * terminal_Jpm(body, true) },
      ]),
  },
  {
    quantity: "mean traction power of four cars on the NEDC",
    source: slides,
    as: "difference",
    unit: "kW",
    tolerance: 0.5,
    why: "printed as whole kilowatts",
    samples: 4,
    pairs: () =>
      lecture.map(([at, area_m2, drag_coeff, rolling_coeff, mass_kg, expected]) => ({
        at,
        expected,
        found: mean_kW({ dragArea_m2: area_m2 * drag_coeff, rolling_coeff, mass_kg }),
      })),
  },
  {
    quantity: "mean traction power of four cars on the NEDC, against the exact sums",
    source: "the same balance integrated apart over the list of operations of [UNR83, Annex 4a]",
    as: "difference",
    unit: "kW",
    tolerance: 0.006,
    why: "half of the last digit worked out, and how finely the cycle is sampled",
    samples: 4,
    pairs: () =>
      lecture.map(([at, area_m2, drag_coeff, rolling_coeff, mass_kg, , expected]) => ({
        at,
        expected,
        found: mean_kW({ dragArea_m2: area_m2 * drag_coeff, rolling_coeff, mass_kg }),
      })),
  },
  {
    quantity: "growth of energy with a tenth more drag, rolling or mass",
    source: slides,
    as: "difference",
    unit: "percent",
    tolerance: 1,
    why: "printed as whole percent, by rounded constants",
    samples: 12,
    pairs: () =>
      lecture.flatMap(([name, area_m2, drag_coeff, rolling_coeff, mass_kg, , , ...expected]) =>
        sensitivities_percent(area_m2, drag_coeff, rolling_coeff, mass_kg).map((found, i) => ({
          at: `${name}, ${["drag", "rolling", "mass"][i]}`,
          expected: expected[i],
          found,
        })),
      ),
  },
];
