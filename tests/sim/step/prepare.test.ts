import { describe, expect, it } from "vitest";
import { lookUp } from "../../../sim/math/uniformTable.ts";
import { accessories_W, prepare } from "../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

const prepared = (changes: Changes) => {
  const job = bareJob(changes);
  return prepare(job, job.packs[0]);
};

const box = {
  high_ratio: 1.2,
  highEfficiency_frac: 0.97,
  low_ratio: 2.4,
  lowEfficiency_frac: 0.94,
  range: "high" as const,
  isFrontEngaged: false,
  hubs: "free" as const,
  frontShaftDrag_Nm: 6,
  frontEfficiency_frac: 0.9,
};

describe("a transfer box", () => {
  it("multiplies ratio and efficiency of the range it is in", () => {
    const high = prepared({ driveline: { transferBox: box } }).gears[0];
    const low = prepared({ driveline: { transferBox: { ...box, range: "low" } } }).gears[0];
    expect(high.motor_radpm).toBeCloseTo(20 * 1.2, 12);
    expect(high.efficiency_frac).toBeCloseTo(0.97, 12);
    expect(low.motor_radpm).toBeCloseTo(20 * 2.4, 12);
    expect(low.efficiency_frac).toBeCloseTo(0.94, 12);
  });

  it("drags the front shafts in two-wheel drive unless the hubs are free", () => {
    const drag_N = (hubs: "free" | "locked" | "none") =>
      prepared({ driveline: { transferBox: { ...box, hubs } } }).road.wheelDrag_N;
    expect(drag_N("free")).toBe(0);
    expect(drag_N("locked")).toBeCloseTo(6 / 0.3, 12);
    expect(drag_N("none")).toBeCloseTo(6 / 0.3, 12);
  });

  it("drives both axles when the front one is engaged and its hubs hold, half of the force by the longer way", () => {
    const balance = { wheelbase_mm: 2500, gravityHeight_mm: 600, frontShare_frac: 0.5 };
    const engaged = prepared({
      vehicle: { balance },
      driveline: { transferBox: { ...box, isFrontEngaged: true, hubs: "locked" } },
    });
    expect(engaged.grip?.drivenAxle).toBe("both");
    expect(engaged.gears[0].efficiency_frac).toBeCloseTo(0.97 * 0.95, 12);
  });

  it("drags the front shafts whenever they turn: engaged too, and by a transfer box that turns them behind free hubs", () => {
    const drag_N = (hubs: "free" | "locked" | "none") =>
      prepared({ driveline: { transferBox: { ...box, isFrontEngaged: true, hubs } } }).road.wheelDrag_N;
    for (const hubs of ["free", "locked", "none"] as const) expect(drag_N(hubs)).toBeCloseTo(6 / 0.3, 12);
  });

  it("drives the rear alone with the front engaged but its hubs free", () => {
    const balance = { wheelbase_mm: 2500, gravityHeight_mm: 600, frontShare_frac: 0.4 };
    const free = prepared({ vehicle: { balance }, driveline: { transferBox: { ...box, isFrontEngaged: true } } });
    expect(free.grip?.drivenAxle).toBe("rear");
    expect(free.grip?.drivenShare_frac).toBeCloseTo(0.6, 12);
    expect(free.gears[0].efficiency_frac).toBeCloseTo(0.97, 12);
  });
});

describe("limits of old parts at the gearbox input", () => {
  // Ratio 3 in the gear, 4 in the axle; 90 % in the gear, 95 % in the axle.
  const geared = (limits: NonNullable<NonNullable<Changes["driveline"]>["limits"]>) =>
    prepared({
      driveline: {
        gears: [{ name: "only", gear_ratio: 3, efficiency_frac: 0.9 }],
        finalDrive_ratio: 4,
        finalDriveEfficiency_frac: 0.95,
        limits,
      },
    }).gears[0];

  it("are the input's own", () => expect(geared({ gearboxInput_Nm: 80 }).drive_Nm).toBe(80));
  it("are the propeller shaft's over ratio and efficiency of the gear when driving, times it on the overrun", () => {
    const gear = geared({ propellerShaft_Nm: 270 });
    expect(gear.drive_Nm).toBeCloseTo(270 / 3 / 0.9, 12);
    expect(gear.overrun_Nm).toBeCloseTo((270 / 3) * 0.9, 12);
  });
  it("are two half-shafts' over the overall ratio", () => {
    const gear = geared({ halfShaft_Nm: 600 });
    expect(gear.drive_Nm).toBeCloseTo(1200 / 12 / (0.9 * 0.95), 12);
    expect(gear.overrun_Nm).toBeCloseTo(100 * 0.9 * 0.95, 12);
  });
  it("behind the box leave its drag out of the input when driving, and have it on top on the overrun", () => {
    const limits = { propellerShaft_Nm: 270 };
    const gears = [{ name: "only", gear_ratio: 3, efficiency_frac: 0.9 }];
    const [gear] = prepared({ driveline: { gears, noLoadDrag_Nm: 5, limits } }).gears;
    // (input - 5) x 3 x 0.9 = 270 driving; (input + 5) x 3 / 0.9 = 270 on the overrun.
    expect(gear.drive_Nm).toBeCloseTo(105, 12);
    expect(gear.overrun_Nm).toBeCloseTo(76, 12);
    const half = prepared({ driveline: { gears, noLoadDrag_Nm: 5, limits: { halfShaft_Nm: 810 } } }).gears[0];
    // Two half-shafts of 810 Nm behind 3 x 6.
    expect(half.drive_Nm).toBeCloseTo(105, 12);
    expect(half.overrun_Nm).toBeCloseTo(76, 12);
    expect(
      prepared({ driveline: { gears, noLoadDrag_Nm: 5, limits: { gearboxInput_Nm: 80 } } }).gears[0],
    ).toMatchObject({
      drive_Nm: 80,
      overrun_Nm: 80,
    });
  });
  it("are the least of them, and none where none is given", () => {
    expect(geared({ gearboxInput_Nm: 80, propellerShaft_Nm: 270 }).drive_Nm).toBe(80);
    expect(geared({}).drive_Nm).toBe(Number.POSITIVE_INFINITY);
  });
});

