import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { inventedJob } from "../support/inventedJob.ts";
import { startChromium } from "../support/openNotebook.ts";
import { storedLoads } from "../support/storedRecords.ts";

// The field of the answer screen: it is there as soon as the job is.
const load = "#answer-field-vehicle-load_kg";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

async function opened(page: Page): Promise<Page> {
  await page.goto(inject("notebookUrl"));
  await page.waitForSelector(load);
  return page;
}

async function type(page: Page, text: string): Promise<void> {
  await page.fill(load, text);
  await page.locator(load).blur();
}

it("a job file dropped on the page becomes a job of its own and is opened", async () => {
  const page = await opened(await browser.newPage());
  const before = await storedLoads(page);
  await page.evaluate(
    (text) => {
      const files = new DataTransfer();
      files.items.add(new File([text], "dropped.json", { type: "application/json" }));
      document.querySelector("h1")?.dispatchEvent(new DragEvent("drop", { dataTransfer: files, bubbles: true }));
    },
    jobText(inventedJob("Dropped", 333)),
  );
  await page.locator("h1", { hasText: "Dropped" }).waitFor();
  expect(await page.inputValue(load)).toMatch(/^333/);
  await expect.poll(() => storedLoads(page)).toEqual([...before, 333]);
  await page.context().close();
});

describe("a job linked to a file on disk", () => {
  it("is saved there as typed, the handle outlives the page, and stopping stops it", async () => {
    const context = await browser.newContext();
    // The picker is the system's own and cannot be driven: it is answered with a real file of the browser's file system.
    await context.addInitScript(() => {
      Object.assign(window, {
        showSaveFilePicker: async () =>
          (await navigator.storage.getDirectory()).getFileHandle("linked.bellhousing.json", { create: true }),
      });
    });
    const page = await opened(await context.newPage());
    const onDisk = () =>
      page.evaluate(async () => {
        const root = await navigator.storage.getDirectory();
        const text = await (await (await root.getFileHandle("linked.bellhousing.json")).getFile()).text();
        return text === "" ? "" : (JSON.parse(text).vehicle.load_kg as number);
      });
    const unfoldJobs = () => page.locator(".jobs > summary").click();
    const button = (name: string) => page.getByRole("button", { name });
    await unfoldJobs();
    await button("Keep saving to a file").click();
    await expect.poll(onDisk, { timeout: 15_000 }).toBeGreaterThan(0);
    await type(page, "175 kg");
    await expect.poll(onDisk, { timeout: 15_000 }).toBe(175);

    await page.reload();
    await page.waitForSelector(load);
    await unfoldJobs();
    await button("Stop saving to the file").waitFor();
    await type(page, "180 kg");
    await expect.poll(onDisk, { timeout: 15_000 }).toBe(180);

    // Somebody else writes the file: it is not written over until that is asked for.
    await page.evaluate(async () => {
      const root = await navigator.storage.getDirectory();
      const writable = await (await root.getFileHandle("linked.bellhousing.json")).createWritable();
      await writable.write("{}");
      await writable.close();
    });
    await type(page, "185 kg");
    await page.getByText("was changed by somebody else since").waitFor();
    await button("Write over it").click();
    await expect.poll(onDisk, { timeout: 15_000 }).toBe(185);

    await button("Stop saving to the file").click();
    await button("Keep saving to a file").waitFor();
    await type(page, "190 kg");
    await expect.poll(() => storedLoads(page)).toContain(190);
    // A page that is left writes its linked file at once; by the time another file is written it would have been.
    await page.evaluate(async () => {
      dispatchEvent(new Event("pagehide"));
      const root = await navigator.storage.getDirectory();
      const writable = await (await root.getFileHandle("other.json", { create: true })).createWritable();
      await writable.write("{}");
      await writable.close();
    });
    expect(await onDisk()).toBe(185);
    await context.close();
  });
});
