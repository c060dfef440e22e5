import { describe, expect, it } from "vitest";
import { CABLES, cableFor } from "../../sim/plan/currents/cable.ts";
import { copper_ohmpm, STRANDED_ratio } from "../../sim/plan/currents/copper.ts";
import { type Circuit, preCharge } from "../../sim/plan/currents/preCharge.ts";
import { comparedWith } from "../support/comparedWith.ts";

describe("resistance of copper", () => {
  it("is 0.017241 ohm mm2/m at 20 degC and rises by 0.393 % for each kelvin", () => {
    // [IEC60028]: 1/58 and 0.00393, from memory. 0.153 28 ohm for a metre weighing a gram, density 8.89: 0.15328/8.89 = 0.017242.
    comparedWith("copper at 20 degC", copper_ohmpm(1, 20), 0.15328 / 8.89, { withinShare_frac: 1e-4 });
    comparedWith("copper at 70 degC", copper_ohmpm(50, 70) * 50, 0.0206293, { withinShare_frac: 1e-5 });
    // A rod doubles its resistance at 20 + 1/0.00393 = 274.45 degC.
    comparedWith("copper doubled", copper_ohmpm(1, 20 + 1 / 0.00393), 2 / 58, { withinShare_frac: 1e-12 });
    // The workshop's bench figure: 17.8 mohm mm2/m cold, common practice, no source.
    comparedWith("copper on the bench", 1000 * copper_ohmpm(1, 20), 17.8, { withinShare_frac: 0.04 });
  });

  it("of a flexible conductor is within 2 % of the most that class 5 allows", () => {
    // [IEC60228, table 3], plain copper of class 5 at 20 degC, ohm/km, from memory.
    const table = { 16: 1.21, 25: 0.78, 35: 0.554, 50: 0.386, 70: 0.272, 95: 0.206 };
    expect(Object.keys(table).map(Number)).toEqual(CABLES.map(({ section_mm2 }) => section_mm2));
    for (const [section, most] of Object.entries(table)) {
      const ours = 1000 * STRANDED_ratio * copper_ohmpm(Number(section), 20);
      comparedWith("flexible conductor of class 5", ours, most, { withinShare_frac: 0.02 });
    }
  });
});

describe("a cable by hand", () => {
  it("of 50 mm2 and 6 m at 70 degC loses 0.416 V and 10.4 W a metre at 150 A", () => {
    // R' = 1.12 · 0.0172414 · (1 + 0.00393 · 50) / 50 = 0.46209 mohm/m; 150 · 6 · R' = 0.41588 V; 150² R' = 10.397 W.
    const cable = cableFor({ carries_A: 200, steady_A: 150, peak_A: 400, length_m: 6, conductor_degC: 70 });
    expect(cable).toMatchObject({ section_mm2: 50, parallel: 1, stud: "M8" });
    comparedWith("drop of a cable", cable.drop_V, 0.41588, { withinShare_frac: 1e-4 });
    comparedWith("drop at the peak", cable.peakDrop_V, 1.10901, { withinShare_frac: 1e-4 });
    comparedWith("heat of a metre", cable.heat_Wpm, 10.397, { withinShare_frac: 1e-4 });
  });
});

