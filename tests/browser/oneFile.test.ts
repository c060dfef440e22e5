import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import Papa from "papaparse";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { build } from "vite";
import { afterAll, beforeAll, expect, it } from "vitest";
import { makeLog, makeTruth } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { expectNoSidewaysScroll, worked, write } from "../support/notebookPage.ts";
import { openWorkings, startChromium } from "../support/openNotebook.ts";
import { savedFigure, seen, sizeOfPng } from "../support/savedFigure.ts";

// The notebook as one file, opened from disk: no server, no network, nothing beside it.

let folder: string;
let file: string;
let browser: Browser;
let context: BrowserContext;
let page: Page;
const asked: string[] = [];
const faults: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "bellhousing-file-"));
  file = join(folder, "bellhousing.html");
  // The bundler takes the mode of the process for the packages' own; a page for people is a production build.
  const mode = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production";
  await build({
    mode: "oneFile",
    logLevel: "error",
    build: { outDir: folder },
  });
  if (mode !== undefined) process.env["NODE_ENV"] = mode;
  browser = await startChromium();
  context = await browser.newContext({ offline: true });
  // Of the context, not of the page: what a worker asks for is seen there too.
  context.on("request", (request) => {
    if (!/^(file|data|blob):/.test(request.url())) asked.push(request.url());
  });
  page = await context.newPage();
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
  await page.goto(pathToFileURL(file).href);
  await openWorkings(page);
  await worked(page);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Until the answer is calculated for what is in the job, bands and all. */
async function answered(of: Page): Promise<void> {
  await of.waitForFunction(() => document.querySelector<HTMLElement>("#answer")?.dataset["late"] === "none");
  await worked(of);
}

it("answers for the demo, follows a change of the day and of the car, and keeps both over a reload", async () => {
  const answers = () =>
    Promise.all(
      ["#answer .verdict", "#answer .say", "#energyPerKm .summary"].map((part) => page.locator(part).textContent()),
    );
  await answered(page);
  const [verdict, enough, energy] = await answers();
  expect(verdict).toMatch(/^\s*\d+ kWh: (not enough|only just|enough|more than enough)\./);
  await page.locator("#answer-day").fill("60");
  await write(page, "vehicle.load_kg", "200"); // the verdict of a day is the page's own work, that of a load the worker's
  await answered(page);
  await expect.poll(async () => (await answers())[2]).not.toBe(energy);
  await answered(page);
  const [verdictAfter, enoughAfter, energyAfter] = await answers();
  expect(enoughAfter).toMatch(/60.km/);
  expect(enoughAfter).not.toBe(enough);
  await page.waitForFunction(() => document.querySelector(".keeping")?.textContent?.includes("Saved in this browser"));
  await page.reload();
  await answered(page);
  expect(await answers()).toEqual([verdictAfter, enoughAfter, energyAfter]);
});

it("reads a log in its own worker", async () => {
  const truth = makeTruth(cycleSpeeds_mps("nycc"), 3, () => 50);
  const spoiling = { seed: 2, sampling_s: 1, position_m: 3, white_m: 0.5, speed_mps: 0.15, elevation_m: 3 };
  const gpx = writeGpx(makeLog(truth, { ...spoiling, hasMultipath: false, hasDropouts: false }));
  await page.setInputFiles("#road-log", { name: "day.gpx", mimeType: "text/plain", buffer: Buffer.from(gpx) });
  await page.waitForSelector("#theRoad .offer", { timeout: 60_000 });
  expect(await page.locator("#theRoad .offer").textContent()).toMatch(/Quality: (good|usable)/);
});

it("draws a figure to save with the typeface that lies inside it", async () => {
  await worked(page); // the log of the test before moves figures while it is driven
  await page.locator("#roadLoad .in-words summary").first().click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator("#roadLoad .figure-tools button", { hasText: "SVG" }).first().click(),
  ]);
  expect(readFileSync(await download.path(), "utf8")).toContain("@font-face");
});

