import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

const demo = (id: string) => join(import.meta.dirname, `../../../../shared/demos/${id}.bellhousing.json`);
const job = demo("piano-tuner");
const json = async (path: string, ...words: readonly string[]) =>
  JSON.parse((await runCommand("costs", path, "--json", ...words)).out);
const oneLine = (text: string) => text.replace(/[\u00a0\u202f]/g, " ").replaceAll("\n", " ");

it("prints prices, a table for each yearly distance, and the sentences", async () => {
  const { code, out } = await runCommand("costs", job);
  expect(code).toBe(0);
  expect(oneLine(out)).toMatch(
    /13 kWh costs 11 300 to 16 400 GBP, 6700 to 13 200 GBP more than the alternative \(engine rebuild\)\./,
  );
  expect(out.match(/ a year$/gm)?.length).toBeGreaterThanOrEqual(3);
  expect(oneLine(out)).toMatch(/Quiet, no smoke and access to towns/);
});

it("has the keys that a program reads, every amount as value, low and high", async () => {
  const plan = await json(job, "--pack", "13 kWh");
  expect(plan).toMatchObject({ currency: "GBP", years: 10, against: "engine rebuild" });
  const [pack] = plan.packs;
  expect(pack.price.low).toBeLessThan(pack.price.value);
  expect(pack.price.value).toBeLessThan(pack.price.high);
  expect(pack.yearly.map(({ distance_km }: { distance_km: number }) => distance_km)).toEqual([8000, 4000, 16_000]);
  expect(pack.yearly[0].spent).toHaveLength(11);
  expect(pack.yearly[0]).toMatchObject({ payback_years: { value: expect.any(Number), high: null } });
});

it("holds the fuel record against the road, as a cross-check", async () => {
  const { out } = await runCommand("costs", job);
  expect(oneLine(out)).toMatch(/By the fuel record, a cross-check and no more: \d.* of petrol is /);
  const { fuelCheck } = await json(job);
  expect(fuelCheck).toMatchObject({ fuel: "petrol", road_Whpkm: expect.any(Number) });
  expect(fuelCheck.wheelHigh_Whpkm).toBeGreaterThan(fuelCheck.wheelLow_Whpkm);
});

it("prices the module count of the pack, by hand", async () => {
  // Seven lines: parts 5400 to 6470, 95 to 134 h at 48; 15 modules at 92 to 115; 12 % on the dear sum.
  const [{ quote, price }] = (await json(job, "--pack", "13 kWh")).packs;
  expect(quote.sum.low).toBeCloseTo(5400 + 95 * 48 + 15 * 92, 6);
  expect(price.high).toBeCloseTo((6470 + 134 * 48 + 15 * 115) * 1.12, 6);
});

it("takes electricity from the charging plan, losses and cheap hours in it", async () => {
  const [{ electricity }] = (await json(job, "--pack", "13 kWh")).packs;
  const { supplies } = JSON.parse((await runCommand("charge", job, "--pack", "13 kWh", "--json")).out);
  expect(electricity[0].wall_kWhpkm.low).toBeCloseTo(supplies[0].usualDay_kWh / 38, 6);
  expect(electricity[0].costPerKm.low).toBeCloseTo(supplies[0].cost.usualDay / 38, 6);
});

it("answers the vineyard honestly: it never pays back", async () => {
  const { packs } = await json(demo("vineyard-pickup"));
  for (const { yearly, sentences } of packs) {
    expect(yearly[0].payback_years).toEqual({ value: null, low: null, high: null });
    expect(sentences.at(-1)).toMatch(/It does not pay back within 10 years; it would from about \d+ km a year\.$/);
  }
});

describe("--quote", () => {
  it("writes every line of every pack, and never over a file", async () => {
    const out = join(emptyFolder(), "quote.csv");
    expect((await runCommand("costs", job, "--quote", out)).code).toBe(0);
    const { data } = Papa.parse<Record<string, string>>(readFileSync(out, "utf8").replace("\ufeff", ""), {
      header: true,
      skipEmptyLines: true,
    });
    expect(data).toHaveLength(5 * 10);
    const total = data.find(({ pack, line }) => pack === "13 kWh" && line === "Total");
    expect(total).toMatchObject({ totalLow_money: "11340", currency: "GBP" });
    expect((await runCommand("costs", job, "--quote", out)).err).toMatch(/--force replaces it/);
  });
  it("keeps a line that a spreadsheet would run as text", async () => {
    const out = join(emptyFolder(), "quote.csv");
    await runCommand("costs", changedDemoFile({ "costs.work.0.name": "=1+1" }), "--quote", out);
    expect(readFileSync(out, "utf8")).toContain(`,"'=1+1",`);
  });
  it("is a CSV file", async () => {
    expect((await runCommand("costs", job, "--quote", "quote.txt")).err).toMatch(/found a name without \.csv/);
  });
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    ["a job without costs", { costs: undefined }, /costs: found no costs, work and prices are wanted/],
    ["a negative price", { "costs.cells.price.low": -3 }, /costs\.cells\.price\.low: found -3, 0 to/],
    [
      "low above high",
      { "costs.alternatives.0.price.low": 9000 },
      /costs\.alternatives\.0\.price\.high: found 4600, low \(9000\) or more/,
    ],
  ])("%s", async (_, changes, message) => {
    const { code, out, err } = await runCommand("costs", changedDemoFile(changes));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });
});

it("prints a currency that is HTML as it was typed", async () => {
  const { out } = await runCommand("costs", changedDemoFile({ currency: "<b>x</b>" }), "--pack", "13 kWh");
  expect(oneLine(out)).toContain("16 400 <b>x</b>");
});
