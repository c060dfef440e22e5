import { describe, expect, it } from "vitest";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { LIMITS } from "../../../sim/step/limits.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { run } from "../../../sim/step/run.ts";
import { checkLedger } from "../../../sim/step/totals.ts";
import { resample } from "../../../sim/trace/resample.ts";
import { bareJob, driven, evenSlope, steadyTrace, traceOf } from "../../support/bareCar.ts";

const resisting = {
  roadLoad: { kind: "coastDown" as const, f0_N: 400, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 },
};

describe("a pass that meets the floor", () => {
  // 400 N at 10 m/s are 4 kW, at 400 V 10 A; half of 0.1 Ah lasts 18 s.
  const job = bareJob({
    vehicle: resisting,
    module: { capacity_Ah: 0.1 },
    pack: { floor_frac: 0.25, ceiling_frac: 0.75 },
  });
  const { totals, endSoc_frac, channels } = driven(job, steadyTrace(10, 50, 5));

  it("ends there, its last interval cut in proportion", () => {
    expect(totals.reachedFloor).toBe(true);
    expect(endSoc_frac).toBe(0.25);
    expect(totals.time_s).toBeCloseTo(18, 6);
    expect(totals.distance_m).toBeCloseTo(180, 5);
  });
  it("ends at the floor itself, to the last digit, whatever the pack", () => {
    for (let capacity_Ah = 0.003; capacity_Ah < 0.05; capacity_Ah *= 1.3) {
      const pack = { floor_frac: 0.17, ceiling_frac: 0.83 };
      const small = bareJob({ vehicle: resisting, module: { capacity_Ah }, pack });
      expect(driven(small, steadyTrace(10, 20, 1)).endSoc_frac).toBe(0.17);
    }
  });
  it("ends at the speed that it had by then", () => {
    // 1 m/s² from rest: 700 J a second squared, and 1080 J in the pack: 1.24 s.
    const small = bareJob({ module: { capacity_Ah: 0.0015 }, pack: { floor_frac: 0.25, ceiling_frac: 0.75 } });
    const { totals, channels } = driven(
      small,
      traceOf([
        [0, 0],
        [20, 72],
      ]),
    );
    expect(totals.reachedFloor).toBe(true);
    expect(totals.time_s % 1).toBeGreaterThan(0.1);
    expect(channels.speed_mps[1]).toBeCloseTo(totals.time_s, 6);
  });
  it("counts the rest of the road as asked for", () => expect(totals.target_m).toBeCloseTo(500, 9));
  it("fills no rows beyond", () => expect(channels.length).toBe(5));
});

describe("a recorded run", () => {
  it("has the start in row 0 and the end of each interval in its row", () => {
    const { channels } = driven(
      bareJob({ vehicle: resisting }),
      traceOf([
        [0, 0],
        [2, 36],
        [3, 36],
      ]),
    );
    expect(channels.length).toBe(3);
    expect([...channels.time_s]).toEqual([0, 2, 3]);
    expect([...channels.speed_mps]).toEqual([0, 10, 10]);
    expect([...channels.distance_m]).toEqual([0, 10, 20]);
    expect(channels.wheelForce_N[0]).toBe(0);
    expect(channels.wheelForce_N[2]).toBeCloseTo(400, 9);
    expect(channels.battery_V[0]).toBe(400);
    expect(channels.soc_frac[0]).toBe(0.95);
  });

  it("tells the slope and the height along the road", () => {
    const { channels } = driven(bareJob(), steadyTrace(10, 4, 1, evenSlope(0.1, 1000)));
    expect(channels.elevation_m[4]).toBeCloseTo(4, 9);
    expect(channels.grade_ratio[2]).toBeCloseTo(0.1 / Math.sqrt(0.99), 9);
  });
});

it("counts the time more than 2 km/h behind, and which limit held it how long", () => {
  const { totals } = driven(
    bareJob({ motor: { envelope: { kind: "peak", torque_Nm: 70, power_kW: 2000 } } }),
    traceOf([
      [0, 0],
      [1, 7],
      [2, 7],
      [3, 7],
    ]),
  );
  // 1 m/s² against 7 km/h (1.94 m/s): 3.4 km/h behind after one second, none after two.
  expect(totals.behind_s).toBe(1);
  expect(totals.limited_s[LIMITS.indexOf("motor")]).toBe(1);
});

