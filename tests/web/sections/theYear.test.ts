import { describe, expect, it } from "vitest";
import { inventedYear } from "../../../shared/job/inventedYear.ts";
import theYear from "../../../web/sections/theYear.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(0);
const tablesOf = (of: typeof job, packIndex = 0) => {
  const result = theYear.compute(sectionValues(of, { packIndex }));
  const tables = [...theYear.plot(result, drawing(640))].flatMap((each) => ("rows" in each ? [each] : []));
  return { result, tables, sentence: theYear.sentence(result) };
};

describe("the working on the year", () => {
  const { result, tables, sentence } = tablesOf(job);
  const { year } = sectionValues(job);

  it("has a row for each pack new and at ten years, and the failing days of the pack looked at, the worst first", () => {
    const [evenings, worst] = tables;
    expect(evenings.rows).toHaveLength(2 * job.packs.length);
    const old = year.packs.find(({ name, age_years }) => name === job.packs[0].name && age_years === 10);
    expect(evenings.rows[1].at(-1)).toBe(`${old?.failingDays.length} of 240`);
    expect(worst.rows).toHaveLength(Math.min(10, old?.failingDays.length ?? 0));
    const short = worst.rows.map((row) => Number.parseInt(row.at(-1) ?? "", 10));
    expect(short).toEqual([...short].sort((a, b) => b - a));
  });

  it("says on how many days the pack would not get home, and nothing of a list or of invented temperatures that it has not", () => {
    expect(sentence).toMatch(
      /^New, 8 kWh would not get home on \d+ days; at ten years it would not get home on \d+ days, the worst \d+ \w+ by \d+ km\.$/,
    );
    expect(theYear.inShort?.(result)).toMatch(/^8 kWh not home on \d+ days new, \d+ days at ten years$/);
  });

  it("says where listed days come from and calls failing ones driven days", () => {
    const year = { ...(job.year ?? inventedYear), daysDriven_km: [12, 38, 60, 37, 39] };
    const listed = tablesOf({ ...job, year });
    expect(listed.sentence).toMatch(
      /Driven days are drawn evenly from the 5 of the list, 12 km to 60 km, as they were driven/,
    );
    expect(new Set(listed.tables[1].rows.map((row) => row[1]))).toEqual(new Set(["longest day", "driven day"]));
  });

  it("says that temperatures are invented where there is no year, or one with the same months", () => {
    const { year: _year, ...none } = job;
    const said = /The year’s temperatures are invented until they are entered\.$/;
    expect(tablesOf(none).sentence).toMatch(said);
    expect(tablesOf({ ...job, year: { ...inventedYear, daysAWeek: 6 } }).sentence).toMatch(said);
  });
});
