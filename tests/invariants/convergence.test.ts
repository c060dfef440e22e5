import fc from "fast-check";
import { expect, it } from "vitest";
import type { Trace } from "../../sim/trace/trace.ts";
import { bareJob, type Changes, driven } from "../support/bareCar.ts";
import { fixedly } from "../support/fixedly.ts";

/** A car that loses something everywhere, never meets a limit and stays in one gear; voltage and resistance stand still. */
const steadyPack: Changes = {
  vehicle: {
    kerb_kg: 1150,
    tyres: { loadedRadius_mm: 300, rolling_coeff: 0.012, rollingRise_coeff: 0.002, wheelsInertia_kgm2: 3 },
    roadLoad: { kind: "physical", drag_coeff: 0.42, frontalArea_m2: 1.9, wheelDrag_Nm: 3 },
  },
  driveline: { gears: [{ name: "only", gear_ratio: 1.4, efficiency_frac: 0.95 }], noLoadDrag_Nm: 1 },
  motor: {
    rotorInertia_kgm2: 0.03,
    loss: { kind: "fourTerm", copper_coeff: 0.4, iron_coeff: 0.6, windage_coeff: 6e-6, constant_W: 200 },
  },
  module: { seriesCells: 30, capacity_Ah: 80, resistance: { soc_frac: [0, 1], module_mohm: [60, 60] } },
  accessories: { standing_W: 200 },
};

/** Voltage falls with charge: taken at each step's start, it makes the method one of first order there. */
const saggingPack: Changes = {
  ...steadyPack,
  module: { ...steadyPack.module, capacity_Ah: 20, openCircuit: { soc_frac: [0, 1], cell_V: [3, 4.2] } },
};

/** A smooth wave of speed that never asks for braking, sampled at even steps. */
function wave(mean_mps: number, swing_mps: number, period_s: number, steps: number): Trace {
  const time_s = Float64Array.from({ length: steps + 1 }, (_, i) => (i * period_s) / steps);
  return {
    id: "wave",
    title: "wave",
    time_s,
    speed_mps: time_s.map((t_s) => mean_mps + swing_mps * Math.sin((2 * Math.PI * t_s) / period_s)),
  };
}

const anyWave = fc.record({
  mean_mps: fc.integer({ min: 12, max: 25 }),
  // At most 0.04 m/s² of slowing: rolling alone takes more than that, so that nothing changes sign.
  swing: fc.integer({ min: 30, max: 100 }),
  period_s: fc.integer({ min: 120, max: 240 }),
});

/** How the error of a figure shrinks from 240 steps (of a second at most) to 480, taken against 16 times as many. */
function shrinking(
  changes: Changes,
  figure: (run: ReturnType<typeof driven>) => number,
  sample: { mean_mps: number; swing: number; period_s: number },
): number {
  const { mean_mps, swing, period_s } = sample;
  const swing_mps = (swing / 100) * ((0.04 * period_s) / (2 * Math.PI));
  const at = (steps: number) => figure(driven(bareJob(changes), wave(mean_mps, swing_mps, period_s, steps), 0.9));
  const fine = at(16 * 240);
  return (at(240) - fine) / (at(480) - fine);
}

const secondOrder: readonly (readonly [string, (run: ReturnType<typeof driven>) => number])[] = [
  ["energy at the tyres", ({ totals }) => totals.wheelPositive_J],
  ["energy of drag", ({ totals }) => totals.ledger.aero_J],
  ["loss of the motor", ({ totals }) => totals.ledger.motor_J],
  ["energy from the cells", ({ totals }) => totals.ledger.total_J],
];

it.each(secondOrder)("%s: the error falls to a quarter as the step is halved", (_, figure) => {
  fc.assert(
    fc.property(anyWave, (sample) => {
      const ratio = shrinking(steadyPack, figure, sample);
      expect(ratio).toBeGreaterThan(3.8);
      expect(ratio).toBeLessThan(4.2);
    }),
    fixedly(12),
  );
});

it("charge drawn from a pack whose voltage falls: the error falls to a half, as voltage is taken at the step's start", () => {
  fc.assert(
    fc.property(anyWave, (sample) => {
      const ratio = shrinking(saggingPack, ({ endSoc_frac }) => endSoc_frac, sample);
      expect(ratio).toBeGreaterThan(1.9);
      expect(ratio).toBeLessThan(2.3);
    }),
    fixedly(12),
  );
});
