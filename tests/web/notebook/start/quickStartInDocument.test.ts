import { signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { ownCar } from "../../../../web/notebook/start/ownCar.ts";
import { quickStart } from "../../../../web/notebook/start/quickStart.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

vi.stubGlobal("requestAnimationFrame", (run: () => void) => run());

it("asks nothing of an example, and of a job of one's own once the questions are there", async () => {
  const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  const found = signal({ answer: "", doubt: "", measureFirst: [], failure: undefined });
  const start = quickStart(place, createFieldContext(jobEditor, noRoads), found);
  expect(place.textContent).toBe("");
  jobEditor.open({ job: ownCar(), drafts: {} });
  expect(place.textContent).toBe("Loading quick start …");
  await start.fetch();
  expect(place.querySelector("summary")?.textContent).toBe("Quick start");
  found.value = { ...found.value, answer: "13 kWh is enough." };
  expect(place.querySelector(".sentence")?.textContent).toBe("13 kWh is enough.");

  const questions = place.querySelector("details");
  expect(questions?.open).toBe(false);
  start.begin();
  expect(questions?.open).toBe(true);
  expect(document.activeElement?.id).toBe("first-field-vehicle-name");

  jobEditor.open({ job: demoJob(), drafts: {} });
  expect(place.textContent).toBe("");
});
