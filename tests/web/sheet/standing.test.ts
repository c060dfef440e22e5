import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { PROGRAM_VERSION } from "../../../shared/programVersion.ts";
import { freeze, withPrediction } from "../../../sim/index.ts";
import { standingOf } from "../../../web/sheet/standing.ts";
import { sheetInput } from "./sheetByHand.ts";

const { job, runs, answer } = sheetInput();
const reports = { runs, answer } as unknown as Parameters<typeof freeze>[1];
const frozen = withPrediction(job, freeze(job, reports, "2026-03-03T09:30:00.000Z", ""));
const standing = (of: Job) => standingOf(of, runs, answer, "metric").replace(/\s/g, " ");

it("says that figures are not frozen where nothing is", () => {
  expect(standing(job)).toBe("Figures of today, not frozen as a prediction.");
});

it("says that they are those predicted, on which day and by which version, while nothing has changed", () => {
  expect(standing(frozen)).toBe(`Figures as predicted on 3 March 2026 (version ${PROGRAM_VERSION}).`);
});

it("names the range of then beside today's once a value has changed", () => {
  const heavier = { ...frozen, vehicle: { ...frozen.vehicle, load_kg: frozen.vehicle.load_kg + 100 } };
  expect(standing(heavier)).toMatch(/^Figures of today; as predicted on 3 March 2026: .+ a range of .*\d+ km/);
});

it("says that another version predicted it where that one is newer than this program", () => {
  const [prediction] = frozen.predictions;
  const newer = { ...frozen, predictions: [{ ...prediction, program: "999.0.0" }] } as Job;
  expect(standing(newer)).toContain("by version 999.0.0, which is newer than this program");
});
