import { expect, it } from "vitest";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { packsToSample } from "../../../../sim/plan/answer/packsToSample.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

// 4.4 kWh: 44 km today, 11 km at ten years in winter, so 1 km left of 10. A kilometre of today's range is a quarter there.
const candidate = inventedCandidate(4.4);
const asked = (...effects_km: readonly number[]) => {
  const unknowns = effects_km.map((km) => inventedUnknown(44, km, km));
  return packsToSample(answerFor(inventedUse(), [candidate], [unknowns]));
};

it("asks for many variants where the verdict hangs on where the band ends", () => {
  // 2.7 km are 0.675 there: the band ends 0.325 km from home, less than half of that.
  expect(asked(2.7)).toEqual([0]);
  // 8 km are 2: 1 km short at the worst, just half the way down.
  expect(asked(8)).toEqual([0]);
});

it("does without where the band ends well on one side", () => {
  expect(asked(2.6)).toEqual([]);
  expect(asked(8.1)).toEqual([]);
  expect(asked()).toEqual([]);
});

it("has nothing to make surer of a pack that is not enough as taken, nor before the band is known", () => {
  const short = inventedCandidate(3.9);
  expect(packsToSample(answerFor(inventedUse(), [short], [[inventedUnknown(39, 4, 4)]]))).toEqual([]);
  expect(packsToSample(answerFor(inventedUse(), [candidate], undefined))).toEqual([]);
});
