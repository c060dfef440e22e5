import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { makeLog, makeTruth, openSky } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { emptyFolder } from "../support/emptyFolder.ts";
import { inventedJob } from "../support/inventedJob.ts";
import type { Engine } from "./driver/engine.ts";
import { EnginePage, keys } from "./driver/enginePage.ts";
import { startEngine } from "./driver/findEngines.ts";

const load = "#field-vehicle-load_kg";
const button = (name: string) => `//button[normalize-space()="${name}"]`;

describe.each(inject("engines"))("in %s the notebook", (name) => {
  let engine: Engine;
  let page: EnginePage;
  beforeAll(async () => {
    engine = await startEngine(name);
    page = new EnginePage(engine.driver);
  });
  afterAll(async () => engine?.close());

  /** The notebook as somebody sees it who was never here, at its first answer. */
  async function open(width = 1440): Promise<void> {
    await page.setWidth(width);
    // From a text of the same server, so that no page holds the database open.
    await page.goTo(`${inject("notebookUrl")}licences.txt`);
    await page.evaluate(async () => {
      for (const { name: database = "" } of await indexedDB.databases())
        await new Promise((resolve, reject) => {
          const request = indexedDB.deleteDatabase(database);
          request.onsuccess = resolve;
          request.onerror = reject;
        });
      localStorage.clear();
      sessionStorage.clear();
    });
    await page.goTo(inject("notebookUrl"));
    await answered();
  }

  const text = (place: string) =>
    page.evaluate((css) => document.querySelector(css)?.textContent?.replace(/\s+/g, " ").trim() ?? "", place);
  const typed = (place: string) => page.evaluate((css) => document.querySelector<HTMLInputElement>(css)?.value, place);
  const verdict = () => text("#answer .verdict");
  const faults = () => page.evaluate(() => sessionStorage.getItem("faults") ?? "none");

  /** Waits until the answer is calculated for what is in the job now. */
  async function answered(): Promise<void> {
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
    await expect.poll(lateness, { timeout: 60_000 }).toBe("none");
  }

  /** What of the answer is still that of before a change: none of it, how far it is known, or all. */
  function lateness(): Promise<string | undefined> {
    return page.evaluate(() => document.querySelector<HTMLElement>("#answer")?.dataset["late"]);
  }

  async function openWorking(working: string): Promise<void> {
    const head = `[data-opens="${working}"]`;
    // The workings are fetched once the answer stands.
    await expect.poll(() => page.evaluate((css) => document.querySelector(css) !== null, head)).toBe(true);
    await page.activate(head);
    await expect.poll(() => text(`#${working} .finding .body`)).not.toBe("");
  }

  /** Types into a field by the keyboard in place of what is there, and leaves it. */
  async function write(place: string, words: string): Promise<void> {
    await page.focus(place);
    await page.press([keys.control, "a"]);
    await page.type(place, words);
    await page.press([keys.tab]);
  }

  it("opens on the demo with the answer that it has everywhere, and nothing goes wrong", async () => {
    await open();
    expect(await verdict()).toBe("13 kWh: enough.");
    expect(await text("h1")).toContain("Piano tuner");
    expect(await faults()).toBe("none");
  });

  it("moves the verdict with the slider of the usual day, by the keyboard", async () => {
    await open();
    await page.focus("#answer-day");
    await page.press(...Array.from({ length: 10 }, () => [keys.right]));
    expect(await typed("#answer-day")).toBe("48");
    await answered();
    expect(await verdict()).toBe("17 kWh: enough.");
    expect(await faults()).toBe("none");
  });

  it("takes what is typed in a working into the answer, and undoes it", async () => {
    await open();
    await openWorking("theCar");
    const before = [await verdict(), await text("#answer .say")];
    await write(load, "8 cwt");
    expect(await text(`${load}-says`)).toContain("406 kg");
    await answered();
    expect(await text("#answer .say")).not.toBe(before[1]);
    await page.press([keys.control, "z"]);
    expect(await typed(load)).toBe("110 kg");
    await answered();
    expect([await verdict(), await text("#answer .say")]).toEqual(before);
    expect(await faults()).toBe("none");
  });

  it("keeps what was typed when the page is loaded again", async () => {
    await open();
    await openWorking("theCar");
    await write(load, "3 cwt");
    await expect.poll(() => text(".keeping")).toContain("Saved in this browser");
    await page.reload();
    await expect.poll(verdict).toMatch(/kWh: /);
    await expect.poll(() => typed(load)).toBe("3 cwt");
    expect(await faults()).toBe("none");
  });

  it("opens a job from a file that is chosen", async () => {
    await open();
    const path = join(emptyFolder(), "chosen.json");
    writeFileSync(path, jobText(inventedJob("Chosen", 333)));
    await page.activate(".jobs > summary");
    await page.type("#job-file", path);
    await expect.poll(() => text("h1")).toContain("Chosen");
    expect(await typed("#answer-field-vehicle-load_kg")).toMatch(/^333/);
    await answered();
    expect(await verdict()).toMatch(/^(Small|Large): /);
    expect(await faults()).toBe("none");
  });

  it("makes a road of a GPX log that is chosen", async () => {
    await open();
    await openWorking("theRoad");
    const path = join(emptyFolder(), "monday.gpx");
    const truth = makeTruth(cycleSpeeds_mps("wltc-class-2"), 3);
    writeFileSync(path, writeGpx(makeLog(truth, { ...openSky, seed: 5 })));
    await page.type("#road-log", path);
    await expect.poll(() => text("#theRoad .sentence")).toContain("Client's own");
    await expect.poll(() => typed("#view-road")).toBe("log-1");
    await expect.poll(lateness).toMatch(/^(none|bands)$/);
    expect(await faults()).toBe("none");
  });

  it("shows the client sheet before it is printed", async () => {
    await open();
    await page.activate(button("Preview"));
    await expect.poll(() => text(".paper .sheet")).toContain("Piano tuner");
    expect(await faults()).toBe("none");
  });

  it("saves the job as a file that reads back", async () => {
    await open();
    await page.activate(".jobs > summary");
    await page.activate(button("Save this job as a file"));
    await expect.poll(saved).toMatch(/\}\s*$/);
    expect(readJob(JSON.parse(saved())).title).toBe(await text("h1"));
    expect(await faults()).toBe("none");
  });

  /** The text of the one saved file, so far. */
  function saved(): string {
    const [file] = readdirSync(engine.downloads).filter((each) => each.endsWith(".json"));
    return file === undefined ? "" : readFileSync(join(engine.downloads, file), "utf8");
  }

  it("needs no scrolling sideways on a telephone 390 px wide", async () => {
    await open(390);
    for (const working of ["theCar", "theRoad", "packs"]) await openWorking(working);
    const [window_px, page_px] = await page.evaluate(() => [innerWidth, document.documentElement.scrollWidth] as const);
    expect(window_px).toBe(390);
    expect(page_px).toBeLessThanOrEqual(390);
    expect(await faults()).toBe("none");
  });
});
