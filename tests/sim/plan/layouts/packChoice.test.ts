import { describe, expect, it } from "vitest";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { packChoice } from "../../../../sim/plan/layouts/packChoice.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const roadOf = (job: Job) => roadTrace(drivenRoad(job), cycleTexts);

const asked = (which: number, sizing: Partial<Job["sizing"]>): Job => {
  const job = demoJob(which);
  return { ...job, sizing: { ...job.sizing, ...sizing } };
};

describe("what is said of it", () => {
  const sentences = (job: Job) => packChoice(job, roadOf(job)).sentences.map((each) => messageIn(each, "metric"));

  it("names it, why the next smaller fails and on which day, and what the next larger would add", () => {
    const [first, second, third] = sentences(asked(1, {}));
    expect(first).toMatch(
      /^10s2p \(27\.4 kWh\) is the smallest that will do\. The usual day of 43\.5 km ends with \d km left, ten years, winter\.$/,
    );
    expect(second).toMatch(
      /^Why not 9s2p \(24\.7 kWh\): the usual day of 43\.5 km ends \d km short, ten years, winter\.$/,
    );
    expect(third).toMatch(
      /^11s2p \(30\.1 kWh\) would go \d km further, weighs 27 kg more, takes \d+ Wh\/km in place of \d+ Wh\/km, and charges \d\.\d h longer\. Its cells cost \d+ to \d+ EUR more\.$/,
    );
  });

  it("gives the reason of the next smaller one where that does not even fit", () => {
    expect(sentences(asked(0, {}))[1]).toMatch(
      /^No smaller one fits this car\. 5s2p: \d+ A in each string .*: at least 3 strings\.$/,
    );
  });

  it("says what comes nearest, on which day it fails and what would have to change where none will do", () => {
    const job = asked(1, { day: "longest" });
    const [none, nearest, change] = sentences(job);
    expect(none).toMatch(/^None of the packs that fit, up to 48 modules, does what is asked\.$/);
    expect(nearest).toMatch(/ comes nearest: the longest day of 62 km ends \d+ km short, ten years, winter\.$/);
    expect(change).toMatch(/^It would do with \d+ km less a day or with a charge on the way/);
  });

  it("says that nothing fits where nothing does, and where a reserve is what is missing", () => {
    const none = asked(0, { modulesMost: 3 });
    expect(sentences(none)).toEqual(["None of up to 3 modules fits this car: the reasons are in the list."]);
    const reserve = asked(0, { condition: "new", reserve_km: 500 });
    expect(sentences(reserve)[1]).toMatch(/ends with \d+ km left, new, and 500 km are asked for\.$/);
  });
});
