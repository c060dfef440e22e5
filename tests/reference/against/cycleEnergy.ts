import { readFileSync } from "node:fs";
import { join } from "node:path";
import { J_PER_WH, M_PER_KM } from "../../../shared/units.ts";
import { resample } from "../../../sim/trace/resample.ts";
import { cycleTrace, standardCycles } from "../../../sim/trace/standardCycles.ts";
import type { Trace } from "../../../sim/trace/trace.ts";
import { bareJob, driven, traceOf } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

/** Road load in newtons at km/h, and test mass: what the rule of UN GTR 15 asks for. */
interface RuleCar {
  readonly test_kg: number;
  readonly f0_N: number;
  readonly f1_Npkmh: number;
  readonly f2_Npkmh2: number;
}
const midSized: RuleCar = { test_kg: 1400, f0_N: 180, f1_Npkmh: 0, f2_Npkmh2: 0.0424 };
const withSlope: RuleCar = { test_kg: 1130, f0_N: 121, f1_Npkmh: 0.42, f2_Npkmh2: 0.0353 };

/** Energy at the tyres driving and slowing, by the stepper. */
function byStepper({ test_kg, ...roadLoad }: RuleCar, trace: Trace) {
  const { totals, channels, rows } = driven(
    bareJob({
      test_kg,
      vehicle: {
        kerb_kg: test_kg - 1,
        tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01 },
        inertia: { kind: "massFactor", mass_ratio: 1.03 },
        roadLoad: { kind: "coastDown", ...roadLoad, mass_kg: test_kg },
      },
    }),
    trace,
  );
  let negative_J = 0;
  for (let i = 1; i < rows; i++) {
    const distance_m = channels.distance_m[i] - channels.distance_m[i - 1];
    negative_J += Math.min(0, channels.wheelForce_N[i]) * distance_m;
  }
  const missed_m = totals.target_m - totals.distance_m;
  return { positive_J: totals.wheelPositive_J, negative_J, distance_m: totals.distance_m, missed_m, channels };
}

/**
 * The rule itself, written out from the regulation's text: E = sum of F d where F > 0, with
 * F = f0 + f1 v + f2 v² + 1.03 TM a at the mean speed of the step.     [GTR15, Annex 7, para 5], formula from memory
 */
function byRule_J({ test_kg, f0_N, f1_Npkmh, f2_Npkmh2 }: RuleCar, { time_s, speed_mps }: Trace): number {
  let energy_J = 0;
  for (let i = 1; i < time_s.length; i++) {
    const now_kmh = speed_mps[i] * 3.6;
    const before_kmh = speed_mps[i - 1] * 3.6;
    const lasts_s = time_s[i] - time_s[i - 1];
    const mean_kmh = (now_kmh + before_kmh) / 2;
    const accel_mps2 = (now_kmh - before_kmh) / (3.6 * lasts_s);
    const force_N = f0_N + f1_Npkmh * mean_kmh + f2_Npkmh2 * mean_kmh * mean_kmh + 1.03 * test_kg * accel_mps2;
    if (force_N > 0) energy_J += force_N * (mean_kmh / 3.6) * lasts_s;
  }
  return energy_J;
}

const sixSamples = traceOf([
  [0, 0],
  [1, 10],
  [2, 20],
  [3, 20],
  [4, 10],
  [5, 0],
]);

/** The European cycles from the regulation's list of operations, at steps of 1 s. */
interface Operations {
  readonly operations?: readonly (readonly [number, number])[];
}
const listed = JSON.parse(readFileSync(join(import.meta.dirname, "../data/cycleTotals.json"), "utf8"))
  .europeanOperations as Readonly<Record<"ece-15" | "eudc", Operations>>;

function fromOperations(step_s: number, ...parts: readonly ("ece-15" | "eudc")[]): Trace {
  let end_s = 0;
  const rows = parts
    .flatMap((part) => listed[part].operations ?? [])
    .map(([end_kmh, lasts_s]): [number, number] => {
      end_s += lasts_s;
      return [end_s, end_kmh];
    });
  return resample(traceOf([[0, 0], ...rows]), step_s);
}
const european = [
  { name: "ECE-15", parts: ["ece-15"], E: [396_941.6, -158_476.0, 1014.583, 108.677, 65.288] },
  { name: "EUDC", parts: ["eudc"], E: [3_764_987.2, -544_374.0, 6954.861, 150.374, 128.632] },
  {
    name: "NEDC",
    parts: ["ece-15", "ece-15", "ece-15", "ece-15", "eudc"],
    E: [5_352_753.6, -1_178_277.8, 11_013.194, 135.009, 105.29],
  },
] as const;

