import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { layoutsOf } from "../../../../sim/plan/layouts/layoutsOf.ts";
import { packRows } from "../../../../sim/plan/layouts/packRows.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const road = traceOf([
  [0, 0],
  [13, 60],
  [90, 60],
  [105, 0],
]);

describe("the packs among which the smallest is sought", () => {
  it("are the layouts that fit, a row for each number of modules in series, each from its smallest", () => {
    const job = demoJob(0);
    const wide: Job = {
      ...job,
      controller: { ...job.controller, min_V: 40 },
      charger: { ...job.charger, min_V: 20 },
      accessories: { ...job.accessories, dcdcMin_V: 20 },
    };
    const { all } = layoutsOf(wide, road);
    const rows = packRows(wide, all);
    const fitting = all.filter(({ out }) => out === undefined).map(({ pack }) => pack.name);
    expect(rows.flatMap((row) => row.map(({ pack }) => pack.name)).sort()).toEqual(fitting.sort());
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows) {
      expect(new Set(row.map(({ pack }) => pack.seriesModules)).size).toBe(1);
      expect(row.map(({ nominal_kWh }) => nominal_kWh)).toEqual(
        row.map(({ nominal_kWh }) => nominal_kWh).toSorted((a, b) => a - b),
      );
    }
  });

  const demo = demoJob(1);
  const wholeJob = (energies_kWh: readonly number[], changes: Partial<Job["vehicle"]> = {}): Job => ({
    ...demo,
    vehicle: { ...demo.vehicle, ...changes },
    packs: energies_kWh.map((energy_kWh) => ({
      ...demo.packs[0],
      whole: { energy_kWh, nominal_V: 130, mass_kgpkWh: 1 },
    })),
  });

  it("are one row of every whole kilowatt-hour up to twice the largest, where all packs are given whole", () => {
    const [row, ...others] = packRows(wholeJob([4.2, 3]), []);
    expect(others).toEqual([]);
    const each = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    expect(row.map(({ nominal_kWh }) => nominal_kWh)).toEqual(each);
    expect(row.map(({ pack }) => pack.whole?.energy_kWh)).toEqual(each);
    expect(row.map(({ pack }) => pack.name)).toEqual(each.map((kWh) => `${kWh} kWh`));
    expect(row[0].pack.whole).toEqual({ energy_kWh: 1, nominal_V: 130, mass_kgpkWh: 1 });
  });

  it("are layouts again where one of the packs is not given whole", () => {
    const job = { ...wholeJob([4]), packs: [wholeJob([4]).packs[0], demo.packs[0]] };
    expect(packRows(job, [])).toEqual([]);
  });
});
