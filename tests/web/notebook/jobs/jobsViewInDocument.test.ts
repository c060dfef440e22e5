import { render } from "lit-html";
import { expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { jobsView } from "../../../../web/notebook/jobs/jobsView.ts";
import { jobHead, jobsPlace } from "../../../support/jobsPlace.ts";

function shown(...of: Parameters<typeof jobsPlace>) {
  const { here, asked } = jobsPlace(...of);
  const place = document.createElement("div");
  render(jobsView(here), place);
  const folds = [...place.querySelectorAll("details details > summary")].map(({ textContent }) => textContent);
  const button = (words: RegExp) =>
    [...place.querySelectorAll("button")].find(({ textContent }) => words.test(textContent?.trim() ?? ""));
  return { place, folds, asked, button };
}

it("puts each job on its shelf, and has no fold for a shelf that is empty", () => {
  const list = [
    jobHead({ id: "a", title: "Saloon" }),
    jobHead({ id: "b", title: "Van", shelf: "archived" }),
    jobHead({ id: "c", title: "Lorry", shelf: "archived" }),
    jobHead({ id: "d", title: "Coupé", shelf: "removed" }),
  ];
  const { folds, place } = shown({ list });
  expect(folds).toEqual(["Archived (2)", "Deleted, and not yet gone (1)", "Earlier versions of this job"]);
  const titles = [...place.querySelectorAll("ul.job-list")].map((each) =>
    [...each.querySelectorAll("strong")].map(({ textContent }) => textContent),
  );
  expect(titles).toEqual([["Saloon"], ["Van", "Lorry"], ["Coupé"]]);
  expect(shown().folds).toEqual(["Earlier versions of this job"]);
});

it("opens the file that was chosen, and can be given the same one again", () => {
  const { place, asked } = shown();
  const input = place.querySelector("#job-file") as HTMLInputElement;
  const file = { name: "saloon.json" };
  Object.defineProperty(input, "files", { value: [file] });
  input.dispatchEvent(new Event("change"));
  expect(asked).toEqual([["importFile", file]]);
  expect(input.value).toBe("");
});

it("brings the last deleted job back, begins from an example, and saves this job as a file", () => {
  const [demo] = demos;
  const { asked, button } = shown({}, { removedLast: "d", demos: [demo] });
  button(/^Bring it back/)?.click();
  button(/^Example: /)?.click();
  button(/^Save this job/)?.click();
  expect(asked.map(([what]) => what)).toEqual(["undoRemove", "create", "exportFile"]);
  expect(shown().button(/^Bring it back/)).toBeUndefined();
});

it("keeps saving to a file only where the browser can, and asks for versions as their fold is opened", () => {
  expect(shown().button(/^Keep saving to a file/)).toBeUndefined();
  expect(shown({ canLinkFile: true }).button(/^Keep saving to a file/)).toBeDefined();
  const { place, asked } = shown();
  const fold = place.querySelector("details details") as HTMLDetailsElement;
  fold.dispatchEvent(new Event("toggle")); // closed
  expect(asked).toEqual([]);
  fold.open = true;
  fold.dispatchEvent(new Event("toggle"));
  expect(asked.map(([what]) => what)).toContain("askVersions");
});
