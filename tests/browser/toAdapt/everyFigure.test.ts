// Every figure on the page, found on the page itself. Past 150 lines: one walk over one open notebook a demo.
import Papa from "papaparse";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import { quarterHours } from "../../../shared/quantity/quarterHours.ts";
import { unitSuffixes, W_PER_KW } from "../../../shared/units.ts";
import { type Channels, driveJob, roadTrace } from "../../../sim/index.ts";
import { chapters } from "../../../web/chapters/index.ts";
import { threeFigures } from "../../../web/charts/parts/figure/threeFigures.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { expectNoSidewaysScroll, worked } from "../../support/notebookPage.ts";
import { startChromium } from "../../support/openNotebook.ts";
import { jobsWithCharts, openWithFigures } from "../../support/openWithFigures.ts";
import { savedFigure, seen, sizeOfPng } from "../../support/savedFigure.ts";

interface Shown {
  /** Its place among all figures of the page, from 0. */
  readonly at: number;
  /** A chapter's figure has no number: nothing is said of it elsewhere. */
  readonly isInChapter: boolean;
  readonly figure: Locator;
  readonly caption: string;
  readonly words: string;
  readonly labels: readonly string[];
  readonly slider: Locator;
}

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

async function allFigures(page: Page): Promise<Shown[]> {
  const figures = await page.locator("main figure").all();
  return Promise.all(
    figures.map(async (figure, i) => ({
      ...{ at: i, figure, slider: figure.locator("input[type=range]") },
      isInChapter: (await figure.locator("xpath=ancestor::section[contains(@class, 'chapter')]").count()) > 0,
      caption: ((await figure.locator("figcaption").textContent()) ?? "").replace(/\s+/g, " ").trim(),
      words: (await figure.locator("svg[role=img]").getAttribute("aria-label")) ?? "",
      labels: await figure.locator("svg text").allTextContents(),
    })),
  );
}

/** A place in a figure, so far along and so far down it. */
async function placeIn(svg: Locator, share: number): Promise<{ x: number; y: number }> {
  const box = await svg.boundingBox();
  if (!box) throw new Error("the figure is not there");
  return { x: box.width * share, y: box.height * share };
}

/** What every figure says where it is read, "" where it is not, and whether a line or a ring stands in it. */
function readings(page: Page): Promise<{ said: string; hasCursor: boolean }[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("main figure")].map((each) => ({
      said: each.querySelector(".figure-reading")?.textContent ?? "",
      hasCursor: each.querySelector(".figure-cursor") !== null,
    })),
  );
}

