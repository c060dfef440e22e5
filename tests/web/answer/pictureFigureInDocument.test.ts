import { computed, signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import { pictureFigure } from "../../../web/answer/pictureFigure.ts";
import type { ShownAnswer } from "../../../web/answer/shownAnswer.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";
import { answered } from "./answeredByHand.ts";

vi.stubGlobal("innerHeight", 900);

const answer = answered([3, 4.4, 6]);

/** The picture of three packs with the middle one chosen, in metric units. */
function figure(first: ShownAnswer = { answer, late: "none" }) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), units: "metric" }, drafts: {} });
  const shown = signal(first);
  const standing = computed(() => shown.value.answer);
  const chosen = signal<number | undefined>(1);
  const choose = vi.fn((index: number) => {
    chosen.value = index;
  });
  const place = document.createElement("div");
  document.body.replaceChildren(place);
  const context = createFieldContext(jobEditor, noRoads);
  pictureFigure(place, { shown, standing, rows: signal([0, 1, 2]), chosen, choose, context });
  const [picture, reading] = [...place.children] as [HTMLElement, HTMLElement];
  const press = (key: string, held: { ctrlKey?: boolean } = {}) =>
    picture.dispatchEvent(new KeyboardEvent("keydown", { key, cancelable: true, ...held }));
  const words = () => (reading.textContent ?? "").replace(/\s+/g, " ").trim();
  return { shown, choose, jobEditor, picture, words, press };
}

it("chooses the pack above or below by keys, and stays at the ends", () => {
  const { press, choose } = figure();
  for (const key of ["ArrowDown", "ArrowDown", "ArrowUp", "ArrowUp", "ArrowUp"]) press(key);
  expect(choose.mock.calls.map(([index]) => index)).toEqual([2, 2, 1, 0, 0]);
});

it("leaves keys alone that it has no use for, or that are held with another", () => {
  const { press, choose } = figure();
  expect(press("Tab")).toBe(true); // not prevented
  expect(press("ArrowDown", { ctrlKey: true })).toBe(true);
  expect(press("ArrowDown")).toBe(false);
  expect(choose).toHaveBeenCalledTimes(1);
});

it("reads along the picture from nothing left on, until it is let go or another job is opened", () => {
  const { press, words, picture, jobEditor } = figure();
  const key = words();
  expect(key).toContain("Kilometres left on coming home.");
  press("Home");
  expect(words()).not.toBe(key);
  const line = () => picture.querySelector(".reading-line")?.getAttribute("x1");
  const at0 = Number(line());
  press("PageUp");
  expect(Number(line())).toBeGreaterThan(at0);
  press("PageDown");
  expect(Number(line())).toBeCloseTo(at0, 6);
  press("Escape");
  expect(words()).toBe(key);
  expect(line()).toBeUndefined();
  press("Home");
  jobEditor.open({ job: jobEditor.job.value, drafts: {} });
  expect(words()).toBe(key);
});

it("says that it calculates only after a fifth of a second, so that words do not flicker, and at once where there is nothing yet", () => {
  vi.useFakeTimers();
  try {
    const { shown, words } = figure();
    const key = words();
    shown.value = { answer, late: "all" };
    vi.advanceTimersByTime(199);
    expect(words()).toBe(key);
    vi.advanceTimersByTime(1);
    expect(words()).toBe("Calculating. The grey figures are for the job before the last change.");
    shown.value = { answer, late: "none" };
    expect(words()).toBe(key);
    const first = figure({ late: "all" });
    expect(first.words()).toBe("Calculating.");
    expect(first.picture.querySelector("svg")).toBeNull();
  } finally {
    vi.useRealTimers();
  }
});
