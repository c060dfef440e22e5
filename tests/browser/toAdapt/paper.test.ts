import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { choosePaper, worked } from "../../support/notebookPage.ts";
import { openNotebook, startChromium } from "../../support/openNotebook.ts";
import { jobsWithCharts, openWithFigures } from "../../support/openWithFigures.ts";
import { printedFigures } from "../../support/printedFigures.ts";

// The workings on paper; the sheets have tests of their own.

/** 210 mm less the margins of print.css, 16 mm each, at 96 px to the inch. */
const PAPER_px = ((210 - 2 * 16) / 25.4) * 96;

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** What the page means to print: the headings of its sections and the number of its figures. */
function meant(page: Page): Promise<{ headings: string[]; figures: number }> {
  return page.evaluate(() => {
    const isThere = (each: Element) => each.getBoundingClientRect().height > 0;
    const headings = [...document.querySelectorAll(".working [id$='-title']")].filter(isThere);
    const figures = [...document.querySelectorAll(".working figure svg[role=img]")].filter(isThere);
    return { headings: headings.map((each) => each.textContent?.trim() ?? ""), figures: figures.length };
  });
}

/** Headings and figures that came onto a page of a tagged PDF: a page that was lost takes its own out of both lists. */
function printed(pdf: Buffer): { headings: string[]; figures: number } {
  const text = pdf.toString("latin1");
  return {
    headings: [...text.matchAll(/\/Title \(((?:[^\\)]|\\.)*)\)/g)].map(([, title]) => title),
    figures: [...text.matchAll(/\/Alt\s*[(<]/g)].length,
  };
}

describe("on paper", () => {
  it.each([390, 1440, 2560])(
    "every section and every figure comes out, printed from a page %d px wide",
    async (width) => {
      const { page, faults } = await openNotebook(browser, width);
      await worked(page);
      await choosePaper(page, "workings");
      const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true, tagged: true, outline: true });
      await page.emulateMedia({ media: "print" });
      const { headings, figures } = await meant(page);
      expect(headings.length).toBeGreaterThanOrEqual(10);
      expect(figures).toBeGreaterThanOrEqual(8);
      expect(printed(pdf).headings).toEqual(expect.arrayContaining(headings));
      expect(printed(pdf).figures).toBe(figures);
      expect(faults).toEqual([]);
      await page.context().close();
    },
  );

  it("nothing is wider than the paper, and nothing to press or fill in is left", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await choosePaper(page, "workings");
    await page.setViewportSize({ width: Math.floor(PAPER_px), height: 986 });
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    const { edges, controls } = await page.evaluate(() => {
      const isThere = (each: Element) => each.getBoundingClientRect().height > 0;
      const drawn = [...document.querySelectorAll(".working figure svg[role=img], .working table")].filter(isThere);
      const controls = [
        ...document.querySelectorAll("input, select, textarea, button:not([data-opens]), summary, progress"),
      ];
      return {
        edges: drawn.map((each) => {
          const { left, right, width } = each.getBoundingClientRect();
          return { left, right, width };
        }),
        controls: controls.filter(isThere).map((each) => each.id || each.textContent?.trim() || each.tagName),
      };
    });
    expect(edges.length).toBeGreaterThanOrEqual(15);
    for (const { left, right, width } of edges) {
      expect(width).toBeGreaterThan(0);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(PAPER_px);
    }
    expect(controls).toEqual([]);
    await page.context().close();
  });

  it.each(jobsWithCharts)(
    "every figure of %s comes out whole on one sheet, A4 or Letter, though nobody scrolled to it",
    async (_, job) => {
      // Hidden from the client: its figures are not for paper.
      const { page, faults } = await openWithFigures(browser, { ...job, hiddenSections: ["motor"] });
      await choosePaper(page, "workings");
      const all = await page.locator(".working figure").count();
      expect(all).toBeGreaterThanOrEqual(16);
      for (const format of ["A4", "Letter"]) {
        const pdf = await page.pdf({ format, tagged: true, outline: true });
        const figures = printedFigures(pdf);
        // All but the motor's, which is hidden, and the map, whose places are nobody's business but the driver's.
        expect(figures.filter(({ words }) => words !== undefined).length, format).toBe(all - 2);
        expect(figures.filter(({ words }) => words === undefined).length, format).toBe(all - 2); // with their captions
        for (const { words, pages, pieces } of figures) {
          expect(pages.length, `${format}: ${words}`).toBe(1);
          expect(pieces, `${format}: ${words}`).toBeGreaterThan(5);
        }
        expect(printed(pdf).headings).not.toContain("Motor");
      }
      await page.emulateMedia({ media: "print" });
      const captions = await page.evaluate(() =>
        [...document.querySelectorAll(".working figure")]
          .filter((each) => each.getBoundingClientRect().height > 0)
          .map((each) => each.querySelector("figcaption")?.getBoundingClientRect().height ?? 0),
      );
      expect(captions.length).toBe(all - 2);
      expect(Math.min(...captions)).toBeGreaterThan(0);
      expect(faults).toEqual([]);
      await page.context().close();
    },
  );
});
