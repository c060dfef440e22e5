import { rectangularTable } from "../../../sim/math/rectangularTable.ts";
import { type FourTermLaw, motorLoss_W } from "../../../sim/motor/loss.ts";
import { lossFromEfficiency } from "../../../sim/motor/lossFromEfficiency.ts";
import type { Comparison, Pair } from "../../support/comparison.ts";

/** The textbook's machines: induction of 100 kW, brushed disc of 2 to 5 kW. */
const induction: FourTermLaw = { copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 };
const disc: FourTermLaw = { copper_coeff: 1.5, iron_coeff: 0.1, windage_coeff: 1e-5, constant_W: 20 };
const source = "[LarminieLowry2012, eq. 8.25], constants from copies of the listings; worked out by hand";

const rows: readonly (readonly [string, FourTermLaw, number, number, number, number])[] = [
  ["induction", induction, 20, 200, 762, 0.83998],
  ["induction", induction, 40, 200, 1122, 0.877],
  ["induction", induction, 100, 400, 3924, 0.91066],
  ["induction", induction, 140, 400, 6804, 0.89166],
  ["induction", induction, 140, 733, 8456.5, 0.92387],
  ["disc", disc, 5, 150, 106.25, 0.87591],
  ["disc", disc, 10, 200, 270, 0.88106],
  ["disc", disc, 20, 250, 801.25, 0.86188],
];

function loss_W(law: FourTermLaw, torque_Nm: number, speed_radps: number): number {
  return motorLoss_W({ form: "fourTerm", law }, torque_Nm, speed_radps);
}

function efficiency_frac(law: FourTermLaw, torque_Nm: number, speed_radps: number): number {
  const shaft_W = torque_Nm * speed_radps;
  return shaft_W / (shaft_W + loss_W(law, torque_Nm, speed_radps));
}

/** The torque of highest efficiency at a speed, by trying every hundredth of a newton metre. */
function best_Nm(law: FourTermLaw, speed_radps: number): number {
  let best = 0.01;
  for (let k = 1; k <= 20_000; k++) {
    if (efficiency_frac(law, k / 100, speed_radps) > efficiency_frac(law, best, speed_radps)) best = k / 100;
  }
  return best;
}

/** An efficiency map drawn from the law, read as a workshop's map is, and asked for losses between its nodes. */
function mapPairs(): readonly Pair[] {
  const speed_radps = Array.from({ length: 14 }, (_, i) => 60 * (i + 1));
  const torque_Nm = Array.from({ length: 14 }, (_, j) => 10 * (j + 1));
  const map = lossFromEfficiency(
    speed_radps,
    torque_Nm,
    speed_radps.map((speed) => torque_Nm.map((torque) => efficiency_frac(induction, torque, speed))),
  );
  const table = rectangularTable(map.speed_radps, map.torque_Nm, map.loss_W);
  const pairs: Pair[] = [];
  for (let speed = 90; speed < 840; speed += 60) {
    for (let torque = 15; torque < 140; torque += 10) {
      const shaft_W = torque * speed;
      pairs.push({
        at: `${torque} Nm, ${speed} rad/s`,
        expected: efficiency_frac(induction, torque, speed),
        found: shaft_W / (shaft_W + motorLoss_W({ form: "table", table, isMirrored: true }, torque, speed)),
      });
    }
  }
  return pairs;
}

export const motorLosses: readonly Comparison[] = [
  {
    quantity: "loss of motor and controller",
    source,
    as: "ratio",
    unit: "W",
    tolerance: 1e-4,
    why: "half of the last digit worked out, at the largest 8e-6",
    samples: 8,
    pairs: () =>
      rows.map(([name, law, torque, speed, expected]) => ({
        at: `${name}, ${torque} Nm, ${speed} rad/s`,
        expected,
        found: loss_W(law, torque, speed),
      })),
  },
  {
    quantity: "efficiency of motor and controller",
    source,
    as: "difference",
    unit: "",
    tolerance: 1e-5,
    why: "digits worked out",
    samples: 8,
    pairs: () =>
      rows.map(([name, law, torque, speed, , expected]) => ({
        at: `${name}, ${torque} Nm, ${speed} rad/s`,
        expected,
        found: efficiency_frac(law, torque, speed),
      })),
  },
  {
    quantity: "torque of highest efficiency at a speed",
    source: "kc T² = ki w + kw w³ + C, from the same law",
    as: "difference",
    unit: "Nm",
    tolerance: 0.01,
    why: "half of the last digit worked out, and torque tried by the hundredth",
    samples: 2,
    pairs: () => [
      { at: "400 rad/s", expected: 55.5, found: best_Nm(induction, 400) },
      { at: "700 rad/s", expected: 87.98, found: best_Nm(induction, 700) },
    ],
  },
  {
    quantity: "highest efficiency at a speed",
    source: "kc T² = ki w + kw w³ + C, from the same law",
    as: "difference",
    unit: "",
    tolerance: 1e-5,
    why: "digits worked out",
    samples: 2,
    pairs: () => [
      { at: "400 rad/s", expected: 0.92315, found: efficiency_frac(induction, best_Nm(induction, 400), 400) },
      { at: "700 rad/s", expected: 0.92988, found: efficiency_frac(induction, best_Nm(induction, 700), 700) },
    ],
  },
  {
    quantity: "efficiency between the nodes of a map drawn from the law",
    source: "the law itself, at the middle of every cell",
    as: "ratio",
    unit: "",
    tolerance: 5e-3,
    why: "straight lines between nodes 10 Nm and 60 rad/s apart",
    samples: 13 * 13,
    pairs: mapPairs,
  },
];