it("begins in motion where its trace does", () => {
  expect(driven(bareJob(), steadyTrace(10, 5, 1)).totals.distance_m).toBeCloseTo(50, 9);
});

it("sheds accessories that the pack cannot feed, and counts them", () => {
  const { totals } = driven(
    bareJob({ module: { discharge: { continuous_A: 1, peak_A: 1, peak_s: 0 } }, accessories: { standing_W: 1000 } }),
    steadyTrace(0, 10, 1),
  );
  expect(totals.ledger.accessories_J).toBeCloseTo(4000, 3);
  expect(totals.shed_J).toBeCloseTo(6000, 3);
});

it("reaches each speed of its road to the last digit, in however many steps", () => {
  const rows = Array.from({ length: 30 }, (_, i) => [3 * i, 10 + 7.31 * Math.sin(i)] as const);
  const { channels } = driven(bareJob({ controller: { regen: { isOn: true } } }), traceOf(rows), 0.5);
  expect(channels.speed_mps).toEqual(channels.target_mps);
  expect([...channels.speed_mps]).toEqual(rows.map(([, speed_kmh]) => speed_kmh * MPS_PER_KMH));
});

describe("samples more than a second apart", () => {
  const corners = traceOf([
    [0, 0],
    [30, 90],
    [90, 54],
    [120, 0],
    [200, 0],
  ]);
  const car = {
    vehicle: { roadLoad: { kind: "physical" as const, drag_coeff: 0.5, frontalArea_m2: 2 } },
    controller: { regen: { isOn: true } },
    accessories: { standing_W: 300 },
  };

  it("are driven in steps of a second along the straight lines between them", () => {
    const coarse = driven(bareJob(car), corners);
    const fine = driven(bareJob(car), resample(corners, 1));
    const { ledger, limited_s, ...figures } = fine.totals;
    for (const [key, value] of Object.entries({ ...figures, ...ledger })) {
      const found = { ...coarse.totals, ...coarse.totals.ledger }[key as keyof typeof figures];
      if (typeof value === "number")
        expect(Math.abs(Number(found) - value), key).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-6);
    }
    expect(coarse.channels.length).toBe(5);
  });

  it("have in their row the means over all of the time between them", () => {
    const coarse = driven(bareJob(car), corners).channels;
    const fine = driven(bareJob(car), resample(corners, 1)).channels;
    for (const column of [
      "wheelForce_N",
      "brakeForce_N",
      "motorSpeed_radps",
      "motorTorque_Nm",
      "battery_W",
      "battery_V",
    ] as const) {
      const mean = fine[column].subarray(31, 91).reduce((sum, value) => sum + value, 0) / 60;
      expect(coarse[column][2]).toBeCloseTo(mean, 6);
    }
  });

  it("counts how long the car is behind by those steps", () => {
    const motor = { envelope: { kind: "peak" as const, torque_Nm: 70, power_kW: 2000 } };
    const road = traceOf([
      [0, 0],
      [10, 72],
    ]);
    // 1 m/s² against 2 m/s²: from the first second on more than 2 km/h behind.
    expect(driven(bareJob({ motor }), road).totals.behind_s).toBeCloseTo(10, 9);
    expect(driven(bareJob({ motor }), road).totals.limited_s[LIMITS.indexOf("motor")]).toBeCloseTo(10, 9);
  });
});

it("keeps volts, amperes and power of a row to the same time, also where the car stops inside it", () => {
  // A hill that stops the car on its way: after that the accessories alone draw.
  const job = bareJob({
    motor: { envelope: { kind: "peak", torque_Nm: 30, power_kW: 2000 } },
    module: { resistance: { soc_frac: [0, 1], module_mohm: [500, 500] } },
    accessories: { standing_W: 1000 },
  });
  const { channels, totals } = driven(job, steadyTrace(10, 20, 1, evenSlope(0.2, 1000)));
  const row = channels.speed_mps.indexOf(0);
  expect(channels.speed_mps[row - 1]).toBeGreaterThan(0);
  expect(channels.distance_m[row]).toBeGreaterThan(channels.distance_m[row - 1]);
  let energy_J = 0;
  let charge_C = 0;
  for (let i = 1; i < channels.length; i++) {
    energy_J += channels.battery_W[i];
    charge_C += channels.battery_A[i];
    // One resistance: the mean voltage belongs to the mean current.
    expect(channels.battery_V[i]).toBeCloseTo(400 - 0.5 * channels.battery_A[i], 6);
  }
  expect(energy_J).toBeCloseTo(totals.terminal_J, 6);
  expect(charge_C * 400).toBeCloseTo(totals.ledger.total_J, 3);
});

