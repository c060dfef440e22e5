import { describe, expect, it } from "vitest";
import { demos } from "../../shared/demos/index.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { driveJob } from "../../sim/plan/drive/driveJob.ts";
import { HIGH_VOLTAGE_V } from "../../sim/plan/findings/findings.ts";
import { prepare } from "../../sim/step/prepare.ts";
import { cycleTrace } from "../../sim/trace/standardCycles.ts";
import { bareJob, type Changes, driven, traceOf } from "../support/bareCar.ts";
import { cycleTexts } from "../support/cycleTexts.ts";

const demoJobs = demos.map(({ id, document }) => ({ id, job: readJob(document) }));

describe("efficiency from gearbox to tyre", () => {
  const line = (gear_frac: number, final_frac: number, box?: number) =>
    prepareGear(
      bareJob({
        driveline: {
          gears: [{ name: "only", gear_ratio: 1.4, efficiency_frac: gear_frac }],
          finalDriveEfficiency_frac: final_frac,
          ...(box === undefined ? {} : { transferBox: boxOf(box) }),
        },
      }),
    ).efficiency_frac;
  const boxOf = (highEfficiency_frac: number) => ({
    high_ratio: 1,
    highEfficiency_frac,
    low_ratio: 2,
    lowEfficiency_frac: 0.9,
    range: "high" as const,
    isFrontEngaged: false,
    hubs: "free" as const,
  });

  // Manual box with splash lubrication 92 to 97 %, hypoid gear set 90 to 93 %. [Joachim2012, fig. 2]
  it("of each demo's gears with its hypoid axle lies inside the printed bands, direct gears up to 98 %", () => {
    let gears = 0;
    for (const { id, job } of demoJobs) {
      for (const { name, gear_ratio, efficiency_frac } of job.driveline.gears) {
        gears++;
        const line_frac = efficiency_frac * job.driveline.finalDriveEfficiency_frac;
        expect(line_frac, `${id}, ${name}`).toBeGreaterThanOrEqual(0.92 * 0.9);
        expect(line_frac, `${id}, ${name}`).toBeLessThanOrEqual((gear_ratio === 1 ? 0.98 : 0.97) * 0.93);
      }
    }
    expect(gears).toBeGreaterThan(8);
  });

  it("of a direct gear is never below that of an indirect one in a demo", () => {
    let direct = 0;
    for (const { job } of demoJobs) {
      const straight = job.driveline.gears.find(({ gear_ratio }) => gear_ratio === 1);
      if (straight === undefined) continue;
      direct++;
      for (const gear of job.driveline.gears)
        expect(straight.efficiency_frac).toBeGreaterThanOrEqual(gear.efficiency_frac);
    }
    expect(direct).toBeGreaterThan(1);
  });

  it("is the product of the meshes passed, a transfer box included", () => {
    expect(line(0.96, 0.92)).toBeCloseTo(0.96 * 0.92, 12);
    expect(line(0.96, 0.92, 0.98)).toBeCloseTo(0.96 * 0.92 * 0.98, 12);
  });
});

function prepareGear(job: Job) {
  return prepare(job, job.packs[0]).gears[0];
}

describe("what turns makes a car seem heavier", () => {
  /** Kinetic energy over that of the mass alone, from a start to 10 m/s as the stepper booked it. */
  const factorOf = (job: Job) => {
    const { totals } = driven(
      job,
      traceOf([
        [0, 0],
        [20, 36],
      ]),
    );
    return totals.ledger.speed_J / (0.5 * prepare(job, job.packs[0]).road.mass_kg * 100);
  };
  // 1.04 + 0.0025 N², N the overall ratio; with a piston engine, so an upper band here. [Gillespie1992, eq. 2-10], from memory
  it("by no more than a piston engine's car at the same overall ratio, in each demo's lower gears", () => {
    let compared = 0;
    for (const { id, job } of demoJobs) {
      for (const gear of job.driveline.gears) {
        const { transferBox } = job.driveline;
        const overall = gear.gear_ratio * job.driveline.finalDrive_ratio * (transferBox?.high_ratio ?? 1);
        if (overall < 5) continue;
        const { radius, J, wheels } = {
          radius: job.vehicle.tyres.loadedRadius_mm / 1000,
          J: job.motor.rotorInertia_kgm2,
          wheels: job.vehicle.tyres.wheelsInertia_kgm2,
        };
        const bare = bareJob({
          test_kg: 1200,
          vehicle: { kerb_kg: 1199, tyres: { ...job.vehicle.tyres, rolling_coeff: 0 } },
          driveline: { gears: [{ name: "only", gear_ratio: overall, efficiency_frac: 1 }], finalDrive_ratio: 1 },
          motor: { rotorInertia_kgm2: J },
        });
        compared++;
        const factor = factorOf(bare);
        expect(factor).toBeCloseTo(1 + (wheels + J * overall * overall) / (radius * radius) / 1200, 9);
        expect(factor, `${id}, ${gear.name}`).toBeLessThanOrEqual(1.04 + 0.0025 * overall * overall);
      }
    }
    expect(compared).toBeGreaterThan(5);
  });

  it("by 3 % and no more where UN GTR 15's factor is chosen, whatever wheels and rotor weigh", () => {
    const job = bareJob({
      vehicle: {
        tyres: { loadedRadius_mm: 300, rolling_coeff: 0, wheelsInertia_kgm2: 5 },
        inertia: { kind: "massFactor", mass_ratio: 1.03 },
      },
      motor: { rotorInertia_kgm2: 0.1 },
    });
    expect(factorOf(job)).toBeCloseTo(1.03, 9);
  });
});