it("a lithium module takes no charge at 0 degC and below, and all from 10 degC, where its sheet has nothing else", () => {
  expect(prepared({}).pack).toMatchObject({ coldChargeNone_K: 273.15, coldChargeFull_K: 283.15 });
  const { pack } = prepared({ module: { coldCharge: { none_degC: -20, full_degC: -5 } } });
  expect(pack.coldChargeNone_K).toBeCloseTo(253.15, 9);
  expect(pack.coldChargeFull_K).toBeCloseTo(268.15, 9);
});

describe("a pack", () => {
  const pack = prepared({
    module: {
      seriesCells: 6,
      capacity_Ah: 40,
      openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] },
      resistance: { soc_frac: [0, 1], module_mohm: [10, 10] },
      discharge: { continuous_A: 80, peak_A: 160, peak_s: 10 },
      cellMin_V: 2.8,
      cellMax_V: 4.2,
    },
    pack: { seriesModules: 5, parallelModules: 3, leads_mohm: 6 },
  }).pack;

  it("adds voltage and resistance along a string, charge and current across strings", () => {
    expect(pack.capacity_C).toBeCloseTo(3 * 40 * 3600, 6);
    expect(lookUp(pack.openCircuit_V, 0.5)).toBeCloseTo(30 * 3.5, 9);
    expect(lookUp(pack.resistance_ohm, 0.5)).toBeCloseTo((5 * 0.01) / 3, 12);
    expect(pack.leads_ohm).toBeCloseTo(0.006, 12);
    expect(pack.discharge.peak_A).toBeCloseTo(480, 9);
    expect(pack.discharge.budget_A2s).toBeCloseTo((480 ** 2 - 240 ** 2) * 10, 3);
    expect([pack.min_V, pack.max_V]).toEqual([30 * 2.8, 126]);
  });
});

it("of accessories is their mean power, what runs at 12 V over the converter's efficiency", () => {
  const job = bareJob({
    accessories: {
      standing_W: 90,
      dcdcEfficiency_frac: 0.9,
      items: [
        { name: "lamps", power_W: 90, duty_frac: 0.5, supply: "12V" },
        { name: "heater", power_W: 1500, duty_frac: 0.2, supply: "pack" },
      ],
    },
  });
  expect(accessories_W(job)).toBeCloseTo(100 + 50 + 300, 9);
});

describe("road load", () => {
  const coasted = { kind: "coastDown" as const, f0_N: 140, f1_Npkmh: 0.5, f2_Npkmh2: 0.04, mass_kg: 1000 };
  it("of coast-down coefficients grows in f0 with mass and in nothing else", () => {
    const { road } = prepared({ test_kg: 1400, vehicle: { kerb_kg: 1399, roadLoad: coasted } });
    expect(road.rollingFixed_N).toBeCloseTo(196, 9);
    expect(road.rolling_Npmps).toBeCloseTo(1.8, 12);
    expect(road.drag_Npmps2).toBeCloseTo(0.04 * 12.96, 9);
  });
  it("of coast-down coefficients has the wheels' drag in it already", () => {
    const { road } = prepared({
      vehicle: { roadLoad: coasted },
      driveline: { transferBox: { ...box, hubs: "locked" } },
    });
    expect(road.wheelDrag_N).toBe(0);
  });
  it("adds trailer and roof", () => {
    const { road } = prepared({
      vehicle: {
        kerb_kg: 999,
        roof: { mass_kg: 50, dragArea_m2: 0.3 },
        trailer: { mass_kg: 400, dragArea_m2: 1, rolling_coeff: 0.015 },
      },
    });
    expect(road.mass_kg).toBeCloseTo(1450, 9);
    expect(road.rollingWeight_N).toBeCloseTo(400 * 9.81 * 0.015, 9);
    expect(road.drag_Npmps2).toBeCloseTo(0.5 * 1.189 * 1.3, 9);
  });
});
