import { signal } from "@preact/signals-core";
import { html, render } from "lit-html";
import { expect, it } from "vitest";
import { commonPosition } from "../../../../web/charts/parts/reading/commonPosition.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { fillSections } from "../../../../web/notebook/below/fillSections.ts";
import { sectionFrame } from "../../../../web/notebook/figures/sectionView.ts";
import type { Graph, Reading } from "../../../../web/notebook/graph/graph.ts";
import type { AnySection } from "../../../../web/sections/parts/section.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const section = (name: string, changes: Partial<AnySection> = {}): AnySection => ({
  name,
  title: name,
  question: "",
  inputs: ["job"],
  given: (form) => html`${form.fields("vehicle.load_kg")}`,
  compute: () => undefined,
  plot: () => [],
  sentence: () => `${name} is found`,
  ...changes,
});

/** Two workings of which the first is open; what their graph says of them is the same for both. */
function page() {
  const sections = [section("car"), section("again", { idPrefix: "again-" })];
  const jobEditor = createJobEditor({ job: { ...demoJob(), hiddenSections: ["again"] }, drafts: {} });
  const place = document.createElement("div");
  render(html`${sections.map(sectionFrame)}<div data-place="otherNotes"></div>`, place);
  const open = signal<ReadonlySet<string>>(new Set(["car"]));
  const urgencies = new Map<string, number>();
  const read = () => signal<Reading<unknown>>({ state: "ready", value: 0, isLate: false });
  fillSections(sections, place, {
    graph: { read, retry: () => {} } as Partial<Graph> as Graph,
    context: createFieldContext(jobEditor, noRoads),
    turns: { take: (name, urgency) => void urgencies.set(name, urgency()), finish: () => {} },
    attempt: () => {},
    workings: {
      isOpen: (name) => open.value.has(name),
      areAllOpen: signal(false),
      openAll: () => {},
      closeAll: () => {},
      openFor: () => {},
    },
    common: commonPosition(),
    width_px: signal(640),
    before: 7,
  });
  const inputs = () => [...place.querySelectorAll("input")].map(({ id }) => id);
  const hidden = () => [...place.querySelectorAll("[data-not-for-client]")].map(({ id }) => id);
  return { place, open, jobEditor, urgencies, inputs, hidden };
}

it("has the fields of what is open only, under ids of their own where they stand twice", () => {
  const { open, inputs } = page();
  expect(inputs()).toEqual(["field-vehicle-load_kg"]);
  open.value = new Set(["car", "again"]);
  expect(inputs()).toEqual(["field-vehicle-load_kg", "again-field-vehicle-load_kg"]);
});

it("has the finding of each in its line, folded or not, and marks what the client does not see", () => {
  const { place, hidden, jobEditor } = page();
  expect([...place.querySelectorAll(".summary")].map(({ textContent }) => textContent)).toEqual([
    "car is found",
    "again is found",
  ]);
  expect(hidden()).toEqual(["again"]);
  jobEditor.change("Hidden", ({ job, drafts }) => ({ job: { ...job, hiddenSections: ["car"] }, drafts }));
  expect(hidden()).toEqual(["car"]);
});

it("draws workings in their order, after what stands above them, and nothing of a folded one", () => {
  const { open, urgencies } = page();
  expect([...urgencies]).toEqual([["car", 7]]);
  open.value = new Set(["car", "again"]);
  expect(urgencies.get("again")).toBe(8);
});
