import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { badTexts } from "../support/badTexts.ts";
import { TRACES, walkFields } from "../support/fieldWalk.ts";
import { answered, openFolds, saidAt, sampled, worked } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

// Bad input on the page with its figures, by a field of each kind. Every field there is, alone, is in tests/web/sections/everyFieldInDocument.test.ts.

let browser: Browser;
let notebook: OpenNotebook;
beforeAll(async () => {
  browser = await startChromium();
  notebook = await openNotebook(browser, 1440, 900, false, true);
  const { page } = notebook;
  await answered(page);
  await openWorking(page, "theJob", "theCar", "theRoad", "motor", "packs", "charging", "whichIsEnough");
  await openFolds(page);
  await worked(page);
});
afterAll(async () => browser?.close());

/**
 * Every finding and every table as one text. What is said of values that are still open is left out: a usual value that
 * was typed over is no longer said to be usual, though it is the same.
 */
async function figuresOf(page: Page): Promise<string[]> {
  await sampled(page);
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "main section:not(#whatIsOpen) :is(.sentence, .worked table), #answer :is(.verdict, .say, table)",
      ),
    ].map(
      (each) =>
        each.textContent
          ?.replace(/\s+/g, " ")
          .replace(/\d+ values? below (is|are) still usual or guessed/, "")
          .trim() ?? "",
    ),
  );
}

describe("a field of each kind", () => {
  it("keeps bad input and says what is wrong with it while the page goes on, and has its first figures again", async () => {
    const { page, faults } = notebook;
    await page.selectOption("#cycle-hills", "typed");
    await page.getByRole("button", { name: "Write a note to Car" }).click();
    await worked(page);
    const before = await figuresOf(page);
    expect(before.length).toBeGreaterThan(15);
    const ids = [
      "field-use",
      "field-usualDay_km",
      "field-vehicle-name",
      "field-vehicle-kerb_kg",
      "field-vehicle-gross_kg",
      "field-vehicle-load_kg",
      "field-accessories-items-0-duty_frac",
      "typed-road",
      "typed-stand",
      "cycle-heights",
      "sheet-rated_V",
      "field-packs-0-name",
      "field-module-openCircuit-cell_V-3",
      "field-supplies-0-hours-from",
      "field-notes-0-text",
      "chapter-field-charger-power_kW",
      "answer-field-longestDay_km",
    ];
    const { complaints, tried } = await walkFields(page, ids, () => badTexts);
    expect(complaints).toEqual([]);
    expect(tried).toBe(ids.length * (badTexts.length + 1));
    await answered(page);
    await worked(page);
    expect(await page.locator("[aria-invalid=true]").count()).toBe(0);
    expect(await figuresOf(page)).toEqual(before);
    const drawn = (await page.locator("main").evaluate((main) => main.outerHTML)).replace(
      /<textarea[\s\S]*?<\/textarea>/g,
      "",
    );
    expect(new RegExp(TRACES).exec(drawn)?.[0]).toBeUndefined();
    expect(await page.evaluate(() => "wasRun" in window)).toBe(false);
    expect(faults).toEqual([]);
  });

  it("typed key by key lets the answer stand on its last good value, and says which that is", async () => {
    const { page, faults } = notebook;
    const before = await figuresOf(page);
    for (const [path, typed, held] of [
      ["usualDay_km", "-12", "38 km"],
      ["vehicle.load_kg", "2 peop", "110 kg"],
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
        await answered(page);
        await worked(page);
      };
      await type(typed);
      expect(await field.inputValue()).toBe(typed);
      expect(await field.getAttribute("aria-invalid")).toBe("true");
      expect(await saidAt(page, path)).toMatch(/^Wrong: .*\. Using .+\.$/);
      expect(await saidAt(page, path)).toContain(`. Using ${held}.`);
      const now = await figuresOf(page);
      expect(now.filter((each, i) => each !== before[i] && !each.includes("count with their last value"))).toEqual([]);
      expect(await page.locator("#answer [data-part=say]").textContent()).toContain("count with their last value");
      await type(good);
      expect(await field.getAttribute("aria-invalid")).toBe("false");
      expect(await saidAt(page, path)).not.toMatch(/Wrong/);
      expect(await figuresOf(page)).toEqual(before);
    }
    expect(faults).toEqual([]);
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
    const { page, faults } = notebook;
    const before = await figuresOf(page);
    const ids = await page.locator("main input[type=file]").evaluateAll((all) => all.map(({ id }) => id));
    expect(ids.toSorted()).toEqual(Object.keys(places).toSorted());
    for (const [id, { said, ending }] of Object.entries(places)) {
      for (const [what, buffer] of badFiles) {
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
  });
});
