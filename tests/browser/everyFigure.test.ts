import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Job } from "../../shared/job/job.ts";
import { chapters } from "../../web/chapters/index.ts";
import { csvOf } from "../support/csvOf.ts";
import { answered, expectNoSidewaysScroll, openWorking, worked } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";
import { jobsWithCharts, openWithFigures } from "../support/openWithFigures.ts";
import { savedFigure, seen, sizeOfPng } from "../support/savedFigure.ts";

// How every figure of the page is read and saved. What figures show, for every demo, is in tests/web/sections/everyFigure.test.ts.

interface Shown {
  /** Its place among all figures of the page, from 0. */
  readonly at: number;
  readonly figure: Locator;
  readonly caption: string;
  readonly words: string;
  readonly labels: readonly string[];
  readonly slider: Locator;
}

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

async function allFigures(page: Page): Promise<Shown[]> {
  const all = page.locator("main figure");
  const texts = await all.evaluateAll((figures) =>
    figures.map((figure) => ({
      caption: figure.querySelector("figcaption")?.textContent?.replace(/\s+/g, " ").trim() ?? "",
      words: figure.querySelector("svg[role=img]")?.getAttribute("aria-label") ?? "",
      labels: [...figure.querySelectorAll("svg text")].map((each) => each.textContent ?? ""),
    })),
  );
  return texts.map((each, at) => {
    const figure = all.nth(at);
    return { ...each, at, figure, slider: figure.locator("input[type=range]") };
  });
}

/** A place on the screen over a figure, so far along and so far down it; the figure is brought into the window. */
function placeOver({ figure }: Shown, share: number): Promise<{ x: number; y: number }> {
  return figure.locator("svg[role=img]").evaluate((svg, at) => {
    svg.scrollIntoView({ block: "center", behavior: "instant" });
    const { left, top, width, height } = svg.getBoundingClientRect();
    return { x: left + at * width, y: top + at * height };
  }, share);
}

/** What every figure says where it is read, "" where it is not, and whether a line or a ring stands in it. */
function readings(page: Page): Promise<{ said: string; spoken: string; hasCursor: boolean }[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("main figure")].map((each) => ({
      said: each.querySelector(".figure-reading")?.textContent ?? "",
      spoken: each.querySelector("input[type=range]")?.getAttribute("aria-valuetext") ?? "",
      hasCursor: each.querySelector(".figure-cursor") !== null,
    })),
  );
}

