import { describe, expect, it } from "vitest";
import { type Circuit, preCharge } from "../../../../sim/plan/currents/preCharge.ts";

// 120 V over 100 ohm into 2 mF: 0.2 s; a converter awake from 60 V on.
const circuit = (load_W: number, changes: Partial<Circuit> = {}): Circuit => ({
  source_V: 120,
  resistance_ohm: 100,
  capacitance_F: 2e-3,
  load_W,
  loadWakes_V: 60,
  ...changes,
});

/** Heat in the resistor until a time, by ten thousand small steps of the circuit itself. */
function stepped_J({ source_V, resistance_ohm, capacitance_F, load_W, loadWakes_V }: Circuit, until_s: number): number {
  const dt_s = until_s / 10_000;
  let [volts, heat_J] = [0, 0];
  for (let k = 0; k < 10_000; k++) {
    const amps = (source_V - volts) / resistance_ohm;
    heat_J += amps * amps * resistance_ohm * dt_s;
    const load_A = volts >= loadWakes_V ? load_W / volts : 0;
    // A load that takes all puts the converter to sleep again: the voltage stays where it wakes.
    const next = volts + ((amps - load_A) * dt_s) / capacitance_F;
    volts = volts >= loadWakes_V ? Math.max(loadWakes_V, next) : next;
  }
  return heat_J;
}
const within = (found: number, expected: number, share: number) =>
  expect(Math.abs(found / expected - 1)).toBeLessThan(share);

describe("heat in the resistor beside a converter", () => {
  it("is the circuit's own, where it gets there", () => {
    const loaded = circuit(3);
    const found = preCharge(loaded);
    expect(found.time_s).toBeGreaterThan(0.599);
    within(found.energy_J, stepped_J(loaded, found.time_s ?? 0), 0.002);
  });
  it("is that of five time constants, where it settles below or stays where the converter wakes", () => {
    for (const load_W of [20, 200]) {
      const stuck = circuit(load_W);
      const found = preCharge(stuck);
      expect(found).not.toHaveProperty("time_s");
      within(found.energy_J, stepped_J(stuck, 5 * 0.2), 0.005);
    }
  });
});

describe("where it settles", () => {
  it("is the greater root of V² - U V + P R, and the heat that lasts there", () => {
    // 20 W: (120 + √(14 400 - 8000)) / 2 = 100 V; 20 V over 100 ohm are 4 W.
    const found = preCharge(circuit(20));
    expect(found.settles_V).toBeCloseTo(100, 9);
    expect(found.settles_frac).toBeCloseTo(100 / 120, 9);
    expect(found.lasting_W).toBeCloseTo(4, 9);
    expect(found.peak_W).toBeCloseTo(144, 9);
  });
  it("is where the converter wakes, below the smaller root or where the power is more than U²/4R", () => {
    expect(preCharge(circuit(20, { loadWakes_V: 19 })).settles_V).toBe(19);
    expect(preCharge(circuit(20, { loadWakes_V: 21 })).settles_V).toBeCloseTo(100, 9);
    // U²/4R is 36 W.
    expect(preCharge(circuit(36)).settles_V).toBe(60);
    expect(preCharge(circuit(200)).settles_V).toBe(60);
  });
  it("is all of the source without a load, and no load draws before it wakes", () => {
    expect(preCharge(circuit(0))).toMatchObject({ settles_V: 120, settles_frac: 1, lasting_W: 0 });
    // It wakes above 95 %: there the time is that without it.
    const late = preCharge(circuit(20, { loadWakes_V: 115 }));
    expect(late.time_s).toBeCloseTo(0.2 * Math.log(20), 9);
    expect(late.energy_J).toBeCloseTo(0.5 * 2e-3 * 120 ** 2 * (1 - 0.05 ** 2), 9);
    expect(preCharge(circuit(20, { loadWakes_V: 114 })).time_s).toBeCloseTo(0.2 * Math.log(20), 9);
    expect(preCharge(circuit(20, { loadWakes_V: 113 }))).not.toHaveProperty("time_s");
  });
});
