import { signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import { fillAnswer } from "../../../web/answer/answerScreen.ts";
import type { ShownAnswer } from "../../../web/answer/shownAnswer.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";
import { answered } from "./answeredByHand.ts";

vi.stubGlobal("innerHeight", 900);

// Not enough, only just, enough and more: five packs, of which the picture has room for four.
const answer = answered([3, 4.4, 6, 9, 12]);

function screen(first: ShownAnswer = { answer, late: "none" }) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), units: "metric" }, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const shown = signal(first);
  const place = document.createElement("section");
  document.body.replaceChildren(place);
  const spoken = fillAnswer(place, shown, context, () => {}).spoken;
  const rows = () => [...place.querySelectorAll<HTMLElement>(".answer-table tbody tr")];
  const press = (words: string) => {
    const button = [...place.querySelectorAll("button")].find(({ textContent }) => textContent?.trim() === words);
    if (!button) throw new Error(`no button ${words}`);
    button.click();
  };
  return { jobEditor, context, shown, place, spoken, rows, press };
}

it("speaks for the pack recommended, and for another one that is pressed until the first is pressed again", () => {
  const { context, place, rows, press } = screen();
  const verdict = () => place.querySelector("h2")?.textContent ?? "";
  const recommended = answer.packs[answer.recommended ?? -1]?.name ?? "";
  expect(verdict().startsWith(recommended)).toBe(true);
  press("3 kWh");
  expect(verdict()).toMatch(/^3 kWh: not enough/);
  expect(rows().filter((row) => row.className === "is-chosen")).toHaveLength(1);
  press(recommended);
  expect(context.view.packIndex.value).toBeUndefined();
});

it("has four rows, and all of them where that is asked for, until another job is opened", () => {
  const { jobEditor, rows, press } = screen();
  expect(rows()).toHaveLength(4);
  press("all 5");
  expect(rows()).toHaveLength(5);
  press("show four");
  expect(rows()).toHaveLength(4);
  press("all 5");
  jobEditor.open({ job: jobEditor.job.value, drafts: {} });
  expect(rows()).toHaveLength(4);
});

it("keeps the table of before while an answer is late, says that it is, and speaks nothing", () => {
  const { shown, place, rows, spoken } = screen();
  expect(spoken.value).not.toBe("");
  const [row] = rows();
  shown.value = { answer, late: "all" };
  expect(place.dataset["late"]).toBe("all");
  expect(rows()[0]).toBe(row);
  expect(spoken.value).toBe("");
  expect([...place.querySelectorAll("button")].some(({ textContent }) => textContent === "Pin this")).toBe(true);
  expect(place.querySelector<HTMLButtonElement>(".pin button")?.disabled).toBe(true);
});

it("says that fields which cannot be read count with their last value, unless nothing is shown for another reason", () => {
  const aside = "Fields that cannot be read count with their last value.";
  const { jobEditor, shown, place } = screen();
  expect(place.textContent).not.toContain(aside);
  jobEditor.keepDraft("vehicle.load_kg", "?", "found no number", "Load");
  expect(place.textContent).toContain(aside);
  shown.value = { late: "all", failure: { words: "Fill in the usual day.", isEmpty: true } };
  expect(place.textContent).not.toContain(aside);
  expect(place.querySelector(".answer-table")).toBeNull();
});
