import { describe, expect, it } from "vitest";
import type { Module, Pack } from "../../../shared/job/schema/battery.ts";
import { NO_WEAR, preparePack, type Wear } from "../../../sim/battery/preparePack.ts";
import { lookUp } from "../../../sim/math/uniformTable.ts";
import { bareJob } from "../../support/bareCar.ts";

const { packs, module } = bareJob();
const made = (pack: Partial<Pack>, of: Partial<Module> = {}) =>
  preparePack({ ...packs[0], seriesModules: 5, parallelModules: 3, ...pack }, { ...module, ...of });

it("brings temperatures to kelvin, for resistance and for charging in the cold", () => {
  const pack = made(
    {},
    {
      resistanceByTemperature: { temperature_degC: [-20, 25], resistance_ratio: [3, 1] },
      coldCharge: { none_degC: 0, full_degC: 10 },
    },
  );
  expect(lookUp(pack.resistance_ratio, 253.15)).toBeCloseTo(3, 9);
  expect(lookUp(pack.resistance_ratio, 298.15)).toBeCloseTo(1, 9);
  expect(pack.coldChargeNone_K).toBeCloseTo(273.15, 9);
  expect(pack.coldChargeFull_K).toBeCloseTo(283.15, 9);
});

it("has the heat of all modules together, and none where a module has no word of it", () => {
  const heat = { capacity_kJpK: 12, cooling_WpK: 1.5, derateFrom_degC: 45, derateTo_degC: 60 };
  const { heat: whole } = made({}, { heat });
  expect(1 / whole.perCapacity_KpJ).toBeCloseTo(15 * 12_000, 6);
  expect(whole.cooling_WpK).toBeCloseTo(15 * 1.5, 9);
  expect([whole.derateFrom_K, whole.derateTo_K]).toEqual([318.15, 333.15]);
  expect(made({}).heat.perCapacity_KpJ).toBe(0);
});

it("takes braking up to the ceiling, unless it is told another charge", () => {
  expect(made({ ceiling_frac: 0.9, floor_frac: 0.2 })).toMatchObject({
    ceiling_frac: 0.9,
    regenTo_frac: 0.9,
    floor_frac: 0.2,
  });
  expect(made({ ceiling_frac: 0.9, regenTo_frac: 0.97 })).toMatchObject({ ceiling_frac: 0.9, regenTo_frac: 0.97 });
});

it("charges and discharges by each module's own currents, times the strings", () => {
  const pack = made(
    {},
    {
      discharge: { continuous_A: 80, peak_A: 160, peak_s: 10 },
      charge: { continuous_A: 20, peak_A: 40, peak_s: 30 },
      charging_ratio: 1.4,
    },
  );
  expect([pack.discharge.continuous_A, pack.discharge.peak_A]).toEqual([240, 480]);
  expect([pack.charge.continuous_A, pack.charge.peak_A]).toEqual([60, 120]);
  expect(pack.charging_ratio).toBe(1.4);
});

it("never has a resistance of nothing, by which a voltage would be divided", () => {
  const pack = made({}, { resistance: { soc_frac: [0, 1], module_mohm: [0, 0] } });
  expect(lookUp(pack.resistance_ohm, 0.5)).toBeGreaterThan(0);
  expect(lookUp(pack.resistance_ohm, 0.5)).toBeLessThan(1e-9);
});

describe("age and cold", () => {
  const resistance = { soc_frac: [0, 1], module_mohm: [3, 3] };
  const worn = (wear: Partial<Wear>) =>
    preparePack(
      { ...packs[0], seriesModules: 5, parallelModules: 3, leads_mohm: 2, ceiling_frac: 0.9, floor_frac: 0.1 },
      { ...module, capacity_Ah: 100, resistance },
      { ...NO_WEAR, ...wear },
    );
  it("take charge and add resistance, leads apart", () => {
    expect(worn({}).capacity_C).toBeCloseTo(3 * 360_000, 6);
    expect(worn({ capacity_frac: 0.8 }).capacity_C).toBeCloseTo(0.8 * 3 * 360_000, 6);
    expect(lookUp(worn({}).resistance_ohm, 0.5)).toBeCloseTo(0.005, 12);
    expect(lookUp(worn({ resistance_ratio: 1.5 }).resistance_ohm, 0.5)).toBeCloseTo(0.0075, 12);
    expect(worn({ resistance_ratio: 1.5 }).leads_ohm).toBeCloseTo(0.002, 12);
  });
  it("keep back what lies at the bottom of the window: a quarter of 0.8 from 0.1 up", () => {
    expect(worn({}).floor_frac).toBeCloseTo(0.1, 12);
    expect(worn({ usable_frac: 0.75 })).toMatchObject({ floor_frac: expect.closeTo(0.3, 12), ceiling_frac: 0.9 });
  });
});

