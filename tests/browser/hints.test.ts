import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { worked } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

async function openCar(): Promise<Page> {
  const { page } = await openNotebook(browser, 1280, 900, false, true);
  await openWorking(page, "theCar");
  await worked(page);
  return page;
}

/** What lies below the hint of a field that has the focus, and may be pressed, with the middle of each. */
function covered(page: Page, id: string) {
  return page.evaluate((focused) => {
    const field = document.getElementById(focused);
    field?.focus();
    field?.scrollIntoView({ block: "center", behavior: "instant" });
    const hint = document.getElementById(`${focused}-hint`);
    const box = hint?.getBoundingClientRect();
    if (!hint || !box || box.height === 0) return [];
    return [...document.querySelectorAll<HTMLElement>("main :is(a, button, input, select, summary)")].flatMap(
      (each) => {
        const { left, top, width, height } = each.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        if (width === 0 || x < box.left || x > box.right || y < box.top || y > box.bottom || !each.checkVisibility())
          return [];
        const hit = document.elementFromPoint(x, y);
        const isReached = hit !== null && (each.contains(hit) || hit.contains(each)) && !hint.contains(hit);
        return [{ id: each.id, tag: each.tagName, x, y, isReached }];
      },
    );
  }, id);
}

it("of a field lets every press through to what it lies over", async () => {
  const page = await openCar();
  const ids = await page.locator("#theCar .given input[type=text]").evaluateAll((all) => all.map(({ id }) => id));
  expect(ids.length).toBeGreaterThan(5);
  let pressed = 0;
  for (const id of ids) {
    const below = await covered(page, id);
    expect(below.filter(({ isReached }) => !isReached)).toEqual([]);
    const input = below.find(({ tag, id: other }) => tag === "INPUT" && other !== "");
    if (!input || pressed > 2) continue;
    await page.mouse.click(input.x, input.y);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(input.id);
    pressed += 1;
  }
  expect(pressed).toBeGreaterThan(0);
  await page.context().close();
});

it("of a field gets out of the way of the pointer and of Escape, and is there again for the next field", async () => {
  const page = await openCar();
  const hint = page.locator("#field-vehicle-kerb_kg-hint");
  await page.mouse.move(2, 2);
  await page.locator("#field-vehicle-kerb_kg").focus();
  expect(await hint.isVisible()).toBe(true);
  // Where it stands when it is looked for: what is drawn above it may still move it.
  await expect
    .poll(async () => {
      const box = await hint.boundingBox();
      if (box) await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      return hint.isVisible();
    })
    .toBe(false);
  await page.mouse.move(2, 2);
  await hint.waitFor({ state: "visible" });
  await page.keyboard.press("Escape");
  await hint.waitFor({ state: "hidden" });
  await page.mouse.move(4, 4);
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  expect(await hint.isVisible()).toBe(false);
  await page.locator("#field-vehicle-load_kg").focus();
  await page.locator("#field-vehicle-kerb_kg").focus();
  await hint.waitFor({ state: "visible" });
  await page.context().close();
});
