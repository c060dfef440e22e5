import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { type UnitHabit, writeQuantity } from "../../../../shared/quantity/writeQuantity.ts";
import { openExplanations } from "../../../../sim/index.ts";
import { reasonFacts } from "../../../../web/notebook/reasons/reasonFacts.ts";
import { reasonLines } from "../../../../web/notebook/reasons/reasonLines.ts";
import { sections } from "../../../../web/sections/index.ts";
import { bothSides } from "../../../support/calculator.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

const { explanations, workedReason } = await openExplanations();
const keys = Object.keys(explanations);
const habits: readonly UnitHabit[] = ["metric", "british", "american"];

function factsOf(which: number, units: UnitHabit) {
  const values = sectionValues(demoJob(which), { units });
  const facts = reasonFacts((name) => values[name], values.answerIndex);
  if (!facts) throw new Error("no facts");
  return { facts, values };
}

describe.each(demos.flatMap(({ id }, which) => habits.map((units) => [id, units, which] as const)))(
  "the reasons of %s in %s units",
  (_id, units, which) => {
    const { facts, values } = factsOf(which, units);
    const resultOf = (key: string) => workedReason(key, facts, units)?.value ?? "";

    it.each(keys)("%s has its result, and every line with numbers comes out on a calculator", (key) => {
      const reason = workedReason(key, facts, units);
      expect(reason?.value).toMatch(/\d/);
      for (const line of reason?.lines ?? []) {
        const { left, right } = bothSides(line);
        expect(left[0], line).toBeLessThanOrEqual(right[1]);
        expect(left[1], line).toBeGreaterThanOrEqual(right[0]);
      }
    });

    it("gives the report's own results", () => {
      const { run } = facts;
      expect(resultOf("needed_km")).toBe(writeQuantity("distance", values.enough.needed_km, units));
      expect(resultOf("usable_kWh")).toBe(writeQuantity("energy", run.pack.usable_kWh, units));
      expect(resultOf("wall_Whpkm")).toBe(writeQuantity("energyUse", run.wall_Whpkm, units));
      expect(resultOf("range_km")).toContain(writeQuantity("distance", run.range_km, units));
      expect(resultOf("testMass_kg")).toBe(writeQuantity("mass", run.testMass_kg, units));
    });

    it("names every value and where it comes from", () => {
      for (const key of keys) {
        for (const line of reasonLines(facts.job, explanations[key].inputs, units, facts.packIndex)) {
          expect(line.label).not.toMatch(/[_*]/);
          expect(line.value ?? "", `${key}: ${line.path}`).not.toBe("");
          expect(line.from).not.toBe("");
        }
      }
    });
  },
);

describe("the calculator itself", () => {
  it("tells a right line from a wrong one", () => {
    const meets = (line: string) => {
      const { left, right } = bothSides(line);
      return left[0] <= right[1] && left[1] >= right[0];
    };
    expect(meets("38 km × 1.33 / 0.75 = 67.4 km")).toBe(true);
    expect(meets("38 km × 1.33 × 0.75 = 67.4 km")).toBe(false);
    expect(meets("38 km × 1.33 / 0.75 = 68.4 km")).toBe(false);
    expect(meets("peak: √((3 km)² + (4 km)²) = 5 km")).toBe(true);
    expect(meets("100 N / (1 + 0.0086 × (12 °C - 20 °C)) = 107 N")).toBe(true);
  });
});

