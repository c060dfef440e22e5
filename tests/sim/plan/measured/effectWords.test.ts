import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { noChange } from "../../../../sim/plan/measured/adjustModel.ts";
import type { CarFit, Fitted } from "../../../../sim/plan/measured/describeFit.ts";
import { effectWords } from "../../../../sim/plan/measured/effectWords.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";
import { samplesOf, times } from "./logsByHand.ts";

/** 100 s at 10 m/s against 140 N of rolling resistance: 1400 W and 38.9 Wh/km; 300 W of accessories are 8.3 Wh/km. */
const job = bareJob({
  vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.0101936, followsTemperature: false } },
  accessories: { standing_W: 300 },
});
const model = prepare(job, job.packs[0]);
const parts = [{ start_s: 0, trace: steadyTrace(10, 100, 1) }];
const samples = samplesOf(times(99, 400), times(99, 4));
const fitted = (id: Fitted["id"], value: number, start: number): Fitted => ({
  id,
  value,
  start,
  low: value - 0.01,
  high: value + 0.01,
  ownHalf: 0.01,
  before: 0.1,
  alike: [],
});

describe("what the log corrected", () => {
  const words = (fits: readonly Fitted[], change: Partial<CarFit["change"]>) => {
    const fit: CarFit = {
      fitted: fits,
      left: [],
      mixed: [],
      change: { ...noChange, ...change },
      misfit_ratio: 1,
      segments: 20,
    };
    return effectWords(job, model, fit, { parts, samples, start_frac: 0.9 }).map((each) => messageIn(each, "metric"));
  };
  it("is said with what it makes of the use, the greatest effect first", () => {
    const rolling = fitted("rolling", 1.2, 1);
    const drag = fitted("drag", 1.1, 1);
    const [first, second] = words([drag, rolling], { rolling_ratio: 1.2, drag_ratio: 1.1 });
    // A fifth of 140 N is 28 N, 7.78 Wh/km, over the 99 of 100 seconds that have a sample. The air asks nothing of this car.
    expect(first).toMatch(/^Rolling resistance.* It makes 7\.7 Wh\/km more\.$/);
    expect(second).not.toMatch(/It makes/);
  });
  it("says that it makes less where it does", () => {
    expect(words([fitted("rolling", 0.8, 1)], { rolling_ratio: 0.8 })[0]).toMatch(/It makes 7\.7 Wh\/km less\.$/);
  });
});
