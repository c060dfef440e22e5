import { render } from "lit-html";
import { expect, it } from "vitest";
import { keepingView } from "../../../../web/notebook/jobs/keepingView.ts";
import { jobsPlace, MOMENT_ms } from "../../../support/jobsPlace.ts";

function shown(...of: Parameters<typeof jobsPlace>) {
  const { here, asked } = jobsPlace(...of);
  const place = document.createElement("div");
  render(keepingView(here), place);
  const press = () => {
    for (const button of place.querySelectorAll("button")) button.click();
    return asked.map(([what]) => what);
  };
  return { text: place.textContent ?? "", isBad: place.querySelector(".is-bad") !== null, press };
}

const saved = { kind: "saved", at_ms: MOMENT_ms } as const;
const memory = { kind: "memory", unreadable: 0 } as const;

it("says that a job is saved and when, with nothing to do", () => {
  const { text, isBad, press } = shown({ status: saved });
  expect(text).toContain("Saved in this browser at 13:40.");
  expect(isBad).toBe(false);
  expect(press()).toEqual([]);
});

it("marks a job that is not saved or in this page only, and offers to save it as a file", () => {
  const refused = shown({ status: { kind: "refused", reason: "full", message: "quota" } });
  expect(refused.text).toContain("the browser has no room left");
  expect(refused.isBad).toBe(true);
  expect(refused.press()).toEqual(["exportFile"]);
  const held = shown({ status: saved, place: memory });
  expect(held.isBad).toBe(true);
  expect(held.text).toContain("database cannot be used");
  expect(held.press()).toEqual(["exportFile"]);
});

it("asks which of two states to go on with where another tab changed or deleted the job", () => {
  const changed = shown({ conflict: { kind: "changed" } });
  expect(changed.text).toContain("Another tab changed this job");
  expect(changed.press()).toEqual(["keepMine", "takeTheirs"]);
  expect(shown({ conflict: { kind: "removed" } }).text).toContain("Another tab deleted this job");
});

it("keeps news back while an earlier version is looked at", () => {
  const news = "Another tab took this up.";
  const told = shown({ news });
  expect(told.text).toContain(news);
  expect(told.press()).toEqual(["dismissNews"]);
  expect(shown({ news }, { isLooking: true }).text).not.toContain(news);
});
