import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demos } from "../../shared/demos/index.ts";
import { sampled, worked } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** Where the keyboard stands. */
interface Stop {
  readonly name: string;
  readonly isThere: boolean;
  /** Whether an outline or a shadow of its own, or of the label that stands in for it, can be seen on the screen. */
  readonly isSeen: boolean;
}

function stopNow(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (!(element instanceof HTMLElement) || element === document.body) {
      return { name: "nothing", isThere: false, isSeen: false };
    }
    // What has the outline where the control itself is not seen.
    const shown = element.closest(".file")?.querySelector("label") ?? element.closest(".figure-reader") ?? element;
    const { outlineStyle, outlineWidth, outlineColor, boxShadow } = getComputedStyle(shown);
    const isOutlined = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2 && !/, 0\)$/.test(outlineColor);
    const box = shown.getBoundingClientRect();
    const isOnScreen = box.width > 4 && box.height > 4 && box.bottom > 0 && box.top < innerHeight;
    const words = element.getAttribute("aria-label") ?? element.textContent?.replace(/\s+/g, " ").trim() ?? "";
    return {
      name: element.id || words.slice(0, 60) || element.tagName,
      isThere: true,
      isSeen: (isOutlined || boxShadow !== "none") && isOnScreen,
    };
  });
}

/** Presses Tab until the keyboard stands on what is looked for, every stop on the way seen; throws where it never comes. */
async function tabTo(page: Page, selector: string, words = "", key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 500; i++) {
    await page.keyboard.press(key);
    const stop = await stopNow(page);
    // What comes in above it may move it for a frame.
    if (stop.isThere && !stop.isSeen) await expect.poll(() => stopNow(page)).toMatchObject({ isSeen: true });
    passed.push(stop.name);
    const isHere = await page.evaluate(
      ([wanted, text]) =>
        document.activeElement?.matches(wanted) === true &&
        (document.activeElement.textContent?.replace(/\s+/g, " ") ?? "").includes(text),
      [selector, words] as const,
    );
    if (isHere) return;
  }
  throw new Error(`500 times ${key} and never at ${selector} ${words}; last at ${passed.slice(-5).join(", ")}`);
}

/** To the top of the page, wherever the keyboard stood. */
const fromTheTop = (page: Page) =>
  page.evaluate(() => {
    document.body.tabIndex = -1;
    document.body.focus();
  });
const idNow = (page: Page) => page.evaluate(() => document.activeElement?.id);
/** Until nothing on the page moves or comes by itself any more: workings, verdict, and what can be pressed only from then on. */
async function rested(page: Page): Promise<void> {
  await worked(page);
  await sampled(page);
}
const say = async (page: Page) => (await page.locator("#answer .say").textContent()) ?? "";

