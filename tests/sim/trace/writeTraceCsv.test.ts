import fc from "fast-check";
import { expect, it } from "vitest";
import { readTraceCsv } from "../../../sim/trace/readTraceCsv.ts";
import { cycleTrace, standardCycles } from "../../../sim/trace/standardCycles.ts";
import { writeTraceCsv } from "../../../sim/trace/writeTraceCsv.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

it.each(standardCycles.map(({ id }) => id))("writes %s as a file that reads back as the same trace", (id) => {
  const trace = cycleTrace(id, cycleTexts);
  const again = readTraceCsv(`${id}.csv`, writeTraceCsv(trace));
  expect(again.time_s).toEqual(trace.time_s);
  // 12 digits are written: half of the last one, relative, and a rounding of the unit.
  again.speed_mps.forEach((speed_mps, i) => {
    expect(Math.abs(speed_mps - trace.speed_mps[i])).toBeLessThanOrEqual(1e-11 * trace.speed_mps[i]);
  });
});

it("gives back the text of a table in km/h that is written in shortest digits", () => {
  const text = "time_s,speed_kmh,elevation_m\n0,0,12\n1,36.5,12.5\n2.5,0.1,13\n";
  expect(writeTraceCsv(readTraceCsv("a.csv", text))).toBe(text);
});

it("keeps any trace with heights through writing and reading", () => {
  const row = fc.record({
    dt_s: fc.integer({ min: 1, max: 50 }),
    speed_kmh: fc.integer({ min: 1, max: 4000 }),
    slope: fc.integer({ min: -20, max: 20 }),
  });
  fc.assert(
    fc.property(fc.array(row, { minLength: 2, maxLength: 30 }), (rows) => {
      let time = 0;
      let elevation_m = 3000;
      const lines = rows.map(({ dt_s, speed_kmh, slope }, i) => {
        if (i > 0) {
          time += dt_s;
          const run_m = ((speed_kmh + rows[i - 1].speed_kmh) / 20 / 3.6) * (dt_s / 10);
          elevation_m = Number((elevation_m + (slope / 100) * run_m).toPrecision(10));
        }
        return `${time / 10},${speed_kmh / 10},${elevation_m}`;
      });
      const trace = readTraceCsv("a.csv", ["time_s,speed_kmh,elevation_m", ...lines].join("\n"));
      const again = readTraceCsv("a.csv", writeTraceCsv(trace));
      expect(again.time_s).toEqual(trace.time_s);
      expect(again.profile?.elevation_m).toEqual(trace.profile?.elevation_m);
      expect(again.speed_mps.every((speed, i) => Math.abs(speed - trace.speed_mps[i]) <= 1e-11 * speed)).toBe(true);
    }),
  );
});
