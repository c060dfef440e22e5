import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { choosePaper, finding, worked, write } from "../support/notebookPage.ts";
import { openWith, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const isSaved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
const rows = (page: Page) => page.locator(".jobs-body > .job-list > li");
const openJobs = (page: Page) => page.locator(".jobs > summary").click();

/** Puts a text on the page as a file that was picked. */
async function pick(page: Page, name: string, text: string): Promise<void> {
  await page.locator("#job-file").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

/** Saves the open job as a file, and returns its text. */
async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save this job as a file" }).click(),
  ]);
  return readFile(await download.path(), "utf8");
}

describe("jobs on the page", () => {
  it("go out as a file and come back the same, half-read numbers and all", async () => {
    const { page, faults } = await openWith(browser, "theCar");
    await write(page, "vehicle.load_kg", "3 cwt");
    await openJobs(page);
    const text = await savedFile(page);
    expect(JSON.parse(text)).toMatchObject({ format: "bellhousing-job", vehicle: { load_kg: 152.40703632 } });
    await write(page, "vehicle.load_kg", "10 kg");
    await pick(page, "back.bellhousing.json", text);
    await page.waitForFunction(
      () => (document.querySelector("#field-vehicle-load_kg") as HTMLInputElement)?.value === "3 cwt",
    );
    await expect.poll(() => rows(page).count()).toBe(2);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it.each([
    ["a photograph", "\u00ff\u00d8\u00ff\u00e0 JFIF", /not JSON/],
    ["a job of a newer version", '{"format":"bellhousing-job","version":99}', /version 99/],
    ["somebody else's JSON", '{"format":"shopping"}', /bellhousing-job/],
    ["a misspelt key", "MISSPELT", /vehicel/],
  ])("say what is wrong with %s, and the open job stays", async (_, content, sentence) => {
    const { page } = await openWith(browser);
    await openJobs(page);
    const text = content === "MISSPELT" ? (await savedFile(page)).replace('"vehicle"', '"vehicel"') : content;
    await pick(page, "bad.json", text);
    await page.locator(".complaint:not(:empty)").waitFor();
    expect(await page.locator(".complaint").textContent()).toMatch(sentence);
    expect(await page.locator("h1").textContent()).toContain("Piano tuner");
    expect(await rows(page).count()).toBe(1);
    await page.context().close();
  });

  it("can be copied, deleted, brought back and compared", async () => {
    const { page, faults } = await openWith(browser, "theJob");
    await openJobs(page);
    await rows(page).first().getByRole("button", { name: /^Copy/ }).click();
    await expect.poll(() => rows(page).count()).toBe(2);
    // What is written now goes into the copy, which is the one that is open.
    expect(await rows(page).filter({ hasText: "(open here)" }).locator("strong").textContent()).toMatch(/\(copy\)$/);
    expect(await page.locator("h1").textContent()).toMatch(/\(copy\)$/);
    await write(page, "usualDay_km", "61 km");
    await worked(page);
    await page
      .getByRole("button", { name: /^Compare/ })
      .first()
      .click();
    await page.locator("#compared").waitFor();
    const cells = await page.locator('[aria-labelledby="compared"] tbody tr').allInnerTexts();
    expect(cells.map((cell) => cell.replace(/\s+/g, " ").trim())).toContain("Usual day 38 km 61 km");
    await page
      .getByRole("button", { name: /^Delete/ })
      .last()
      .click();
    await page.getByRole("button", { name: "Bring it back" }).click();
    await expect.poll(() => rows(page).count()).toBe(2);

    // After a reload the page no longer speaks of the last deletion, and the job can still be had back.
    await page
      .getByRole("button", { name: /^Delete/ })
      .last()
      .click();
    await expect.poll(() => rows(page).count()).toBe(1);
    await page.reload();
    await worked(page);
    await openJobs(page);
    await page.getByText("Deleted, and not yet gone (1)").click();
    await page.getByRole("button", { name: /^Bring it back/ }).click();
    await expect.poll(() => rows(page).count()).toBe(2);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("open on their own first road, also where the job before showed one of the same name", async () => {
    const { page } = await openWith(browser, "theRoad");
    expect(await page.locator("#view-road").inputValue()).toBe("udds"); // the pick-up has a road of this name too
    await openJobs(page);
    await page.getByRole("button", { name: /^Example: .*pick-up/ }).click();
    await page.locator("h1", { hasText: "pick-up" }).waitFor();
    await worked(page);
    expect(await page.locator("#view-road").inputValue()).toBe("terraces");
    await page.context().close();
  });

  it("go back to an earlier version", async () => {
    const { page } = await openWith(browser, "theJob");
    await openJobs(page);
    await write(page, "usualDay_km", "61 km");
    await isSaved(page);
    await page.getByText("Earlier versions of this job").click();
    await page.locator(".job-list[reversed] li").first().waitFor();
    expect(await page.locator(".job-list[reversed]").textContent()).toContain("Usual day");
    await page.context().close();
  });
});

describe("the workshop's own", () => {
  it("chart is made, coloured and captioned", async () => {
    const { page, faults } = await openWith(browser, "ownCharts");
    await page.getByRole("button", { name: "Make a chart" }).click();
    await page.selectOption("#own-0-x", "speed");
    await page.selectOption("#own-0-y", "motorTorque");
    await page.selectOption("#own-0-colour", "motorLoss");
    await page.fill("#own-0-caption", "Where the loss is");
    await page.locator("#own-0-caption").blur(); // words count once their field is left
    await worked(page);
    const figure = page.locator("#ownCharts figure");
    await expect.poll(() => figure.locator("figcaption").textContent()).toMatch(/Figure \d+\. Where the loss is/);
    expect(await figure.locator("svg[role=img]").getAttribute("aria-label")).toContain("Motor torque");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("note is written below a section, kept, and taken back", async () => {
    const { page } = await openWith(browser, "theCar", "energyPerKm");
    await page.getByRole("button", { name: "Write a note to Car", exact: true }).click();
    await write(page, "notes.0.text", "Weighed on **Tuesday**, tank a quarter full. See Figure 1.");
    const read = page.locator("#theCar .note-read");
    await read.locator("strong").waitFor(); // the reader of Markdown comes when the first note does
    expect(await read.locator("strong").textContent()).toBe("Tuesday");
    expect(await page.locator((await read.locator("a").getAttribute("href")) ?? "none").count()).toBe(1);
    await isSaved(page);
    await page.reload();
    await worked(page);
    expect(await page.inputValue("#theCar #field-notes-0-text")).toContain("Weighed on **Tuesday**");
    await page.context().close();
  });

  it("choice of what the client need not see is left out of print, and said", async () => {
    const { page } = await openWith(browser, "operatingPoints", "energyPerKm");
    await page.getByRole("button", { name: /Hide from client.*Operating points/ }).click();
    expect(await page.locator("#operatingPoints").isVisible()).toBe(true);
    const beside = await page.evaluate(() => {
      const head = document.querySelector("#operatingPoints > .working-head");
      return head && getComputedStyle(head, "::after").content;
    });
    expect(beside).toContain("not for the client");
    await choosePaper(page, "workings");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#operatingPoints").isVisible()).toBe(false);
    expect(await page.locator("#energyPerKm").isVisible()).toBe(true);
    await page.context().close();
  });

  it("units change every field, figure and sentence, and what was typed stays as typed", async () => {
    const { page, faults } = await openWith(browser, "theJob", "theCar", "whichIsEnough", "stateOfCharge");
    await page.locator(".tools select").selectOption("british");
    await worked(page);
    expect(await page.inputValue("#field-usualDay_km")).toBe("38 km");
    expect(await page.inputValue("#field-longestDay_km")).toBe("45.9815"); // nobody typed this one
    expect(await page.inputValue("#field-vehicle-kerb_kg")).toBe("18 3/4 cwt");
    expect(await finding(page, "whichIsEnough")).toMatch(/miles/);
    expect(await finding(page, "whichIsEnough")).not.toMatch(/\d km\b/);
    expect(await page.locator("#stateOfCharge table").textContent()).toContain("miles");
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
