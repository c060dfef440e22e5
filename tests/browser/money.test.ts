import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { saidAt, worked } from "../support/notebookPage.ts";
import { openWith, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

it("follows prices and distances as they are typed, refuses what cannot be, and shows any currency as text", async () => {
  const { page, faults } = await openWith(browser, "charging", "money");
  const chapter = page.locator("#whatItCosts .sentence");
  const words = async () => ((await chapter.textContent()) ?? "").replace(/[\u00a0\u202f]/g, " ");
  const put = async (path: string, text: string) => {
    await page.fill(`#field-${path.replaceAll(".", "-")}`, text);
    await page.keyboard.press("Tab");
    await worked(page);
  };
  expect(await words()).toMatch(/^13 kWh costs .* It pays back in about \d+ years/);

  await put("costs.running.yearly.0.distance_km", "1500");
  expect(await words()).toMatch(
    /At 1500 km a year .* It does not pay back within 10 years; it would from about \d+ km a year\./,
  );

  await put("costs.work.0.parts.low", "99999");
  expect(await saidAt(page, "costs.work.0.parts.low")).toMatch(/low \(99999\) or more wanted/);
  await put("costs.work.0.parts.low", "-5");
  expect(await saidAt(page, "costs.work.0.parts.low")).toMatch(/not possible/);
  await put("costs.work.0.parts.low", "2900");
  await put("costs.running.yearly.0.distance_km", "0");
  expect(await saidAt(page, "costs.running.yearly.0.distance_km")).toMatch(/not possible/);
  await put("costs.running.yearly.0.distance_km", "1500");

  await put("currency", "<b>x</b>");
  expect(await words()).toContain("<b>x</b>");
  expect(await page.locator("#whatItCosts b, #money b, .answer-table b").count()).toBe(0);
  expect(await page.locator(".answer-table th.price").textContent()).toContain("<b>x</b>");
  expect(
    await page
      .locator("[id]")
      .evaluateAll((all) => all.map(({ id }) => id).filter((id, i, ids) => ids.indexOf(id) < i)),
  ).toEqual([]);
  expect(faults).toEqual([]);
  await page.context().close();
});
