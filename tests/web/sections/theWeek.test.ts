import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { type PackWeek, roadTrace } from "../../../sim/index.ts";
import { driveWeeks } from "../../../sim/plan/week/driveWeek.ts";
import theWeek from "../../../web/sections/theWeek.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const van = demoJob(demos.findIndex(({ id }) => id === "bakery-van"));
const values = sectionValues(van);
const result = theWeek.compute(values);
const worked = [...theWeek.plot(result, drawing(640))];
const tables = worked.flatMap((each) => ("rows" in each ? [each] : []));

describe("the baker's week", () => {
  const weeks = new Map(values.week?.packs.map((each) => [`${each.name}, ${each.condition}`, each]));
  const failing = (pack: string) => weeks.get(pack)?.failingDays.map(({ weekday }) => weekday);
  const all: PackWeek["failingDays"][number]["weekday"][] = [
    "monday",
    "tuesday",
    "wednesday",
    "thursday",
    "friday",
    "saturday",
  ];

  it("is lost by the smallest pack on the market day alone while it is new, and every day in winter", () => {
    expect(failing("14 kWh, new")).toEqual(["saturday"]);
    expect(failing("14 kWh, new, winter")).toEqual(all);
    expect(failing("17 kWh, new")).toEqual([]);
    expect(failing("17 kWh, new, winter")).toEqual(all);
  });

  it("is done by 28 kWh but for the market day of a winter in ten years, and by 33 kWh always", () => {
    expect(failing("28 kWh, new, winter")).toEqual([]);
    expect(failing("28 kWh, ten years, winter")).toEqual(["saturday"]);
    for (const condition of ["new", "new, winter", "ten years, winter"])
      expect(failing(`33 kWh, ${condition}`)).toEqual([]);
  });

  it("is done by 17 kWh in winter too on the five working days, new, where the van is plugged in after its round", () => {
    const [working, ...others] = van.week?.days ?? [];
    const [round, cakes] = working.trips;
    const plugged = { ...working, trips: [{ ...round, parkedAt: "Bakehouse, wall unit" }, cakes] };
    const traces = new Map(van.roads.map((road) => [road.id, roadTrace(road, cycleTexts)]));
    const week = driveWeeks({ ...van, week: { days: [plugged, ...others] } }, traces, [1]);
    const winter = week?.packs.find(({ condition }) => condition === "new, winter");
    expect(winter?.name).toBe("17 kWh");
    expect(winter?.failingDays.map(({ weekday }) => weekday)).toEqual(["saturday"]);
  });
});

describe("a week charged at two places", () => {
  it("has a table of what it takes and costs at each", () => {
    const [working, ...others] = van.week?.days ?? [];
    const [round, cakes] = working.trips;
    const plugged = { ...working, trips: [{ ...round, parkedAt: van.supplies[1].name }, cakes] };
    const traces = new Map(van.roads.map((road) => [road.id, roadTrace(road, cycleTexts)]));
    const week = driveWeeks({ ...van, week: { days: [plugged, ...others] } }, traces, [1]);
    const found = theWeek.compute({ ...values, week });
    const table = [...theWeek.plot(found, drawing(640))].find(
      (each) => each.caption === "What a week takes from the wall at each place",
    );
    const rows = table && "rows" in table ? table.rows : [];
    expect(rows.slice(0, 2).map((row) => row.slice(0, 3))).toEqual([
      ["17 kWh", "new", van.supplies[1].name],
      ["17 kWh", "new", van.supplies[0].name],
    ]);
    for (const row of rows) expect(row.slice(3).join(" ")).toMatch(/^\d[\d.]*\skWh \d[\d.]*\sEUR$/);
  });
});

describe("the working on the week", () => {
  it("has a strip for each pack, the chosen one first, with its lowest points in words", () => {
    const strips = worked.flatMap((each) => ("chart" in each ? [each] : []));
    expect(strips).toHaveLength(van.packs.length);
    expect(strips[0].caption).toContain(van.packs[values.packIndex].name);
    const drawn = [...strips[0].chart.svg.querySelectorAll("text")].map(({ textContent }) => textContent).join(" ");
    expect(drawn).toMatch(/Lowest, new: \d+ % on Sat\s13:\d\d/);
    expect(drawn).toMatch(/Lowest, ten years, winter: \d+ % on Sat/);
    expect(strips[0].chart.alt).toMatch(/ten years, winter, it is lowest with \d+ % left on Saturday 13:\d\d\.$/);
  });

  it("has a row for each pack and condition, and the chosen pack trip by trip", () => {
    expect(tables.map(({ rows }) => rows.length)).toEqual([3 * van.packs.length, 13]);
  });

  it("says its finding, and in one line the lowest point of the chosen pack", () => {
    expect(theWeek.sentence(result)).toMatch(
      /^28 kWh, new, does the week: lowest on Saturday at 13:\d\d with \d\d % left, \d+ km more/,
    );
    expect(theWeek.inShort?.(result)).toMatch(/^28 kWh lowest on Saturday at 13:\d\d/);
    const smallest = theWeek.compute(sectionValues(van, { packIndex: 0 }));
    expect(theWeek.attention?.(smallest)).toContain(
      "Saturday (also the market over the river) is not done with 14 kWh: 2 km short.",
    );
  });

  it("says that none is entered where none is, with nothing drawn", () => {
    const none = theWeek.compute(sectionValues(van, { week: undefined }));
    expect(theWeek.sentence(none)).toMatch(/No trip by the clock is entered/);
    expect([...theWeek.plot(none, drawing(640))]).toEqual([]);
  });
});