// High voltage is strictly above 60 V of direct current. [ISO6469-3, voltage classes], from memory
describe("a pack is told to be high voltage", () => {
  const isTold = (seriesCells: number, cellMax_V: number) => {
    const job = bareJob({
      module: { seriesCells, cellMax_V, openCircuit: { soc_frac: [0, 1], cell_V: [2.8, 2.9] } },
    });
    const { findings, pack } = driveJob(
      job,
      traceOf([
        [0, 0],
        [10, 10],
        [20, 0],
      ]),
    ).candidates[0];
    return { told: findings.some(({ kind }) => kind === "highVoltage"), max_V: pack.max_V };
  };

  it("at 73 V: 20 cells of 3.65 V", () => expect(isTold(20, 3.65)).toEqual({ told: true, max_V: 73 }));
  it("not at 58.4 V: 16 cells of 3.65 V", () => expect(isTold(16, 3.65)).toEqual({ told: false, max_V: 58.4 }));
  it("not at exactly 60 V", () => expect(isTold(20, 3)).toEqual({ told: false, max_V: HIGH_VOLTAGE_V }));
  it("at a hair above 60 V", () => expect(isTold(20, 3.0000001).told).toBe(true));
});

// Common practice, no source.
describe("a part-time four-wheel drive in two-wheel drive", () => {
  const rangeWith = (hubs: "free" | "locked" | "none") => {
    const pickup = demoJobs.find(({ job }) => job.driveline.transferBox !== undefined)?.job;
    const box = pickup?.driveline.transferBox;
    if (!pickup || !box) throw new Error("a demo with a transfer box is wanted");
    // Coast-down coefficients hold the front shafts' drag inside them; it shows where the road load is physical.
    const job: Job = {
      ...pickup,
      vehicle: {
        ...pickup.vehicle,
        roadLoad: { kind: "physical", drag_coeff: 0.55, frontalArea_m2: 2.6, wheelDrag_Nm: 5 },
      },
      driveline: {
        ...pickup.driveline,
        transferBox: {
          ...box,
          range: "high",
          isFrontEngaged: false,
          hubs,
          frontShaftDrag_Nm: Math.max(8, box.frontShaftDrag_Nm),
        },
      },
    };
    return driveJob(job, cycleTrace("udds", cycleTexts)).candidates[0].range_km;
  };

  it("goes further with its front hubs free than with them locked", () => {
    const free_km = rangeWith("free");
    const locked_km = rangeWith("locked");
    expect(locked_km).toBeGreaterThan(0);
    expect(free_km).toBeGreaterThan(locked_km);
    // Free hubs save 2 to 5 % where the front shafts drag as usual.
    expect(free_km / locked_km).toBeLessThan(1.08);
  });

  it("goes as far with hubs locked as without any: the front shafts turn alike", () => {
    expect(rangeWith("locked")).toBe(rangeWith("none"));
  });
});

// Common practice, no source. Between caps that lie close together it may be the other way: a car that lags meets its hardest
// moment at another speed.
it("draws a lower peak current with a much lower torque cap", () => {
  const peakWith = (torqueCap_Nm: number) => {
    const { job } = demoJobs[0];
    const capped: Job = { ...job, controller: { ...job.controller, torqueCap_Nm } };
    return driveJob(capped, cycleTrace("udds", cycleTexts)).candidates[2].peak.battery_A;
  };
  const peaks = [120, 75, 50, 35].map(peakWith);
  for (let i = 1; i < peaks.length; i++) expect(peaks[i]).toBeLessThan(peaks[i - 1]);
});

describe("the gear that keeps the motor nearer its best torque", () => {
  const machine: Changes = {
    vehicle: {
      kerb_kg: 1399,
      tyres: { loadedRadius_mm: 300, rolling_coeff: 0.012, followsTemperature: false },
      roadLoad: { kind: "physical", drag_coeff: 0.4, frontalArea_m2: 2 },
    },
    motor: {
      envelope: { kind: "peak", torque_Nm: 200, power_kW: 100 },
      loss: { kind: "fourTerm", copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 },
    },
  };
  it("loses less in the motor at the same speed and load", () => {
    const inGear = (gear_ratio: number) => {
      const { totals, channels } = driven(
        bareJob({
          ...machine,
          driveline: { gears: [{ name: "only", gear_ratio, efficiency_frac: 0.96 }], finalDrive_ratio: 4 },
        }),
        { id: "steady", title: "steady", time_s: Float64Array.of(0, 10, 20), speed_mps: Float64Array.of(16, 16, 16) },
      );
      const speed = channels.motorSpeed_radps[1];
      // kc T² = ki w + kw w³ + C      [LarminieLowry2012, eq. 8.25]
      const best_Nm = Math.sqrt((0.01 * speed + 5e-6 * speed ** 3 + 600) / 0.3);
      return { loss_J: totals.ledger.motor_J, off: Math.abs(Math.log(channels.motorTorque_Nm[1] / best_Nm)) };
    };
    const rows = [1, 1.5, 2.3, 3.5].map(inGear).sort((a, b) => a.off - b.off);
    for (let i = 1; i < rows.length; i++) expect(rows[i].loss_J).toBeGreaterThan(rows[i - 1].loss_J);
  });
});
