import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { roadsForm } from "../../../../web/forms/road/roadsForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

// Roads of the demo: udds, harbour, wltc, coast; the first is driven where none is named.
const page = (change: Partial<Job>) => formPage({ ...demoJob(), ...change }, roadsForm);

it("takes the road that is driven out of the job, and the first is driven then", () => {
  const { press, job, context, buttons } = page({ drivenRoad: "wltc" });
  expect(buttons()).toContain("Take “Published mixed cycle, class 3b” out of the job");
  press(/^Take “Published mixed cycle/);
  expect(job().roads.map(({ id }) => id)).toEqual(["udds", "harbour", "coast"]);
  expect(context.view.roadId.value).toBe("udds");
});

it("keeps the only road of a job", () => {
  const { buttons } = page({ roads: demoJob().roads.slice(0, 1) });
  expect(buttons().filter((words) => words.includes("out of the job"))).toEqual([]);
});

it("says where the road that is driven is from, with what was typed, and nothing of the others", () => {
  const origins = { "roads.2": { from: "guessed" as const, note: "from memory", typed: "3 km at 50 km/h" } };
  const { said } = page({ drivenRoad: "wltc", origins });
  expect(said("p.aside")).toBe("Published mixed cycle, class 3b: guessed, from memory. As typed: “3 km at 50 km/h”.");
  expect(page({ drivenRoad: "udds", origins }).said()).not.toContain("As typed");
});
