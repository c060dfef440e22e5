import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const out = { leaves: "8:00", arrives: "10:00", road: "coast", distance_km: 40 };
const home = { ...out, leaves: "14:00", arrives: "16:00", way: "back", parkedAt: "Garage, household socket" };
const week = { days: [{ from: "monday", to: "friday", trips: [out, home] }] };

it("prints a row a pack and condition, the first of them trip by trip, and what it found", async () => {
  const { code, out: text } = await runCommand("week", changedDemoFile({ week }), "--pack", "8 kWh");
  expect(code).toBe(0);
  expect(text).toMatch(/A week of 10 trips, 400 km, from Monday 8:00/);
  expect(text).toMatch(/^8 kWh +new +\d+ .*Monday \(\d+\), Tuesday \(\d+\)/m);
  expect(text).toMatch(/^8 kWh +ten years, winter/m);
  expect(text).toMatch(/^Monday 8:00 +\d+ +10:00 +\d+ +39\.9 +-$/m);
  expect(text).toMatch(/Monday, Tuesday, Wednesday, Thursday, Friday are not done with 8 kWh: \d+ km\s+short\s+each\./);
});

it("has the keys that a program reads, charge at every departure and arrival among them", async () => {
  const { out: text } = await runCommand("week", changedDemoFile({ week }), "--pack", "29 kWh", "--json");
  const { packs } = JSON.parse(text);
  expect(packs.map(({ condition }: { condition: string }) => condition)).toEqual([
    "new",
    "new, winter",
    "ten years, winter",
  ]);
  const [{ trips, parkings, failingDays, wall_kWh, stored_kWh }] = packs;
  expect(trips).toHaveLength(10);
  expect(failingDays).toEqual([]);
  trips.slice(1).forEach(({ leaves_frac }: { leaves_frac: number }, i: number) => {
    expect(leaves_frac).toBe(parkings[i].to_frac);
  });
  expect(stored_kWh).toBeLessThan(0.9 * wall_kWh);
});

it("says of a job without trips that it wants some, and refuses a week that is none", async () => {
  const none = await runCommand("week", changedDemoFile({ week: undefined }));
  expect(none).toMatchObject({ code: 2 });
  expect(none.err).toMatch(/week: found no trip, days with trips by the clock wanted/);
  const wrong = changedDemoFile({
    week: { days: [{ from: "monday", to: "monday", trips: [{ ...out, road: "sea" }] }] },
  });
  expect((await runCommand("week", wrong)).err).toMatch(/week\.days\.0\.trips\.0\.road: found "sea"/);
});

describe("a week charged at two places", () => {
  const depot = { name: "Depot", kind: "singlePhase", mode: "mode3", voltage_V: 230, current_A: 16, price_perkWh: 0.5 };
  const supplies = [
    { name: "Garage", kind: "household", mode: "mode2", voltage_V: 230, current_A: 10, price_perkWh: 0.2 },
    depot,
  ];
  const twice = {
    days: [
      {
        from: "monday",
        to: "tuesday",
        trips: [
          { ...out, parkedAt: "Depot" },
          { ...home, parkedAt: "Garage" },
        ],
      },
    ],
  };
  const placesIn = (text: string) =>
    JSON.parse(text).packs[0].places as { supply: string; wall_kWh: number; cost?: number }[];

  it("says what it takes and costs at each, which is all that it takes", async () => {
    const job = changedDemoFile({ week: twice, supplies });
    const { out: text } = await runCommand("week", job, "--pack", "29 kWh", "--json");
    const [first, second] = placesIn(text);
    expect([first.supply, second.supply]).toEqual(["Depot", "Garage"]);
    // Flat prices: 0.5 and 0.2 for each kWh of it.
    expect(first.cost).toBeCloseTo(0.5 * first.wall_kWh, 9);
    expect(second.cost).toBeCloseTo(0.2 * second.wall_kWh, 9);
    const [{ wall_kWh, cost }] = JSON.parse(text).packs;
    expect(first.wall_kWh + second.wall_kWh).toBeCloseTo(wall_kWh, 9);
    expect((first.cost ?? 0) + (second.cost ?? 0)).toBeCloseTo(cost, 9);
    const { out: table } = await runCommand("week", job, "--pack", "29 kWh");
    expect(table).toMatch(/^a week at +pack +condition +wall kWh +costs GBP$/m);
    expect(table).toMatch(/^Depot +29 kWh +new +\d/m);
  });

  it("says nothing of the cost where a place has no price", async () => {
    const { price_perkWh: _price, ...free } = depot;
    const job = changedDemoFile({ week: twice, supplies: [supplies[0], free] });
    const { out: text } = await runCommand("week", job, "--pack", "29 kWh", "--json");
    const [first, second] = placesIn(text);
    expect(first.cost).toBeUndefined();
    expect(second.cost).toBeGreaterThan(0);
  });
});
