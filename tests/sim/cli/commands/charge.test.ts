import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");
const json = async (path: string, ...words: readonly string[]) =>
  JSON.parse((await runCommand("charge", path, "--json", ...words)).out);

it("prints each supply with a row a pack, and what to heed", async () => {
  const { code, out } = await runCommand("charge", job);
  expect(code).toBe(0);
  expect(out).toMatch(
    /^Garage, household socket: 2\.22 kW from the wall, 2 kW behind the charger, control pilot 16\.7 %/m,
  );
  expect(out.match(/^13 kWh /gm)).toHaveLength(2);
  expect(out).toMatch(/^8 kWh .* \d\.\d\* /m);
  expect(out).toMatch(/^\* such a day takes more than the pack holds/m);
  expect(out.replaceAll("\n", " ")).toMatch(/not made for hours at full current.*licensed electrician decide/);
});

it("has the keys that a program reads, a row a pack and supply", async () => {
  const { supplies, places, currency, isAssumed } = await json(job);
  expect(supplies).toHaveLength(10);
  expect(supplies[2]).toMatchObject({
    name: "Garage, household socket",
    pack: "13 kWh",
    emptyToFull_h: expect.any(Number),
    usualDay_h: expect.any(Number),
    nightGives_km: expect.any(Number),
    limit: "charger",
    stop: null,
  });
  expect(supplies[2].usualDay_h).toBeLessThan(supplies[2].emptyToFull_h);
  expect(supplies[2].cost.usualDay).toBeCloseTo(0.09 * supplies[2].usualDay_kWh, 9);
  expect({ places: places.length, currency, isAssumed }).toEqual({ places: 2, currency: "GBP", isAssumed: false });
});

it("takes one pack, and the road that is typed", async () => {
  const { supplies, road } = await json(job, "--pack", "17 kWh", "--trace", "ece-15");
  expect(road).toBe("ece-15");
  expect(supplies.map(({ pack }: { pack: string }) => pack)).toEqual(["17 kWh", "17 kWh"]);
});

it("stands in with a household socket where the job names no supply, and says so", async () => {
  const { supplies, isAssumed, notes } = await json(changedDemoFile({ supplies: undefined }), "--pack", "13 kWh");
  expect(supplies).toMatchObject([{ name: "Household socket, 10 A", nightGives_km: null }]);
  expect(isAssumed).toBe(true);
  expect(notes[0]).toMatch(/No supply is entered/);
});

it("says a stop in words in the place of hours", async () => {
  const path = changedDemoFile({ "charger.max_V": 120 });
  const { supplies } = await json(path);
  expect(supplies[0]).toMatchObject({ emptyToFull_h: null, usualDay_h: null, nightGives_km: null, limit: null });
  expect(supplies[0].stop).toMatch(/goes to 120 V and this pack has 126 V when full: it is never charged full/);
  expect((await runCommand("charge", path)).out).toMatch(/^8 kWh +stop .*- +-$/m);
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    ["a supply of 0 A", { "supplies.0.current_A": 0 }, /supplies\.0\.current_A: found 0 A, above 0 and at most 70 A/],
    ["an efficiency above one", { "charger.efficiency_frac": 1.1 }, /charger\.efficiency_frac: found 1\.1, 0\.3 to 1/],
    ["a tariff with a hole", { "supplies.0.price_perkWh": undefined }, /supplies\.0\.price_perkWh: found a price from/],
    [
      "hours that end as they begin",
      { "supplies.0.hours.to": "18:00" },
      /supplies\.0\.hours\.to: found 18:00 to 18:00/,
    ],
  ])("%s", async (_, changes, message) => {
    const { code, out, err } = await runCommand("charge", changedDemoFile(changes));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("a pack that is none, and no job", async () => {
    expect((await runCommand("charge", job, "--pack", "17kWh")).err).toMatch(/did you mean 17 kWh/);
    expect((await runCommand("charge")).err).toMatch(/^charge: found no job file/);
  });
});
