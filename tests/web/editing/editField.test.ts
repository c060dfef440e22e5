import { expect, it } from "vitest";
import { edited } from "../../../web/editing/editField.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const before = { job: inventedJob(), drafts: {} };
const about = { what: "Kerb mass" };

it("puts a value with what was typed and where it comes from", () => {
  const { job, drafts } = edited(before, "vehicle.kerb_kg", "950", 950, { ...about, from: "measured" });
  expect(job.vehicle.kerb_kg).toBe(950);
  expect(job.origins["vehicle.kerb_kg"]).toMatchObject({ from: "measured", typed: "950" });
  expect(drafts).toEqual({});
});

it("keeps what the job refuses as a draft beside it", () => {
  const { job, drafts } = edited(before, "controller.max_V", "50", 50, about);
  expect(job).toBe(before.job);
  expect(drafts["controller.max_V"]).toMatchObject({ typed: "50", value: 50 });
});

it("takes drafts that contradicted each other one at a time once they fit together", () => {
  // 60 to 160 V before: 200 to 250 V needs both.
  const low = edited(before, "controller.min_V", "200", 200, about);
  expect(low.job.controller.min_V).toBe(60);
  const both = edited(low, "controller.max_V", "250", 250, about);
  expect(both.job.controller).toMatchObject({ min_V: 200, max_V: 250 });
  expect(both.drafts).toEqual({});
});

it("calls a job by its car as long as it has no title of its own", () => {
  const named = { job: { ...before.job, title: before.job.vehicle.name }, drafts: {} };
  expect(edited(named, "vehicle.name", "Coupe", "Coupe").job.title).toBe("Coupe");
  expect(edited(before, "vehicle.name", "Coupe", "Coupe").job.title).toBe(before.job.title);
});
