import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { regenAdvice } from "../../../../sim/plan/regen/regenAdvice.ts";
import { type RegenRow, regenSweep, usualLimits_Nm } from "../../../../sim/plan/regen/regenSweep.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

/** 18 N at the tyres a newton metre driving, 20 / 0.9 braking; 1400 kg, rolling 137.34 N, drag area 1 m2. */
const car: Changes = {
  vehicle: {
    kerb_kg: 1399,
    tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
    roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2, wheelDrag_Nm: 0 },
    balance: { wheelbase_mm: 2400, gravityHeight_mm: 600, frontShare_frac: 0.6 },
  },
  driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 0, drivenAxle: "rear" },
  motor: { envelope: { kind: "peak", torque_Nm: 120, power_kW: 60 } },
  controller: { min_V: 0, max_V: 1500, regen: { isOn: true, torque_Nm: 40 } },
  module: { capacity_Ah: 10 },
};
const road = roadTrace({ kind: "cycle", id: "town", title: "town", cycle: "udds" }, cycleTexts);
const swept = (limits_Nm: readonly number[], changes: Changes = {}) =>
  regenSweep(bareJob({ ...car, ...changes }), 0, road, limits_Nm);

describe("a setting of braking by the motor", () => {
  it("slows the car by its torque through the driveline and by what resists rolling", () => {
    const [none, forty] = swept([0, 40]);
    const from_mps = 50 / 3.6;
    const resists_N = 137.34 + 0.5 * 1.189 * from_mps ** 2;
    expect(none.slowing_mps2).toBeCloseTo(resists_N / 1400, 3);
    // On the overrun the gearbox helps: 40 Nm at 20 / m are 800 N behind it, 889 N before it.
    expect(forty.slowing_mps2).toBeCloseTo((resists_N + 800 / 0.9) / 1400, 3);
  });

  it("returns more the harder it is, and nothing where it is off", () => {
    const rows = swept([0, 10, 20, 40]);
    expect(rows[0].regen_Wh).toBe(0);
    for (let i = 1; i < rows.length; i++) {
      expect(rows[i].regen_Wh).toBeGreaterThan(rows[i - 1].regen_Wh);
      expect(rows[i].battery_Whpkm).toBeLessThan(rows[i - 1].battery_Whpkm);
    }
  });

  it("is none with a full pack and none with cells at freezing", () => {
    const cold = { ...car.module, coldCharge: { none_degC: 0, full_degC: 10 } };
    const [off, hard] = swept([0, 60], { module: cold });
    expect(hard.slowing_mps2).toBeGreaterThan(off.slowing_mps2 + 0.5);
    expect(hard.fullPack_mps2).toBeCloseTo(off.fullPack_mps2, 3);
    expect(hard.coldPack_mps2).toBeCloseTo(off.coldPack_mps2, 3);
  });

  it("needs a friction of its force over the driven axle's load, which braking takes off the rear", () => {
    const [row] = swept([40]);
    const load_N = 1400 * (9.81 * 0.4 - 0.25 * row.slowing_mps2);
    expect(row.neededGrip_coeff).toBeCloseTo(800 / 0.9 / load_N, 3);
    const unknown = swept([40], { vehicle: { ...car.vehicle, balance: undefined } });
    expect(unknown[0]).not.toHaveProperty("neededGrip_coeff");
  });

  it("says what the brake lamps do at it", () => {
    // Beside 252 N of resistance 1400 kg ask 980 N for 0.7 m/s2 and 1820 N for 1.3: 33 Nm and 71 Nm at 20 / 0.9 N a newton metre.
    expect(swept([32, 34, 70, 72]).map(({ lamps }) => lamps)).toEqual(["off", "may light", "may light", "must light"]);
  });
});

it("tries torques around the one that is set, never beyond the motor's peak", () => {
  const limits = usualLimits_Nm(bareJob(car));
  expect(limits).toEqual([0, 10, 20, 30, 40, 60]);
  const [first, ...rest] = usualLimits_Nm(
    bareJob({ ...car, motor: { envelope: { kind: "peak", torque_Nm: 45, power_kW: 20 } } }),
  );
  expect([first, rest.at(-1)]).toEqual([0, 45]);
});

it("tries torques around half of the motor's peak where braking is off, and around the peak where nothing is set", () => {
  const off = { min_V: 0, max_V: 1500, regen: { isOn: false } };
  expect(usualLimits_Nm(bareJob({ ...car, controller: off }))).toEqual([0, 15, 30, 45, 60, 90]);
  const unset = { min_V: 0, max_V: 1500, regen: { isOn: true } };
  expect(usualLimits_Nm(bareJob({ ...car, controller: unset }))).toEqual([0, 30, 60, 90, 120]);
});

