import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { readCoastDown, takeCoastDown } from "../../../../web/forms/car/coastDown.ts";
import { demoJob } from "../../../support/demoJob.ts";

// A car of 1400 kg with 3 % more for what turns, 180 N and 0.55 N/(m/s)²: its closed form to four digits, 85-75 and 30-20 km/h.
const BANDS = "85-75 km/h 8.879 s; 30-20 km/h 19.379 s";
const day = { mass_kg: "1400 kg", rotating_ratio: "1.03", pressure_kPa: "100 kPa", air_degC: "20" };

describe("a coast-down as typed", () => {
  it("comes to the car's own road load, and goes into the job as measured with the stopwatch's band", () => {
    const { found, problems, missing } = readCoastDown({ bands: BANDS, ...day }, "metric");
    expect([problems, missing]).toEqual([{}, []]);
    // Times to a thousandth of a second.
    expect(found?.f0_N.value).toBeCloseTo(180, 1);
    expect(found?.f2_Npmps2.value).toBeCloseTo(0.55, 3);
    if (!found) throw new Error("nothing was found");
    const { job } = takeCoastDown({ job: demoJob(), drafts: {} }, found, BANDS);
    expect(job.vehicle.roadLoad).toMatchObject({ kind: "coastDown", f1_Npkmh: 0, mass_kg: 1400 });
    expect(job.vehicle.roadLoad).toMatchObject({
      f0_N: expect.closeTo(180, 1),
      f2_Npkmh2: expect.closeTo(0.55 / 12.96, 4),
    });
    const origin = job.origins["vehicle.roadLoad.f0_N"];
    expect(origin).toMatchObject({ from: "measured", note: `coast-down, ${BANDS}` });
    expect(origin?.plusMinus_frac).toBeCloseTo((found.f0_N.high - found.f0_N.value) / found.f0_N.value, 2);
    expect(readJob(structuredClone(job))).toEqual(job);
  });

  it("reads bare numbers in the reader's own units", () => {
    const british = readCoastDown({ bands: BANDS, ...day, mass_kg: "3086.5" }, "british");
    expect(british.found?.mass_kg).toBeCloseTo(1400, 1);
  });

  it("waits for the times and the mass, by name", () => {
    expect(readCoastDown({}, "metric").missing).toEqual(["the times", "mass as it rolled, people aboard"]);
  });

  it.each([
    ["times that rise", { bands: "20-30 km/h 9 s; 85-75 km/h 9 s" }, "bands", /from the higher speed to the lower one/],
    ["bands that overlap", { bands: "85-75 km/h 9 s; 80-60 km/h 18 s" }, "bands", /which overlap/],
    ["a single band", { bands: "85-75 km/h 9 s" }, "bands", /found 1 band, at least 2 are wanted/],
    ["times of no rolling car", { bands: "85-75 km/h 20 s; 30-20 km/h 5 s" }, "bands", /no rolling car makes/],
    ["a mass of no car", { mass_kg: "14 kg" }, "mass_kg", /14 kg is not possible/],
    ["a doubt that is none", { stopwatch_s: "soon" }, "stopwatch_s", /soon/],
  ])("says what is wrong with %s", (_, texts, field, words) => {
    const { problems, found } = readCoastDown({ bands: BANDS, ...day, ...texts }, "metric");
    expect(found).toBeUndefined();
    expect(problems[field]).toMatch(words);
  });
});
