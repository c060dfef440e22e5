import { cpSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import type { Server } from "node:http";
import { extname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, inject, it } from "vitest";
import { listen } from "../../sim/cli/serving/listen.ts";
import { staticServer } from "../../sim/cli/serving/staticServer.ts";
import { emptyFolder } from "../support/emptyFolder.ts";
import { answered } from "../support/notebookPage.ts";
import { openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
let server: Server | undefined;
let port = 0;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  await stop();
});
beforeEach(async () => {
  await stop();
  await serve(inject("notebookFolder"));
});

async function serve(folder: string): Promise<void> {
  server = staticServer(folder);
  port = await listen(server, port);
}

async function stop(): Promise<void> {
  const running = server;
  server = undefined;
  if (!running) return;
  await new Promise((resolve) => {
    running.close(resolve);
    running.closeAllConnections();
  });
}

/** The page as another build of it: every file beside it under a new name, with whatever names it. */
function rebuilt(): string {
  const folder = emptyFolder();
  cpSync(inject("notebookFolder"), folder, { recursive: true });
  const assets = join(folder, "assets");
  const renamed = readdirSync(assets).map((name) => [name, name.replace(/(\.\w+)$/, "2$1")] as const);
  for (const [before, after] of renamed) renameSync(join(assets, before), join(assets, after));
  for (const path of [join(folder, "index.html"), ...readdirSync(assets).map((name) => join(assets, name))]) {
    if (![".html", ".js", ".css"].includes(extname(path))) continue;
    let text = readFileSync(path, "utf8");
    for (const [before, after] of renamed) text = text.replaceAll(before, after);
    writeFileSync(path, text);
  }
  return folder;
}

async function open(): Promise<Page> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}/`);
  await answered(page);
  await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
  await page.waitForLoadState("networkidle"); // what follows the answer unasked has come
  return page;
}

/** Asks for everything that is fetched only when it is first needed, and expects a sentence and a way on at each. */
async function expectSentences(page: Page): Promise<void> {
  const words = "a part of it could not be fetched: its server was stopped, or has a newer edition";
  await openWorking(page, "theCar");
  const reasons = page.locator("#theCar .reasons");
  await reasons.locator("summary").click();
  await reasons.getByRole("button", { name: "Reload the page" }).waitFor();
  expect(await reasons.textContent()).toContain(words);

  const tools = page.locator("#yourRoad .in-words");
  await tools.locator("summary").click();
  await tools.getByRole("button", { name: /drawing/ }).click();
  await page.locator(".complaint", { hasText: words }).waitFor();

  await page.getByRole("button", { name: "Preview" }).click();
  expect(await page.locator(".paper").textContent()).not.toContain("try again in a moment");

  // The road of a new job is a cycle that nobody has asked for yet.
  await page.getByRole("button", { name: "New job" }).click();
  await page.locator("#answer .verdict", { hasText: "No answer." }).waitFor();
  expect(await page.locator("#answer .say").textContent()).toMatch(/could not be fetched|calculation stopped/);
  expect(await page.locator("#answer").getByRole("button", { name: "Try again" }).count()).toBe(1);
  await openWorking(page, "theRoad");
  await page.locator("#theRoad .failed").waitFor();

  const text = await page.evaluate(() => document.querySelector("main")?.textContent ?? "");
  expect(text).not.toMatch(/https?:|assets\/|\.js\b|Failed to fetch|imported module|TypeError|NetworkError/);
  expect(await page.locator("main pre").count()).toBe(0);
  expect(text).not.toContain("Calculating the first answer");
}

describe("a page whose server", () => {
  it("was stopped says so wherever it needs it, and goes on once it is there again", async () => {
    const page = await open();
    await stop();
    await expectSentences(page);
    await page.locator("#first-field-usualDay_km").fill("47");
    await page.locator("#first-field-usualDay_km").blur();
    await serve(inject("notebookFolder"));
    await page.locator("#answer").getByRole("button", { name: "Try again" }).click();
    await answered(page);
    expect(await page.locator("#answer .say").textContent()).toContain("usual day of 47\u00a0km");
    await page.context().close();
  });

  it("has another build of it by now says so, and a reload brings the new one with the job as it was", async () => {
    const page = await open();
    await stop();
    await serve(rebuilt());
    await expectSentences(page);
    await page.locator("#first-field-usualDay_km").fill("47");
    await page.locator("#first-field-usualDay_km").blur();
    await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
    await page.locator("#theCar .reasons").getByRole("button", { name: "Reload the page" }).click();
    await page.waitForLoadState("load");
    await answered(page);
    expect(await page.locator("h1").textContent()).toBe("New job");
    expect(await page.inputValue("#answer-day")).toBe("47");
    await page.context().close();
  });

  it("ends while the page is being opened leaves a sentence and a way on", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.route(/assets/, (route) => route.abort());
    await page.goto(`http://127.0.0.1:${port}/`);
    const overdue = page.locator(".overdue");
    expect(await overdue.isVisible()).toBe(false);
    await page.evaluate(() => {
      for (const each of document.getAnimations()) each.finish();
    });
    expect(await overdue.isVisible()).toBe(true);
    await page.unroute(/assets/);
    await overdue.getByRole("link").click();
    await answered(page);
    await context.close();
  });

  it("is asked for as localhost sends the browser to the address that its jobs are kept under", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`http://localhost:${port}/`);
    expect(page.url()).toBe(`http://127.0.0.1:${port}/`);
    await context.close();
  });
});
