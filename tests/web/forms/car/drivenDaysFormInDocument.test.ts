import { effect } from "@preact/signals-core";
import { html, render } from "lit-html";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { withPath } from "../../../../shared/job/path.ts";
import { createJobEditor, type JobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../../web/fields/fieldContext.ts";
import { drivenDaysForm } from "../../../../web/forms/car/drivenDaysForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const main = document.querySelector("main") as HTMLElement;
const press = (words: RegExp) => {
  const button = [...main.querySelectorAll("button")].find(({ textContent }) => words.test(textContent ?? ""));
  if (!button) throw new Error(`no button ${words}`);
  button.click();
};
const said = () => (main.textContent ?? "").replace(/\s+/g, " ");
const paste = (row: number, text: string) => {
  const event = Object.assign(new Event("paste", { bubbles: true, cancelable: true }), {
    clipboardData: { getData: () => text },
  });
  main.querySelector(`#field-year-daysDriven_km-${row}`)?.dispatchEvent(event);
};

let jobEditor: JobEditor;
let end = () => {};
const days = () => jobEditor.job.value.year?.daysDriven_km;
beforeEach(() => {
  jobEditor = createJobEditor({ job: { ...demoJob(), usualDay_km: 30 }, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  render(html``, main);
  end = effect(() => {
    render(drivenDaysForm(createForm(context)), main);
  });
});
afterEach(() => end());

describe("the list of a client's own days", () => {
  it("begins with the usual day, grows row by row, loses rows, and goes as a whole; each is undone by one step", () => {
    expect(main.querySelector("#field-year-spread_frac")).not.toBeNull();
    press(/Add the client's own days/);
    expect(days()).toEqual([30]);
    expect(main.querySelector("#field-year-spread_frac")).toBeNull();
    press(/Add a day/);
    expect(days()).toEqual([30, 30]);
    press(/Remove day 1/);
    expect(days()).toEqual([30]);
    press(/Remove the list of days/);
    expect(days()).toBeUndefined();
    jobEditor.undo();
    expect(days()).toEqual([30]);
  });

  it("takes a column pasted from a spreadsheet, in the unit of its head", () => {
    press(/Add the client's own days/);
    paste(0, "Distance (miles)\n10\n20\n5");
    // A mile is 1.609344 km.
    expect(days()?.map((km) => km / 1.609344)).toEqual([10, 20, 5].map((miles) => expect.closeTo(miles, 9)));
    expect(said()).toContain("Driven days: 3, typed");
  });

  it("keeps what can be no day beside its cell with the reason, and the others count", () => {
    press(/Add the client's own days/);
    paste(0, "12\n0\n-5\nfar");
    expect(days()?.[0]).toBe(12);
    const { drafts } = jobEditor;
    expect(Object.keys(drafts.value).sort()).toEqual([1, 2, 3].map((i) => `year.daysDriven_km.${i}`));
    for (const { problem } of Object.values(drafts.value)) expect(problem).toMatch(/\w/);
  });

  it("says where days are from that no log showed: a demo's are invented", () => {
    const vineyard = demos.map((_, i) => demoJob(i)).find(({ year }) => year?.daysDriven_km);
    if (!vineyard?.year) throw new Error("no demo has a list of days");
    const { year, origins } = vineyard;
    jobEditor.change("days", ({ job, drafts }) => ({ job: { ...job, year, origins: { ...origins } }, drafts }));
    expect(said()).toContain(`Driven days: ${year.daysDriven_km?.length}, typed`);
    expect(said()).toContain("Where they are from: invented:");
  });

  it("says that it is from a log, and how many of its days were typed since", () => {
    jobEditor.change("log", ({ job, drafts }) => ({
      job: {
        ...withPath(job, "year.daysDriven_km", [12, 30]),
        origins: { ...job.origins, "year.daysDriven_km": { from: "measured" } },
      },
      drafts,
    }));
    expect(said()).toContain("Driven days: 2, from a log");
    expect(said()).toContain("The usual day is their middle one: moving it makes all of them longer or shorter.");
    jobEditor.edit("year.daysDriven_km.1", "40", 40, { what: "Driven day" });
    expect(said()).toContain("Driven days: 2, from a log, 1 of them typed");
  });
});
