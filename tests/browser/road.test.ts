import { readFileSync } from "node:fs";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Job } from "../../shared/job/job.ts";
import { makeLog, makeTruth, type Spoiling, withParking } from "../logs/logMaker.ts";
import { writeCsv, writeGpx } from "../logs/logWriter.ts";
import { axeFinds } from "../support/axeFinds.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { choosePaper, expectNoSidewaysScroll, finding, unfold, worked } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

const spoiling: Spoiling = {
  seed: 5,
  sampling_s: 1,
  position_m: 3,
  white_m: 0.5,
  speed_mps: 0.15,
  elevation_m: 3,
  hasMultipath: true,
  hasDropouts: true,
};
const truth = makeTruth(withParking(cycleSpeeds_mps("wltc-class-2"), 300), 3, (d) => 100 + 30 * Math.sin(d / 900));
const rows = makeLog(truth, spoiling);
const gpx = Buffer.from(writeGpx(rows));
const days = Buffer.from(
  writeGpx([0, 1, 2].flatMap((day) => makeLog(truth, { ...spoiling, seed: day }, 1714723200 + day * 86_400))),
);
/** Long enough that there is time to press a button while it is read: about 80,000 fixes. */
const long = Buffer.from(
  writeGpx(Array.from({ length: 40 }, (_, i) => rows.map((row) => ({ ...row, time_s: row.time_s + i * 4000 }))).flat()),
);

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** The notebook with the working of the road open, all of it calculated. */
async function opened() {
  const notebook = await openNotebook(browser, 1440, 900, false, true);
  await openWorking(notebook.page, "theRoad");
  await worked(notebook.page);
  return notebook;
}

/** What the workings say of the packs, in their one line. */
const verdict = (page: Page) => page.locator("#whichIsEnough .summary .result").textContent();

async function choose(page: Page, name: string, buffer: Buffer): Promise<void> {
  await page.setInputFiles("#road-log", { name, mimeType: "text/plain", buffer });
}

async function bring(page: Page, name: string, buffer: Buffer): Promise<void> {
  await choose(page, name, buffer);
  await page.waitForSelector("#theRoad .offer", { timeout: 60_000 });
  await page.waitForSelector("#theRoad .log-work", { state: "detached", timeout: 60_000 });
}

/** What a person reads of an element, white space as on the page. */
async function textOf(place: Locator): Promise<string> {
  return ((await place.textContent()) ?? "").replace(/\s+/g, " ");
}

const says = (page: Page) => page.locator("#theRoad .road-log [role=status]").first();

