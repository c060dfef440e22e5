import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { worked } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

it("figures are dark ink on light paper where the reader sets light words on a dark ground", async () => {
  const { page } = await openNotebook(browser);
  await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
  await worked(page);
  const drawings = await page.locator(".figure-reader > svg").evaluateAll((all) =>
    all.map((svg) => {
      const light = (colour: string) =>
        (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((sum, part) => sum + Number(part) / 765, 0);
      const lines = [...svg.querySelectorAll("path[stroke]:not([stroke=none]), text")];
      const inks = lines.map((each) => light(getComputedStyle(each)[each.tagName === "text" ? "fill" : "stroke"]));
      return { paper: light(getComputedStyle(svg.parentElement ?? svg).backgroundColor), darkest: Math.min(...inks) };
    }),
  );
  expect(drawings.length).toBeGreaterThan(5);
  for (const { paper, darkest } of drawings) {
    expect(paper).toBeGreaterThan(0.95);
    expect(darkest).toBeLessThan(0.35);
  }
  expect(await page.evaluate(() => matchMedia("(forced-colors: active)").matches)).toBe(true);
  await page.context().close();
});
