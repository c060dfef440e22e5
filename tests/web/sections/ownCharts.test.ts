import { expect, it } from "vitest";
import type { OwnChart } from "../../../shared/job/schema/chart.ts";
import ownCharts from "../../../web/sections/ownCharts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const values = sectionValues(demoJob());
const chart: OwnChart = { x: "motorSpeed", y: "motorTorque", packs: [], caption: "" };
const worked = (...charts: readonly OwnChart[]) => ownCharts.compute({ runs: values.runs, packIndex: 0, charts });

it("says in words what a chart without a caption shows, and the caption where there is one", () => {
  const [plain, coloured, named, blank] = worked(
    chart,
    { ...chart, colour: "motorLoss" },
    { ...chart, caption: " Where it works " },
    { ...chart, caption: "  " },
  ).charts;
  expect(plain.words).toBe("Motor torque against motor speed");
  expect(coloured.words).toBe("Motor torque against motor speed, coloured by motor and controller loss");
  expect(named.words).toBe("Where it works");
  expect(blank.words).toBe(plain.words);
});

it("draws the packs that a chart names, all of them where it names none, and no pack that is gone", () => {
  const [all, some, gone] = worked(
    chart,
    { ...chart, packs: ["17 kWh", "8 kWh"] },
    { ...chart, packs: ["50 kWh"] },
  ).charts.map(({ drawn }) => drawn.map(({ name, index }) => [name, index]));
  expect(all.map(([name]) => name)).toEqual(values.job.packs.map(({ name }) => name));
  expect(some).toEqual([
    ["8 kWh", 0],
    ["17 kWh", 2],
  ]);
  expect(gone).toEqual([]);
});

it("calls a figure by what it shows, so that it keeps its name when another chart goes", () => {
  const figures = ownCharts.plot(worked(chart, { ...chart, colour: "motorLoss", packs: ["8 kWh"] }), drawing());
  expect([...figures].map((each) => "name" in each && each.name)).toEqual([
    "motorTorqueAgainstMotorSpeed",
    "motorTorqueAgainstMotorSpeedByMotorLoss",
  ]);
});

it("counts the charts, and says what may be made where there is none", () => {
  const { title } = values.runs.trace;
  expect(ownCharts.sentence(worked())).toMatch(/^No chart of your own is made yet/);
  expect(ownCharts.summary?.(worked())).toBe("none");
  expect(ownCharts.sentence(worked(chart))).toBe(`One chart of your own, drawn from the same drive: ${title}.`);
  expect(ownCharts.sentence(worked(chart, chart))).toMatch(/^2 charts of your own, /);
  expect(ownCharts.summary?.(worked(chart, chart))).toBe("2");
});
