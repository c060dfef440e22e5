import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { judgePack } from "../../../../sim/plan/layouts/judgePack.ts";
import { layoutsOf } from "../../../../sim/plan/layouts/layoutsOf.ts";
import { packRows } from "../../../../sim/plan/layouts/packRows.ts";
import { smallestPack } from "../../../../sim/plan/layouts/smallestPack.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const roadOf = (job: Job) => roadTrace(drivenRoad(job), cycleTexts);

const asked = (which: number, sizing: Partial<Job["sizing"]>): Job => {
  const job = demoJob(which);
  return { ...job, sizing: { ...job.sizing, ...sizing } };
};

describe("the smallest pack that will do", () => {
  it.each([
    [0, {}],
    [0, { day: "longest", condition: "winter", reserve_km: 10 }],
    [1, {}],
    [1, { day: "longest", condition: "new", reserve_km: 5 }],
    [2, { condition: "new" }],
  ] as const)("is the one that driving all of them finds, demo %i asked for %o", (which, sizing) => {
    const job = asked(which, sizing);
    const trace = roadOf(job);
    const layouts = layoutsOf(job, trace);
    const every = packRows(job, layouts.all).flat();
    const meeting = every.filter(({ pack }) => judgePack(job, pack, trace).meets);
    const least = meeting.sort((a, b) => a.nominal_kWh - b.nominal_kWh).at(0);
    const found = smallestPack(job, trace, layouts);
    expect(found.smallest?.pack.name).toBe(least?.pack.name);
    expect(found.smallest).toBeDefined();
    expect(found.fitting).toBe(every.length);
    expect(found.driven).toBeLessThanOrEqual(every.length);
    // Its neighbours: the one below fails, and the one above does it too.
    const kWh = least?.nominal_kWh ?? 0;
    const below = every.filter(({ nominal_kWh }) => nominal_kWh < kWh).sort((a, b) => a.nominal_kWh - b.nominal_kWh);
    expect(found.nextSmaller?.pack.name).toBe(below.at(-1)?.pack.name);
    if (found.nextSmaller) expect(found.nextSmaller.meets).toBe(false);
    const above = meeting.find(({ nominal_kWh }) => nominal_kWh > kWh);
    expect(found.nextLarger?.pack.name).toBe(above?.pack.name);
  });

  it("is no smaller where the whole band has to do it than where the values as taken do", () => {
    const kWh = (sure: Job["sizing"]["sure"]) => {
      const job = asked(0, { sure, reserve_km: 3 });
      const trace = roadOf(job);
      return smallestPack(job, trace, layoutsOf(job, trace)).smallest?.candidate.pack.nominal_kWh ?? 0;
    };
    expect(kWh("asTaken")).toBeGreaterThan(0);
    expect(kWh("wholeBand")).toBeGreaterThanOrEqual(kWh("asTaken"));
  });

  it("is sought kilowatt-hour by kilowatt-hour where packs are given whole", () => {
    const demo = demoJob(1);
    const whole = { energy_kWh: 20, nominal_V: 130, mass_kgpkWh: 9.5 };
    const job: Job = { ...demo, packs: [{ ...demo.packs[0], whole }] };
    const trace = roadOf(job);
    const { smallest, nextSmaller, fitting, driven } = smallestPack(job, trace, layoutsOf(job, trace));
    const energy_kWh = smallest?.pack.whole?.energy_kWh ?? 0;
    expect(energy_kWh).toBeGreaterThan(20);
    expect(nextSmaller?.pack.whole?.energy_kWh).toBe(energy_kWh - 1);
    expect(nextSmaller?.meets).toBe(false);
    // Above the car's plate none is looked at: 9.5 kg a kilowatt-hour.
    expect([fitting < 40, driven < 12]).toEqual([true, true]);
  });
});

describe("a pack that is held against a condition", () => {
  it("is not refused for a harder one, in which the car stands on the road", () => {
    // Against this wind on these tyres the car does not keep up with its road.
    const winter = { temperature_degC: -20, rolling_ratio: 5, drag_ratio: 3, wind_kmh: 120 };
    const weak = readJob({ ...Object(demos[0].document), conditions: { winter } });
    const trace = roadOf(weak);
    const judged = (condition: Job["sizing"]["condition"]) =>
      judgePack({ ...weak, sizing: { ...weak.sizing, condition } }, weak.packs[2], trace);
    const [now, cold] = [judged("new"), judged("winter")];
    expect(cold.fails).toBe("other");
    expect(cold.spare_km).toBe(Number.NEGATIVE_INFINITY);
    expect(now.left_km?.value).toBeGreaterThan(0);
  });
});