describe("a stand", () => {
  const standing = { module: { capacity_Ah: 10, openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] } } };
  const drawn = { accessories: { standing_W: 3600 }, pack: { ceiling_frac: 0.9, floor_frac: 0.1 } };

  it("takes steps of a minute, each at the voltage and the current of its beginning", () => {
    const { totals, endSoc_frac } = driven(
      bareJob({ ...standing, ...drawn }),
      traceOf([
        [0, 0],
        [600, 0],
      ]),
    );
    // 300 V empty to 400 V full, 36 000 C, next to no resistance.
    let soc_frac = 0.9;
    let energy_J = 0;
    for (let minute = 0; minute < 10; minute++) {
      const openCircuit_V = 300 + 100 * soc_frac;
      soc_frac -= ((3600 / openCircuit_V) * 60) / 36_000;
      energy_J += 3600 * 60;
    }
    expect(endSoc_frac).toBeCloseTo(soc_frac, 9);
    expect(totals.ledger.total_J).toBeCloseTo(energy_J, 0);
    expect(totals.time_s).toBeCloseTo(600, 9);
  });

  it("begins where the car has come to rest: on the way there and on the way off steps are of a second", () => {
    const road = [
      [0, 0],
      [10, 36],
      [20, 0],
    ] as const;
    const { channels } = driven(bareJob({ ...standing, ...drawn }), traceOf(road));
    const fine = driven(bareJob({ ...standing, ...drawn }), resample(traceOf(road), 1)).channels;
    expect(channels.soc_frac[1]).toBeCloseTo(fine.soc_frac[10], 12);
    expect(channels.soc_frac[2]).toBeCloseTo(fine.soc_frac[20], 12);
  });
});

describe("heat", () => {
  const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 100, derateTo_degC: 140 };
  const lossy = {
    loss: { kind: "fourTerm" as const, copper_coeff: 0, iron_coeff: 0, windage_coeff: 0, constant_W: 1000 },
  };

  it("without cooling rises by loss over capacity", () => {
    const { totals } = driven(bareJob({ motor: { ...lossy, heat } }), steadyTrace(10, 100, 1));
    expect(totals.hottestMotor_K - 293.15).toBeCloseTo(10, 9);
  });

  it("settles where the air takes away what is lost", () => {
    const { totals } = driven(
      bareJob({ motor: { ...lossy, heat: { ...heat, cooling_WpK: 25 } } }),
      steadyTrace(10, 20_000, 10),
    );
    expect(totals.hottestMotor_K - 293.15).toBeCloseTo(40, 6);
  });

  it("takes torque away linearly between its two temperatures, and says so", () => {
    // 120 degC, half way: 35 of 70 Nm.
    const { channels } = driven(
      bareJob({
        motor: {
          envelope: { kind: "peak", torque_Nm: 70, power_kW: 2000 },
          heat: { capacity_kJpK: 2000, cooling_WpK: 0, derateFrom_degC: 20, derateTo_degC: 60 },
        },
        environment: { temperature_degC: 40 },
      }),
      traceOf([
        [0, 0],
        [1, 36],
      ]),
    );
    expect(channels.motorTorque_Nm[1]).toBeCloseTo(35, 6);
    expect(LIMITS[channels.limit[1]]).toBe("heat");
  });
});

