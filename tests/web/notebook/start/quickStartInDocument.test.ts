import { signal } from "@preact/signals-core";
import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { ownCar } from "../../../../web/notebook/start/ownCar.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

// lit-html takes the document that stands when it is loaded.
const { window } = new JSDOM("<!doctype html><body></body>");
const { document, Node, HTMLElement, HTMLInputElement, Event } = window;
const requestAnimationFrame = (run: () => void) => run();
Object.assign(globalThis, { window, document, Node, HTMLElement, HTMLInputElement, Event, requestAnimationFrame });
HTMLElement.prototype.scrollIntoView = () => {}; // nothing is laid out here
const { createFieldContext } = await import("../../../../web/fields/fieldContext.ts");
const { quickStart } = await import("../../../../web/notebook/start/quickStart.ts");

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
