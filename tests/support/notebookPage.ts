import type { Page } from "playwright-core";
import { expect } from "vitest";

/** Waits until every working has its summary or says why it has none, and every open one its finding, from what stands in the fields now. */
export async function worked(page: Page): Promise<void> {
  const done = page.waitForFunction(
    () => {
      const sections = [...document.querySelectorAll("main section.working")];
      const isFilled = (section: Element, part: string) => section.querySelector(part)?.textContent?.trim() !== "";
      const hasResult = (section: Element) =>
        section.querySelector(".summary .result") !== null && isFilled(section, ".summary .result");
      const hasFailed = (section: Element) =>
        /Waiting for|Cannot be/.test(section.querySelector(".summary strong")?.textContent ?? "");
      const isDone = (section: Element) =>
        (hasResult(section) || hasFailed(section)) &&
        (!section.hasAttribute("data-open") ||
          (!section.hasAttribute("data-late") && isFilled(section, ".finding .body")));
      const isDrawing = document.querySelector("[data-drawing]") !== null;
      return sections.length > 0 && !isDrawing && sections.every(isDone);
    },
    undefined,
    { timeout: 60_000 },
  );
  await done.catch(async (error: Error) => {
    const open = await page
      .locator("[data-drawing], main section[data-late]")
      .evaluateAll((all) => all.map(({ id }) => id));
    throw new Error(`${error.message}; late or not drawn: ${open.join(", ") || "nothing"}`);
  });
  // A change may only just be on its way to the worker: nothing is late for two frames in a row.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  if ((await page.locator("[data-drawing], main section[data-late]:is([data-open], .chapter)").count()) > 0)
    await worked(page);
}

/** Waits until the answer is calculated for what is in the job now, bands and all. */
export async function answered(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  await page.waitForFunction(
    () => document.querySelector<HTMLElement>("#answer")?.dataset["late"] === "none",
    undefined,
    { timeout: 60_000 },
  );
}

/** Waits until the verdict will not be another one: many variants are driven where it hangs on them, a moment after all else. */
export async function sampled(page: Page): Promise<void> {
  await answered(page);
  await page.waitForFunction(() => document.querySelector("#answer[data-sampled]") !== null, undefined, {
    timeout: 60_000,
  });
}

/** The finding of a section, as one text with plain spaces. */
export async function finding(page: Page, section: string): Promise<string> {
  const text = await page.locator(`#${section} .sentence`).textContent();
  return text?.replace(/\s+/g, " ").trim() ?? "";
}

/** Types into the field of a path in place of what is there, and leaves it. */
export async function write(page: Page, path: string, text: string): Promise<void> {
  const field = page.locator(`#field-${path.replaceAll(".", "-")}`);
  await field.fill(text);
  await field.blur();
}

/** What stands below the field of a path. */
export async function saidAt(page: Page, path: string): Promise<string> {
  const text = await page.locator(`#field-${path.replaceAll(".", "-")}-says`).textContent();
  return text?.replace(/\s+/g, " ").trim() ?? "";
}

/** Holds that the page is no wider than the window. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const [wide, window_px] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  expect(wide).toBeLessThanOrEqual(window_px);
}

/** Opens everything that is folded away, and passes over the whole page, since figures are laid out as they are seen. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const each of document.querySelectorAll("details")) each.open = true;
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight / 2) {
      scrollTo({ top: y, behavior: "instant" });
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    scrollTo({ top: 0, behavior: "instant" });
  });
}

/** Opens one working, where it is not open already. */
export async function openWorking(page: Page, name: string): Promise<void> {
  const head = page.locator(`[data-opens="${name}"]`);
  if ((await head.getAttribute("aria-expanded")) !== "true") await head.click();
}

/** Opens everything that is folded away within what is open, without looking at it. */
export async function openFolds(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const each of document.querySelectorAll<HTMLDetailsElement>("main section[data-open] details"))
      each.open = true;
  });
}

/** Chooses what is printed. */
export async function choosePaper(page: Page, paper: "client" | "workings"): Promise<void> {
  await page
    .locator(".paper-tools select")
    .selectOption({ label: paper === "client" ? "Client sheet" : "The workings" });
}
