import { describe, expect, it } from "vitest";
import { addSentence, emptyEpoch } from "../../../../sim/route/nmea/nmeaEpoch.ts";
import type { SentenceType } from "../../../../sim/route/nmea/nmeaSentence.ts";

function epochOf(...sentences: readonly (readonly [SentenceType, string])[]) {
  const epoch = emptyEpoch(45_319, 1);
  for (const [type, text] of sentences) addSentence(epoch, { type, fields: text.split(","), hasChecksum: true });
  return epoch;
}

it("takes place, speed and day from RMC", () => {
  const epoch = epochOf(["RMC", "$GPRMC,123519,A,4807.038,N,01131.000,W,022.4,084.4,230394"]);
  // 48° 7.038', 11° 31' west, 22.4 knots of 1852 m an hour.
  expect(epoch.latitude_deg).toBeCloseTo(48 + 7.038 / 60, 12);
  expect(epoch.longitude_deg).toBeCloseTo(-(11 + 31 / 60), 12);
  expect(epoch.speed_mps).toBeCloseTo((22.4 * 1852) / 3600, 9);
  expect(epoch.day_s).toBe(Date.UTC(1994, 2, 23) / 1000);
  expect(epoch.isVoid).toBe(false);
});

it("takes height and accuracy from GGA", () => {
  const epoch = epochOf(["GGA", "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M"]);
  expect(epoch.elevation_m).toBe(545.4);
  // A receiver's usual error of range is taken as 3 m.
  expect(epoch.accuracy_m).toBeCloseTo(2.7, 12);
});

it("takes speed in km/h from VTG and the day from ZDA", () => {
  const epoch = epochOf(["VTG", "$GPVTG,,T,,M,5.5,N,36.0,K"], ["ZDA", "$GPZDA,123519,03,05,2024,00,00"]);
  expect(epoch.speed_mps).toBeCloseTo(10, 9);
  expect(epoch.day_s).toBe(Date.UTC(2024, 4, 3) / 1000);
});

describe("is void", () => {
  it("where one of its sentences says so", () => {
    expect(epochOf(["RMC", "$GPRMC,123519,V,,,,,,,230394"]).isVoid).toBe(true);
    expect(epochOf(["GGA", "$GPGGA,123519,,,,,0,00,,,M"]).isVoid).toBe(true);
    expect(epochOf(["GNS", "$GNGNS,123519,,,,,NN,00,,"]).isVoid).toBe(true);
    expect(epochOf(["GNS", "$GNGNS,123519,,,,,AN,00,,"]).isVoid).toBe(false);
  });
});

it("has no place where minutes are beyond sixty or half of it is missing", () => {
  expect(epochOf(["RMC", "$GPRMC,123519,A,4867.038,N,01131.000,E,1"]).latitude_deg).toBeNaN();
  expect(epochOf(["RMC", "$GPRMC,123519,A,4807.038,N,,,1"]).latitude_deg).toBeNaN();
});
