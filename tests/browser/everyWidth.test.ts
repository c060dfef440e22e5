import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axeFinds } from "../support/axeFinds.ts";
import { answered, unfold, worked, write } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** Everything at once that a page in use can show: errors, a part picked up, a chart, a note, a figure being read. */
async function openInUse(page: Page): Promise<void> {
  await worked(page);
  await unfold(page);
  // Wrong and not empty: all figures would wait for an empty field.
  for (const path of ["packs.0.name", "driveline.gears.0.name"]) await write(page, path, "N".repeat(300));
  await write(page, "vehicle.load_kg", "a full sack");
  await write(page, "usualDay_km", "as far as the bridge");
  await write(page, "vehicle.kerb_kg", "14 1/4 cwt");
  await write(page, "driveline.finalDrive_ratio", "342");
  await page.locator("#typed-road").fill("to the mill and back");
  await page.locator("#typed-road").blur();
  await page.locator("#typed-road[aria-invalid=true]").waitFor();
  await page.selectOption("#cycle-hills", "typed");
  for (const part of ["tyres", "motor", "module"]) await page.selectOption(`#pick-${part}`, { index: 2 });
  await page.setInputFiles("#motor-map", { name: "map.csv", mimeType: "text/csv", buffer: Buffer.from("a letter") });
  await page.getByRole("button", { name: /^\s*Make a chart/ }).click();
  await page.getByRole("button", { name: "Write a note to Drag" }).click();
  await worked(page);
  await unfold(page);
  await page.locator("#stateOfCharge .figure-slider").first().focus();
  await page.keyboard.press("ArrowRight");
  await worked(page);
}

/** Sizes are measured by `tooSmall`, which knows what is pressed beside a box. */
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * Controls smaller than a finger's tip, by WCAG 2.2, 2.5.8: 24 by 24 px, or a circle of that size around their middle that
 * meets no other one's. Links in a sentence are left out, as they are there.
 */
function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const wanted = "a[href], button, input, select, textarea, summary";
    const shown = [...document.querySelectorAll<HTMLElement>(wanted)].filter(
      (each) =>
        each.checkVisibility({ visibilityProperty: true }) && !each.closest(".unseen") && each.className !== "skip",
    );
    const boxes = shown.map((each) => {
      const { left, top, width, height } = each.getBoundingClientRect();
      // What is pressed on a checkbox is its label as well.
      const label = each.matches("input[type=checkbox]") ? document.querySelector(`label[for="${each.id}"]`) : null;
      const tall = Math.max(height, label?.getBoundingClientRect().height ?? 0);
      return { each, x: left + width / 2, y: top + height / 2, isSmall: Math.min(width, tall) < 24 - 0.01 };
    });
    const isInSentence = (each: Element) => each.matches("p a, li a, td a, figcaption a") && !each.closest("nav");
    return boxes
      .filter(({ each, isSmall }) => isSmall && !isInSentence(each))
      .filter(({ each, x, y }) =>
        boxes.some((other) => {
          if (other.each === each) return false;
          const box = other.each.getBoundingClientRect();
          const [dx, dy] = [Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom)];
          return Math.hypot(dx, dy) < 12;
        }),
      )
      .map(({ each }) => each.outerHTML.slice(0, 140));
  });
}

/** What sticks out of the page to the side, save what scrolls in a frame of its own. */
function sticksOut(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("main *")]
      .filter((each) => each.checkVisibility() && each.getBoundingClientRect().right > innerWidth + 1)
      .filter((each) => !each.closest('.table-frame, .list-frame, [data-part="table"], .unseen, svg'))
      .map((each) => each.outerHTML.slice(0, 120)),
  );
}

/** What has more words than its box shows, of all that is pressed or read; a cell's label is its column's head. */
function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("main :is(button, label, summary, p, legend, th, td, h2, h3)")]
      .filter((each) => each.checkVisibility() && !each.closest(".unseen") && each.className !== "skip")
      .filter((each) => !each.matches("label") || !each.closest(".list-table tr:not(.row-below)"))
      .filter((each) => getComputedStyle(each).overflow !== "visible" && each.scrollHeight > each.clientHeight + 2)
      .map((each) => each.outerHTML.slice(0, 120)),
  );
}

