import { signal } from "@preact/signals-core";
import { expect, it, vi } from "vitest";
import type { Graph, Reading } from "../../../../web/notebook/graph/graph.ts";
import { paperOnPage } from "../../../../web/notebook/paper/paperOnPage.ts";
import { demoJob } from "../../../support/demoJob.ts";

const printed = vi.fn();
vi.stubGlobal("print", printed);
const scrolled = vi.fn();
HTMLElement.prototype.scrollIntoView = scrolled;

/** The choice of papers of a job whose packs are still being driven. */
async function papers(canOpen = true, settled: Promise<void> = Promise.resolve()) {
  const page = document.createElement("main");
  const place = document.createElement("section");
  page.append(place);
  document.body.replaceChildren(page);
  const read = () => signal<Reading<unknown>>({ state: "waiting" });
  const paper = paperOnPage(page, place, {
    graph: { read } as Pick<Graph, "read"> as Graph,
    job: signal(demoJob()),
    answer: () => undefined,
    isSettled: () => true,
    settled: () => settled,
    chosen: () => undefined,
    openWorkings: async () => canOpen,
  });
  await paper.fetch();
  const turn = () => new Promise((resolve) => setTimeout(resolve));
  const button = (words: string) =>
    [...place.querySelectorAll("button")].find(({ textContent }) => textContent?.trim() === words);
  const press = async (words: string) => {
    button(words)?.click();
    await turn();
  };
  const choose = async (key: string) => {
    const select = place.querySelector("select") as HTMLSelectElement;
    select.value = key;
    select.dispatchEvent(new Event("change"));
    await turn();
  };
  printed.mockClear();
  scrolled.mockClear();
  return { page, place, turn, press, choose, button, shown: () => place.querySelector(".paper")?.textContent ?? "" };
}

it("previews what can be drawn by now, says why the rest cannot, and keeps nothing once it is closed", async () => {
  const { press, choose, shown, page } = await papers();
  expect(shown()).toBe("");
  await press("Preview");
  expect(shown()).toMatch(/^The packs are still being driven/);
  await choose("visit");
  expect(page.dataset["paper"]).toBe("visit");
  expect(shown()).not.toMatch(/still being/);
  expect(shown().length).toBeGreaterThan(200);
  await press("Close the preview");
  expect(shown()).toBe("");
});

it("has no preview of the workings, which are on the page, and freezes predictions beside the client's sheet only", async () => {
  const { choose, button, place } = await papers();
  expect([button("Preview") !== undefined, place.querySelector(".prediction") !== null]).toEqual([true, true]);
  await choose("workings");
  expect([button("Preview") !== undefined, place.querySelector(".prediction") !== null]).toEqual([false, false]);
});

it("prints the workings once they are open, and goes to where it says why they cannot be", async () => {
  const open = await papers();
  await open.choose("workings");
  await open.press("Print it");
  expect([printed.mock.calls.length, scrolled.mock.calls.length]).toEqual([1, 0]);
  const missing = await papers(false);
  await missing.choose("workings");
  await missing.press("Print it");
  expect([printed.mock.calls.length, scrolled.mock.calls.length]).toEqual([0, 1]);
});

it("prints a sheet with the answer once its verdict stands, and a form to fill in at once", async () => {
  let settle: () => void = () => {};
  const { press, turn } = await papers(true, new Promise((resolve) => (settle = resolve)));
  await press("Print it");
  expect(printed).not.toHaveBeenCalled();
  settle();
  await turn();
  expect(printed).toHaveBeenCalledOnce();
  const form = await papers(true, new Promise(() => {}));
  await form.choose("visit");
  await form.press("Print it");
  expect(printed).toHaveBeenCalledOnce(); // counted anew with each page
});

it("draws the paper for a printer that is asked by the browser, and takes it out afterwards", async () => {
  const { choose, shown } = await papers();
  await choose("visit");
  window.dispatchEvent(new Event("beforeprint"));
  expect(shown().length).toBeGreaterThan(200);
  window.dispatchEvent(new Event("afterprint"));
  expect(shown()).toBe("");
});
