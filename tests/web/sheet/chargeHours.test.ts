import { describe, expect, it } from "vitest";
import { chargeHours, householdSocket, quarters } from "../../../web/sheet/chargeHours.ts";

const candidate = {
  wall_Whpkm: 172.5,
  battery_Whpkm: 150,
  distance_km: 12,
  pack: { usable_kWh: 10 },
} as Parameters<typeof chargeHours>[0];

describe("hours at a household socket", () => {
  it("are energy at the wall over the socket's power, up to a quarter", () => {
    // 172.5 Wh/km x 40 km = 6900 Wh; at 2300 W three hours exactly. 10 kWh x 172.5 / 150 = 11.5 kWh: five hours.
    const socket = householdSocket("metric");
    expect(chargeHours(candidate, { usualDay_km: 40 }, socket)).toEqual({ usualDay: "3 h", emptyToFull: "5 h" });
    expect(chargeHours(candidate, { usualDay_km: 41 }, socket)?.usualDay).toBe("3¼ h");
  });

  it("of a day beyond the pack are those of the pack", () => {
    expect(chargeHours(candidate, { usualDay_km: 400 }, householdSocket("metric"))?.usualDay).toBe("5 h");
  });

  it("are nothing for a car that does not move", () => {
    expect(
      chargeHours({ ...candidate, distance_km: 0 }, { usualDay_km: 40 }, householdSocket("metric")),
    ).toBeUndefined();
  });

  // 15 A circuit, four fifths of it for a load of three hours and more: NEC 625.41; 120 V x 12 A = 1.44 kW.
  it("in America are those of a 15 A circuit at four fifths", () => {
    expect(householdSocket("american").power_W).toBe(1440);
  });

  it.each([
    [0.1, "¼ h"],
    [0.75, "¾ h"],
    [1, "1 h"],
    [2.51, "2¾ h"],
    [9.66, "9¾ h"],
  ])("%f h is written %s", (time_h, words) => {
    expect(quarters(time_h)).toBe(words);
  });
});
