import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeLog, makeTruth } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { answered, unfold, write } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const truth = makeTruth(cycleSpeeds_mps("nycc"), 3, () => 50);
const spoiling = { seed: 2, sampling_s: 1, position_m: 3, white_m: 0.5, speed_mps: 0.15, elevation_m: 3 };
const gpx = Buffer.from(writeGpx(makeLog(truth, { ...spoiling, hasMultipath: false, hasDropouts: false })));

/** Everything that is on the page: texts, values of fields, words only for a reader by ear, papers that are drawn. */
const everything = (page: Page) =>
  page.evaluate(() => {
    const fields = [...document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>("input, textarea")];
    const all = `${document.title} ${document.documentElement.outerHTML} ${fields.map(({ value }) => value).join(" ")}`;
    return all.replaceAll("&nbsp;", " ").replaceAll("\u00a0", " ");
  });

/** Words and values of the first job that the second may nowhere show. */
const ofMarigold = [
  "Marigold",
  "monday.gpx",
  "secret mill",
  "48 km/h by the mill",
  "131 m",
  "99 V",
  "is driven now",
  "Client's own",
  "usual day 43 km",
  "Pinned",
  "day-tick was",
];

const saved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
const example = (page: Page, title: string) => page.getByRole("button", { name: `Example: ${title}` }).click();

/** Everything of a client's that goes on the page, in the job and beside it. */
async function workAsMarigold(page: Page): Promise<void> {
  await page.setInputFiles("#road-log", { name: "monday.gpx", mimeType: "text/plain", buffer: gpx });
  await page.waitForFunction(() =>
    document.querySelector("#theRoad .road-log")?.textContent?.includes("is driven now"),
  );
  await page.locator("#typed-title").fill("To the secret mill");
  await page.locator("#typed-road").fill("3 km at 48 km/h by the mill");
  await page.selectOption("#cycle-hills", "typed");
  await page.locator("#cycle-heights").fill("0 km 131 m; 2.5 km 187 m");
  await page.locator("#sheet-rated_V").fill("99 V");
  await write(page, "use", "Client Marigold's rounds");
  await page.getByRole("button", { name: "Write a note to Car" }).click();
  await page.getByRole("textbox", { name: "Note to Car" }).fill("Marigold leaks oil.");
  await page.getByRole("button", { name: "Make a chart" }).click();
  await page.locator("#own-0-caption").fill("What Marigold asked for");
  await page.focus("#field-packs-0-name");
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "Name\tIn parallel\nMarigold pack\tmany Marigolds\n");
    const paste = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(paste);
  });
  await page.locator("#answer-day").fill("43");
  await page.getByRole("button", { name: "Pin this" }).click();
  await page.locator("#answer-day").fill("47");
  await page.locator("#answer .answer-table button").last().click(); // another pack than the recommended one
  await page.locator("#field-vehicle-load_kg").selectText();
  await page.keyboard.type("a quarter of Marigold");
  await page.getByText("Earlier versions of this job").click();
  await page.getByRole("button", { name: "Preview" }).click();
  await page.waitForSelector(".paper .sheet");
  await page.getByRole("button", { name: "Close the preview" }).click();
  await saved(page);
}

/** What a job gives away: its file and its page in one file, as texts. */
async function givenAway(page: Page): Promise<string> {
  const texts: string[] = [];
  for (const name of ["Save this job as a file", "Share"]) {
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name }).click()]);
    texts.push(download.suggestedFilename(), readFileSync(await download.path(), "utf8"));
  }
  return texts.join(" ");
}

/** Draws every paper there is. */
async function papers(page: Page): Promise<string> {
  const texts: string[] = [];
  const choice = page.locator(".paper-tools select");
  for (const value of await choice
    .locator("option")
    .evaluateAll((all) => all.map((each) => (each as HTMLOptionElement).value))) {
    await choice.selectOption(value);
    const preview = page.getByRole("button", { name: "Preview", exact: true });
    if (await preview.isVisible()) await preview.click();
    if (value !== "workings") await page.waitForSelector(".paper > div > :not(style)");
    texts.push((await page.locator(".paper").textContent()) ?? "");
  }
  return texts.join(" ");
}

