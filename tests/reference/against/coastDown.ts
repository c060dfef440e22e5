import { MPS_PER_KMH } from "../../../shared/units.ts";
import { bareJob, driven, steadyTrace } from "../../support/bareCar.ts";
import type { Comparison } from "../../support/comparison.ts";

// A car of 1400 kg, 3 % more for what turns, 180 N and 0.55 N/(m/s)², let go at 100 km/h.
const F0_N = 180;
const F2_Npmps2 = 0.55;
const START_mps = 100 * MPS_PER_KMH;
const STEP_s = 0.1;

/** The car asked to hold its speed with a motor that gives next to nothing (1e-9 Nm): it coasts, every step through the stepper. */
const coasting = driven(
  bareJob({
    vehicle: {
      inertia: { kind: "massFactor", mass_ratio: 1.03 },
      roadLoad: {
        kind: "coastDown",
        f0_N: F0_N,
        f1_Npkmh: 0,
        f2_Npkmh2: F2_Npmps2 * MPS_PER_KMH * MPS_PER_KMH,
        mass_kg: 1400,
      },
    },
    controller: { torqueCap_Nm: 1e-9 },
  }),
  steadyTrace(START_mps, 160, STEP_s),
).channels;

const speedAt_kmh = (time_s: number) => coasting.speed_mps[Math.round(time_s / STEP_s)] / MPS_PER_KMH;
const placeAt_m = (time_s: number) => coasting.distance_m[Math.round(time_s / STEP_s)];

/** The moment of standing still, inside the step that ends at rest: it slows evenly there, so it takes 2 d / v. */
function stop_s(): number {
  const i = coasting.speed_mps.indexOf(0);
  return (
    coasting.time_s[i - 1] + (2 * (coasting.distance_m[i] - coasting.distance_m[i - 1])) / coasting.speed_mps[i - 1]
  );
}

/** Time and place of a speed on the way down, between two steps by a straight line. */
function crossing(speed_kmh: number): { readonly time_s: number; readonly place_m: number } {
  const speed_mps = speed_kmh * MPS_PER_KMH;
  const i = Math.max(
    1,
    coasting.speed_mps.findIndex((speed) => speed <= speed_mps * (1 + 1e-12)),
  );
  const before_mps = coasting.speed_mps[i - 1];
  const moving_s = ((before_mps - speed_mps) / (before_mps - coasting.speed_mps[i])) * STEP_s;
  return {
    time_s: coasting.time_s[i - 1] + moving_s,
    place_m: coasting.distance_m[i - 1] + 0.5 * (before_mps + speed_mps) * moving_s,
  };
}

const spots: readonly (readonly [number, number, number])[] = [
  [10, 86.33725, 258.179],
  [20, 74.9679, 481.765],
  [30, 65.27419, 676.2129],
  [60, 42.62502, 1120.4603],
  [90, 25.44975, 1401.545],
];

const bands: readonly (readonly [number, number, number, number])[] = [
  [100, 20, 100.80788, 1469.699],
  [85, 75, 8.87936, 197.0102],
  [60, 50, 12.999074, 198.1421],
  [50, 40, 15.067821, 187.8479],
  [30, 20, 19.378938, 134.1168],
];

const shared = {
  source: "closed form: m dv/dt = -(f0 + f2 v²), v = v_s tan(atan(v0/v_s) - w t)",
  as: "ratio",
  tolerance: 1e-4,
  why: "error of the method at steps of 0.1 s",
} as const;

export const coastDown: readonly Comparison[] = [
  {
    ...shared,
    quantity: "coast-down, speed at a time",
    unit: "km/h",
    samples: 5,
    pairs: () => spots.map(([time_s, kmh]) => ({ at: `${time_s} s`, expected: kmh, found: speedAt_kmh(time_s) })),
  },
  {
    ...shared,
    quantity: "coast-down, distance at a time",
    unit: "m",
    samples: 5,
    pairs: () =>
      spots.map(([time_s, , place_m]) => ({ at: `${time_s} s`, expected: place_m, found: placeAt_m(time_s) })),
  },
  {
    ...shared,
    quantity: "coast-down, time of stopping",
    unit: "s",
    samples: 1,
    pairs: () => [{ at: "v = 0", expected: 143.98917, found: stop_s() }],
  },
  {
    ...shared,
    quantity: "coast-down, distance to the stop",
    unit: "m",
    samples: 1,
    pairs: () => [{ at: "v = 0", expected: 1587.8397, found: coasting.distance_m[coasting.length - 1] }],
  },
  {
    ...shared,
    quantity: "coast-down, time between two speeds",
    unit: "s",
    samples: 5,
    pairs: () =>
      bands.map(([from, to, time_s]) => ({
        at: `${from}-${to} km/h`,
        expected: time_s,
        found: crossing(to).time_s - crossing(from).time_s,
      })),
  },
  {
    ...shared,
    quantity: "coast-down, distance between two speeds",
    unit: "m",
    samples: 5,
    pairs: () =>
      bands.map(([from, to, , place_m]) => ({
        at: `${from}-${to} km/h`,
        expected: place_m,
        found: crossing(to).place_m - crossing(from).place_m,
      })),
  },
];
