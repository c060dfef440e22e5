import { render } from "lit-html";
import { expect, it } from "vitest";
import { jobRow, removedRow } from "../../../../web/notebook/jobs/jobRow.ts";
import type { JobHead } from "../../../../web/store/database/jobRecord.ts";
import { jobHead, jobsPlace } from "../../../support/jobsPlace.ts";

/** The row of a job, while the one with the id "here" is open. */
function row(changes: Partial<JobHead>, page: Parameters<typeof jobsPlace>[1] = {}, view = jobRow) {
  const { here, asked } = jobsPlace({ current: { id: "here" } }, page);
  const place = document.createElement("ul");
  render(view(here, jobHead(changes)), place);
  const buttons = [...place.querySelectorAll("button")];
  const seen = (button: Element) =>
    [...button.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE).map((each) => each.textContent);
  const words = buttons.map((button) => seen(button).join("").trim());
  return { place, asked, words, press: (name: string) => buttons[words.indexOf(name)].click() };
}

it("does with another job what its button says, and with no other job", () => {
  const { asked, words, press, place } = row({ id: "there", title: "Van", note: "copy" });
  expect(words).toEqual(["Open", "Compare", "Copy", "Archive", "Save as a file", "Delete"]);
  for (const word of words) press(word);
  expect(asked).toEqual([
    ["open", "there"],
    ["compare", "Van", { id: "there" }],
    ["duplicate", "there"],
    ["archive", "there"],
    ["exportFile", "there"],
    ["remove", "there"],
  ]);
  expect(place.textContent).toContain("25 Nov 2026, 13:40. usual day 38 km; copy");
});

it("neither opens nor compares the job that is open, and has its file further up", () => {
  const { words, place } = row({ id: "here" });
  expect(words).toEqual(["Copy", "Archive", "Delete"]);
  expect(place.textContent).toContain("(open here)");
});

it("brings an archived job back to the list, and a deleted one from the deleted", () => {
  const archived = row({ id: "there", shelf: "archived" });
  expect(archived.words).not.toContain("Archive");
  archived.press("Restore");
  expect(archived.asked).toEqual([["unarchive", "there"]]);
  const removed = row({ id: "there", shelf: "removed" }, {}, removedRow);
  removed.press("Bring it back");
  expect(removed.asked).toEqual([["undoRemove", "there"]]);
});

it("shows the text of the one job that could not be opened, as much as a page bears", () => {
  const unopened = { id: "there", text: "<".repeat(100_001) };
  expect(row({ id: "here" }, { unopened }).place.querySelector("pre")).toBeNull();
  // 100 000 letters, and on a line of its own that there is more.
  expect(row({ id: "there" }, { unopened }).place.querySelector("pre")?.textContent).toBe(`${"<".repeat(100_000)}\n…`);
  const whole = { id: "there", text: "<b>" };
  expect(row({ id: "there" }, { unopened: whole }).place.querySelector("pre")?.textContent).toBe("<b>");
});
