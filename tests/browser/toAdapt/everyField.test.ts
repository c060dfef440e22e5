import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { type Complaint, walkFields, writableFields } from "../../support/fieldWalk.ts";
import { answered, saidAt, unfold, worked } from "../../support/notebookPage.ts";
import { openNotebook, openWorking, openWorkings, startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** What people type, paste, and let the cat walk over. */
const badTexts: readonly string[] = [
  "letters",
  "-40",
  "1e99",
  "",
  `a paragraph\n${"pasted, of the two of us and the dog, on Saturdays;\r\n".repeat(40)}`.slice(0, 2000),
  "🚗🔋 ½",
  '<img src=x onerror="window.wasRun = true">',
  "1,2,3",
  "   ",
  "NaN",
  "Infinity",
  "=1+1",
];

/** Kinds of field that have had every text; fields of a kind have one pattern of path, such as `packs-*-name`. */
const walkedKinds = new Set<string>();
const kindOf = (id: string) => id.replace(/-\d+/g, "-*");

/**
 * All texts for the first field of a kind on the first demo that has it; the others, which are the same code under the
 * same bounds, get one of them each, in turn. All of them in all 600 would take five minutes.
 */
function textsFor(id: string, index: number): readonly string[] {
  const kind = kindOf(id);
  if (!walkedKinds.has(kind)) {
    walkedKinds.add(kind);
    return badTexts;
  }
  return [badTexts[index % badTexts.length]];
}

async function openDemo(page: Page, index: number): Promise<void> {
  await answered(page);
  if (index > 0) {
    await page.locator(".jobs > summary").click();
    await page.getByRole("button", { name: `Example: ${demos[index].title}` }).click();
    await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, demos[index].title);
    await page.locator(".jobs > summary").click();
    await answered(page);
  }
}

/** Opens everything, and waits until it is calculated. */
async function openAll(page: Page): Promise<void> {
  await openWorkings(page);
  await unfold(page);
  await worked(page);
}

/** Walks every field there is, a working at a time: an edit with all of them open would redraw all of them. */
async function walkWorkings(page: Page) {
  const names = await page.locator("section.working").evaluateAll((all) => all.map(({ id }) => id));
  const complaints: Complaint[] = [];
  const walkedIds = new Set<string>();
  let tried = 0;
  for (const name of names) {
    await openWorking(page, name);
    await worked(page);
    await page.evaluate(() => {
      for (const each of document.querySelectorAll<HTMLDetailsElement>(".working details, .chapter details")) {
        if (!each.matches(".reasons")) each.open = true;
      }
    });
    const ids = (await writableFields(page)).filter((id) => !walkedIds.has(id));
    for (const id of ids) walkedIds.add(id);
    const walked = await walkFields(page, ids, textsFor);
    complaints.push(...walked.complaints);
    tried += walked.tried;
    await page.locator(`[data-opens="${name}"]`).click();
  }
  return { complaints, tried, count: walkedIds.size };
}

/**
 * Every finding and every table as one text. What is said of values that are still open is left out: a usual value that
 * was typed over is no longer said to be usual, though it is the same.
 */
function figuresOf(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("main section:not(#whatIsOpen) :is(.sentence, table)")].map(
      (each) =>
        each.textContent
          ?.replace(/\s+/g, " ")
          .replace(/\d+ values? below (is|are) still usual or guessed/, "")
          .trim() ?? "",
    ),
  );
}

/** Whether the page holds the mark of a number that was not looked at anywhere in it, in what is drawn as well. */
function tracesIn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const html = document.querySelector("main")?.outerHTML ?? "";
    return [...html.matchAll(/\bNaN\b|\bundefined\b|\bInfinity\b|\[object/g)].map(({ index }) =>
      html.slice(Math.max(0, index - 60), index + 40),
    );
  });
}

/** A walk is 2000 edits of 20 ms each, and three times that where other tests have the machine too. */
const walkTimeout = { timeout: 360_000 };

