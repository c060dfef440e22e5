import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { cycleTrace } from "../../../../sim/trace/standardCycles.ts";
import { bareJob, traceOf } from "../../../support/bareCar.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const ece = cycleTrace("ece-15", cycleTexts);

it("tells what the road is", () => {
  const { trace } = driveJob(inventedJob(), ece);
  expect(trace.duration_s).toBe(195);
  expect(trace.max_kmh).toBeCloseTo(50, 9);
  expect(trace.mean_kmh).toBeCloseTo((trace.distance_km / 195) * 3600, 9);
  expect(trace.climb_m).toBe(0);
});

it("tells how far the road climbs and falls where its heights are known", () => {
  const profile = { distance_m: Float64Array.of(0, 300, 900, 2000), elevation_m: Float64Array.of(0, 12, 5, 5) };
  const { trace } = driveJob(inventedJob(), { ...ece, profile });
  expect(trace.climb_m).toBeCloseTo(12, 9);
  expect(trace.descent_m).toBeCloseTo(7, 9);
  expect(driveJob(inventedJob(), ece).trace.descent_m).toBe(0);
});

describe("of each pack", () => {
  const report = driveJob(inventedJob(), ece, { channels: true });
  const [small, large] = report.candidates;

  it("is driven in the order of the job, with its own mass", () => {
    expect(report.candidates.map(({ name }) => name)).toEqual(["Small", "Large"]);
    expect(large.testMass_kg - small.testMass_kg).toBeCloseTo(large.pack.mass_kg - small.pack.mass_kg, 9);
    expect(large.battery_Whpkm).toBeGreaterThan(small.battery_Whpkm);
    expect(large.range_km).toBeGreaterThan(small.range_km);
  });

  it("begins at its ceiling", () => expect(small.soc.start_frac).toBe(0.95));

  it("tells net energy at its terminals over the distance, as its channels add up to", () => {
    const { channels, distance_km } = small;
    if (!channels) throw new Error("channels were asked for");
    let energy_J = 0;
    for (let i = 1; i < channels.length; i++)
      energy_J += channels.battery_W[i] * (channels.time_s[i] - channels.time_s[i - 1]);
    expect(energy_J / 3600 / distance_km).toBeCloseTo(small.battery_Whpkm, 6);
  });

  it("takes from the wall what left the cells over the charger's efficiency", () => {
    expect(small.wall_Whpkm).toBeCloseTo(small.ledger_Wh.total / small.distance_km / 0.9, 9);
  });

  it("keeps its steps only where asked", () => {
    expect(small.channels?.length).toBe(196);
    expect(driveJob(inventedJob(), ece).candidates[0].channels).toBeUndefined();
  });
});

it("has figures of nothing for a car that never moves, and no NaN", () => {
  const job = bareJob({ controller: { min_V: 500, regen: { isOn: false } }, accessories: { standing_W: 100 } });
  const [candidate] = driveJob(
    job,
    traceOf([
      [0, 0],
      [10, 36],
      [20, 0],
    ]),
  ).candidates;
  expect(candidate.battery_Whpkm).toBe(0);
  expect(candidate.range_km).toBe(0);
  expect(candidate.rangeEnd).toBe("stuck");
  expect(candidate.missed_km).toBeCloseTo(0.1, 12);
});

describe("packs that drove different distances", () => {
  const job = inventedJob();
  /** The first pack gives so little current that the car lags. */
  const weakened: Job = {
    ...job,
    module: { ...job.module, discharge: { continuous_A: 12, peak_A: 12, peak_s: 0 } },
    packs: [
      { ...job.packs[0], name: "Weak" },
      { ...job.packs[0], name: "Strong", parallelModules: 8 },
    ],
  };
  it("are not comparable by their energy a kilometre", () => {
    expect(driveJob(weakened, ece).isComparable).toBe(false);
    expect(driveJob(job, ece).isComparable).toBe(true);
  });
});
