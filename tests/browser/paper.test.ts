import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demos } from "../../shared/demos/index.ts";
import type { Job } from "../../shared/job/job.ts";
import { emptyFolder } from "../support/emptyFolder.ts";
import { answered } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";
import { jobsWithCharts, openWithFigures } from "../support/openWithFigures.ts";
import { fontsLeftOut, pagesOf, printedFigures, printedHeadings } from "../support/printedFigures.ts";
import { runCommand } from "../support/runCommand.ts";

// What the page sends to the printer. What a sheet holds, and that its longest words fit, is in clientSheet.test.ts.

/** Sheets by the name that the command line has for them, and the pages that each is. */
const sheets = {
  "Client sheet": { id: "client", pages: 2 },
  "Visit form, blank": { id: "visit", pages: 1 },
  "Settings sheet": { id: "settings", pages: 2 },
  "Handover page": { id: "handover", pages: 1 },
  "Service card": { id: "service", pages: 1 },
} as const;
const formats = ["A4", "Letter"] as const;

/** 210 mm less the margins of the sheets (15 mm each) and of the workings (16 mm each), at 96 px to the inch. */
const SHEET_px = Math.floor(((210 - 2 * 15) / 25.4) * 96);
const WORKINGS_px = Math.floor(((210 - 2 * 16) / 25.4) * 96);

let browser: Browser;
let page: Page;
let faults: readonly string[];
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** Has a page do as told where a browser would ask for a printer. */
async function withoutPrinter(): Promise<void> {
  await page.evaluate(() => {
    Object.assign(window, { print: () => document.body.setAttribute("data-printed", "") });
  });
}

/** Chooses a paper and presses the button, up to where the browser would ask for a printer. */
async function sendToPrinter(paper: string): Promise<void> {
  await page.evaluate(() => document.body.removeAttribute("data-printed"));
  await page.locator(".paper-tools select").selectOption({ label: paper });
  await page.locator(".paper-tools").getByRole("button", { name: "Print it" }).click();
  await page.locator("body[data-printed]").waitFor();
}

/** Has the page as it is on paper of this width until `look` is through. */
async function onPaper<T>(width: number, look: () => Promise<T>): Promise<T> {
  await page.setViewportSize({ width, height: 1000 });
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const found = await look();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: null }); // "screen" would hold for the printer too
  await page.setViewportSize({ width: 1440, height: 900 });
  return found;
}

/** What of the page takes room on paper: things to press, what is wider than the paper, and what is there at all. */
function lookAtPaper(target: Page) {
  return target.evaluate(() => {
    const isThere = (each: Element) => each.getBoundingClientRect().height > 0;
    const named = (each: Element) => `${each.tagName} ${each.id} ${each.textContent?.trim().slice(0, 40)}`;
    const controls = [...document.querySelectorAll("a[href^='#'], button, input, select, textarea, summary, progress")];
    const all = [...document.querySelectorAll("#notebook *")].filter(isThere);
    const figures = [...document.querySelectorAll("svg[role=img]")];
    return {
      // The name of a pack or a working is the words of a button.
      controls: controls
        .filter((each) => isThere(each) && !each.matches("[data-opens], .answer-table button"))
        .map(named),
      wider: all.filter((each) => each.getBoundingClientRect().right > innerWidth + 0.5).map(named),
      parts: ["#answer", "#chapters", "#workings", ".paper .sheet"].filter((part) =>
        [...document.querySelectorAll(part)].some(isThere),
      ),
      figures: figures.filter(isThere).length,
      given: [...document.querySelectorAll(".as-printed")]
        .filter(isThere)
        .map((each) => each.textContent?.replace(/\s+/g, " ").trim()),
      leftOut: figures.filter((each) => !isThere(each)).map((each) => each.getAttribute("aria-label") ?? ""),
      headings: [...document.querySelectorAll(".working [id$='-title']")]
        .filter(isThere)
        .map((each) => each.textContent ?? ""),
    };
  });
}

/** Every element of a sheet as it is laid out on paper: where, in which look, with which words. */
function layoutOf(target: Page) {
  return target.evaluate(() => {
    const sheet = document.querySelector(".sheet");
    if (!sheet) throw new Error("no sheet on the page");
    const { left, top } = sheet.getBoundingClientRect();
    const looks = ["color", "font-size", "font-weight", "font-style", "white-space", "border-top", "border-bottom"];
    return [sheet, ...sheet.querySelectorAll("*")].map((each) => {
      const box = each.getBoundingClientRect();
      const style = getComputedStyle(each);
      const words = each.children.length === 0 ? (each.textContent ?? "") : "";
      const place = [box.left - left, box.top - top, box.width, box.height].map((side) => side.toFixed(1));
      return [each.tagName, words, ...place, ...looks.map((look) => style.getPropertyValue(look))].join(" | ");
    });
  });
}

