import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { inventedJob } from "../support/inventedJob.ts";
import { answered } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";
import { storedLoads } from "../support/storedRecords.ts";

// Another state arrives while the caret is in a field: from another tab, a dropped file, an earlier version.

const load = "#answer-field-vehicle-load_kg";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const saved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();

/** The notebook with the caret in the field of the load, a value typed there and stored. */
async function caretInLoad(): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const notebook = await openNotebook(browser, 1440, 900, false, true);
  const { page } = notebook;
  await page.locator(load).selectText();
  await page.keyboard.type("210");
  await expect.poll(() => storedLoads(page)).toEqual([210]);
  await saved(page);
  return notebook;
}

/** One more key at the beginning of the field that has the caret: it goes into what is shown. */
async function typeBefore(page: Page, key: string): Promise<void> {
  await page.keyboard.press("Home");
  await page.keyboard.type(key);
}

describe("a field with the caret in it", () => {
  it("shows what another tab stored, whatever kind of field, and the next key goes into that", async () => {
    const { page, faults } = await caretInLoad();
    const other = await page.context().newPage();
    await other.goto(inject("notebookUrl"));
    await other.waitForSelector(load);
    await openWorking(other, "theJob", "packs", "theRoad", "theCar", "ownCharts");
    await page.evaluate(() => {
      for (const head of document.querySelectorAll<HTMLElement>("[data-opens]"))
        if (/^(theJob|packs|theRoad|theCar|ownCharts)$/.test(head.dataset["opens"] ?? "")) head.click();
    });
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(load.slice(1));
    await other.fill(load, "175");
    await expect.poll(() => page.inputValue(load)).toMatch(/^175/);
    await typeBefore(page, "1");
    await expect.poll(() => storedLoads(page)).toEqual([1175]);

    await other.bringToFront();
    await expect.poll(() => other.inputValue(load)).toMatch(/^1,?175/);
    // By the keyboard: the note comes in above the other button, which moves.
    await other.getByRole("button", { name: "Write a note to Car" }).press("Enter");
    await other.getByRole("button", { name: "Make a chart" }).press("Enter");
    await expect.poll(() => page.locator("#field-notes-0-text, #own-0-caption").count()).toBe(2);
    const fields = [
      "field-title",
      "field-use",
      "field-packs-0-name",
      "field-notes-0-text",
      "own-0-caption",
      "typed-road",
    ];
    for (const id of fields) {
      await page.evaluate((field) => {
        for (
          let fold = document.getElementById(field)?.closest("details");
          fold;
          fold = fold.parentElement?.closest("details")
        )
          fold.open = true;
        document.getElementById(field)?.focus();
      }, id);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe(id);
      await other.locator(`#${id}`).evaluate((field) => {
        for (let fold = field.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
          fold.open = true;
      });
      await other.fill(`#${id}`, `of the other tab, ${id}`);
      await expect.poll(() => page.inputValue(`#${id}`), { message: id }).toBe(`of the other tab, ${id}`);
      await typeBefore(page, "x");
      await expect.poll(() => other.inputValue(`#${id}`), { message: id }).toBe(`xof the other tab, ${id}`);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("shows the job of a file that is dropped, and leaves the job before as it was", async () => {
    const { page, faults } = await caretInLoad();
    await page.evaluate(
      (text) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], "dropped.json", { type: "application/json" }));
        document.querySelector("h1")?.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true }));
      },
      jobText(inventedJob("Dropped", 333)),
    );
    await page.locator("h1", { hasText: "Dropped" }).waitFor();
    await expect.poll(() => page.inputValue(load)).toMatch(/^333/);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(load.slice(1));
    await typeBefore(page, "1");
    await expect.poll(() => storedLoads(page)).toEqual([210, 1333]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("shows the earlier version that is gone back to, and the next key goes into that", async () => {
    const { page, faults } = await caretInLoad();
    await page.locator(".jobs > summary").click();
    await page.getByText("Earlier versions of this job").click();
    await page.evaluate(() => {
      const { now } = Date;
      Date.now = () => now() + 10 * 60_000; // a rest long enough to begin another version
    });
    await page.fill(load, "99 kg");
    await saved(page);
    await page
      .getByRole("button", { name: /^Go back to this/ })
      .first()
      .waitFor();
    await page.focus(load);
    await page
      .getByRole("button", { name: /^Go back to this/ })
      .first()
      .evaluate((button: HTMLElement) => button.click());
    await expect.poll(() => page.inputValue(load)).toMatch(/^210/);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(load.slice(1));
    await typeBefore(page, "1");
    await expect.poll(() => storedLoads(page)).toEqual([1210]);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

it("no answer of the job before stands under the title of the next", async () => {
  const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
  await answered(page);
  await page.locator(".jobs > summary").click();
  const before = {
    title: await page.locator("h1").textContent(),
    say: await page.locator("#answer .say").textContent(),
  };
  await page.evaluate(
    (was) => {
      const mixed: string[] = [];
      Object.assign(window, { mixed });
      new MutationObserver(() => {
        const title = document.querySelector("h1")?.textContent ?? "";
        const say = document.querySelector("#answer .say")?.textContent ?? "";
        const summaries = [...document.querySelectorAll(".working .summary .result")].map(
          (each) => each.textContent ?? "",
        );
        if (title !== was.title && say === was.say) mixed.push(`${title}: ${say}`);
        if (title !== was.title && summaries.includes(was.summary)) mixed.push(`${title}: ${was.summary}`);
      }).observe(document.body, { childList: true, subtree: true, characterData: true });
    },
    { ...before, summary: (await page.locator("#theCar .summary .result").textContent()) ?? "" },
  );
  await page.getByRole("button", { name: /^Example: Vineyard/ }).click();
  await page.waitForFunction((title) => document.querySelector("h1")?.textContent !== title, before.title);
  await answered(page);
  expect(await page.locator("#answer .say").textContent()).not.toBe(before.say);
  expect(await page.evaluate(() => (window as unknown as { mixed: string[] }).mixed)).toEqual([]);
  expect(faults).toEqual([]);
  await page.context().close();
});
