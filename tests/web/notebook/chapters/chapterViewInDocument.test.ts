import { signal } from "@preact/signals-core";
import { render } from "lit-html";
import { expect, it } from "vitest";
import type { AnyChapter } from "../../../../web/chapters/parts/chapter.ts";
import { commonPosition } from "../../../../web/charts/parts/reading/commonPosition.ts";
import { EmptyFields } from "../../../../web/editing/emptied.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../../web/fields/fieldContext.ts";
import { chapterFrame, fillChapter } from "../../../../web/notebook/chapters/chapterView.ts";
import type { Reading } from "../../../../web/notebook/graph/graph.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { noRoads } from "../../../support/noRoads.ts";

const ready = (value: unknown, isLate = false): Reading<unknown> => ({ state: "ready", value, isLate });
const failed = (error: unknown): Reading<unknown> => ({ state: "failed", message: "", where: "road", error });

/** A chapter in its frame that says its value and draws nothing, with how often it was to be drawn. */
function chapter() {
  const drawn: unknown[] = [];
  const told: AnyChapter = {
    name: "day",
    title: "Day",
    working: "theJob",
    inputs: ["job"],
    compute: () => undefined,
    sentence: (value: string) => value,
    plot: (value: string) => void drawn.push(value) as undefined,
  };
  const place = document.createElement("div");
  render(chapterFrame(told), place);
  const whole = place.querySelector("#day") as HTMLElement;
  const reading = signal<Reading<unknown>>({ state: "waiting" });
  let tries = 0;
  fillChapter(told, reading, whole, {
    turns: { take: (_name, _urgency, work) => work(), finish: () => {} },
    context: createFieldContext(createJobEditor({ job: demoJob(), drafts: {} }), noRoads),
    common: commonPosition(),
    attempt: () => {},
    retry: () => void tries++,
    order: 0,
  });
  const sentence = () => whole.querySelector(".sentence")?.textContent?.trim();
  const isLate = () => whole.hasAttribute("data-late");
  return { whole, reading, drawn, sentence, isLate, tries: () => tries };
}

it("is marked late until its value is there, and says it then", () => {
  const { reading, sentence, isLate, drawn } = chapter();
  expect([sentence(), isLate(), drawn]).toEqual(["Calculating …", true, []]);
  reading.value = ready("A day of 38 km.");
  // A number stays on one line with its unit.
  expect([sentence(), isLate()]).toEqual(["A day of 38\u00a0km.", false]);
});

it("keeps what stands, marked late, while a newer value is on its way, and draws that once", () => {
  const { reading, sentence, isLate, drawn } = chapter();
  reading.value = ready("one");
  reading.value = ready("between", true);
  expect([sentence(), isLate(), drawn]).toEqual(["one", true, ["one"]]);
  reading.value = ready("two");
  reading.value = ready("two");
  expect([sentence(), isLate(), drawn]).toEqual(["two", false, ["one", "two"]]);
});

it("says that it failed and tries again, keeps nothing of before, and only waits for an empty field", () => {
  const { whole, reading, sentence, tries } = chapter();
  reading.value = ready("one");
  reading.value = failed(new Error("x"));
  expect(sentence()).toMatch(/^This could not be calculated\. .*Try again$/);
  expect(sentence()).not.toContain("one");
  whole.querySelector<HTMLElement>(".sentence button")?.click();
  expect(tries()).toBe(1);
  reading.value = failed(new EmptyFields(["usualDay_km"]));
  expect(sentence()).toMatch(/Waiting for “Usual day”: empty\.$/);
  expect(whole.querySelector(".sentence button")).toBeNull();
});

it("is drawn anew for the same value after it waited, as for another job", () => {
  const { reading, drawn, sentence } = chapter();
  reading.value = ready("one");
  reading.value = { state: "waiting" };
  expect(sentence()).toBe("Calculating …");
  reading.value = ready("one");
  expect(drawn).toEqual(["one", "one"]);
});
