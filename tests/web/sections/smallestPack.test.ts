import { describe, expect, it } from "vitest";
import { varyPack } from "../../../sim/plan/vary/varyPack.ts";
import { runSteps } from "../../../sim/route/log/steps.ts";
import { variedTable } from "../../../web/sections/parts/variedTable.ts";
import smallestPack from "../../../web/sections/smallestPack.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(1);
const values = sectionValues(job);
const { packStudy, besideDays } = values;
const result = smallestPack.compute({ packStudy, besideDays, job, units: "metric" });

describe("the working on the smallest pack", () => {
  it("lists the layouts that fit with their figures, and the others with the reason", () => {
    // The packs put beside one another are the first table.
    const [, ...tables] = smallestPack.plot(result, drawing(640));
    const rows = tables.flatMap((each) => ("rows" in each ? each.rows : []));
    const row = (name: string) => rows.find(([first]) => first === name);
    expect(row("10s2p")?.slice(1)).toEqual(["144 V", "130 V", "124 V", "94.8 A", "27.4 kWh", "266 kg"]);
    expect(row("13s to 48s")?.at(-1)).toBe("13s: 187 V full, the controller stops at 185 V: at most 12");
  });

  it("says which is the smallest that will do, in the readers' units, and in its summary", () => {
    expect(smallestPack.sentence(result)).toMatch(/^10s2p \(27\.4 kWh\) is the smallest that will do\./);
    expect(smallestPack.summary?.(result)).toBe("10s2p of 11 that fit");
    const british = smallestPack.compute({ packStudy, besideDays, job, units: "british" });
    expect(smallestPack.sentence(british)).toMatch(/The usual day of 27 miles ends with \d mile/);
  });

  it("offers what fits and is not compared yet, and puts it last under a name of its own", () => {
    const offers = smallestPack.offers?.(result) ?? [];
    expect(offers.map(({ words }) => words)).not.toContain("Make 10s2p (27.4 kWh) a candidate");
    const offer = offers.find(({ words }) => words === "Make 11s2p (30.1 kWh) a candidate");
    const { job: changed } = offer?.change({ job, drafts: {} }) ?? { job };
    expect(changed.packs).toHaveLength(job.packs.length + 1);
    expect(changed.packs.at(-1)).toMatchObject({
      name: "11s2p",
      seriesModules: 11,
      parallelModules: 2,
      floor_frac: 0.1,
    });
    const twice = offer?.change({ job: changed, drafts: {} }).job;
    expect(twice?.packs.at(-1)?.name).toBe("11s2p, 2");
  });

  it("offers nothing where a job has as many packs as it may", () => {
    const full = { ...job, packs: Array.from({ length: 12 }, (_, i) => ({ ...job.packs[0], name: `${i}` })) };
    expect(smallestPack.offers?.(smallestPack.compute({ packStudy, besideDays, job: full, units: "metric" }))).toEqual(
      [],
    );
  });
});

describe("packs beside the smallest", () => {
  // The piano tuner's client asked for 29 kWh.
  const tuner = demoJob(0);
  const { packStudy: study, besideDays: days } = sectionValues(tuner);
  const besideIn = (with_days: typeof days) => {
    const found = smallestPack.compute({ packStudy: study, besideDays: with_days, job: tuner, units: "metric" });
    const [table] = [...smallestPack.plot(found, drawing(640))];
    return { rows: table && "rows" in table ? table.rows : [], sentence: smallestPack.sentence(found) };
  };

  it("are a table with the one asked for, the days that each fails and its price, and the difference in a sentence", () => {
    const { rows, sentence } = besideIn(days);
    expect(rows.map(([name, role]) => [name, role])).toEqual([
      ["5s3p", "smallest"],
      ["5s4p", "next larger"],
      ["29 kWh", "asked for"],
    ]);
    for (const row of rows) {
      expect(row[6]).toMatch(/^\d+ of 240$/);
      expect(row[8]).toMatch(/^£?[\d ]+ to [\d ]+/);
    }
    expect(sentence).toMatch(
      /Beside 5s3p \(12\.6 kWh\), 29 kWh, as asked for, weighs \d+ kg more and goes \d+ km further when new\. At ten years it fails on/,
    );
  });

  it("have no days while the year is not driven", () => {
    const { rows, sentence } = besideIn(undefined);
    expect(rows.map((row) => row[6])).toEqual(["–", "–", "–"]);
    expect(sentence).not.toMatch(/At ten years it fails/);
  });
});

describe("what measuring would gain", () => {
  it("is a line for each open value that is worth one, the best first", () => {
    const varied = runSteps(varyPack(job, 2, values.road, { variants: 32, seed: 1 }));
    const table = variedTable(varied, "metric");
    const gains = table?.rows.map(([, , gain]) => Number.parseFloat(gain ?? "")) ?? [];
    expect(gains.length).toBeGreaterThan(0);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
    expect(table?.note).toMatch(/^28 kWh: on the usual day at ten years in winter it comes home/);
  });
  it("is nothing where nothing is open", () => {
    const closed = runSteps(varyPack({ ...job, origins: {} }, 2, values.road, { variants: 16, seed: 1 }));
    expect(variedTable(closed, "metric")).toBeUndefined();
  });
});
