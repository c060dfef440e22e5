import { expect, it } from "vitest";
import { checkLength, checkTimes, checkUsable } from "../../../../sim/route/clean/checkCleanable.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

const log = madeLog([
  { time_s: 0, north_m: 0 },
  { time_s: 5e6, north_m: 9 },
]);
const segment = { from: 0, to: 2, bridges: [] };

it("refuses a log without times, which is a planned route", () => {
  expect(() => checkTimes(log)).not.toThrow();
  expect(() => checkTimes(madeLog([{ time_s: Number.NaN, north_m: 0 }]))).toThrow(
    /^made: found positions without times/,
  );
});

it("refuses a log of which no position and no speed is left, and says what there was", () => {
  const { fixes: bare } = madeLog([{ time_s: 0 }, { time_s: 1 }]);
  expect(() => checkUsable(log, log.fixes)).not.toThrow();
  expect(() => checkUsable(log, bare)).toThrow(/the receiver never had a lock/);
  expect(() => checkUsable(madeLog([{ time_s: 0 }]), bare)).toThrow(/found neither positions nor speeds/);
});

it("refuses more seconds than fit into memory at once", () => {
  // 5,000,000 s are 57.9 days.
  expect(() => checkLength(log, log.fixes, [segment])).toThrow(/found 58 days of logging, at most 46/);
  expect(() => checkLength(log, log.fixes, [{ from: 0, to: 1, bridges: [] }])).not.toThrow();
});