describe("every field", walkTimeout, () => {
  it.each(demos.map(({ title }, index) => [title, index] as const))(
    "of “%s” takes bad input, says what is wrong with it, and has its first figures again",
    async (_, index) => {
      const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
      await openDemo(page, index);
      await openAll(page);
      const before = await figuresOf(page);
      await page.getByRole("button", { name: "Close all" }).click();
      const { complaints, tried, count } = await walkWorkings(page);
      expect(count).toBeGreaterThan(150);
      expect(complaints).toEqual([]);
      expect(tried).toBeGreaterThanOrEqual(2 * count);
      await openAll(page);
      expect(await page.locator("[aria-invalid=true]").count()).toBe(0);
      expect(await figuresOf(page)).toEqual(before);
      expect(await tracesIn(page)).toEqual([]);
      expect(await page.evaluate(() => "wasRun" in window)).toBe(false);
      expect(faults).toEqual([]);
      await page.context().close();
    },
  );

  it("that is there only when it is asked for does the same", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    await openAll(page);
    const add = page.locator("main section .given button", { hasText: /^\s*Add the / });
    for (let left = await add.count(); left > 0; left--) await add.first().click();
    for (const id of ["kind-motor-envelope", "kind-motor-loss"]) {
      const kinds = await page
        .locator(`#${id} option:not([disabled])`)
        .evaluateAll((all) => all.map((each) => each.getAttribute("value") ?? ""));
      await page.selectOption(`#${id}`, kinds.at(-1) ?? "");
    }
    await page.selectOption("#cycle-hills", "typed");
    await page.getByRole("button", { name: /^\s*Make a chart/ }).click();
    await page.getByRole("button", { name: "Write a note to Road load" }).click();
    const points = Array.from({ length: 60 }, (_, i) => `<rtept lat="${50 + i / 2000}" lon="${4 + i / 3000}"/>`);
    const route = `<gpx version="1.1" creator="tests"><rte>${points.join("")}</rte></gpx>`;
    await page.setInputFiles("#road-log", {
      ...{ name: "route.gpx", mimeType: "application/gpx+xml", buffer: Buffer.from(route) },
    });
    await page.locator("#route-speed").waitFor();
    await unfold(page);
    await worked(page);
    const ids = (await writableFields(page)).filter((id) => !walkedKinds.has(kindOf(id)));
    expect(ids).toEqual(
      expect.arrayContaining(["cycle-heights", "own-0-caption", "route-interval", "field-motor-envelope-speed_rpm-0"]),
    );
    const { complaints } = await walkFields(page, ids, textsFor);
    expect(complaints).toEqual([]);
    await worked(page);
    expect(await tracesIn(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("typed key by key lets the answer stand on its last good value, and says which that is", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    await openAll(page);
    await answered(page);
    const before = await figuresOf(page);
    const answerNow = () => page.locator("#answer :is(.verdict, .say, .answer-table)").allTextContents();
    const answer = await answerNow();
    for (const [path, typed, held] of [
      ["usualDay_km", "-12", "38 km"],
      ["vehicle.load_kg", "2 peop", "110 kg"],
      ["driveline.finalDrive_ratio", "1e99", "4.11"],
      ["packs.2.seriesModules", "1,2,3", "5"],
      ["module.cellMax_V", "4=1+1", "4.2 V"],
    ] as const) {
      const field = page.locator(`#field-${path.replaceAll(".", "-")}`);
      const good = await field.inputValue();
      const type = async (text: string) => {
        await field.focus();
        await page.keyboard.press("Control+a");
        await page.keyboard.type(text);
        await page.keyboard.press("Tab");
        await worked(page);
      };
      await type(typed);
      expect(await field.inputValue()).toBe(typed);
      expect(await field.getAttribute("aria-invalid")).toBe("true");
      expect(await saidAt(page, path)).toMatch(/^Wrong: .*\. Using .+\.$/);
      expect(await saidAt(page, path)).toContain(`. Using ${held}.`);
      expect(await figuresOf(page)).toEqual(before);
      expect(await answerNow()).toEqual(answer);
      expect(await page.locator("#answer [data-part=say]").textContent()).toContain("count with their last value");
      await type(good);
      expect(await field.getAttribute("aria-invalid")).toBe("false");
      expect(await saidAt(page, path)).not.toMatch(/Wrong/);
      expect(await figuresOf(page)).toEqual(before);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

/** The first bytes of a picture, which people pick in the place of a log. */
const picture = Buffer.from("89504e470d0a1a0a0000000d49484452000000010000000108060000001f15c489", "hex");
const badFiles: readonly (readonly [string, Buffer])[] = [
  ["nothing", Buffer.alloc(0)],
  ["noise", Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 167 + (i >> 3) * 59) % 256))],
  ["a picture", picture],
  ["a letter", Buffer.from("Dear workshop,\nthe car pulls to the left since Tuesday.\nYours\n")],
];

/** Every place that takes a file, with where it says what was wrong with one, and the ending of its files. */
const places: Readonly<Record<string, { readonly said: string; readonly ending: string }>> = {
  "job-file": { said: ".complaint", ending: "json" },
  "motor-map": { said: "#motor .offer.is-refused .heed li", ending: "csv" },
  "road-log": { said: "#theRoad .road-log .heed li", ending: "csv" },
};

describe("every place for a file", () => {
  it("says in a sentence what is wrong with one, and the page goes on", async () => {
    const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
    await openAll(page);
    const before = await figuresOf(page);
    const ids = await page.locator("main input[type=file]").evaluateAll((all) => all.map(({ id }) => id));
    expect(ids.toSorted()).toEqual(Object.keys(places).toSorted());
    for (const id of ids) {
      for (const [what, buffer] of badFiles) {
        const { said, ending } = places[id];
        const name = `${what.replace(" ", "-")}.${ending}`;
        await page.setInputFiles(`#${id}`, { name, mimeType: "application/octet-stream", buffer });
        const words = page.locator(said, { hasText: name }).first();
        await words.waitFor();
        const sentence = (await words.textContent())?.replace(/\s+/g, " ").trim() ?? "";
        expect(sentence).toMatch(/^.{20,300}$/);
        expect(sentence).not.toMatch(/NaN|undefined|\[object|token|�|\p{Cc}/u);
      }
    }
    await worked(page);
    expect(await figuresOf(page)).toEqual(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
