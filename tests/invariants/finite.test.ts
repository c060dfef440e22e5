import fc from "fast-check";
import { expect, it } from "vitest";
import { driveJob } from "../../sim/plan/drive/driveJob.ts";
import { arbitraryJob, arbitraryTrace } from "../support/arbitraryJob.ts";
import { fixedly } from "../support/fixedly.ts";

/** Paths of what is no finite number in a report, and how many numbers were looked at. */
function looked(value: unknown, path = "report"): { readonly strays: readonly string[]; readonly numbers: number } {
  if (typeof value === "number") return { strays: Number.isFinite(value) ? [] : [`${path}: ${value}`], numbers: 1 };
  if (ArrayBuffer.isView(value)) {
    const column = Array.from(value as Float64Array);
    const at = column.findIndex((entry) => !Number.isFinite(entry));
    return { strays: at < 0 ? [] : [`${path}[${at}]: ${column[at]}`], numbers: column.length };
  }
  if (typeof value !== "object" || value === null) return { strays: [], numbers: 0 };
  return Object.entries(value)
    .map(([key, inner]) => looked(inner, `${path}.${key}`))
    .reduce((sum, part) => ({ strays: [...sum.strays, ...part.strays], numbers: sum.numbers + part.numbers }), {
      strays: [],
      numbers: 0,
    });
}

it("has no NaN and no infinity anywhere in a report or its channels, for any valid job and road", () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryTrace, (job, trace) => {
      const report = driveJob(job, trace, { channels: true });
      const { strays, numbers } = looked(report);
      expect(strays).toEqual([]);
      expect(numbers).toBeGreaterThan(19 * trace.time_s.length);
    }),
    fixedly(150),
  );
});
