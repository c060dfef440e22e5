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
const { packStudy } = values;
const result = smallestPack.compute({ packStudy, job, units: "metric" });

describe("the working on the smallest pack", () => {
  it("lists the layouts that fit with their figures, and the others with the reason", () => {
    const rows = [...smallestPack.plot(result, drawing(640))].flatMap((each) => ("rows" in each ? each.rows : []));
    const row = (name: string) => rows.find(([first]) => first === name);
    expect(row("10s2p")?.slice(1)).toEqual(["144 V", "130 V", "124 V", "94.8 A", "27.4 kWh", "266 kg"]);
    expect(row("13s to 48s")?.at(-1)).toBe("13s: 187 V full, the controller stops at 185 V: at most 12");
  });

  it("says which is the smallest that will do, in the readers' units, and in its summary", () => {
    expect(smallestPack.sentence(result)).toMatch(/^10s2p \(27\.4 kWh\) is the smallest that will do\./);
    expect(smallestPack.summary?.(result)).toBe("10s2p of 11 that fit");
    const british = smallestPack.compute({ packStudy, job, units: "british" });
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
    expect(smallestPack.offers?.(smallestPack.compute({ packStudy, job: full, units: "metric" }))).toEqual([]);
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