const rule = "[GTR15, Annex 7, para 5], formula from memory; worked out by hand";
const everyCycle = standardCycles.map(({ id }) => cycleTrace(id, cycleTexts));

export const cycleEnergy: readonly Comparison[] = [
  {
    quantity: "cycle energy of six samples, driving and slowing",
    source: rule,
    as: "ratio",
    unit: "J",
    tolerance: 1e-6,
    why: "ten printed digits and rounding",
    samples: 2,
    pairs: () => {
      const { positive_J, negative_J } = byStepper(midSized, sixSamples);
      return [
        { at: "driving", expected: 24_388.5309, found: positive_J },
        { at: "slowing", expected: -21_211.8642, found: negative_J },
      ];
    },
  },
  {
    quantity: "cycle energy of six samples, force of each step",
    source: rule,
    as: "difference",
    unit: "N",
    tolerance: 1e-4,
    why: "printed digits",
    samples: 5,
    pairs: () => {
      const { channels } = byStepper(midSized, sixSamples);
      return [4186.6156, 4195.0956, 196.96, -3816.0156, -3824.4956].map((expected, i) => ({
        at: `step ${i + 1}`,
        expected,
        found: channels.wheelForce_N[i + 1],
      }));
    },
  },
  {
    quantity: "cycle energy of the European cycles, driving and slowing",
    source: rule,
    as: "difference",
    unit: "J",
    tolerance: 0.05 * (1 + 1e-6),
    why: "half of the last printed digit",
    samples: 6,
    pairs: () =>
      european.flatMap(({ name, parts, E: [positive, negative] }) => {
        const found = byStepper(midSized, fromOperations(1, ...parts));
        return [
          { at: `${name}, driving`, expected: positive, found: found.positive_J },
          { at: `${name}, slowing`, expected: negative, found: found.negative_J },
        ];
      }),
  },
  {
    quantity: "cycle energy of the European cycles, distance",
    source: rule,
    as: "difference",
    unit: "m",
    tolerance: 5e-4 * (1 + 1e-6),
    why: "half of the last printed digit",
    samples: 3,
    pairs: () =>
      european.map(({ name, parts, E: [, , expected] }) => ({
        at: name,
        expected,
        found: byStepper(midSized, fromOperations(1, ...parts)).distance_m,
      })),
  },
  {
    quantity: "cycle energy of the European cycles, per distance, without and with all recovered",
    source: rule,
    as: "difference",
    unit: "Wh/km",
    tolerance: 5e-4 * (1 + 1e-6),
    why: "half of the last printed digit",
    samples: 6,
    pairs: () =>
      european.flatMap(({ name, parts, E: [, , , without, recovered] }) => {
        const found = byStepper(midSized, fromOperations(1, ...parts));
        const perKm = (energy_J: number) => energy_J / J_PER_WH / (found.distance_m / M_PER_KM);
        return [
          { at: `${name}, without`, expected: without, found: perKm(found.positive_J) },
          { at: `${name}, recovered`, expected: recovered, found: perKm(found.positive_J + found.negative_J) },
        ];
      }),
  },
  {
    quantity: "cycle energy at steps of 0.1 s against that at 1 s",
    source: "the same sums at a tenth of the step",
    as: "ratio",
    unit: "J",
    tolerance: 1e-4,
    why: "a tenth of the step changes it by under 0.004 %; 0.01 % granted",
    samples: 3,
    pairs: () =>
      european.map(({ name, parts, E: [expected] }) => ({
        at: name,
        expected,
        found: byStepper(midSized, fromOperations(0.1, ...parts)).positive_J,
      })),
  },
  {
    quantity: "cycle energy of every cycle on board at its own samples",
    source: "[GTR15, Annex 7, para 5], formula from memory, written out beside the comparison",
    as: "ratio",
    unit: "J",
    tolerance: 1e-9,
    why: "the same formula, so rounding only",
    samples: 2 * everyCycle.length,
    pairs: () =>
      everyCycle.flatMap((trace) =>
        [midSized, withSlope].map((car) => {
          const { positive_J, missed_m } = byStepper(car, trace);
          // A car that fell behind would have driven another cycle.
          return {
            at: `${trace.id}, ${car.test_kg} kg`,
            expected: byRule_J(car, trace),
            found: Math.abs(missed_m) < 1e-6 ? positive_J : Number.NaN,
          };
        }),
      ),
  },
];

export { fromOperations };