describe("a pack prepared like another", () => {
  const base: Pack = { ...packs[0], seriesModules: 5, parallelModules: 3 };
  const of: Module = { ...module, resistance: { soc_frac: [0, 1], module_mohm: [3, 5] } };
  /** Which tables of a pack are those of the one it is like, and whether all of it is what it would be without that. */
  const shares = (pack: Pack, changed: Module = of, wear = NO_WEAR, likeOf = base) => {
    const like = { pack: likeOf, module: of, wear: NO_WEAR, model: preparePack(likeOf, of) };
    const found = preparePack(pack, changed, wear, like);
    expect(found).toEqual(preparePack(pack, changed, wear));
    return (["openCircuit_V", "resistance_ohm", "resistance_ratio"] as const).filter(
      (table) => found[table] === like.model[table],
    );
  };
  it("has that one's tables where they would be the same, and its own where they would not", () => {
    expect(shares(base)).toEqual(["openCircuit_V", "resistance_ohm", "resistance_ratio"]);
    expect(shares({ ...base, parallelModules: 4 })).toEqual(["openCircuit_V", "resistance_ratio"]);
    expect(shares({ ...base, seriesModules: 4 })).toEqual(["resistance_ratio"]);
    expect(shares(base, { ...of, seriesCells: of.seriesCells + 1 })).toEqual(["resistance_ohm", "resistance_ratio"]);
    expect(shares(base, of, { ...NO_WEAR, resistance_ratio: 2 })).toEqual(["openCircuit_V", "resistance_ratio"]);
    expect(shares(base, of, { ...NO_WEAR, capacity_frac: 0.8 })).toHaveLength(3);
  });
  it("has its own where a curve of its module is another", () => {
    const openCircuit = { soc_frac: [0, 1], cell_V: [3, 4] };
    const resistance = { soc_frac: [0, 1], module_mohm: [1, 2] };
    const resistanceByTemperature = { temperature_degC: [0, 30], resistance_ratio: [2, 1] };
    expect(shares(base, { ...of, openCircuit })).toEqual(["resistance_ohm", "resistance_ratio"]);
    expect(shares(base, { ...of, resistance })).toEqual(["openCircuit_V", "resistance_ratio"]);
    expect(shares(base, { ...of, resistanceByTemperature })).toEqual(["openCircuit_V", "resistance_ohm"]);
  });
  it("given whole is that pack only where pack, module and wear are the very same", () => {
    const whole: Pack = { ...base, whole: { energy_kWh: 20, nominal_V: 400, mass_kgpkWh: 8 } };
    const like = { pack: whole, module: of, wear: NO_WEAR, model: preparePack(whole, of) };
    const isSame = (pack: Pack, changed: Module, wear: Wear) => {
      const found = preparePack(pack, changed, wear, like);
      expect(found).toEqual(preparePack(pack, changed, wear));
      return found === like.model;
    };
    expect(isSame(whole, of, { ...NO_WEAR })).toBe(true);
    expect(isSame({ ...whole, floor_frac: 0.3 }, of, NO_WEAR)).toBe(false);
    expect(isSame(whole, { ...of, charging_ratio: 1.3 }, NO_WEAR)).toBe(false);
    for (const wear of [{ capacity_frac: 0.9 }, { usable_frac: 0.9 }, { resistance_ratio: 1.1 }])
      expect(isSame(whole, of, { ...NO_WEAR, ...wear })).toBe(false);
    const { openCircuit_V, resistance_ohm } = preparePack(base, of, NO_WEAR, like);
    expect(openCircuit_V).not.toBe(like.model.openCircuit_V);
    expect(resistance_ohm).not.toBe(like.model.resistance_ohm);
    expect(shares(whole)).toEqual([]);
    expect(shares(base, of, NO_WEAR, whole)).toEqual([]);
  });
});