describe("nothing of one client's job is in another's", () => {
  it("on the page, on paper, in undo, in what is saved and sent; and all of it is there again in its own", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    // The page that is sent lies beside the built page; here a bare one stands in for it.
    await page.route("**/bellhousing.html", (route) =>
      route.fulfill({ body: "<!doctype html><html><body><main></main></body></html>", contentType: "text/html" }),
    );
    await openWorking(page, "theRoad", "theJob", "motor", "theCar", "packs", "ownCharts");
    await unfold(page);
    await workAsMarigold(page);
    const own = await everything(page);
    for (const trace of ofMarigold) expect(own.includes(trace), `found ${trace} in its own`).toBe(true);

    await example(page, "Vineyard");
    await page.locator("h1", { hasText: "Vineyard" }).waitFor();
    await answered(page);
    await unfold(page);
    const found = `${await everything(page)} ${await papers(page)} ${await givenAway(page)}`;
    expect(ofMarigold.filter((trace) => found.includes(trace))).toEqual([]);
    expect(await page.getByRole("button", { name: /^Undo/ }).isDisabled()).toBe(true);
    await page.keyboard.press("Control+z");
    expect(await page.locator("h1").textContent()).toContain("Vineyard");
    await write(page, "use", "Foxglove's rounds");
    await saved(page);

    await page.getByRole("button", { name: /^Open Piano/ }).click();
    await page.locator("h1", { hasText: "Piano tuner" }).waitFor();
    await answered(page);
    await unfold(page);
    expect(`${await everything(page)} ${await papers(page)} ${await givenAway(page)}`).not.toContain("Foxglove");
    const again = {
      "#typed-title": "To the secret mill",
      "#typed-road": "3 km at 48 km/h by the mill",
      "#cycle-heights": "0 km 131 m; 2.5 km 187 m",
      "#sheet-rated_V": "99 V",
      "#own-0-caption": "What Marigold asked for",
      "#field-packs-0-name": "Marigold pack",
      "#field-packs-0-parallelModules": "many Marigolds",
      "#field-vehicle-load_kg": "a quarter of Marigold",
      "#answer-day": "47",
    };
    for (const [field, text] of Object.entries(again)) expect(await page.inputValue(field), field).toBe(text);
    await page.reload();
    await page.locator("h1", { hasText: "Piano tuner" }).waitFor();
    await answered(page);
    for (const [field, text] of Object.entries(again))
      await expect.poll(() => page.inputValue(field), { message: field }).toBe(text);
    expect(await page.locator("#answer .pin").textContent()).toMatch(/usual day 43.km/);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("where a copy is made, the copy is what is open, and the original stays as it was", async () => {
    const { page } = await openNotebook(browser, 1440, 900, false, true);
    await openWorking(page, "theJob");
    await page.locator(".jobs > summary").click();
    await page.getByRole("button", { name: /^Copy/ }).first().click();
    await page.locator("h1", { hasText: "(copy)" }).waitFor();
    await write(page, "use", "The copy's own");
    await saved(page);
    await page.getByRole("button", { name: /^Open Piano tuner/ }).click();
    await expect.poll(() => page.locator("h1").textContent()).not.toContain("(copy)");
    expect(await everything(page)).not.toContain("The copy's own");
    await page.context().close();
  });
});

describe("a worker that dies", () => {
  it("is started anew: the next change is answered, and no old answer stays", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    await answered(page);
    const answer = () => page.locator("#answer .say").textContent();
    const before = await answer();
    for (const worker of page.workers()) await worker.evaluate(() => self.close());
    await page.locator("#answer-field-vehicle-load_kg").fill("500 kg");
    // Until it is answered, what stands is marked as what was before.
    await page.waitForFunction(() => document.querySelector<HTMLElement>("#answer")?.dataset["late"] !== "none");
    await answered(page);
    await expect.poll(answer).not.toBe(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