describe("why a number is so", () => {
  const { facts } = factsOf(0, "metric");
  const lines = (key: string) => workedReason(key, facts, "metric")?.lines ?? [];
  const inputs = (key: string) => reasonLines(facts.job, explanations[key].inputs, "metric", facts.packIndex);
  const told = (key: string, path: string) => inputs(key).find((line) => line.path === path);

  it("puts the numbers into the range asked for", () => {
    const [line] = lines("needed_km");
    const [day_km, ratio, needed_km] = (line.match(/[\d.]+/g) ?? []).map(Number);
    expect(line).toMatch(/^38 km × 1\.\d+ = \d+(\.\d)? km$/);
    // As printed: both to three digits.
    expect(Math.abs(day_km * ratio - needed_km)).toBeLessThan(0.25);
    const { range_km, conditions } = facts.run;
    expect(ratio).toBeCloseTo(range_km / (conditions?.tenYearsWinter?.range_km ?? 0), 2);
  });

  it("has rolling resistance follow from what is shown, rise with speed and cold tyres in it", () => {
    const { steady, run } = facts;
    // Weight times 0.0136 alone falls short by the cold: 12 °C makes 1 / (1 - 0.0688) = 1.074 of it; speed adds 0.0004 · 0.36.
    const force_N = (run.testMass_kg * 9.81 * (0.0136 + 0.0004 * 0.6 ** 2)) / (1 + 0.0086 * (12 - 20));
    expect(steady?.speed_kmh).toBe(60);
    expect(steady?.rolling_N).toBeCloseTo(force_N, 9);
    expect(lines("rolling_N").at(-1)).toContain(
      "(0.0136 + 0.0004 × (60 km/h / 100 km/h)²)) / (1 + 0.0086 × (12 °C - 20 °C))",
    );
    expect(told("rolling_N", "environment.temperature_degC")?.value).toBe("12 °C");
    expect(told("rolling_N", "vehicle.tyres.followsTemperature")?.value).toBe("yes");
  });

  it("lists what a range hangs on: road, weather, what draws while standing, braking, and the ends of the charge", () => {
    const index = facts.packIndex;
    const paths = inputs("range_km").map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        "road",
        "accessories.standing_W",
        "accessories.dcdcEfficiency_frac",
        "environment.temperature_degC",
        "controller.regen.torque_Nm",
        `packs.${index}.ceiling_frac`,
        `packs.${index}.floor_frac`,
      ]),
    );
    expect(new Set(paths).size).toBe(paths.length);
  });

  it("tells tables and lists in short, with where they come from", () => {
    const { job, packIndex } = facts;
    expect(told("range_km", "driveline.gears.*.gear_ratio")).toMatchObject({
      value: "3.75, 2.3, 1.4, 1",
      from: "no. 3 handbook; the others not noted",
    });
    expect(told("range_km", "pack.layout")?.value).toContain(`5s${job.packs[packIndex].parallelModules}p`);
    // 30 cells of 2.4977 V and 4.1929 V: 74.93 V and 125.8 V
    expect(told("usable_kWh", "module.openCircuit")?.value).toContain("from 74.9 V empty to 126 V full");
    expect(told("usable_kWh", "module.openCircuit")?.from).toContain("published law");
    expect(told("range_km", "motor.loss")?.from).toBe("guessed");
  });

  it("calls a value usual where the job says nothing and it is the usual one, and not otherwise", () => {
    const of = (job: typeof facts.job) => reasonLines(job, ["allowance.winter_ratio", "allowance.aged_frac"], "metric");
    expect(of(facts.job).map(({ from, isOpen }) => [from, isOpen])).toEqual([
      ["usual value", true],
      ["usual value", true],
    ]);
    const others = of({ ...facts.job, allowance: { winter_ratio: 1.5, aged_frac: 0.8 } });
    expect(others.map(({ from, isOpen }) => [from, isOpen])).toEqual([
      ["chosen", false],
      ["chosen", false],
    ]);
  });

  it("has the usable energy's mean voltage agree with the curve it is of", () => {
    const { soc_frac, cell_V } = facts.job.module.openCircuit;
    const { ceiling_frac, floor_frac } = facts.job.packs[facts.packIndex];
    const at = (soc: number) => {
      const i = Math.min(
        soc_frac.findLastIndex((node) => node <= soc),
        soc_frac.length - 2,
      );
      return cell_V[i] + ((soc - soc_frac[i]) / (soc_frac[i + 1] - soc_frac[i])) * (cell_V[i + 1] - cell_V[i]);
    };
    const count = 2000;
    let sum_V = 0;
    for (let i = 0; i < count; i++) sum_V += at(floor_frac + ((i + 0.5) / count) * (ceiling_frac - floor_frac));
    const mean_V = Number(lines("usable_kWh")[1].match(/([\d.]+) V/)?.[1]);
    // Three figures are told; between its nodes the curve is read along straight lines here and may be bent in the model.
    expect(Math.abs(mean_V / ((30 * sum_V) / count) - 1)).toBeLessThan(0.005 + 0.001);
  });

  it("says of the motor and of the band where they come from", () => {
    const explained = (name: string) => sections.find((section) => section.name === name)?.explains;
    expect(explained("motor")).toEqual(["motor_Nm", "motorLoss_W"]);
    expect(explained("whatIsOpen")).toEqual(["band_km"]);
    expect(explanations["band_km"]?.formula).toMatch(
      /square root of the sum of the squares.*assumed to be independent/,
    );
    // 38 kW at 120 Nm: 38 000 / 120 = 316.7 rad/s = 3024 rpm
    expect(lines("motor_Nm")[0]).toContain("= 3020 rpm, at 108 V");
  });

  it("is told of every result that a section explains", () => {
    for (const key of sections.flatMap(({ explains = [] }) => explains)) expect(keys).toContain(key);
  });
});
