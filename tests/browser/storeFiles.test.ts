import AxeBuilder from "@axe-core/playwright";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { inventedJob } from "../support/inventedJob.ts";
import { startChromium } from "../support/openNotebook.ts";
import { type ServedPage, serveStorePage } from "../support/serveStorePage.ts";
import { openTab, storedJobs, storedLoads, typeLoad } from "../support/storeTab.ts";

let served: ServedPage;
let browser: Browser;
let context: BrowserContext;
let page: Page;
beforeAll(async () => {
  [served, browser] = await Promise.all([serveStorePage(), startChromium()]);
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});
beforeEach(async () => {
  context = await browser.newContext();
  page = await openTab(context, served.url);
  await page.getByText("Saved in this browser").waitFor();
});
afterEach(async () => context?.close());

const bytes = (text: string) => ({
  name: "a.bellhousing.json",
  mimeType: "application/json",
  buffer: Buffer.from(text),
});
const bad = JSON.stringify({ ...inventedJob(), usualDay_km: -4, vehicel: {}, packs: [] });

async function dropped(text: string): Promise<void> {
  const transfer = await page.evaluateHandle((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], "dropped.json", { type: "application/json" }));
    return data;
  }, text);
  await page.dispatchEvent("#load", "dragover", { dataTransfer: transfer });
  await page.getByText("Let go to read the file").waitFor();
  await page.dispatchEvent("#load", "drop", { dataTransfer: transfer });
}

describe("a file", () => {
  it("chosen by hand becomes a job of its own and is opened", async () => {
    await page.locator("input[type=file]").setInputFiles(bytes(jobText(inventedJob("From a file", 333))));
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#load")?.value === "333");
    expect(await storedLoads(context, served.url)).toEqual([150, 333]);
  });

  it("dropped on the page becomes a job of its own and is opened", async () => {
    await dropped(jobText(inventedJob("Dropped", 333)));
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#load")?.value === "333");
    await page.getByText("Nothing is dragged").waitFor();
  });

  it("that is bad has every problem said and changes nothing, half a word included", async () => {
    await typeLoad(page, "a quarter of a t");
    await page.locator("input[type=file]").setInputFiles(bytes(bad));
    const problems = page.locator(".file-problems li");
    await problems.first().waitFor();
    expect((await problems.allTextContents()).map((text) => text.split(":")[0]).sort()).toEqual([
      "packs",
      "usualDay_km",
      "vehicel",
    ]);
    expect(await page.locator("#load").inputValue()).toBe("a quarter of a t");
    expect(await storedLoads(context, served.url)).toEqual([150]);
  });

  it("of 30 MB that is no job is refused with a sentence", async () => {
    await page.locator("input[type=file]").setInputFiles(bytes(`[${"0,".repeat(15e6)}0]`));
    await page.locator(".file-problems").getByText("a job document wanted").waitFor();
  });

  it("of more than is read is refused with its size", async () => {
    await dropped("x".repeat(65e6));
    await page.locator(".file-problems").getByText("found a file of 65.0 MB, at most 64 MB allowed").waitFor();
  });
});

