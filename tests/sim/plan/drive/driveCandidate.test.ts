import { describe, expect, it } from "vitest";
import { driveCandidate } from "../../../../sim/plan/drive/driveCandidate.ts";
import { LIMITS } from "../../../../sim/step/limits.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import type { Trace } from "../../../../sim/trace/trace.ts";
import { bareJob, type Changes, evenSlope, steadyTrace, traceOf } from "../../../support/bareCar.ts";

const drive = (changes: Changes, trace: Trace) => {
  const job = bareJob(changes);
  const { totals } = run(prepare(job, job.packs[0]), trace);
  return { candidate: driveCandidate(job, job.packs[0], trace, false), totals };
};
const resisting = { roadLoad: { kind: "coastDown" as const, f0_N: 400, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } };

describe("a car that takes 400 N at 10 m/s for 100 s", () => {
  const { candidate } = drive(
    { vehicle: resisting, charger: { efficiency_frac: 0.8 }, environment: { temperature_degC: 15, pack_degC: 25 } },
    steadyTrace(10, 100, 1),
  );

  it("takes 111 Wh a kilometre at wheels, terminals and, by the charger, a quarter more at the wall", () => {
    expect(candidate.distance_km).toBeCloseTo(1, 9);
    expect(candidate.wheelPositive_Whpkm).toBeCloseTo(400 / 3.6, 6);
    expect(candidate.battery_Whpkm).toBeCloseTo(400 / 3.6, 6);
    expect(candidate.wall_Whpkm).toBeCloseTo(500 / 3.6, 6);
  });
  it("has its peaks in the units people speak of", () => {
    const { peak, rmsBattery_A } = candidate;
    // 4 kW at 400 V; 20 Nm at 200 rad/s.
    expect(peak.battery_A).toBeCloseTo(10, 6);
    expect(rmsBattery_A).toBeCloseTo(10, 6);
    expect(peak.charge_A).toBe(0);
    expect(peak.motor_Nm).toBeCloseTo(20, 9);
    expect(peak.motor_kW).toBeCloseTo(4, 9);
    expect(peak.motor_rpm).toBeCloseTo((200 * 30) / Math.PI, 6);
    expect(peak.min_V).toBeCloseTo(400, 6);
    expect(peak.motor_degC).toBeCloseTo(15, 9);
    expect(peak.pack_degC).toBeCloseTo(25, 9);
  });
  it("begins full and ends by 400 kJ lower", () => {
    expect(candidate.soc.start_frac).toBe(0.95);
    // 1000 C of 2000 Ah.
    expect(candidate.soc.end_frac).toBeCloseTo(0.95 - 1000 / 7_200_000, 9);
    expect(candidate.soc.min_frac).toBeCloseTo(candidate.soc.end_frac, 12);
  });
  it("misses nothing and needs no word on where it stands", () => {
    expect(candidate).toMatchObject({ missed_km: 0, behind_s: 0, shed_Wh: 0, reachedFloor: false });
    expect(candidate.stands).toBeUndefined();
    expect(Object.values(candidate.limited_s)).toEqual([0, 0, 0, 0, 0, 0]);
  });
});

it("has every joule of the run's ledger in watt-hours, each under its own name", () => {
  const { candidate, totals } = drive(
    {
      vehicle: {
        kerb_kg: 1000,
        tyres: { loadedRadius_mm: 300, rolling_coeff: 0.012, followsTemperature: false },
        roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 },
      },
      driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }] },
      motor: { loss: { kind: "flat", efficiency_frac: 0.85 } },
      module: { resistance: { soc_frac: [0, 1], module_mohm: [100, 100] } },
      controller: { regen: { isOn: true, torque_Nm: 20 } },
      accessories: { standing_W: 250 },
    },
    traceOf(
      [
        [0, 0],
        [20, 60],
        [60, 60],
        [65, 10],
      ],
      evenSlope(0.02, 2000),
    ),
  );
  for (const [name, energy_Wh] of Object.entries(candidate.ledger_Wh)) {
    const energy_J = totals.ledger[`${name}_J` as keyof typeof totals.ledger];
    expect(energy_Wh, name).not.toBe(0);
    expect(energy_Wh, name).toBeCloseTo(energy_J / 3600, 9);
  }
  expect(candidate.regen_Wh).toBeCloseTo(totals.regen_J / 3600, 9);
  expect(candidate.regen_Wh).toBeGreaterThan(1);
  expect(candidate.frictionBrake_Wh).toBe(candidate.ledger_Wh.frictionBrake);
  expect(candidate.peak.charge_A).toBe(totals.chargePeak_A);
});

it("counts the seconds under each limit under its own name, and what was missed in kilometres", () => {
  const { candidate, totals } = drive(
    { motor: { envelope: { kind: "peak", torque_Nm: 35, power_kW: 2000 } } },
    traceOf([
      [0, 0],
      [10, 72],
    ]),
  );
  // 0.5 m/s² against 2 m/s²: 25 of 100 m.
  expect(candidate.missed_km).toBeCloseTo(0.075, 9);
  expect(candidate.behind_s).toBe(totals.behind_s);
  expect(candidate.limited_s).toEqual({ grip: 0, driveline: 0, motor: 10, controller: 0, pack: 0, heat: 0 });
  for (const limit of LIMITS.slice(1))
    expect(candidate.limited_s[limit as keyof typeof candidate.limited_s]).toBe(
      totals.limited_s[LIMITS.indexOf(limit)],
    );
});

it("counts what the pack could not give the accessories, in watt-hours", () => {
  const { candidate } = drive(
    { module: { discharge: { continuous_A: 1, peak_A: 1, peak_s: 0 } }, accessories: { standing_W: 1000 } },
    steadyTrace(0, 3600, 1),
  );
  // 600 W for an hour.
  expect(candidate.shed_Wh).toBeCloseTo(600, 3);
});

it("tells a pack empty on the way from a car that stands: the one has no place where it stands", () => {
  const small = { vehicle: resisting, module: { capacity_Ah: 0.1 } };
  const { candidate } = drive(small, steadyTrace(10, 100, 1));
  expect(candidate.reachedFloor).toBe(true);
  expect(candidate.stands).toBeUndefined();
});

it("keeps a road's spread where the log behind it left one", () => {
  const spread = {
    energy_ratio: { low: 0.9, high: 1.1 },
    distance_ratio: { low: 1, high: 1 },
    climb_m: { low: 0, high: 0 },
  };
  expect(drive({}, { ...steadyTrace(10, 20, 1), spread }).candidate.roadEnergy_ratio).toEqual({ low: 0.9, high: 1.1 });
  expect(drive({}, steadyTrace(10, 20, 1)).candidate).not.toHaveProperty("roadEnergy_ratio");
});
