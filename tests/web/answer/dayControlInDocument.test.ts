import { effect } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import { expect, it } from "vitest";
import { createDayBefore, dayControl } from "../../../web/answer/dayControl.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../web/fields/fieldContext.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

/** The slider of a demo with other days, and what it takes to push it. */
function sliderOf(changes: Partial<ReturnType<typeof demoJob>>) {
  const jobEditor = createJobEditor({ job: { ...demoJob(), ...changes }, drafts: {} });
  const context = createFieldContext(jobEditor, noRoads);
  const day = createDayBefore();
  const main = document.querySelector("main") as HTMLElement;
  render(nothing, main);
  effect(() => {
    render(dayControl(createForm(context), day), main);
  });
  const slider = main.querySelector("input") as HTMLInputElement;
  const send = (kind: string) => slider.dispatchEvent(new Event(kind, { bubbles: true }));
  const push = (to: number) => {
    slider.value = String(to);
    send("input");
  };
  return { jobEditor, slider, push, letGo: () => send("change"), ticks: () => [...main.querySelectorAll(".day-tick")] };
}

it("reaches half as far again as the longest day, up to the next fifty, and 100 at least", () => {
  expect(sliderOf({ usualDay_km: 38, longestDay_km: 74, units: "metric" }).slider.max).toBe("150"); // 111
  expect(sliderOf({ usualDay_km: 20, longestDay_km: undefined, units: "metric" }).slider.max).toBe("100"); // 30
  expect(sliderOf({ usualDay_km: 20, longestDay_km: 200, units: "british" }).slider.max).toBe("200"); // 124.3 miles, 186.4
});

it("steps by one of the reader's own unit", () => {
  const { push, jobEditor } = sliderOf({ usualDay_km: 38, units: "british" });
  push(30);
  expect(jobEditor.job.value.usualDay_km).toBeCloseTo(30 * 1.609344, 9);
});

it("is one change from taking it to letting go, with a tick where it was before", () => {
  const { push, letGo, ticks, jobEditor } = sliderOf({ usualDay_km: 38, longestDay_km: 74, units: "metric" });
  expect(ticks()).toEqual([]);
  push(50);
  push(60);
  letGo();
  expect(jobEditor.job.value.usualDay_km).toBe(60);
  // 1 is at the left end, 150 at the right: 37 of 149.
  const at = (tick: Element | undefined) => Number(/--at:\s*([\d.]+)/.exec(tick?.getAttribute("style") ?? "")?.[1]);
  expect(at(ticks()[0])).toBeCloseTo(37 / 149, 6);
  push(80);
  expect(at(ticks()[0])).toBeCloseTo(59 / 149, 6);
  letGo();
  jobEditor.undo();
  expect(jobEditor.job.value.usualDay_km).toBe(60);
  jobEditor.undo();
  expect(jobEditor.job.value.usualDay_km).toBe(38);
});
