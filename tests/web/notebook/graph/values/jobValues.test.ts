import { signal } from "@preact/signals-core";
import { expect, it } from "vitest";
import type { Job } from "../../../../../shared/job/job.ts";
import { createGraph } from "../../../../../web/notebook/graph/graph.ts";
import { jobValues } from "../../../../../web/notebook/graph/values/jobValues.ts";
import { demoJob } from "../../../../support/demoJob.ts";

const NAMES = ["machine", "use", "drivetrain", "doubts"];

/** The parts of the job, and which of them are another object after a change of the job. */
function parts(...emptied: readonly string[]) {
  const job = signal<Job>(demoJob());
  const graph = createGraph(jobValues(job, signal(emptied)));
  const now = () =>
    NAMES.map((name) => {
      const reading = graph.read(name).value;
      return reading.state === "ready" ? reading.value : reading.state;
    });
  const changed = (change: (before: Job) => Partial<Job>) => {
    const before = now();
    job.value = { ...job.value, ...change(job.value) };
    const after = now();
    return NAMES.filter((_, i) => before[i] !== after[i]);
  };
  return { changed, standing: () => NAMES.filter((_, i) => now()[i] !== "failed") };
}

it("stays the same object through a change that no study hangs on", () => {
  const { changed } = parts();
  expect(changed(() => ({ title: "Another", notes: [{ after: "packs", text: "measure" }] }))).toEqual([]);
  expect(changed((job) => ({ packs: job.packs.map((pack) => ({ ...pack })) }))).toEqual([]);
});

it("is another where it holds what changed, and only there", () => {
  const { changed } = parts();
  expect(changed(() => ({ usualDay_km: 51 }))).toEqual(["use"]);
  expect(changed((job) => ({ packs: job.packs.map((pack) => ({ ...pack, isAskedFor: true })) }))).toEqual(["use"]);
  // The load moves no part of the drivetrain, and the motor is one.
  expect(changed(({ vehicle }) => ({ vehicle: { ...vehicle, load_kg: 333 } }))).toEqual(["machine", "use", "doubts"]);
  expect(changed(({ motor }) => ({ motor: { ...motor, mass_kg: 61 } }))).toEqual(NAMES);
  expect(changed(({ origins }) => ({ origins: { ...origins, "motor.mass_kg": { from: "guessed" } } }))).toEqual([
    "doubts",
  ]);
});

it("waits for an emptied field that it needs, and for no other", () => {
  expect(parts("vehicle.kerb_kg").standing()).toEqual(["doubts"]);
  expect(parts("usualDay_km").standing()).toEqual(["machine", "drivetrain", "doubts"]);
  expect(parts("accessories.items.0.winterDuty_frac").standing()).toEqual(["machine", "drivetrain", "doubts"]);
  expect(parts("engine.ratedPower_kW", "costs.work_perh", "packs.1.cellPrice", "notes.0.text").standing()).toEqual(
    NAMES,
  );
});
