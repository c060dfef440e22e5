import { expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob();
const read = (driveline: object) => readJob({ ...job, driveline: { ...job.driveline, ...driveline } });

it("knows whether the clutch is kept, and how long a change of gear takes", () => {
  const { driveline } = read({ coupling: "direct", change_s: 1.5 });
  expect(driveline).toMatchObject({ coupling: "direct", change_s: 1.5 });
});

it.each([
  [{ change_s: 10.1 }, /driveline\.change_s: found 10\.1 s, 0 to 10 s allowed/],
  [{ change_s: -1 }, /driveline\.change_s: found -1 s, 0 to 10 s allowed/],
  [{ coupling: "fluid" }, /driveline\.coupling: found "fluid"/],
])("refuses %j with its place", (driveline, message) => {
  expect(() => read(driveline)).toThrow(message);
});
