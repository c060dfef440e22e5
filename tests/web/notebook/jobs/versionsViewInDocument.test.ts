import { render } from "lit-html";
import { expect, it } from "vitest";
import { versionsView } from "../../../../web/notebook/jobs/versionsView.ts";
import type { JobVersion } from "../../../../web/store/jobsDoor.ts";
import { jobsPlace, MOMENT_ms } from "../../../support/jobsPlace.ts";

const version = (number: number, reason: string, isPresent: boolean): JobVersion => ({
  number,
  reason,
  isPresent,
  startedAt_ms: MOMENT_ms,
  endedAt_ms: MOMENT_ms,
  edits: 1,
});
const versions = [version(3, "load 150 kg", true), version(2, "load 120 kg", false)];

function shown(page: Parameters<typeof jobsPlace>[1]) {
  const { here, asked } = jobsPlace({ current: { id: "a" } }, page);
  const place = document.createElement("div");
  render(versionsView(here), place);
  return { asked, items: [...place.querySelectorAll("li")], text: place.textContent };
}

it("offers to look at an earlier version, to compare it and to go back to it, and nothing of the present one", () => {
  const { items, asked } = shown({ versions });
  expect(items.map((item) => item.querySelectorAll("button").length)).toEqual([0, 3]);
  expect(items[0].textContent).toContain("25 Nov 2026, 13:40, now");
  expect(items[1].textContent).not.toContain("now");
  for (const button of items[1].querySelectorAll("button")) button.click();
  expect(asked).toEqual([
    ["lookAt", versions[1]],
    ["compare", "load 120 kg", { id: "a", version: 2 }],
    ["restore", "a", 2],
  ]);
});

it("tells whoever hears the page which version a button is for", () => {
  const { items } = shown({ versions });
  for (const button of items[1].querySelectorAll("button")) expect(button.textContent).toContain(": load 120 kg");
});

it("says that they are being fetched until they are there", () => {
  expect(shown({ versions: undefined }).text).toContain("Being fetched");
});