describe("the client's own road", () => {
  it("is made of a log that is brought: cleaned, seen and driven at once, by one step that can be taken back", async () => {
    const { page, faults } = await opened();
    const before = await verdict(page);
    const roads = await page.locator("#view-road option").count();
    await bring(page, "monday.gpx", gpx);
    await page.waitForFunction(() =>
      document.querySelector("#theRoad .sentence")?.textContent?.includes("Client's own"),
    );
    await worked(page);
    expect(await textOf(page.locator("#theRoad .offer"))).toMatch(/Quality: (good|usable)/);
    expect(await textOf(page.locator("#theRoad"))).toMatch(/gaps? of \d+ s .*bridged as a tunnel/);
    expect(await page.locator("#theRoad figure").count()).toBe(4); // the road driven and its map, raw against cleaned and the map
    expect(await page.locator(".log-repairs").isVisible()).toBe(false); // one line, unfolded when asked
    expect(await page.locator("#theRoad table").first().locator("tbody tr").count()).toBe(2);
    expect(await finding(page, "theRoad")).toMatch(/^Client's own road, 2\d.* km/);
    expect(await page.locator("#view-road option").count()).toBe(roads + 1);
    expect(await verdict(page)).not.toBe(before);

    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await worked(page);
    expect(await page.locator("#view-road option").count()).toBe(roads);
    expect(await verdict(page)).toBe(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("gives its days to the year with one press, taken back by one undo", async () => {
    const { page, faults } = await opened();
    await openWorking(page, "theYear");
    await bring(page, "week.gpx", days);
    await page.getByRole("button", { name: "Draw the year's days from these 3" }).click();
    await expect.poll(() => textOf(says(page))).toMatch(/driven days are drawn from 3 days of the log/);
    await expect
      .poll(() => finding(page, "theYear"))
      .toMatch(/drawn evenly from the 3 of the list, .* as they were driven: .*3 days are few/);
    expect(await textOf(page.locator("#theYear"))).toContain("Driven days: 3, from a log");
    await expectNoSidewaysScroll(page);
    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await expect.poll(() => textOf(page.locator("#theYear"))).not.toContain("Driven days: 3");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("keeps positions in this browser, and out of the job's file; a job from a file says that they are gone", async () => {
    const { page, faults } = await opened();
    await bring(page, "monday.gpx", gpx);
    await page.waitForFunction(() =>
      document.querySelector("#theRoad .sentence")?.textContent?.includes("Client's own"),
    );
    await worked(page);
    await page.waitForFunction(() =>
      document.querySelector(".keeping")?.textContent?.includes("Saved in this browser"),
    );
    await page.reload();
    await worked(page);
    await page.selectOption("#view-road", "log-1");
    await worked(page);
    await page.waitForFunction(() => document.querySelectorAll("#theRoad figure").length === 2);
    expect(await page.locator("#theRoad figure svg").last().getAttribute("aria-label")).toMatch(/^Track of/);

    await page.locator(".jobs > summary").click();
    await choosePaper(page, "workings");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#theRoad figure").first().isVisible()).toBe(true);
    expect(await page.locator("#theRoad figure").last().isVisible()).toBe(false); // the map stays off paper
    await page.emulateMedia({ media: "screen" });

    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save this job as a file" }).click(),
    ]);
    const path = await download.path();
    const text = readFileSync(path, "utf8");
    expect(text).toContain("Client's own road");
    expect(text).not.toMatch(/latitude|longitude|"(lat|lon)_deg|monday|2024-05-03/);
    const road = (JSON.parse(text) as Job).roads.find(({ id }) => id === "log-1");
    expect(JSON.stringify(road)).not.toMatch(/\d\.\d{4}/); // no number fine enough to be a place
    const some = rows.filter((_, i) => i % 50 === 0);
    for (const { latitude_deg, longitude_deg } of some) {
      for (const degrees of [latitude_deg, longitude_deg]) expect(text).not.toContain(degrees.toFixed(5));
    }

    const other = await opened();
    await other.page.evaluate((json) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([json], "job.bellhousing.json"));
      // A job is a job, even let go on the road.
      document
        .querySelector(".road-log")
        ?.dispatchEvent(new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer: transfer }));
    }, text);
    await other.page.waitForSelector('#view-road option[value="log-1"]', { state: "attached" });
    await other.page.selectOption("#view-road", "log-1");
    await worked(other.page);
    await other.page.waitForFunction(() =>
      document
        .querySelector("#theRoad .worked")
        ?.textContent?.includes("positions of this road are not in this browser"),
    );
    expect(faults).toEqual([]);
    expect(other.faults).toEqual([]);
    await page.context().close();
    await other.page.context().close();
  });

  it("can be given up while it is read, the page alive and the log before it still there", async () => {
    const { page, faults } = await opened();
    await bring(page, "monday.gpx", gpx);
    await choose(page, "long.gpx", long);
    await page.waitForFunction(() =>
      /Reading long\.gpx: [1-9]/.test(document.querySelector(".log-work")?.textContent ?? ""),
    );
    expect(await page.locator(".log-work progress").getAttribute("aria-labelledby")).toBe("log-work-words");
    await page.locator(".log-work button").click();
    await page.waitForSelector(".log-work", { state: "detached" });
    expect(await textOf(says(page))).toContain("Given up");
    expect(await textOf(page.locator("#theRoad .offer"))).toContain("monday.gpx");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is not made of what is no log: one sentence, the job as it was", async () => {
    const { page, faults } = await opened();
    const before = await finding(page, "theRoad");
    const files: readonly (readonly [name: string, content: Buffer, sentence: RegExp])[] = [
      ["empty.gpx", Buffer.alloc(0), /empty\.gpx: found an empty file/],
      ["car.jpg", Buffer.from([0xff, 0xd8, 0xff, 0xe0, ...Array(60).fill(9)]), /found a photograph/],
      ["x.gpx", Buffer.from('<!DOCTYPE g [<!ENTITY a "b">]><gpx/>'), /declares entities/],
    ];
    for (const [name, content, sentence] of files) {
      await choose(page, name, content);
      await page.locator("#theRoad .road-log .heed").getByText(sentence).waitFor();
      expect(await textOf(says(page))).toContain("the job is as it was");
      expect(await says(page).locator("li").count()).toBe(1);
      expect(await finding(page, "theRoad")).toBe(before);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("says what a file cut in half had, with line numbers, and goes on with it", async () => {
    const { page } = await opened();
    await bring(page, "half.gpx", gpx.subarray(0, Math.floor(gpx.length / 2)));
    await unfold(page);
    expect(await textOf(page.locator("#theRoad .offer"))).toMatch(/half\.gpx line \d+/);
    expect(await textOf(page.locator("#theRoad .offer"))).toMatch(/trips?, \d/);
    await page.context().close();
  });

  it("lets a class of repair be left out and brought back", async () => {
    const { page, faults } = await opened();
    await bring(page, "monday.gpx", gpx);
    const climb = async () =>
      (await page.locator("#theRoad table").first().locator("tbody tr").first().locator("td").allTextContents()).join(
        " | ",
      );
    await worked(page);
    const before = await climb();
    await page.getByText(/^Repaired: /).click();
    await page.locator("#log-repair-heightNoise").uncheck();
    await page.waitForSelector(".log-work", { state: "detached" });
    await page.waitForFunction(() =>
      /Left as it was; the repair had moved .*climb -\d+ m/.test(
        document.querySelector("#log-repair-heightNoise")?.closest("li")?.textContent ?? "",
      ),
    );
    await worked(page);
    expect(await climb()).not.toEqual(before);
    await page.locator("#log-repair-heightNoise").check();
    await page.waitForFunction(() =>
      /smoothed away/.test(document.querySelector("#log-repair-heightNoise")?.closest("li")?.textContent ?? ""),
    );
    await worked(page);
    expect(await climb()).toEqual(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("asks what a table does not say, its guess set, before it makes a road", async () => {
    const { page } = await opened();
    const speeds = new TextDecoder().decode(writeCsv(rows)).split("\n");
    const bare = speeds.map((line, i) => (i === 0 ? "speed" : (line.split(",")[3] ?? ""))).join("\n");
    await bring(page, "bare.csv", Buffer.from(bare));
    const make = page.locator("#theRoad button", { hasText: "Make it a road of this job" });
    expect(await make.isDisabled()).toBe(true);
    expect(await page.inputValue("#log-0-interval")).toBe("1");
    while ((await page.locator(".log-questions button").count()) > 0) {
      await page.locator(".log-questions button").first().click();
      await page.waitForSelector(".log-work", { state: "detached" });
    }
    expect(await make.isEnabled()).toBe(true);
    await page.context().close();
  });

  it("sorts a week into days, offers its middle day, and lets places be called what they are", async () => {
    const { page, faults } = await opened();
    await openWorking(page, "theJob");
    await bring(page, "week.gpx", days);
    await worked(page);
    expect(await page.locator("#theRoad table").nth(1).locator("tbody tr").count()).toBe(3);
    expect(await page.inputValue("#log-piece")).toMatch(/^day:2024-05-0/);
    await page.locator("#log-place-0").fill("the yard");
    await page.locator("#log-place-0").blur();
    await worked(page);
    expect(await textOf(page.locator("#theRoad table").nth(1))).toContain("the yard");
    await page.locator("#theRoad button", { hasText: "as the usual day" }).click();
    expect(await page.inputValue("#field-usualDay_km")).toMatch(/^22(\.\d)?/);
    expect(await page.locator("#field-usualDay_km-from").inputValue()).toBe("measured");
    await page.selectOption("#log-parked", "1200");
    await page.waitForFunction(
      () => document.querySelectorAll("#theRoad table")[0]?.querySelectorAll("tbody tr").length === 3,
    );
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe("a road without a log", () => {
  it("is typed from memory and says so", async () => {
    const { page, faults } = await opened();
    await unfold(page);
    await page.locator("#typed-road").fill("3 km at 50 km/h, 2 stops a km, then home");
    await page.locator("#typed-road").blur();
    const make = page.locator("#theRoad .fold button", { hasText: "Use this road" }).first();
    await make.click();
    await page.waitForFunction(() => document.querySelector("#theRoad .fold .refused")?.textContent?.includes("leg 2"));
    await page.locator("#typed-road").fill("3 km at 50 km/h, 2 stops a km, then 12 km at 80 km/h");
    await page.locator("#typed-road").blur();
    await make.click();
    await page.waitForFunction(() =>
      document.querySelector("#theRoad .sentence")?.textContent?.includes("from memory: 15\u00a0km"),
    );
    await worked(page);
    expect(await textOf(page.locator("#theRoad .given"))).toMatch(/guess.*typed from memory/s);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is a cycle repeated to the day's distance, with typed hills", async () => {
    const { page, faults } = await opened();
    await unfold(page);
    await page.locator("#cycle-distance").fill("40 km");
    await page.locator("#cycle-distance").blur();
    await page.selectOption("#cycle-hills", "typed");
    await page.locator("#cycle-heights").fill("0 km 120 m; 2.5 km 180 m; 4 km 95 m");
    await page.locator("#cycle-heights").blur();
    await page.locator("#theRoad .fold button", { hasText: "Use this road" }).last().click();
    await page.waitForFunction(() =>
      document.querySelector("#theRoad .sentence")?.textContent?.includes(": 40\u00a0km in"),
    );
    await worked(page);
    expect(await finding(page, "theRoad")).toMatch(/of climbing/);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe("the road of a log", () => {
  it("can be read by everybody, 1440 px wide and 390 px", async () => {
    const { page } = await opened();
    await bring(page, "week.gpx", days);
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 900 });
      await worked(page);
      await unfold(page);
      await worked(page);
      await expectNoSidewaysScroll(page);
      expect(await axeFinds(page, { within: ["#theRoad"], least: 15 })).toEqual([]);
    }
    await page.context().close();
  });
});