it("has of a setting what a run with it has, in the units people speak of", () => {
  const [row] = swept([40]);
  const job = bareJob(car);
  const { totals } = run(prepare(job, job.packs[0]), road);
  expect(row.regen_Wh).toBeCloseTo(totals.regen_J / 3600, 9);
  expect(row.battery_Whpkm).toBeCloseTo(totals.terminal_J / 3600 / (totals.distance_m / 1000), 9);
  expect(row.returned_frac).toBeCloseTo(totals.regen_J / (totals.terminal_J + totals.regen_J), 12);
  // Of 3.4 kWh from full to empty, the last pass broken off somewhere.
  expect(Math.abs((row.range_km * row.battery_Whpkm) / 3400 - 1)).toBeLessThan(0.1);
  expect(row.charge_A).toBe(totals.chargePeak_A);
  expect(row.chargeLimit_A).toBe(5000);
});

it("counts a limit of less than a newton metre as one", () => {
  expect(swept([0.5])[0].regen_Wh).toBeGreaterThan(0);
});

it("leaves a limit in newtons at the tyres out, since the torque tried is the limit", () => {
  const capped = { min_V: 0, max_V: 1500, regen: { isOn: true, wheelForce_N: 10 } };
  expect(swept([40], { controller: capped })[0].regen_Wh).toBeCloseTo(swept([40])[0].regen_Wh, 9);
});

it("has nothing of a car that does not move", () => {
  const dead = { min_V: 900, max_V: 1500, regen: { isOn: true } };
  expect(swept([40], { controller: dead })[0]).toMatchObject({ battery_Whpkm: 0, returned_frac: 0, range_km: 0 });
});

describe("the advice", () => {
  const row = (torque_Nm: number, changes: Partial<RegenRow>): RegenRow => ({
    torque_Nm,
    battery_Whpkm: 100,
    regen_Wh: 10,
    returned_frac: 0.1,
    range_km: 50,
    charge_A: 20,
    chargeLimit_A: 100,
    slowing_mps2: 0.5,
    fullPack_mps2: 0.2,
    coldPack_mps2: 0.2,
    lamps: "off",
    neededGrip_coeff: 0.1,
    ...changes,
  });
  const words = (rows: readonly RegenRow[]) => regenAdvice(rows).words.map((said) => messageIn(said, "metric"));

  it("is the gentlest that returns all but a hundredth", () => {
    const rows = [row(0, { returned_frac: 0 }), row(20, { returned_frac: 0.095 }), row(40, { returned_frac: 0.1 })];
    expect(regenAdvice(rows).recommended?.torque_Nm).toBe(20);
    expect(words(rows)[0]).toBe(
      "Begin with 20 Nm: it returns 9.5 % of what driving takes, and slows the car by 0.5 m/s2 with the foot off.",
    );
  });

  it("leaves out what a wet axle, the pack or the lamps do not stand, and says why", () => {
    const rows = [
      row(20, { returned_frac: 0.05 }),
      row(40, { neededGrip_coeff: 0.5 }),
      row(60, { charge_A: 100 }),
      row(80, { slowing_mps2: 1.5, lamps: "must light" }),
    ];
    expect(regenAdvice(rows).recommended?.torque_Nm).toBe(20);
    const text = words(rows).join("\n");
    expect(text).toMatch(/40 Nm: needs a friction of 0\.50/);
    expect(text).toMatch(/60 Nm: the pack takes no more than 100 A/);
    expect(text).toMatch(/80 Nm: slows the car by 1\.5 m\/s2, at which the brake lamps must light/);
  });

  it("is that it may stay off where the gentlest is none", () => {
    const rows = [row(0, { returned_frac: 0 }), row(20, { returned_frac: 0.009 })];
    expect(regenAdvice(rows).recommended?.torque_Nm).toBe(0);
    expect(words(rows)[0]).toBe("Braking by the motor returns next to nothing on this road: it may stay off.");
  });

  it("says what the brake lamps may do at it", () => {
    expect(words([row(20, { lamps: "may light", slowing_mps2: 0.9 })])[0]).toBe(
      "Begin with 20 Nm: it returns 10 % of what driving takes, and slows the car by 0.9 m/s2 with the foot off. The brake lamps may light at that: wire them to it, by the local rule.",
    );
  });

  it("holds its limits themselves, and nothing against a pack that takes no charge at all", () => {
    const at = [
      row(20, { neededGrip_coeff: 0.4 }),
      row(40, { slowing_mps2: 1.3, returned_frac: 0.2 }),
      row(60, { charge_A: 99.8, returned_frac: 0.3 }),
      row(80, { charge_A: 0, chargeLimit_A: 0, returned_frac: 0.4 }),
    ];
    expect(words(at)).toHaveLength(1 + 2);
    expect(regenAdvice(at).recommended?.torque_Nm).toBe(80);
    expect(words([row(60, { charge_A: 99.95 })])[1]).toMatch(/takes no more than 100 A/);
    const { neededGrip_coeff: _, ...unknown } = row(20, {});
    expect(words([unknown])).toHaveLength(3);
  });

  it("is nothing of no settings", () => {
    expect(words([])).toEqual(["None of these settings is free of what follows."]);
  });

  it("always says what a full and a cold pack do, and that the brakes must do it alone", () => {
    expect(words([row(20, {})]).join(" ")).toMatch(
      /With a full pack .* must be told\. The friction brakes must stop the car alone/,
    );
    expect(words([row(20, { neededGrip_coeff: 0.9 })])[0]).toBe("None of these settings is free of what follows.");
  });
});
