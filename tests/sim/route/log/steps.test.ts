import { expect, it } from "vitest";
import { CancelledError, runSteps, type Steps } from "../../../../sim/route/log/steps.ts";

function* halves(): Steps<string> {
  yield 0.25;
  yield 0.5;
  return "done";
}

it("runs work to its end and says how far it is", () => {
  const told: number[] = [];
  expect(runSteps(halves(), (done_frac) => told.push(done_frac))).toBe("done");
  expect(told).toEqual([0.25, 0.5, 1]);
});

it("gives up between two slices where it is asked to", () => {
  let slices = 0;
  expect(() => runSteps(halves(), undefined, () => ++slices > 2)).toThrow(CancelledError);
  expect(slices).toBe(3);
});
