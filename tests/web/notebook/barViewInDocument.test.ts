import { render } from "lit-html";
import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import { barView } from "../../../web/notebook/barView.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

function bar(changes: Partial<Job> = {}, isShared = false) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), ...changes }, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const said: string[] = [];
  const place = document.createElement("div");
  const draw = () => {
    const press = { newJob: () => said.push("new"), share: () => said.push("share"), print: () => said.push("print") };
    render(barView({ jobEditor, context, announce: (words) => said.push(words), isShared, ...press }), place);
    return [...place.querySelectorAll("button")];
  };
  const named = (word: string) => draw().find(({ textContent }) => textContent?.trim().startsWith(word));
  const words = () => draw().map(({ textContent }) => textContent?.trim().replace(/\s+/g, " "));
  return { jobEditor, context, said, named, words, place };
}

it("undoes and redoes what it names, and can do neither where nothing was done", () => {
  const { jobEditor, said, named } = bar();
  expect([named("Undo")?.disabled, named("Redo")?.disabled]).toEqual([true, true]);
  const { units } = jobEditor.job.value;
  jobEditor.editPlain("units", "british", "the units");
  expect(named("Undo")?.disabled).toBe(false);
  const what = named("Undo")?.title;
  named("Undo")?.click();
  expect(jobEditor.job.value.units).toBe(units);
  expect(said).toEqual([`Undone: ${what}.`]);
  named("Redo")?.click();
  expect(jobEditor.job.value.units).toBe("british");
});

it("offers the view for the client only where a part is hidden from him", () => {
  expect(bar().words()).toEqual(["Undo", "Redo", "New job", "Share", "Print"]);
  const { words, named, context } = bar({ hiddenSections: ["money"] });
  expect(words().at(-1)).toBe("For the client");
  named("For the client")?.click();
  expect(context.view.isForClient.value).toBe(true);
  expect(words().at(-1)).toBe("Show all");
});

it("makes no jobs on a page that was sent, sends it no further and shows nothing that was hidden", () => {
  expect(bar({ hiddenSections: ["money"] }, true).words()).toEqual(["Undo", "Redo", "Print"]);
});

it("puts the units that were chosen into the job", () => {
  const { jobEditor, place, words } = bar({ units: "metric" });
  words();
  const select = place.querySelector("select") as HTMLSelectElement;
  expect(select.value).toBe("metric");
  select.value = "american";
  select.dispatchEvent(new Event("change"));
  expect(jobEditor.job.value.units).toBe("american");
});
