import { J_PER_WH, M_PER_KM, MPS_PER_MPH } from "../../../shared/units.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import type { Trace } from "../../../sim/trace/trace.ts";
import { bareJob, driven, steadyTrace } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

interface Usual {
  readonly test_kg?: number;
  readonly dragArea_m2?: number;
  readonly rolling_coeff?: number;
  readonly motor_frac?: number;
  readonly accessories_W?: number;
  readonly recovers?: boolean;
}

/** The workshop's example: 1000 kg with people, drag area 0.80 m², rolling 0.013, driveline 0.93, motor 0.83 in town and 0.86 steady, 180 W. */
function battery_Whpkm(usual: Usual, trace: Trace): number {
  const test_kg = usual.test_kg ?? 1000;
  const { totals } = driven(
    bareJob({
      vehicle: {
        kerb_kg: test_kg - 1,
        tyres: { loadedRadius_mm: 290, rolling_coeff: usual.rolling_coeff ?? 0.013 },
        inertia: { kind: "massFactor", mass_ratio: 1.05 },
        roadLoad: { kind: "physical", drag_coeff: 0.4, frontalArea_m2: (usual.dragArea_m2 ?? 0.8) / 0.4 },
      },
      driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.93 }] },
      motor: { loss: { kind: "flat", efficiency_frac: usual.motor_frac ?? 0.83 } },
      controller: { regen: { isOn: usual.recovers ?? true, fadeNone_kmh: 5, fadeFull_kmh: 12 } },
      accessories: { standing_W: usual.accessories_W ?? 180 },
    }),
    trace,
    0.5,
  );
  return totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM);
}

const urban = (usual: Usual = {}) => battery_Whpkm(usual, cycleTrace("udds", cycleTexts));
const steady = (speed_mph: number, usual: Usual = {}) =>
  battery_Whpkm({ motor_frac: 0.86, ...usual }, steadyTrace(speed_mph * MPS_PER_MPH, 600, 1));
const more_percent = (then: number, now: number) => 100 * (then / now - 1);

const source = "common practice, no source: what a conversion workshop reckons";
const van: Usual = { test_kg: 1900, dragArea_m2: 1.65 };

export const practice: readonly Comparison[] = [
  {
    quantity: "energy at a steady speed, small car and tall van",
    source,
    as: "ratio",
    unit: "Wh/km",
    tolerance: 0.02,
    why: "rounded figures of a page of thumb rules",
    samples: 6,
    pairs: () => [
      { at: "small car, 20 mph", expected: 63, found: steady(20) },
      { at: "small car, 40 mph", expected: 100, found: steady(40) },
      { at: "small car, 60 mph", expected: 166, found: steady(60) },
      { at: "van, 20 mph", expected: 117, found: steady(20, van) },
      { at: "van, 40 mph", expected: 197, found: steady(40, van) },
      { at: "van, 60 mph", expected: 333, found: steady(60, van) },
    ],
  },
  {
    quantity: "growth of energy in town with mass, rolling, drag",
    source,
    as: "difference",
    unit: "percent",
    tolerance: 1.5,
    why: '"about" so many percent',
    samples: 3,
    pairs: () => [
      { at: "100 kg more", expected: 7, found: more_percent(urban({ test_kg: 1100 }), urban()) },
      { at: "a tenth more rolling", expected: 4, found: more_percent(urban({ rolling_coeff: 0.0143 }), urban()) },
      { at: "a tenth more drag", expected: 3, found: more_percent(urban({ dragArea_m2: 0.88 }), urban()) },
    ],
  },
  {
    quantity: "growth of energy at 60 mph with mass, rolling, drag",
    source,
    as: "difference",
    unit: "percent",
    tolerance: 1,
    why: '"about" so many percent',
    samples: 3,
    pairs: () => [
      { at: "100 kg more", expected: 2.5, found: more_percent(steady(60, { test_kg: 1100 }), steady(60)) },
      {
        at: "a tenth more rolling",
        expected: 3,
        found: more_percent(steady(60, { rolling_coeff: 0.0143 }), steady(60)),
      },
      { at: "a tenth more drag", expected: 7, found: more_percent(steady(60, { dragArea_m2: 0.88 }), steady(60)) },
    ],
  },
  {
    quantity: "growth of energy in town without regen",
    source,
    as: "difference",
    unit: "percent",
    tolerance: 5,
    why: '"about" 20 %, by how hard the motor may brake',
    samples: 1,
    pairs: () => [{ at: "UDDS", expected: 20, found: more_percent(urban({ recovers: false }), urban()) }],
  },
  {
    quantity: "growth of energy with a kilowatt of heat",
    source,
    as: "difference",
    unit: "Wh/km",
    tolerance: 2,
    why: "rounded to tens",
    samples: 2,
    pairs: () => [
      { at: "in town", expected: 30, found: urban({ accessories_W: 1180 }) - urban() },
      { at: "60 mph", expected: 10, found: steady(60, { accessories_W: 1180 }) - steady(60) },
    ],
  },
  {
    quantity: "growth of energy with steady speed",
    source,
    as: "difference",
    unit: "percent",
    tolerance: 5,
    why: '"about" so many percent',
    samples: 2,
    pairs: () => [
      { at: "40 to 60 mph", expected: 65, found: more_percent(steady(60), steady(40)) },
      { at: "40 to 50 mph", expected: 30, found: more_percent(steady(50), steady(40)) },
    ],
  },
];
