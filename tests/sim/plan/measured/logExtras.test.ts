import { expect, it } from "vitest";
import { logExtras } from "../../../../sim/plan/measured/logExtras.ts";

const samples = { time_s: Float64Array.of(100.5, 101.5, 104.5), count: 3 };
const time_s = Float64Array.from({ length: 10 }, (_, i) => i);
const column = (...values: readonly number[]) => Float64Array.from(values);
/** The log's clock is 99 s behind: its rows 2 to 5 lie within the drive. */
const extras = (columns: { motor_radps?: Float64Array; soc_frac?: Float64Array }) =>
  logExtras({ time_s, ...columns }, samples, { offset_s: 99 });

it("has nothing of a log without such columns, or with none of their values while the car drove", () => {
  expect(extras({})).toEqual({});
  const before = column(9, 9, ...Array.from({ length: 8 }, () => Number.NaN));
  expect(extras({ motor_radps: before, soc_frac: before })).toEqual({});
});

it("has the charge used from the first to the last value of the drive alone, gaps between them passed over", () => {
  expect(extras({ soc_frac: column(1, 1, 0.9, Number.NaN, 0.7, 0.6, 0.1, 0.1, 0, 0) }).socUsed_frac).toBeCloseTo(
    0.3,
    12,
  );
  expect(extras({ soc_frac: column(1, 1, 0.9, ...Array.from({ length: 7 }, () => Number.NaN)) })).toEqual({});
});

it("has the highest motor speed of the drive, either way round, but for two spikes in a thousand rows", () => {
  // 1001 rows from 0 to 1000 rad/s and back to front, of which two are of no motor: the third highest is that of row 998.
  const rows = Array.from({ length: 1001 }, (_, i) => (i === 500 ? 9000 : i === 600 ? -9000 : i % 2 === 0 ? i : -i));
  const drive = { time_s: Float64Array.of(0.5, 1000.5), count: 2 };
  const log = { time_s: Float64Array.from(rows, (_, i) => i), motor_radps: Float64Array.from(rows) };
  expect(logExtras(log, drive, { offset_s: 0.5 }).motor_radps).toBe(1000);
  // What stands outside of the drive is not of it.
  expect(logExtras(log, { time_s: Float64Array.of(0.5, 400.5), count: 2 }, { offset_s: 0.5 }).motor_radps).toBe(399);
});
