import { expect, it } from "vitest";
import packs from "../../../web/sections/packs.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(); // its controller works from 75 to 140 V
const values = sectionValues(job);

/** The working for the first packs of the demo (5s2p, 5s3p) with so much usable energy. */
function told(usable_kWh: readonly number[], boundaries_V: { min_V?: number; max_V?: number } = {}) {
  const candidates = usable_kWh.map((energy_kWh, i) => {
    const run = values.runs.candidates[i];
    return { ...run, pack: { ...run.pack, usable_kWh: energy_kWh } };
  });
  const controller = { ...job.controller, ...boundaries_V };
  const result = packs.compute({
    job: { ...job, controller },
    runs: { ...values.runs, candidates },
    units: "metric",
  });
  const [table] = packs.plot(result, drawing());
  return {
    sentence: packs.sentence(result),
    summary: packs.summary?.(result),
    table: "rows" in table ? table : undefined,
  };
}

it("names the least and the most usable energy, whatever the order of the packs", () => {
  const { sentence, summary } = told([11, 6.5]);
  expect(sentence).toBe("2 packs are on the table, from 6.5 kWh usable (13 kWh, 5s3p) to 11 kWh (8 kWh, 5s2p).");
  expect(summary).toBe("2 compared, 6.5 kWh to 11 kWh usable; controller 75 V to 140 V");
});

it("says of a single pack what it has, and no span", () => {
  const { sentence, summary } = told([6.5]);
  expect(sentence).toBe("One pack is on the table, with 6.5 kWh usable (8 kWh, 5s2p).");
  expect(summary).toBe("1 pack, 6.5 kWh usable; controller 75 V to 140 V");
});

it("has each pack's volts empty, middle and full, with what the controller works from below them", () => {
  const { table } = told([6.5, 11], { min_V: 80 });
  const [volts] = table?.rows.map((row) => row.at(-1)?.split(" · ").map(Number.parseFloat)) ?? [];
  // 30 cells in series, full at 4.19 V by the curve of the demo or less below its ceiling.
  expect(volts).toHaveLength(3);
  expect(volts).toEqual(volts?.toSorted((a, b) => a - b));
  expect(volts?.[2]).toBeLessThanOrEqual(30 * 4.2);
  expect(table?.note).toBe(
    "The controller works from 80 V to 140 V. 5s2p: 5 modules in series, 2 such strings in parallel.",
  );
});

it("hands on what the drive found of voltages, and nothing of other things", () => {
  const [run] = values.runs.candidates;
  const [finding] = values.runs.candidates.flatMap(({ findings }) => findings);
  const found = (kind: typeof finding.kind) => {
    const candidates = [{ ...run, findings: [{ ...finding, kind }] }];
    return packs.attention?.(packs.compute({ job, runs: { ...values.runs, candidates }, units: "metric" }));
  };
  expect(found("packAboveCharger")).toHaveLength(1);
  expect(found("aboveGross")).toEqual([]);
});