/** The axis that figures share by its label, "Time (min)" or "Distance (km)"; a map is read by time. */
const sharedAxis = ({ labels, words }: Shown) =>
  words.startsWith("Track") ? "Time (min)" : labels.find((label) => /^(Time|Distance) \(/.test(label));

describe("every figure", () => {
  let page: Page;
  let faults: readonly string[];
  let figures: Shown[];
  beforeAll(async () => {
    ({ page, faults } = await openWithFigures(browser, jobsWithCharts[0]?.[1] as Job));
    figures = await allFigures(page);
  });
  afterAll(async () => {
    expect(faults).toEqual([]);
    await page?.context().close();
  });

  it("has a caption, and in the workings a number, in their order", () => {
    expect(figures.length).toBeGreaterThanOrEqual(20);
    const inWorkings = figures.slice(chapters.length);
    for (const { caption } of figures.slice(0, chapters.length)) expect(caption).toMatch(/^[A-Z][^?]+\? /);
    for (const [i, { caption }] of inWorkings.entries()) expect(caption).toMatch(new RegExp(`^Figure ${i + 1}\\. \\S`));
  });

  it("reads values by arrow keys, Home and End, in all figures that share the axis, and says them once", async () => {
    for (const each of figures) {
      const { slider, caption } = each;
      await slider.focus();
      const said: string[] = [];
      for (const key of ["End", "Home", "ArrowRight", "ArrowRight"]) {
        await page.keyboard.press(key);
        const now = (await readings(page))[each.at];
        expect(now?.hasCursor, caption).toBe(true);
        expect(now?.said, caption).toMatch(/\S: .*\S/);
        expect(now?.said, caption).not.toMatch(/NaN|undefined/);
        // What is read is told by the slider alone: fifteen live regions would all talk at once.
        expect(now?.spoken, caption).toBe(now?.said);
        said.push(now?.said ?? "");
      }
      // A day ends at the hour it began at, but a key along it reads another one.
      expect(new Set(said).size, caption).toBeGreaterThan(1);
      const all = await readings(page);
      const axis = sharedAxis(each);
      const where = (text: string) => text.split(":")[0];
      const mates = axis === undefined ? [] : figures.filter((other) => sharedAxis(other) === axis);
      for (const mate of mates) {
        const there = all[mate.at];
        // A map without the ends of its trips begins later than the drive.
        if (mate.words.startsWith("Track") && there?.said === "") continue;
        expect(where(there?.said ?? ""), `${caption} with ${mate.caption}`).toBe(where(said[3] ?? ""));
        expect(there?.hasCursor).toBe(true);
      }
      await page.keyboard.press("Escape");
      expect((await readings(page)).filter(({ said: left, hasCursor }) => left !== "" || hasCursor)).toEqual([]);
    }
    expect(await page.locator("main figure [aria-live], main figure [role=status]").count()).toBe(0);
    const along = figures.map(sharedAxis);
    expect(along.filter((axis) => axis === "Time (min)").length).toBeGreaterThanOrEqual(5);
  });

  it("reads values under the mouse, until it leaves or Escape is pressed", async () => {
    await page.locator("h1").click(); // off the sliders, which would hold what is read
    for (const each of figures) {
      const { at, caption } = each;
      const moveTo = async (share: number) => {
        const { x, y } = await placeOver(each, share);
        await page.mouse.move(x, y);
      };
      await moveTo(0.45);
      expect((await readings(page))[at]?.said, caption).toMatch(/\S: .*\S/);
      await page.keyboard.press("Escape");
      expect((await readings(page))[at]?.said, caption).toBe("");
      await moveTo(0.55);
      expect((await readings(page))[at]?.hasCursor, caption).toBe(true);
      await page.mouse.move(2, 2);
      expect(
        (await readings(page)).filter(({ hasCursor }) => hasCursor),
        caption,
      ).toEqual([]);
    }
  });

  it("is saved as a drawing that stands alone and as a picture of twice its size, neither blank", async () => {
    const viewer = await (await browser.newContext({ offline: true })).newPage();
    for (const { at, figure, caption, words } of figures) {
      const svg = await savedFigure(page, figure, "SVG");
      const text = svg.toString("utf8");
      const parsed = await viewer.evaluate((source) => {
        const root = new DOMParser().parseFromString(source, "image/svg+xml").documentElement;
        const size = ["width", "height"].map((name) => Number(root.getAttribute(name)));
        return { tag: root.tagName, title: root.querySelector("title")?.textContent, size };
      }, text);
      expect(parsed, caption).toMatchObject({ tag: "svg", title: words });
      expect(text, caption).toMatch(/@font-face\{?[^}]*url\("?data:font/);
      expect(text.replace(/url\("?data:[^)]*\)/g, ""), caption).not.toMatch(
        /url\((?!#)|var\(|currentcolor|figure-cursor|\b(?:href|src)="(?!#)|https?:\/\/(?!www\.w3\.org\/)/i,
      );
      const opened = await seen(viewer, svg, "image/svg+xml");
      expect([opened.width_px, opened.height_px], caption).toEqual(parsed.size);
      const pictures = [opened];
      // The picture is the drawing as the browser draws it, so a few will do.
      if (at % 5 === 0) {
        const png = await savedFigure(page, figure, "PNG");
        expect(sizeOfPng(png), caption).toEqual(parsed.size.map((each) => 2 * each));
        pictures.push(await seen(viewer, png, "image/png"));
      }
      for (const { variance, inked_frac } of pictures) {
        expect(variance, caption).toBeGreaterThan(20); // one thin line across paper gives about this much
        expect(inked_frac, caption).toBeGreaterThan(0.01);
      }
    }
    await viewer.context().close();
  });

  it("is saved as numbers, by a mark at the head that spreadsheets know the letters by", async () => {
    for (const { figure, caption } of figures) {
      const text = (await savedFigure(page, figure, "CSV")).toString("utf8");
      expect(text.charCodeAt(0), caption).toBe(0xfeff);
      const { names, rows } = csvOf(text.slice(1));
      expect(names.join(), caption).toMatch(/^[A-Za-z]\w*(,\w+)+$/);
      expect(rows.length, caption).toBeGreaterThan(0);
      expect(text, caption).not.toMatch(/NaN|undefined/);
    }
  });
});

it("is read by a finger on a telephone: a tap reads, what it read stays, and the next tap reads elsewhere", async () => {
  const { page, faults } = await openNotebook(browser, 390, 844, true, true);
  await answered(page);
  for (const working of ["theRoad", "operatingPoints", "packs", "whatIsOpen"]) await openWorking(page, working);
  await worked(page);
  await expectNoSidewaysScroll(page);
  const figures = await allFigures(page);
  expect(figures.length).toBeGreaterThanOrEqual(chapters.length + 3);
  for (const each of figures) {
    const tapAt = async (share: number) => {
      const { x, y } = await placeOver(each, share);
      await page.touchscreen.tap(x, y);
      return (await readings(page))[each.at];
    };
    // A figure that comes into view may be drawn anew for its width just then, and the tap meet the one before.
    const said = async (share: number) => (await tapAt(share))?.said;
    await expect.poll(() => said(0.4), { message: each.caption }).toMatch(/\S: .*\S/);
    const first = (await readings(page))[each.at];
    expect(first?.hasCursor, each.caption).toBe(true);
    await expect.poll(() => said(0.8), { message: each.caption }).not.toBe(first?.said);
  }
  expect(faults).toEqual([]);
  await page.context().close();
});
