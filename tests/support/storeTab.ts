import type { BrowserContext, Page } from "playwright-core";
import type { Job } from "../../shared/job/job.ts";
import type { StorePage } from "./storePage.ts";

declare global {
  interface Window {
    readonly storePage: StorePage;
  }
}

/** A tab on the test page of the jobs' storage, ready to type in. */
export async function openTab(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(url);
  await page.waitForSelector("body[data-ready]");
  return page;
}

/** Types over what stands in the field of the load, key by key, and does not wait for anything after. */
export async function typeLoad(page: Page, text: string): Promise<void> {
  await page.locator("#load").selectText();
  await page.keyboard.type(text);
}

/** What is stored of every job that is not deleted, by its id, read by another page than those that wrote. */
export async function storedJobs(page: Page): Promise<Record<string, Job>> {
  return page.evaluate(async () => {
    const { jobs } = window.storePage;
    const entries = jobs.list.value
      .filter((head) => head.shelf !== "removed")
      .map(async ({ id }) => [id, await jobs.readVersion(id, await presentNumber(id))] as const);
    return Object.fromEntries(await Promise.all(entries));
    async function presentNumber(id: string): Promise<number> {
      return (await jobs.versions(id))[0]?.number ?? 0;
    }
  });
}

/** Loads of all stored jobs in rising order, as a page sees them that was just opened. */
export async function storedLoads(context: BrowserContext, url: string): Promise<number[]> {
  const page = await openTab(context, url);
  const loads = Object.values(await storedJobs(page)).map((job) => job.vehicle.load_kg);
  await page.close();
  return loads.sort((a, b) => a - b);
}