it("draws every figure as wide as a telephone, saves each as a drawing and some as picture and numbers", async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  await worked(page);
  await expectNoSidewaysScroll(page);
  const viewer = await (await browser.newContext({ offline: true })).newPage();
  const figures = await page.locator("main figure").all();
  expect(figures.length).toBeGreaterThanOrEqual(10);
  for (const [at, figure] of figures.entries()) {
    const words = (await figure.locator("svg[role=img]").getAttribute("aria-label")) ?? "";
    const drawing = await seen(viewer, await savedFigure(page, figure, "SVG"), "image/svg+xml");
    expect(drawing.width_px, words).toBeLessThanOrEqual(390);
    expect(drawing.inked_frac, words).toBeGreaterThan(0.01);
    // Picture and numbers are made as on the served page, where tests/browser/everyFigure.test.ts saves the numbers of all.
    if (at % 5 !== 0) continue;
    const png = await savedFigure(page, figure, "PNG");
    expect(sizeOfPng(png), words).toEqual([2 * drawing.width_px, 2 * drawing.height_px]);
    expect((await seen(viewer, png, "image/png")).inked_frac, words).toBeGreaterThan(0.01);
    const rows = Papa.parse<string[]>((await savedFigure(page, figure, "CSV")).toString("utf8")).data;
    expect(rows.length, words).toBeGreaterThan(1);
    expect(rows.join(), words).not.toMatch(/NaN|undefined/);
  }
  await viewer.context().close();
});

it("is shared with its job inside: opened on a telephone it can be tried out, and changes and keeps nothing", async () => {
  await page.setViewportSize({ width: 1280, height: 720 }); // on a telephone it lies in the menu
  await page.reload(); // the test before took what is saved from the page's hands
  await answered(page);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Share" }).click(),
  ]);
  const sent = join(folder, download.suggestedFilename());
  await download.saveAs(sent);
  expect(sent).toMatch(/\.html$/);
  const client = await browser.newContext({ offline: true, viewport: { width: 390, height: 844 }, hasTouch: true });
  const their = await client.newPage();
  their.on("pageerror", (error) => faults.push(error.message));
  their.on("console", (message) => message.type() === "error" && faults.push(message.text()));
  await their.goto(pathToFileURL(sent).href);
  await worked(their);
  expect(await their.locator("h1").textContent()).toBe(await page.locator("h1").textContent());
  const said = () => their.locator("#answer .say").textContent();
  const before = await said();
  const day = their.locator("#answer-day");
  const usual = await day.inputValue();
  await day.focus();
  await their.keyboard.press("End"); // the longest day that the slider knows
  await expect.poll(said).not.toBe(before);
  await their.getByRole("button", { name: "Open all" }).click();
  await worked(their);
  await expectNoSidewaysScroll(their);
  expect(await their.locator('[data-place="jobs"], [data-place="keeping"]').locator("visible=true").count()).toBe(0);
  expect(await their.locator("#field-vehicle-load_kg").isDisabled()).toBe(true);
  expect(
    await their
      .getByRole("button", { name: /^(Share|New job|Write a note)/ })
      .locator("visible=true")
      .count(),
  ).toBe(0);
  await their.reload();
  await worked(their);
  expect(await day.inputValue()).toBe(usual);
  await client.close();
  rmSync(sent);
});

it("says where its jobs are kept", async () => {
  const said = (await page.locator(".jobs .aside").first().textContent()) ?? "";
  expect(said).toMatch(/in this browser/);
  expect(await page.locator(".keeping").textContent()).toContain("Saved in this browser");
});

it("is one file with nothing beside it", () => {
  expect(readdirSync(folder)).toEqual(["bellhousing.html"]);
  const whole = readFileSync(file, "utf8").replace(/<!--[\s\S]*?-->/g, ""); // the licences
  const frame = whole.replace(/(<(script|style)\b[^>]*>)[\s\S]*?<\/\2>/g, "$1");
  expect(frame.length).toBeLessThan(5000);
  expect(frame.match(/\b(src|href)="(?!\.\/")/g)).toBeNull();
});

it("holds a policy that lets no script in from outside, and has asked no host for anything", async () => {
  const policy = /Content-Security-Policy" content="([^"]+)"/.exec(readFileSync(file, "utf8"))?.[1] ?? "";
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("connect-src data: blob:");
  expect(policy).not.toContain("unsafe-eval");
  expect(/script-src[^;]*unsafe-inline/.test(policy)).toBe(false);
  expect(asked).toEqual([]);
  expect(faults).toEqual([]);
});
