import { expect, it } from "vitest";
import type { Candidate } from "../../../sim/index.ts";
import stateOfCharge from "../../../web/sections/stateOfCharge.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();
const values = sectionValues(job);
const [run] = values.runs.candidates;
// One by one: to spread all of the values would drive every one of them.
const { machine, runs, chargePlan, along, units } = values;
const inputs = { job, machine, runs, chargePlan, along, units, packIndex: 0 };

/** The working for packs that end the road at such a charge. */
function told(packs: readonly (Partial<Candidate> & { name: string; end_frac: number })[]) {
  const candidates = packs.map(({ end_frac, ...pack }) => ({
    ...run,
    reachedFloor: false,
    ...pack,
    soc: { ...run.soc, end_frac },
  }));
  const result = stateOfCharge.compute({ ...inputs, runs: { ...runs, candidates } });
  return {
    sentence: stateOfCharge.sentence(result),
    summary: stateOfCharge.summary?.(result),
    attention: stateOfCharge.attention?.(result),
  };
}

const small: Parameters<typeof told>[0][number] = { name: "small", end_frac: 0.42, range_km: 31, rangeEnd: "floor" };
const large: typeof small = { name: "large", end_frac: 0.81, range_km: 120, rangeEnd: "time" };

it("says how full the emptiest and the fullest are after the road, and that a range by the clock is a least", () => {
  const both =
    "After one drive of the road small is at 42 % and large at 81 %; they would go 31 km and at least 120 km.";
  expect(told([small, large]).sentence).toBe(both);
  expect(told([large, small]).sentence).toBe(both);
  expect(told([large, small]).summary).toBe("small ends the road at 42 %");
  expect(told([large]).sentence).toBe("large ends the road at 81 % and would go at least 120 km.");
});

it("says of a pack that has no range why, and never that it would go nowhere", () => {
  const endless = { range_km: 0, rangeEnd: "endless" } as const;
  const stuck = { range_km: 0, rangeEnd: "stuck", distance_km: 0, missed_km: 8 } as const;
  const [first, last] = ["small is at 42 % and large at 81 %; ", "After one drive of the road "];
  expect(told([{ ...large, ...endless }]).sentence).toBe(
    "large ends the road at 81 % and has no range: this road draws nothing from it.",
  );
  expect(
    told([
      { ...small, ...endless },
      { ...large, ...endless },
    ]).sentence,
  ).toBe(`${last}${first}neither has a range: this road draws nothing from it.`);
  expect(told([{ ...small, ...stuck }, large]).sentence).toBe(
    `${last}${first}small has no range: it comes to a stand, large would go at least 120 km.`,
  );
  expect(told([{ ...large, rangeEnd: "stuck", distance_km: 9, missed_km: 1 }]).sentence).toContain("would go 120 km.");
  const candidates = [{ ...run, ...endless }];
  const tables = [
    ...stateOfCharge.plot(stateOfCharge.compute({ ...inputs, runs: { ...runs, candidates } }), drawing(640)),
  ];
  const rows = tables.flatMap((each) => ("rows" in each ? each.rows : []));
  expect(rows.map((row) => row[2])).toEqual(["this road draws nothing from it"]);
});

it("warns of each pack that is empty before the road ends, and of no other", () => {
  expect(told([small, large]).attention).toEqual([]);
  expect(told([{ ...small, reachedFloor: true }, large]).attention).toEqual(["small is empty before the road ends."]);
});

it("draws the day of the pack in view and of the largest, and names who has none", () => {
  const caption = (chosen: number) => {
    const result = stateOfCharge.compute({ ...inputs, packIndex: chosen });
    const [day] = stateOfCharge.plot({ ...result, days: result.days.with(chosen, undefined) }, drawing(640));
    return day.caption;
  };
  expect(caption(0)).toMatch(/; not 8 kWh, empty before it is home or not charged there$/);
  expect(caption(4)).toMatch(/; not 29 kWh, empty/);
  const whole = stateOfCharge.compute({ ...inputs, packIndex: 1 });
  expect(whole.days[1]).toBeDefined();
  expect([...stateOfCharge.plot(whole, drawing(640))][0].caption).toMatch(/the chosen pack and the largest$/);
});
