import { type Browser, chromium, type Page } from "playwright-core";
import { inject } from "vitest";
import { chromiumFlags } from "./chromium.ts";
import { worked } from "./notebookPage.ts";

/** A headless Chromium for one test file; the file closes it in `afterAll`. */
export async function startChromium(): Promise<Browser> {
  const fault = inject("browserFault");
  if (fault) throw new Error(fault);
  return chromium.launch({ executablePath: inject("chromiumPath"), args: [...chromiumFlags] });
}

/** The notebook in a fresh profile (empty database), with what went wrong on the page so far. */
export interface OpenNotebook {
  readonly page: Page;
  /** Errors thrown, errors in the console, and requests to any other host, in words. A test expects it empty. */
  readonly faults: readonly string[];
}

/**
 * Opens the built notebook as somebody does who never saw it before, and listens for faults from the first byte on. The workings are
 * opened too, unless `isFolded`: most tests are about what is in them.
 */
export async function openNotebook(
  browser: Browser,
  width = 1440,
  height = 900,
  hasTouch = false,
  isFolded = false,
): Promise<OpenNotebook> {
  const context = await browser.newContext({ viewport: { width, height }, hasTouch, acceptDownloads: true });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
  page.on("request", (request) => {
    const isOurs = request.url().startsWith(inject("notebookUrl")) || /^(data|blob):/.test(request.url());
    if (!isOurs) faults.push(`asked ${request.url()}`);
  });
  await page.goto(inject("notebookUrl"), { waitUntil: "load" });
  if (!isFolded) await openWorkings(page);
  return { page, faults };
}

/** Opens all workings, as the button above them does; again after every load of the page. */
export async function openWorkings(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open all" }).click();
}

/** Opens these workings alone, which is much quicker than all of them. */
export async function openWorking(page: Page, ...names: readonly string[]): Promise<void> {
  for (const name of names) await page.locator(`[data-opens="${name}"][aria-expanded="false"]`).click();
}

/** The notebook as `openNotebook` opens it, with these workings open and calculated and all the others folded. */
export async function openWith(browser: Browser, ...workings: readonly string[]): Promise<OpenNotebook> {
  const notebook = await openNotebook(browser, 1440, 900, false, true);
  await openWorking(notebook.page, ...workings);
  await worked(notebook.page);
  return notebook;
}
