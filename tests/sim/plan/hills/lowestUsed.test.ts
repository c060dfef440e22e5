import { expect, it } from "vitest";
import type { HillVerdict } from "../../../../sim/plan/hills/judgeHill.ts";
import { lowestUsed, notStarting } from "../../../../sim/plan/hills/lowestUsed.ts";
import { demoJob } from "../../../support/demoJob.ts";

const rows = [
  { gear: "first", range: "low" },
  { gear: "first", range: "high" },
  { gear: "second", range: "high" },
];
const verdict = { rows } as unknown as HillVerdict;
const job = demoJob();
const used = (driveline: Partial<(typeof job)["driveline"]>) =>
  lowestUsed({ ...job, driveline: { ...job.driveline, ...driveline } }, verdict);

it("is the one gear that the car is left in, and the lowest of those that are changed", () => {
  expect(used({ shifting: { kind: "fixed", gear: "second" } })).toBe(rows[2]);
  expect(used({ shifting: { kind: "fixed", gear: "first" } })).toBe(rows[1]);
  expect(used({ shifting: { kind: "bySpeed", gears: ["first", "second"], up_kmh: [30] } })).toBe(rows[1]);
});

it("is in low range where the transfer box stands in it", () => {
  const { transferBox } = demoJob(2).driveline;
  if (!transferBox) throw new Error("a demo without a transfer box");
  const low = { ...transferBox, range: "low" as const };
  expect(used({ shifting: { kind: "fixed", gear: "first" }, transferBox: low })).toBe(rows[0]);
});

it("is none where that gear is not judged", () => {
  expect(used({ shifting: { kind: "fixed", gear: "fifth" } })).toBeUndefined();
});

it("is told apart where the car does not start in it", () => {
  const judged = {
    rows: [
      { gear: "first", spare_frac: 0.1 },
      { gear: "second", spare_frac: -0.1 },
    ],
  } as unknown as HillVerdict;
  const inGear = (gear: string) =>
    notStarting({ ...job, driveline: { ...job.driveline, shifting: { kind: "fixed", gear } } }, judged);
  expect(inGear("second")).toBe(judged.rows[1]);
  expect([inGear("first"), inGear("fifth")]).toEqual([undefined, undefined]);
});