describe("a pack's heat", () => {
  const resistance = { soc_frac: [0, 1], module_mohm: [100, 100] };
  const heat = { capacity_kJpK: 2, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 };

  it("is that of its cells; what the leads lose warms the air", () => {
    const job = bareJob({ vehicle: resisting, module: { resistance, heat }, pack: { leads_mohm: 50 } });
    const { channels, totals } = driven(job, steadyTrace(10, 100, 1));
    let cells_J = 0;
    for (let i = 1; i < channels.length; i++) cells_J += channels.battery_A[i] ** 2 * 0.1;
    expect(channels.pack_K[100] - 293.15).toBeCloseTo(cells_J / 2000, 9);
    expect(totals.ledger.packHeat_J).toBeCloseTo(1.5 * cells_J, 6);
  });

  it("takes current away linearly between its two temperatures, either way, and says so", () => {
    // 50 degC, half way: 50 of 100 A, 10 of 20.
    const job = bareJob({
      module: {
        heat: { ...heat, capacity_kJpK: 2000 },
        discharge: { continuous_A: 100, peak_A: 100, peak_s: 0 },
        charge: { continuous_A: 20, peak_A: 20, peak_s: 0 },
      },
      controller: { regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
      environment: { pack_degC: 50 },
    });
    const { channels } = driven(
      job,
      traceOf([
        [0, 72],
        [1, 90],
        [2, 36],
      ]),
      0.5,
    );
    expect(channels.battery_A[1]).toBeCloseTo(50, 6);
    expect(LIMITS[channels.limit[1]]).toBe("heat");
    expect(channels.battery_A[2]).toBeCloseTo(-10, 4);
  });
});

describe("a peak current", () => {
  it("lasts its seconds and then falls to what may flow for ever", () => {
    const { channels } = driven(
      bareJob({
        vehicle: { roadLoad: { kind: "coastDown", f0_N: 4500, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
        module: { discharge: { continuous_A: 50, peak_A: 100, peak_s: 5 } },
      }),
      steadyTrace(10, 20, 1),
    );
    // 45 kW ask 112.5 A: 100 A for five seconds, then 50 A.
    for (let i = 1; i <= 5; i++) expect(channels.battery_A[i]).toBeCloseTo(100, 6);
    for (let i = 7; i <= 12; i++) expect(channels.battery_A[i]).toBeCloseTo(50, 6);
  });
});

it("refuses a ledger that does not close, with its figures", () => {
  const ledger = { ...driven(bareJob({ vehicle: resisting }), steadyTrace(10, 5, 1)).totals.ledger };
  expect(() => checkLedger(ledger)).not.toThrow();
  expect(() => checkLedger({ ...ledger, motor_J: ledger.motor_J + 1 })).toThrow(/does not close/);
  expect(() => checkLedger({ ...ledger, total_J: Number.NaN })).toThrow(/does not close/);
});

it("gives no figures of a run whose ledger does not close: one that holds no number", () => {
  const job = bareJob({ vehicle: resisting });
  const broken = { ...prepare(job, job.packs[0]), accessories_W: Number.NaN };
  expect(() => run(broken, steadyTrace(10, 5, 1))).toThrow(/does not close/);
});

it("closes its ledger at speeds at which the heights of the road are only rounding", () => {
  const road = { distance_m: Float64Array.of(0, 1, 300), elevation_m: Float64Array.of(1500, 1500.2, 1500) };
  for (const speed_mps of [1e-9, 1e-13, 1e-24, 1e-300]) {
    const { totals } = driven(bareJob({ vehicle: resisting }), {
      ...steadyTrace(speed_mps, 20, 1, road),
      speed_mps: Float64Array.from({ length: 21 }, (_, i) => (i === 9 ? 3 : speed_mps)),
    });
    expect(Number.isFinite(totals.ledger.total_J)).toBe(true);
    expect(() => checkLedger(totals.ledger)).not.toThrow();
  }
});

it("takes a step in the heights for the steepest slope that there is, and ends in numbers", () => {
  const cliff = { distance_m: Float64Array.of(0, 10, 11, 50), elevation_m: Float64Array.of(100, 100, 0, 0) };
  const { totals } = driven(bareJob({ vehicle: resisting }), steadyTrace(10, 10, 1, cliff));
  expect(totals.distance_m).toBeCloseTo(100, 9);
  expect(Number.isFinite(totals.ledger.total_J)).toBe(true);
});
