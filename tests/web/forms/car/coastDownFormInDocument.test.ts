import { expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { coastDownForm } from "../../../../web/forms/car/coastDownForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const bands = "#coastdown-bands";
const mass = "#coastdown-mass_kg";
const two = "90-70 km/h 11.2 11.5 / 12.0 s; 50-30 km/h 19.8 / 20.4 s";

it("says nothing of an empty field, and what is still wanted once times are there", () => {
  const { type, said } = formPage(demoJob(), coastDownForm);
  expect(said("[role=status]")).toBe("");
  type(bands, two);
  expect(said("[role=status]")).toBe("Still wanted: mass as it rolled, people aboard.");
  expect(said("#coastdown-bands-says")).toBe("2 bands");
  type(bands, "90-70 km/h 11.2 s");
  expect(said("#coastdown-bands-says")).toBe("1 band");
});

it("counts what is wrong above, and offers nothing then", () => {
  const { type, said, buttons } = formPage(demoJob(), coastDownForm);
  type(bands, two);
  type(mass, "heavy");
  expect(said("[role=status]")).toMatch(/^1 wrong above\./);
  expect(buttons()).toEqual([]);
});

it("takes the coast-down only when that is asked for, as measured, and its texts go from the fields", () => {
  const { type, press, job, at } = formPage(demoJob(), coastDownForm);
  type(bands, two);
  type(mass, "1100 kg");
  expect(job()).toEqual(demoJob());
  press(/^Use this coast-down$/);
  const { roadLoad } = job().vehicle;
  expect(roadLoad).toMatchObject({ kind: "coastDown", mass_kg: 1100 });
  expect(Object.entries(job().origins).filter(([path]) => path.startsWith("vehicle.roadLoad"))).not.toEqual([]);
  expect(at(bands).value).toBe("");
});

it("says a force at a crawl and a greater one at 80 km/h, in the reader's units", () => {
  const force_N = (words: string) => /: ([\d.,]+) (\S+) at a crawl, ([\d.,]+) \S+ at (\S+ \S+)\.$/.exec(words);
  const metric = formPage(demoJob(), coastDownForm);
  metric.type(bands, two);
  metric.type(mass, "1100 kg");
  const [, crawl, unit, fast, speed] = force_N(metric.said(".offer p")) ?? [];
  expect([unit, speed]).toEqual(["N", "80 km/h"]);
  // From 90 to 70 km/h in 11.35 s one way and 12 s the other: 1100 × 1.04 kg × 5.56 m/s / 11.68 s is 544 N; from 50 to 30 in 20.1 s, 316 N.
  // Force grows with speed, so it is less at a crawl. At 80 km/h it is within 5 % of the first: the mean over a band, that of the two ways,
  // and the air that it is brought to are each about 1 % off.
  expect(Number(crawl)).toBeLessThan(316);
  expect(Math.abs(Number(fast) / 544 - 1)).toBeLessThan(0.05);
  const miles = formPage(withPath(demoJob(), "units", "british"), coastDownForm);
  expect(miles.said("label")).toContain("60-50 mph");
});
