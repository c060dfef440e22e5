import { effect } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import { expect, it } from "vitest";
import { type Answer, answerFor } from "../../../sim/index.ts";
import { pinView } from "../../../web/answer/pinView.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { inventedCandidate } from "../../support/inventedCandidate.ts";
import { noRoads } from "../../support/noRoads.ts";

const job = demoJob();
// 10 km for every kWh: 200 km and more for every pack, so that each has a verdict without bands.
const candidates = job.packs.map(({ name }, i) => inventedCandidate(20 + i, { name }));
const answer = answerFor(
  job,
  candidates,
  candidates.map(() => []),
);
const at = "2026-11-29T14:20:00.000Z";

function shown(of: Answer | undefined) {
  const jobEditor = createJobEditor({ job, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const main = document.querySelector("main") as HTMLElement;
  render(nothing, main);
  effect(() => {
    render(
      pinView(createForm(context), of, 0, () => new Date(at)),
      main,
    );
  });
  const press = (words: string) => {
    const button = [...main.querySelectorAll("button")].find(({ textContent }) => textContent === words);
    if (!button) throw new Error(`no button ${words}`);
    button.click();
  };
  return { jobEditor, main, press };
}

it("pins nothing while the answer is not settled", () => {
  const { main, press, jobEditor } = shown(undefined);
  expect(main.querySelector("button")?.disabled).toBe(true);
  press("Pin this");
  expect(jobEditor.job.value.pinned).toBeUndefined();
});

it("pins the state at the present moment, with the verdict of then for the pack that is looked at", () => {
  const { main, press, jobEditor } = shown(answer);
  press("Pin this");
  expect(jobEditor.job.value.pinned?.at).toBe(at);
  expect(main.textContent).toContain("as it is now");
  expect(main.textContent).toContain(`Then ${answer.packs[0]?.name} was ${answer.packs[0]?.verdict}.`);
});

it("goes back to what was pinned and unpins, each as a step that can be taken back", () => {
  const { press, jobEditor } = shown(answer);
  press("Pin this");
  jobEditor.edit("usualDay_km", "50", 50, { what: "Usual day" });
  press("Back to pinned");
  expect(jobEditor.job.value.usualDay_km).toBe(job.usualDay_km);
  expect(jobEditor.job.value.pinned).toBeDefined();
  press("Unpin");
  expect(jobEditor.job.value.pinned).toBeUndefined();
  jobEditor.undo();
  expect(jobEditor.job.value.pinned?.at).toBe(at);
});