/** The axis that figures share by its label, "Time (min)" or "Distance (km)"; a map is read by time. */
const sharedAxis = ({ labels, words }: Shown) =>
  words.startsWith("Track") ? "Time (min)" : labels.find((label) => /^(Time|Distance) \(/.test(label));

interface Csv {
  readonly names: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

async function csvOf(page: Page, { figure }: Shown): Promise<Csv> {
  const text = (await savedFigure(page, figure, "CSV")).toString("utf8");
  expect(text.charCodeAt(0)).toBe(0xfeff);
  const { data, errors } = Papa.parse<string[]>(text.slice(1));
  expect(errors).toEqual([]);
  const [names = [], ...rows] = data;
  return { names, rows };
}

/** Every number of a table as people are told it; hours of charging to a quarter. */
function toldNumbers({ rows }: Csv): Set<string> {
  return new Set(
    rows.flatMap((row) =>
      row
        .filter((cell) => cell !== "" && Number.isFinite(Number(cell)))
        .flatMap((cell) => [threeFigures(Number(cell)), quarterHours(Number(cell)).replace(" h", "")]),
    ),
  );
}

describe.each(jobsWithCharts)("%s", (_, job) => {
  let page: Page;
  let faults: readonly string[];
  let figures: Shown[];
  beforeAll(async () => {
    ({ page, faults } = await openWithFigures(browser, job));
    figures = await allFigures(page);
  });
  afterAll(async () => {
    await page?.context().close();
  });

  it("has a number, a caption, units on its axes and its numbers in words in every figure", () => {
    expect(figures.length).toBeGreaterThanOrEqual(16);
    expect(figures.filter(({ isInChapter }) => isInChapter).length).toBe(chapters.length);
    let number = 0;
    for (const { isInChapter, caption, words, labels } of figures) {
      expect(caption).toMatch(isInChapter ? /^[A-Z]/ : new RegExp(`^Figure ${++number}\\. \\S`));
      // One question, or what the axes of a chart of one's own are.
      expect(caption).toMatch(/^[^?]*\?[^?]*$| against /);
      // On its axis, or where a single bar has none, beside its total.
      expect(
        labels.filter((label) => /\(\S+\)|\d [A-Za-z]+\/[A-Za-z]+ from the pack$/.test(label)),
        caption,
      ).not.toEqual([]);
      expect(words, caption).toMatch(/\d[\d.\u202f]*[ \u00a0](km|m|km\/h|kWh?|Wh\/km|N|Nm|A|V|s|min|h|rpm|%|days?)\b/);
      expect(words, caption).not.toMatch(/NaN|undefined|unknown/);
    }
  });

  it("reads values by arrow keys, Home and End, in all figures that share the axis, and says them once", async () => {
    for (const each of figures) {
      const { slider, caption } = each;
      await slider.focus();
      const said: string[] = [];
      for (const key of ["End", "Home", "ArrowRight", "ArrowRight"]) {
        await page.keyboard.press(key);
        const now = (await readings(page))[each.at];
        expect(now?.hasCursor, caption).toBe(true);
        expect(now?.said, caption).toMatch(/\S: .*\S/);
        expect(now?.said, caption).not.toMatch(/NaN|undefined/);
        // What is read is told by the slider alone: fifteen live regions would all talk at once.
        expect(await slider.getAttribute("aria-valuetext"), caption).toBe(now?.said);
        said.push(now?.said ?? "");
      }
      expect(said[0], caption).not.toBe(said[1]);
      const all = await readings(page);
      const axis = sharedAxis(each);
      const where = (text: string) => text.split(":")[0];
      const mates = axis === undefined ? [] : figures.filter((other) => sharedAxis(other) === axis);
      for (const mate of mates) {
        const there = all[mate.at];
        // A map without the ends of its trips begins later than the drive.
        if (mate.words.startsWith("Track") && there?.said === "") continue;
        expect(where(there?.said ?? ""), `${caption} with ${mate.caption}`).toBe(where(said[3] ?? ""));
        expect(there?.hasCursor).toBe(true);
      }
      expect(await page.locator("main figure [aria-live], main figure [role=status]").count()).toBe(0);
      await page.keyboard.press("Escape");
      expect((await readings(page)).filter(({ said: left, hasCursor }) => left !== "" || hasCursor)).toEqual([]);
    }
    const along = figures.map(sharedAxis);
    expect(along.filter((axis) => axis === "Time (min)").length).toBeGreaterThanOrEqual(5);
  });

  it("reads values under the mouse, until it leaves or Escape is pressed", async () => {
    await page.locator("h1").click(); // off the sliders, which would hold what is read
    for (const { at, figure, caption } of figures) {
      const svg = figure.locator("svg[role=img]");
      await svg.hover({ position: await placeIn(svg, 0.45) });
      expect((await readings(page))[at]?.said, caption).toMatch(/\S: .*\S/);
      await page.keyboard.press("Escape");
      expect((await readings(page))[at]?.said, caption).toBe("");
      await svg.hover({ position: await placeIn(svg, 0.55) });
      expect((await readings(page))[at]?.hasCursor, caption).toBe(true);
      await page.mouse.move(2, 2);
      expect(
        (await readings(page)).filter(({ hasCursor }) => hasCursor),
        caption,
      ).toEqual([]);
    }
  });

  it("is saved as a drawing that stands alone and as a picture of twice its size, neither blank", async () => {
    const viewer = await (await browser.newContext({ offline: true })).newPage();
    for (const { figure, caption, words } of figures) {
      const svg = await savedFigure(page, figure, "SVG");
      const text = svg.toString("utf8");
      const parsed = await viewer.evaluate((source) => {
        const root = new DOMParser().parseFromString(source, "image/svg+xml").documentElement;
        const size = ["width", "height"].map((name) => Number(root.getAttribute(name)));
        return { tag: root.tagName, title: root.querySelector("title")?.textContent, size };
      }, text);
      expect(parsed, caption).toMatchObject({ tag: "svg", title: words });
      expect(text, caption).toMatch(/@font-face\{?[^}]*url\("?data:font/);
      expect(text.replace(/url\("?data:[^)]*\)/g, ""), caption).not.toMatch(
        /url\((?!#)|var\(|currentcolor|figure-cursor|\b(?:href|src)="(?!#)|https?:\/\/(?!www\.w3\.org\/)/i,
      );
      const opened = await seen(viewer, svg, "image/svg+xml");
      expect([opened.width_px, opened.height_px], caption).toEqual(parsed.size);
      const png = await savedFigure(page, figure, "PNG");
      expect(sizeOfPng(png), caption).toEqual(parsed.size.map((each) => 2 * each));
      const picture = await seen(viewer, png, "image/png");
      for (const { variance, inked_frac } of [opened, picture]) {
        expect(variance, caption).toBeGreaterThan(20); // one thin line across paper gives about this much
        expect(inked_frac, caption).toBeGreaterThan(0.01);
      }
    }
    await viewer.context().close();
  });

  it("is saved as numbers: whole rows, units in the headings, the numbers that its words tell", async () => {
    const all = { told: 0, missing: 0 };
    for (const each of figures) {
      const { caption, words } = each;
      const csv = await csvOf(page, each);
      expect(csv.rows.length, caption).toBeGreaterThan(0);
      for (const row of csv.rows) {
        expect(row.length, caption).toBe(csv.names.length);
        expect(row.join(), caption).not.toMatch(/NaN|Infinity|undefined|null/);
      }
      csv.names.forEach((name, k) => {
        const isNumber = csv.rows.every((row) => row[k] !== "" && Number.isFinite(Number(row[k])));
        if (isNumber) expect([...unitSuffixes, "number"], `${caption}: ${name}`).toContain(name.split("_").at(-1));
      });
      const told = toldNumbers(csv);
      const inWords = [...words.matchAll(/(?<![\d.])−?\d[\d\u202f]*(?:\.\d+|[¼½¾])?(?=[ \u00a0](?!kWh)\S)/g)].map(
        ([number]) => number,
      );
      const missing = inWords.filter((number) => !told.has(number));
      expect(inWords.length - missing.length, `${caption}: ${words}`).toBeGreaterThan(0);
      all.told += inWords.length;
      all.missing += missing.length;
    }
    // Few are in no cell: a count of samples, a length of road, how much a pack falls short.
    expect(all.missing / all.told).toBeLessThan(0.1);
    expect(faults).toEqual([]);
  });

  it("holds in its own charts what the simulation has, sample by sample", async () => {
    const [road] = job.roads;
    if (!road) throw new Error("no road");
    // The log answers at once, so that the charts are of its road until another is chosen.
    await page.selectOption("#answer-road", road.id);
    await worked(page);
    const { candidates } = driveJob(job, roadTrace(road, cycleTexts), { channels: true });
    const own = (await allFigures(page)).filter(({ caption }) =>
      /Battery current against time|Motor shaft power against/.test(caption),
    );
    expect(own.length).toBe(2);
    // A quotient and a product by the inverse part in the last digits.
    const nine = (value: unknown) => Number(value).toPrecision(9);
    const expected = [
      (c: Channels, i: number) => [(c.time_s[i] as number) / 60, c.battery_A[i] as number],
      (c: Channels, i: number) => [
        (c.distance_m[i] as number) / 1000,
        ((c.motorTorque_Nm[i] as number) * (c.motorSpeed_radps[i] as number)) / W_PER_KW,
      ],
    ];
    for (const [k, figure] of own.entries()) {
      const { rows } = await csvOf(page, figure);
      for (const { name, channels } of candidates) {
        const drawn = rows.filter(([pack]) => pack === name).map(([, x, y]) => `${nine(x)} ${nine(y)}`);
        if (!channels) throw new Error("driven without channels");
        const all = new Set(
          Array.from({ length: channels.length }, (_, i) => expected[k]?.(channels, i).map(nine).join(" ")),
        );
        expect(drawn.length).toBeGreaterThan(100);
        expect(drawn.filter((each) => !all.has(each))).toEqual([]);
      }
    }
  });
});

it("is read by a finger on a telephone: a tap reads, what it read stays, and the next tap reads elsewhere", async () => {
  const job = jobsWithCharts[0]?.[1] as Job;
  const { page, faults } = await openWithFigures(browser, job, { width: 390, hasTouch: true });
  await expectNoSidewaysScroll(page);
  const figures = await allFigures(page);
  expect(figures.length).toBeGreaterThanOrEqual(16);
  for (const { at, figure, caption } of figures) {
    const svg = figure.locator("svg[role=img]");
    const tapAt = async (share: number) => {
      await svg.tap({ position: await placeIn(svg, share) });
      return (await readings(page))[at];
    };
    const first = await tapAt(0.4);
    expect(first?.said, caption).toMatch(/\S: .*\S/);
    expect(first?.hasCursor, caption).toBe(true);
    expect((await tapAt(0.8))?.said, caption).not.toBe(first?.said);
  }
  expect(faults).toEqual([]);
  await page.context().close();
});
