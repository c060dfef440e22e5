import { expect, it } from "vitest";
import { eveningsByPack } from "../../../../web/answer/picture/eveningDots.ts";
import { readEvenings } from "../../../../web/answer/picture/readEvenings.ts";

it("reads how many driving days end with so much left, in the reader's unit", () => {
  const driven = { days: [], driven_degC: [0, 1], largestError_km: 0, confirmedDays: 0 };
  const days = [12, 8, 4, 20].map((left_km, k) => ({
    date: `${k + 1} Jan`,
    temperature_degC: 0,
    distance_km: 10,
    isWinter: true,
    kind: k === 3 ? ("off" as const) : ("usual" as const),
    left_km,
  }));
  const evenings_km = days.map(({ left_km }) => left_km);
  const packs = [0, 10].map((age_years) => ({
    name: "9 kWh",
    age_years,
    failingDays: [],
    evenings_km: evenings_km.map((left_km) => left_km - age_years),
  }));
  const byPack = eveningsByPack({ ...driven, days, packs }, "metric");
  expect(readEvenings("9 kWh", byPack, 8, "metric")).toBe(
    "9 kWh, new: 2 of 3 driving days end with 8 km left or more; at ten years 0.",
  );
  expect(readEvenings("none", byPack, 8, "metric")).toBeUndefined();
});
