import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import charging from "../../../web/sections/charging.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();

function told(changes: Partial<Job> = {}) {
  const result = charging.compute(sectionValues({ ...job, ...changes }, { packIndex: 1 }));
  const tables = [...charging.plot(result, drawing(640))].map((each) => ("rows" in each ? each : undefined));
  return {
    sentence: charging.sentence(result),
    summary: charging.summary?.(result),
    attention: charging.attention?.(result),
    packs: tables[0],
    places: tables[1],
  };
}

it("has its result in the folded line, with the place and its power", () => {
  expect(told().summary).toBe("13 kWh at Garage, household socket (2.2 kW): usual day 3¼ h, empty to full 6 h");
});

it("has a row a pack at the usual place, and a row a place for the pack in view", () => {
  const { packs, places, attention } = told();
  expect(packs?.rows.map(([name]) => name)).toEqual(job.packs.map(({ name }) => name));
  expect(places?.rows.map(([name]) => name)).toEqual(job.supplies.map(({ name }) => name));
  expect(packs?.rows[1]).toContain("0.62 GBP");
  expect(places?.rows[0]).toContain("16.7 %");
  expect(places?.note).toMatch(/not made for hours at full current.*licensed electrician decide/);
  expect(attention).toEqual([]);
});

it("says once for each pack that the charger does not reach it, and gives no hours", () => {
  const { attention, packs, summary } = told({ charger: { ...job.charger, max_V: 120 } });
  expect(attention).toHaveLength(job.packs.length);
  expect(attention?.[0]).toMatch(/^8 kWh: The charger goes to 120 V/);
  expect(packs?.rows.flat().join(" ")).not.toMatch(/\d h\b/);
  expect(summary).toBe("13 kWh is not charged at Garage, household socket");
});