describe("a job tied to a file on disk", () => {
  it("is saved along as typed, the handle outlives the page, and letting go stops it", async () => {
    // The picker is the system's own and cannot be driven: it is answered with a real file of the browser's file system.
    await context.addInitScript(() => {
      Object.assign(window, {
        showSaveFilePicker: async () =>
          (await navigator.storage.getDirectory()).getFileHandle("tied.bellhousing.json", { create: true }),
      });
    });
    const onDisk = (tab: Page) =>
      tab.evaluate(async () => {
        const root = await navigator.storage.getDirectory();
        const text = await (await (await root.getFileHandle("tied.bellhousing.json")).getFile()).text();
        return text === "" ? "" : (JSON.parse(text).vehicle.load_kg as number);
      });
    const tab = await openTab(context, served.url);
    await tab.getByRole("button", { name: "Tie to a file" }).click();
    await tab.getByText("Saved along to tied.bellhousing.json").waitFor();
    expect(await onDisk(tab)).toBe(150);
    await typeLoad(tab, "175");
    await expect.poll(() => onDisk(tab), { timeout: 15_000 }).toBe(175);

    await tab.reload();
    await tab.getByText("This job is tied to tied.bellhousing.json").waitFor();
    await typeLoad(tab, "180");
    await expect.poll(() => onDisk(tab), { timeout: 15_000 }).toBe(180);

    // Somebody else writes the file: it is not written over until that is asked for.
    await tab.evaluate(async () => {
      const root = await navigator.storage.getDirectory();
      const writable = await (await root.getFileHandle("tied.bellhousing.json")).createWritable();
      await writable.write("{}");
      await writable.close();
    });
    await typeLoad(tab, "185");
    await tab.getByText("was changed by somebody else since").waitFor();
    await tab.getByRole("button", { name: "Write over it" }).click();
    await expect.poll(() => onDisk(tab), { timeout: 15_000 }).toBe(185);

    await tab.getByRole("button", { name: "Let go of the file" }).click();
    await tab.getByText("This job is not tied to a file").waitFor();
  });
});

describe("the views", () => {
  it("let a job be duplicated, archived, deleted and brought back by keyboard", async () => {
    const press = async (name: string) => {
      await page.getByRole("button", { name }).first().focus();
      await page.keyboard.press("Enter");
    };
    await press("Duplicate Saloon");
    await page.locator(".job-title").getByText("Saloon (copy)").waitFor();
    await press("Archive Saloon (copy)");
    await page.getByText("Archived (1)").focus();
    await page.keyboard.press("Enter");
    await press("Take out of the archive Saloon (copy)");
    await page.getByText("Archived (1)").waitFor({ state: "detached" });
    await press("Delete Saloon (copy)");
    await page.getByText("Deleted, kept for thirty days (1)").focus();
    await page.keyboard.press("Enter");
    await press("Bring back Saloon (copy)");
    await page.getByText("Deleted, kept for thirty days").waitFor({ state: "detached" });
    expect(await page.evaluate(() => document.activeElement?.className)).toBe("job-list");
    expect(Object.values(await storedJobs(page)).map((job) => job.title)).toHaveLength(2);
  });

  it("show the versions, what differs, and go back to one", async () => {
    await page.evaluate(async () => {
      const { jobs, inventedJob: make } = window.storePage;
      const id = await jobs.create(make("Saloon", 150), "the demo");
      jobs.commit(make("Saloon", 175), "load to 175 kg");
      await jobs.restore(id, 1);
      jobs.commit(make("Saloon", 150), "load to 150 kg"); // replaces, so that there is a version to go back to
    });
    await page.getByRole("button", { name: "Show the versions" }).click();
    const old = page.locator(".versions li").nth(1);
    expect(await old.textContent()).toContain("load to 175 kg");
    await old.getByRole("button", { name: "Compare with now" }).click();
    await page.getByText("One difference between then and now").waitFor();
    expect(await page.locator(".differences tbody tr").allTextContents()).toHaveLength(1);
    await old.getByRole("button", { name: "Go back to it" }).click();
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#load")?.value === "175");
  });

  it("give axe nothing to say, with everything on the page at once", async () => {
    await page.locator("input[type=file]").setInputFiles(bytes(bad));
    await page.locator(".file-problems").waitFor();
    await page.evaluate(async () => {
      const { jobs, inventedJob: make } = window.storePage;
      const gone = await jobs.create(make("Gone"), "the demo");
      await jobs.remove(gone);
      const id = await jobs.create(make("Saloon"), "the demo");
      await jobs.archive(await jobs.duplicate(id));
      for (let i = 1; i <= 31; i++) jobs.commit(make("Saloon", 150 + i), "load");
      await jobs.restore(id, 1);
    });
    await page.getByRole("button", { name: "Show the versions" }).click();
    await page.getByRole("button", { name: "Compare with now" }).first().click();
    await page.locator(".file-reminder p").waitFor();
    await page.locator(".differences").waitFor();
    for (const summary of await page.locator("summary").all()) await summary.click();
    const { violations, passes } = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(10);
  });
});