/** Words in figures with less contrast than text must have, against the bar they stand on or else against the paper. */
function faintWords(page: Page): Promise<{ words: number; faint: string[] }> {
  return page.evaluate(() => {
    const light = (colour: string) => {
      const [r, g, b] = (colour.match(/[\d.]+/g) ?? []).map((each) => {
        const share = Number(each) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const paper = getComputedStyle(document.documentElement).backgroundColor;
    const groundOf = (text: SVGTextElement) => {
      const { left, top, width, height } = text.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      const bars = [...(text.ownerSVGElement?.querySelectorAll("rect") ?? [])].filter((bar) => {
        const box = bar.getBoundingClientRect();
        const isUnder = box.left <= x && x <= box.right && box.top <= y && y <= box.bottom;
        return isUnder && getComputedStyle(bar).fill.startsWith("rgb(");
      });
      const bar = bars.at(-1);
      return bar ? getComputedStyle(bar).fill : paper;
    };
    const all = [...document.querySelectorAll<SVGTextElement>("figure svg text")].filter(
      (each) => each.textContent !== "",
    );
    const faint = all.filter((each) => {
      const { fill, opacity, fillOpacity } = getComputedStyle(each);
      const [ink, ground] = [light(fill), light(groundOf(each))];
      const contrast = (Math.max(ink, ground) + 0.05) / (Math.min(ink, ground) + 0.05);
      return contrast < 4.5 || Number(opacity) * Number(fillOpacity) < 0.9;
    });
    return { words: all.length, faint: faint.map((each) => `${each.textContent} in ${getComputedStyle(each).fill}`) };
  });
}

/** What is amiss with the page at a width: wider than the window, sticking out of it, or cut off in its box. */
async function amissAt(page: Page, width: number): Promise<string[]> {
  await page.setViewportSize({ width, height: 900 });
  await worked(page);
  const [wide, window_px] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  const scrolls = wide > window_px ? [`${wide} px of page in a window of ${window_px}`] : [];
  return [...scrolls, ...(await sticksOut(page)), ...(await cutOff(page))].map((each) => `${width} px: ${each}`);
}

describe("the page in use, everything unfolded", () => {
  let page: Page;
  let faults: readonly string[];
  beforeAll(async () => {
    ({ page, faults } = await openNotebook(browser));
    await page.emulateMedia({ reducedMotion: "reduce" });
    await openInUse(page);
  });
  afterAll(async () => page?.context().close());

  it("can be read and pressed by everybody", async () => {
    expect(await page.locator("[aria-invalid=true]").count()).toBeGreaterThanOrEqual(5);
    expect(await axeFinds(page, { tags, isFigureWhole: true, without: ["target-size"], least: 26 })).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
    const { words, faint } = await faintWords(page);
    expect(words).toBeGreaterThan(200);
    expect(faint).toEqual([]);
    // Where less motion is asked for nothing moves by itself.
    const { animations, scroll } = await page.evaluate(() => ({
      animations: document.getAnimations().length,
      scroll: getComputedStyle(document.documentElement).scrollBehavior,
    }));
    expect([animations, scroll]).toEqual([0, "auto"]);
    expect(faults).toEqual([]);
  });

  it("has nothing cut and nothing to scroll to sideways at any width, and on a telephone can be pressed by everybody", async () => {
    for (const width of [2560, 1440, 768, 320, 390]) expect(await amissAt(page, width)).toEqual([]);
    // Colours are those of the wide page.
    expect(
      await axeFinds(page, { tags, isFigureWhole: true, without: ["target-size", "color-contrast"], least: 26 }),
    ).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
    expect(faults).toEqual([]);
  });

  it("keeps all its text where lines, letters and words are set wider, 320 px wide", async () => {
    // The least that WCAG 2.1, 1.4.12 asks a page to bear.
    const wider = await page.addStyleTag({
      content:
        "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }",
    });
    expect(await amissAt(page, 320)).toEqual([]);
    await wider.evaluate((style) => (style as HTMLStyleElement).remove());
  });

  it("shows the place of the keyboard, the lines of figures and errors in words where the reader sets all colours", async () => {
    await page.emulateMedia({ forcedColors: "active" });
    const field = page.locator("#field-vehicle-roadLoad-drag_coeff");
    await field.focus();
    expect(await field.evaluate((each) => getComputedStyle(each).outlineStyle)).not.toBe("none");
    const lines = page.locator("figure svg path[stroke]:not([stroke=none])");
    const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const strokes = await lines.evaluateAll((all) => all.map((each) => getComputedStyle(each).stroke));
    expect(strokes.filter((stroke) => stroke !== paper).length).toBeGreaterThan(10);
    expect(await page.locator("#field-usualDay_km-says").textContent()).toMatch(/^\s*Wrong:/);
    expect(faults).toEqual([]);
  });
});

it("is whole with text of twice the size on a screen of 320 px: nothing cut, nothing to scroll to sideways", async () => {
  const { page, faults } = await openNotebook(browser, 320, 640, true, true);
  await page.addStyleTag({ content: "html { font-size: 200% !important }" });
  await answered(page);
  for (const isOpen of [false, true]) {
    if (isOpen) await page.getByRole("button", { name: "Open all" }).click();
    expect(await amissAt(page, 320)).toEqual([]);
  }
  expect(faults).toEqual([]);
  await page.context().close();
});
