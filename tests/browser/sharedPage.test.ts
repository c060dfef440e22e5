import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, it } from "vitest";
import { readJob } from "../../shared/job/readJob.ts";
import { sharedPage } from "../../web/store/files/sharedPage.ts";
import { changedDemo } from "../support/changedDemo.ts";
import { answered } from "../support/notebookPage.ts";
import { openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

it("lets whoever is sent a page try out all that stands beside the answer, and change nothing else", async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const url = inject("notebookUrl");
  // The page as it is sent, but for its script and look, which lie beside it here and inside it there.
  const body = sharedPage(await (await fetch(url)).text(), readJob(changedDemo({ title: "Sent to a client" })));
  await page.route(url, (route) => route.fulfill({ body, contentType: "text/html" }));
  await page.goto(url);
  await answered(page);
  expect(await page.locator("h1").textContent()).toBe("Sent to a client");
  const table = () => page.locator(".answer-table").textContent();

  const full = await table();
  await page.getByRole("button", { name: "Pin this" }).click();
  expect(await page.locator("#answer .pin").textContent()).toContain("as it is now");
  await page.locator("#answer-ceiling").selectOption({ label: "80 %" });
  await expect.poll(table).not.toBe(full);
  await answered(page);
  expect(await page.locator("#answer-ceiling option:checked").textContent()).toBe("80 %");
  await page.getByRole("button", { name: "Back to pinned" }).click();
  expect(await page.locator("#answer-ceiling option:checked").textContent()).not.toBe("80 %");
  await page.getByRole("button", { name: "Unpin" }).click();
  expect(await page.getByRole("button", { name: "Pin this" }).count()).toBe(1);

  // Every control beside the answer takes what is put into it.
  for (const field of await page.locator("#answer .controls-grid input").all()) {
    const before = await field.inputValue();
    await field.fill("1.1");
    await field.blur();
    expect(await field.inputValue(), before).toContain("1.1");
  }
  await openWorking(page, "theCar");
  expect(await page.locator("#field-vehicle-kerb_kg").isDisabled()).toBe(true);
  await context.close();
});
