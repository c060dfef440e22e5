import { join } from "node:path";
import { expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const path = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");

it("has the keys that a program reads: 365 evenings for each pack, new and at ten years, and the days that fail", async () => {
  const { code, out } = await runCommand("year", path, "--json", "--pack", "13 kWh");
  expect(code).toBe(0);
  const { packs, days } = JSON.parse(out);
  expect(packs.map(({ name, age_years }: { name: string; age_years: number }) => [name, age_years])).toEqual([
    ["13 kWh", 0],
    ["13 kWh", 10],
  ]);
  expect(days).toHaveLength(365);
  for (const { evenings_km, failingDays } of packs) {
    expect(evenings_km).toHaveLength(365);
    const short = evenings_km.filter((left_km: number) => left_km < 0);
    expect(failingDays).toHaveLength(short.length);
  }
  expect(packs[1].failingDays.length).toBeGreaterThanOrEqual(packs[0].failingDays.length);
});

it("prints a row a pack and age with the days that would not get home", async () => {
  const { out } = await runCommand("year", path, "--pack", "8 kWh");
  expect(out).toMatch(/driven days of a year/);
  expect(out).toMatch(/^8 kWh +10 .*short\)/m);
  expect(out.replaceAll("\n", " ")).toMatch(/days driven to confirm/);
});

it("says of a year of eleven months that twelve are wanted, and of a week of eight days that it has seven", async () => {
  const short = changedDemoFile({ year: { months_degC: Array(11).fill(5) } });
  const { code, err } = await runCommand("year", short);
  expect(code).toBe(2);
  expect(err).toMatch(/year\.months_degC: found 11 entries, at least 12 wanted/);
  const long = changedDemoFile({ "year.daysAWeek": 8 });
  expect((await runCommand("year", long)).err).toMatch(/year\.daysAWeek: found 8/);
});

it("draws the days from the job's list and says so, in words and for a program", async () => {
  const job = changedDemoFile({ "year.daysDriven_km": [12, 30, 90, 28], usualDay_km: 30 });
  const { out } = await runCommand("year", job, "--pack", "8 kWh", "--json");
  const { days, notes } = JSON.parse(out);
  const lengths = new Set(
    days.flatMap((day: { kind: string; distance_km: number }) => (day.kind === "usual" ? [day.distance_km] : [])),
  );
  expect([...lengths].sort((a, b) => Number(a) - Number(b))).toEqual([12, 28, 30, 90]);
  expect(notes[0]).toMatch(/^Driven days are drawn evenly from the 4 of the list, 12 km to 90 km, as they were driven/);
  expect((await runCommand("year", job, "--pack", "8 kWh")).out.replaceAll("\n", " ")).toMatch(
    /4 days are few: they do not tell a week\./,
  );
});

it("refuses a day of no length in the list by its place", async () => {
  const { code, err } = await runCommand("year", changedDemoFile({ "year.daysDriven_km": [30, 0] }));
  expect(code).toBe(2);
  expect(err).toMatch(/year\.daysDriven_km\.1: found 0 km, above 0 and at most 2000 km allowed/);
});

it("says how long each pack does the usual day in winter, and what its modules weigh and cost then", async () => {
  const { ageing } = JSON.parse((await runCommand("year", path, "--json", "--pack", "13 kWh")).out);
  const [{ life, years }] = ageing;
  expect(life.winter.map((each: { years: number }) => each.years)).toEqual(
    years.map((each: { years: number }) => each.years),
  );
  expect(life).toMatchObject({ day_km: 38, modules: { count: 15, layout: "5s3p", strings: 3 } });
  for (const { low_km, high_km } of life.winter) expect(low_km).toBeLessThanOrEqual(high_km);
  expect(life.findings[0]).toMatch(
    /^By the published laws of ageing 13 kWh .* the usual day of 38 km in winter after \d+ years/,
  );
  const { out } = await runCommand("year", path);
  expect(out).toMatch(
    /^13 kWh +\d+ +\d+ to \d+ +\d+ to \d+ +\d+ to \d+ +\d+ (or not within 15|to \d+) +99 +1400 to 1700$/m,
  );
  expect(out).toMatch(/^8 kWh .* not when new /m);
  expect(out).toMatch(/^29 kWh .* not within 15 /m);
  expect(out.replaceAll("\n", " ")).toMatch(/Never mix aged and new modules in one string/);
});