describe("pre-charge", () => {
  const circuit = (changes: Partial<Circuit> = {}): Circuit => ({
    source_V: 120,
    resistance_ohm: 100,
    capacitance_F: 2e-3,
    load_W: 0,
    loadWakes_V: 0,
    ...changes,
  });

  it("without a load is the exponential: 3 time constants to 95 %, ½ C U² in the resistor, U²/R at first", () => {
    // tau 0.2 s; ln 20 = 2.99573 tau; ½ · 2e-3 · 120² = 14.4 J of which 1 - 0.05² by then; 120² / 100 = 144 W.
    const found = preCharge(circuit());
    comparedWith("time of a pre-charge", found.time_s ?? 0, 0.599146, { withinShare_frac: 1e-6 });
    comparedWith("heat of a pre-charge", found.energy_J, 14.364, { withinShare_frac: 1e-6 });
    comparedWith("peak of a pre-charge", found.peak_W, 144, { withinShare_frac: 1e-12 });
    expect(found.settles_frac).toBe(1);
  });

  /** The same circuit in a thousand small steps a time constant, by Heun's rule. */
  const stepped = ({ source_V, resistance_ohm, capacitance_F, load_W, loadWakes_V }: Circuit, until: number) => {
    const dt = (resistance_ohm * capacitance_F) / 4000;
    const slope = (v: number) =>
      ((source_V - v) / resistance_ohm - (v >= loadWakes_V && v > 0 ? load_W / v : 0)) / capacitance_F;
    let v = 0;
    for (let t = 0; t < 60; t += dt) {
      const first = slope(v);
      const next = v + (dt / 2) * (first + slope(v + dt * first));
      if (next >= until) return { time_s: t + (dt * (until - v)) / (next - v), v: until };
      v = Math.max(0, next);
    }
    return { time_s: Number.POSITIVE_INFINITY, v };
  };

  it("with a light load takes as long as the same circuit stepped through time, in closed form", () => {
    // 10 W: settles at (120 + √(120² - 4000)) / 2 = 111 V with 100 ohm, below 114 V; with 47 ohm at 115.95 V, above it.
    const light = circuit({ resistance_ohm: 47, load_W: 10, loadWakes_V: 60 });
    const found = preCharge(light);
    comparedWith("settling of a loaded pre-charge", found.settles_V, 115.9464, { withinShare_frac: 1e-5 });
    comparedWith("time of a loaded pre-charge", found.time_s ?? 0, stepped(light, 114).time_s, {
      withinShare_frac: 1e-3,
    });
    expect(found.time_s).toBeGreaterThan(preCharge({ ...light, load_W: 0 }).time_s ?? 0);
    expect(found.energy_J).toBeGreaterThan(preCharge({ ...light, load_W: 0 }).energy_J);
  });

  it("with a load that takes what the resistor gives settles below 95 % and has no time", () => {
    const loaded = circuit({ load_W: 10, loadWakes_V: 60 });
    const found = preCharge(loaded);
    expect(found).not.toHaveProperty("time_s");
    // V = (U + √(U² − 4 P R)) / 2, by hand: (120 + √10400) / 2 = 110.990 V, 92.5 %.
    comparedWith("where it settles", found.settles_V, 110.99, { withinShare_frac: 1e-4 });
    comparedWith("where it settles, stepped", stepped(loaded, 114).v, 110.99, { withinShare_frac: 1e-4 });
    // There the resistor gives (120 - 110.99) / 100 = 90.1 mA, which at 110.99 V are the 10 W.
    expect(((120 - found.settles_V) / 100) * found.settles_V).toBeCloseTo(10, 6);
  });

  it("with more than the source can give through the resistor stays where the converter wakes", () => {
    // 120² / (4 · 100) = 36 W is the most that reaches any load.
    expect(preCharge(circuit({ load_W: 37, loadWakes_V: 60 })).settles_V).toBe(60);
    expect(preCharge(circuit({ load_W: 35, loadWakes_V: 60 })).settles_V).toBeGreaterThan(60);
    // One that wakes below the smaller root is held there: 10 W at 100 ohm, 9.01 V.
    expect(preCharge(circuit({ load_W: 10, loadWakes_V: 8 })).settles_V).toBe(8);
    expect(preCharge(circuit({ load_W: 10, loadWakes_V: 10 })).settles_V).toBeCloseTo(110.99, 2);
    // One that wakes only above 95 % is not there while it matters.
    expect(preCharge(circuit({ load_W: 500, loadWakes_V: 115 })).time_s).toBeCloseTo(0.599146, 5);
  });
});