describe("by the keyboard alone", () => {
  it("goes from the first key to an answer for another job", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    await page.emulateMedia({ reducedMotion: "reduce" }); // so that a stop is where it will be when it is looked at
    await rested(page);
    for (const [k, part] of ["answer", "chapters", "workings"].entries()) {
      await fromTheTop(page);
      for (let i = 0; i <= k; i++) {
        await page.keyboard.press("Tab");
        await expect.poll(() => stopNow(page)).toMatchObject({ isSeen: true });
      }
      await expect.poll(() => stopNow(page)).toMatchObject({ name: `To the ${part}` });
      await page.keyboard.press("Enter");
      await expect.poll(() => idNow(page)).toBe(part);
      await page.keyboard.press("Tab");
      expect(await page.evaluate((id) => document.activeElement?.closest(`#${id}`) !== null, part)).toBe(true);
    }

    await tabTo(page, ".jobs > summary", "", "Shift+Tab");
    await page.keyboard.press("Enter");
    await tabTo(page, "button", demos[1].title);
    await page.keyboard.press("Enter");
    await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, demos[1].title);
    await rested(page);
    const demoAnswer = await say(page);

    await tabTo(page, "#answer-day");
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
    await rested(page);
    await expect.poll(() => say(page)).not.toBe(demoAnswer);

    await openByKeys(page, "roadLoad");
    await tabTo(page, "#pick-tyres");
    await page.keyboard.press("ArrowDown");
    const part = (await page.locator("#pick-tyres option:checked").textContent()) ?? "";
    await expect.poll(() => page.locator("#roadLoad .offer").isVisible()).toBe(true);
    await tabTo(page, "#roadLoad .offer button", "Take");
    await page.keyboard.press("Space");
    await rested(page);
    await expect.poll(() => page.locator("#roadLoad .offer").count()).toBe(0);
    await expect.poll(() => page.locator(".tools button", { hasText: "Undo" }).textContent()).toContain(part);

    await openByKeys(page, "packs");
    const packs = await page.locator("#packs .list-table tbody tr:not(.row-below)").count();
    await tabTo(page, "#packs .list-table button", "Copy");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#packs .list-table tbody tr:not(.row-below)").count()).toBe(packs + 1);
    await expect.poll(() => stopNow(page)).toMatchObject({ isThere: true });
    await tabTo(page, "#packs .list-table button", "Remove");
    await page.keyboard.press("Space");
    await rested(page);
    await expect.poll(() => page.locator("#packs .list-table tbody tr:not(.row-below)").count()).toBe(packs);

    await tabTo(page, "#packs .section-tools button", "Write a note");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#packs .note textarea").count()).toBe(1);
    await tabTo(
      page,
      "#packs .note textarea",
      "",
      (await isBefore(page, "#packs .note textarea")) ? "Shift+Tab" : "Tab",
    );
    await page.keyboard.type("Ask about the boot floor.");
    await tabTo(page, "#packs .section-tools button", "Hide from client");
    await page.keyboard.press("Space");
    await expect.poll(() => page.locator("#packs").getAttribute("data-not-for-client")).toBe("");

    await openByKeys(page, "stateOfCharge");
    await tabTo(page, "#stateOfCharge .figure-slider");
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
    await expect
      .poll(() => page.locator("#stateOfCharge .figure-reading").first().textContent())
      .toMatch(/^\d+:\d\d: .*%/);
    await tabTo(page, "#stateOfCharge figure summary");
    await page.keyboard.press("Enter");
    await tabTo(page, "#stateOfCharge figure button", "numbers (CSV)");
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toMatch(/\.csv$/);

    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator("#packs").getAttribute("data-not-for-client")).toBeNull();

    await fromTheTop(page);
    await tabTo(page, ".tools select");
    await page.keyboard.press("ArrowDown");
    await rested(page);
    await expect.poll(() => say(page)).toContain("miles");
    await tabTo(page, ".tools button", "Undo", "Shift+Tab");
    await page.keyboard.press("Enter");
    await rested(page);
    await expect.poll(() => say(page)).toContain("km");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("passes every stop once, in the order in which the page is read, and leaves the page at its end", async () => {
    const { page } = await openNotebook(browser);
    await rested(page);
    await fromTheTop(page);
    const stops = await page.evaluate(() => {
      const wanted = "a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex='0']";
      const all = [...document.querySelectorAll<HTMLElement>(wanted)];
      return all.filter((each) => each.checkVisibility({ visibilityProperty: true }) && each.tabIndex >= 0).length;
    });
    let passed = 0;
    const wrong: string[] = [];
    const seen = await page.evaluateHandle(() => ({ last: document.body as Element, known: new Set<Element>() }));
    for (; passed <= stops; passed++) {
      await page.keyboard.press("Tab");
      const step = await seen.evaluate((state) => {
        const here = document.activeElement ?? document.body;
        if (here === document.body) return "end";
        const follows = (state.last.compareDocumentPosition(here) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
        const [a, b] = [state.last.closest(".field"), here.closest(".field")];
        const isHigher = a && b && a !== b && a.parentElement === b.parentElement && isAbove(b, a);
        const isAgain = state.known.has(here);
        state.known.add(here);
        state.last = here;
        return follows && !isHigher && !isAgain ? "" : here.id || (here.textContent ?? "").trim().slice(0, 40);

        /** Whether a field stands higher than another, or in its row before it. */
        function isAbove(field: Element, than: Element): boolean {
          const [one, other] = [field.getBoundingClientRect(), than.getBoundingClientRect()];
          return one.top < other.top - 2 || (Math.abs(one.top - other.top) <= 2 && one.left < other.left);
        }
      });
      if (step === "end") break;
      if (step !== "") wrong.push(step);
    }
    expect(wrong).toEqual([]);
    expect(passed).toBe(stops);
    expect(stops).toBeGreaterThan(150);
    await page.context().close();
  });
});

/** Opens a working by its head, and waits until it is drawn. */
async function openByKeys(page: Page, working: string): Promise<void> {
  await tabTo(page, `[data-opens="${working}"]`);
  await page.keyboard.press("Enter");
  await rested(page);
}

/** Whether something stands before what has the keyboard. */
function isBefore(page: Page, selector: string): Promise<boolean> {
  return page.evaluate((wanted) => {
    const there = document.querySelector(wanted);
    const here = document.activeElement;
    return (
      there !== null && here !== null && (here.compareDocumentPosition(there) & Node.DOCUMENT_POSITION_PRECEDING) !== 0
    );
  }, selector);
}