describe.each(Object.entries(sheets))("%s", (paper, { id, pages }) => {
  beforeAll(async () => {
    if (page) return;
    ({ page, faults } = await openNotebook(browser, 1440, 900, false, true));
    await answered(page);
    await withoutPrinter();
  });
  it("is alone on its pages, A4 or Letter, in lines and letters that every printer has", async () => {
    await sendToPrinter(paper);
    for (const format of formats) {
      const pdf = await page.pdf({ format });
      expect(pagesOf(pdf), format).toBe(pages);
      expect(fontsLeftOut(pdf)).toEqual([]);
      expect(pdf.toString("latin1")).not.toMatch(/\/Subtype\s*\/Image/);
    }
    const { controls, wider, parts } = await onPaper(SHEET_px, () => lookAtPaper(page));
    expect({ controls, wider, parts }).toEqual({ controls: [], wider: [], parts: [".paper .sheet"] });
    expect(faults).toEqual([]);
  });

  it("is the one that the command line makes, whatever else is on the page", async () => {
    await sendToPrinter(paper);
    const ours = await onPaper(SHEET_px, () => layoutOf(page));
    const file = join(emptyFolder(), "job.json");
    writeFileSync(file, JSON.stringify(demos[0]?.document));
    expect((await runCommand("sheet", file, "--paper", id, "--out", `${file}.html`)).code).toBe(0);
    const alone = await browser.newPage({ viewport: { width: SHEET_px, height: 1000 } });
    await alone.goto(`file://${file}.html`);
    await alone.emulateMedia({ media: "print" });
    expect(ours).toEqual(await layoutOf(alone));
    await alone.close();
  });
});

describe("The workings", () => {
  beforeAll(async () => {
    await page?.context().close();
    // A section that is hidden from the client: its figure is not for paper.
    const job: Job = { ...(jobsWithCharts[0]?.[1] as Job), hiddenSections: ["motor"] };
    ({ page, faults } = await openWithFigures(browser, job));
    await withoutPrinter();
  });

  it("are printed whole when asked for: every figure on one page, nothing to press, nothing wider than the paper", async () => {
    await sendToPrinter("The workings");
    const seen = await onPaper(WORKINGS_px, () => lookAtPaper(page));
    // What was given is text, as it was typed and with where it comes from.
    expect(seen.given).toContain("18 3/4 cwt (measured)");
    expect(seen).toMatchObject({ controls: [], wider: [], parts: ["#answer", "#chapters", "#workings"] });
    expect(seen.headings.length).toBeGreaterThanOrEqual(10);
    expect(seen.headings).not.toContain("Motor");
    // The map's places are nobody's business but the driver's.
    expect(seen.leftOut.map((words) => words.split(" ")[0])).toEqual(["Track", "Track", "Torque"]);
    expect(seen.figures).toBeGreaterThanOrEqual(20);
    for (const format of formats) {
      const pdf = await page.pdf({ format, tagged: true, outline: true });
      expect(printedHeadings(pdf)).toEqual(expect.arrayContaining(seen.headings));
      expect(fontsLeftOut(pdf)).toEqual([]);
      expect(pdf.toString("latin1")).not.toMatch(/\/Subtype\s*\/Image/);
      const figures = printedFigures(pdf);
      expect(figures.filter(({ words }) => words !== undefined).length, format).toBe(seen.figures);
      for (const { words, pages, pieces } of figures) {
        expect(pages.length, `${format}: ${words}`).toBe(1);
        expect(pieces, `${format}: ${words}`).toBeGreaterThan(5);
      }
    }
    expect(faults).toEqual([]);
  });

  it("are the same from a narrow window and from a very wide one", async () => {
    const printedFrom = async (width: number) => {
      await page.setViewportSize({ width, height: 900 });
      await sendToPrinter("The workings");
      const pdf = await page.pdf({ format: "A4", tagged: true });
      return { pages: pagesOf(pdf), pieces: printedFigures(pdf).map(({ pieces }) => pieces) };
    };
    const narrow = await printedFrom(390);
    expect(narrow.pages).toBeGreaterThan(10);
    expect(await printedFrom(2560)).toEqual(narrow);
  });
});
