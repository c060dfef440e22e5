import { expect, it } from "vitest";
import type { Candidate } from "../../../sim/index.ts";
import energyPerKm from "../../../web/sections/energyPerKm.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const values = sectionValues(demoJob());

/** In Wh over 10 km: motor 400, air 300 and rolling 250 are the largest, then the driveline. */
const ledger_Wh = {
  ...values.runs.candidates[0].ledger_Wh,
  aero: 300,
  rolling: 250,
  climb: 0,
  speed: 0,
  driveline: 200,
  motor: 400,
  accessories: 150,
  frictionBrake: 100,
};

/** The working for packs of these names that were driven 10 km with such use, or not at all. */
function told(packs: readonly (Partial<Candidate> & { name: string })[], packIndex = 0, isComparable = true) {
  const candidates = packs.map((pack) => ({
    ...values.runs.candidates[0],
    distance_km: 10,
    ledger_Wh,
    findings: [],
    ...pack,
  }));
  const result = energyPerKm.compute({
    runs: { ...values.runs, candidates, isComparable },
    packIndex,
    units: "metric",
  });
  return {
    result,
    sentence: energyPerKm.sentence(result),
    summary: energyPerKm.summary?.(result),
    attention: energyPerKm.attention?.(result),
  };
}

it("names who takes least and most, and the three largest parts of the pack in view, over distance", () => {
  const two = [
    { name: "heavy", battery_Whpkm: 152 },
    { name: "light", battery_Whpkm: 140, ledger_Wh: { ...ledger_Wh, rolling: 220 } },
  ];
  // 400, 300 and 250 Wh over 10 km.
  expect(told(two, 0).sentence).toBe(
    "light takes the least, 140 Wh/km; heavy takes the most, 152 Wh/km. With heavy most of it goes into motor and controller 40 Wh/km, air 30 Wh/km, rolling 25 Wh/km.",
  );
  expect(told(two, 1).sentence).toMatch(/ With light .*, rolling 22 Wh\/km\.$/);
  expect(told(two).summary).toBe("140 Wh/km with light to 152 Wh/km with heavy");
});

it("has no most beside the least where one pack alone was driven, and tells of that one", () => {
  const { sentence, summary, result } = told([
    { name: "stuck", distance_km: 0 },
    { name: "goes", battery_Whpkm: 140 },
  ]);
  expect(sentence).toMatch(/^goes takes the least, 140 Wh\/km\. With goes /);
  expect(summary).toBe("140 Wh/km with goes");
  expect(result.ofDrive.map(([name]) => name)).toEqual(["goes"]);
});

it("says so where nobody gets along, without a figure", () => {
  const { sentence, summary, result } = told([{ name: "stuck", distance_km: 0 }]);
  expect(sentence).toBe("No pack covers any distance on this road.");
  expect(summary).toBe("no pack covers any distance");
  expect([...energyPerKm.plot(result, drawing())].flatMap((each) => ("rows" in each ? each.rows : []))).toEqual([]);
});

it("counts a drive's energy over all of it, and at the pack what its net use comes to", () => {
  const { result } = told([{ name: "one", battery_Whpkm: 140, regen_Wh: 210, frictionBrake_Wh: 95 }]);
  // 140 Wh/km x 10 km = 1.4 kWh.
  expect(result.ofDrive).toEqual([["one", "10 km", "1.4 kWh", "0.21 kWh", "0.095 kWh"]]);
});

it("warns where the packs did not drive the same distance", () => {
  expect(told([{ name: "one" }]).attention).toEqual([]);
  expect(told([{ name: "one" }], 0, false).attention).toEqual([expect.stringContaining("are of different drives")]);
});
