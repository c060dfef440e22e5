import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { answered, expectNoSidewaysScroll } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";
import { pagesOf } from "../support/printedFigures.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

describe("first visit", () => {
  it("goes from the example through the quick start, unknowns allowed, to a first answer with a band and to the printed sheet", async () => {
    const { page, faults } = await openNotebook(browser, 390, 844, false, true);
    await answered(page);
    expect(await page.locator(".answer .verdict").textContent()).toBe("13 kWh: enough.");
    await page.getByRole("button", { name: "New job" }).click();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent === "New job");
    expect(await page.locator(".first-questions ol > li").count()).toBe(14);
    // The first question has the keyboard, and is seen.
    await page.waitForFunction(() => document.activeElement?.id === "first-field-vehicle-name");
    const firstTop_px = async () => (await page.locator(".first-questions ol > li").first().boundingBox())?.y;
    await answered(page); // the answer above the questions has grown to its full height by now
    expect(await firstTop_px()).toBeGreaterThanOrEqual(0);
    expect(await firstTop_px()).toBeLessThan(844);
    // And another new job is one press away, from here as from the example.
    expect(await page.getByRole("button", { name: "New job" }).isEnabled()).toBe(true);
    // On a phone the units stand in the menu with the jobs.
    await page.locator(".jobs > summary").click();
    await page.locator(".tools select").selectOption("british");
    await page.locator(".jobs > summary").click();
    const answers: Record<string, string> = {
      "vehicle-name": "Two-door, 1964",
      use: "shop, station, once a month to my sister",
      usualDay_km: "19 miles",
      longestDay_km: "unknown",
      "vehicle-kerb_kg": "15 1/2 cwt",
      "requirement-startHill_ratio": "1 in 6",
      "requirement-topSpeed_kmh": "55 mph",
      "driveline-limits-gearboxInput_Nm": "unknown",
    };
    for (const [path, text] of Object.entries(answers)) await answer(page, path, text);
    await page.selectOption("#first-shape", "open-two-seater");
    await page.selectOption("#first-road", "mixed");
    await page.selectOption("#first-people", "3");
    await page.selectOption("#first-supply", "household-socket-13-a");
    const said = await saidBelow(page);
    expect(said).toMatch(/ kWh: (not enough|only just|enough)\. (A usual day of 19 miles ends|In the condition)/);
    expect(said).toMatch(/At ten years, in winter, the 19 miles day ends between \d+ miles? (short|left) and \d/);
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);

    await openWorking(page, "theCar", "roadLoad");
    expect(await page.inputValue("#field-vehicle-roadLoad-drag_coeff")).toBe("0.58");
    expect(await page.inputValue("#field-vehicle-load_kg")).toMatch(/^\d/);
    await page.waitForFunction(() => /^Saved/.test(document.querySelector(".keeping")?.textContent?.trim() ?? ""));
    await page.reload();
    await page.locator("#field-vehicle-kerb_kg").waitFor();
    expect(await page.inputValue("#field-vehicle-kerb_kg")).toBe("15 1/2 cwt");
    expect(await saidBelow(page)).toBe(said);

    // And on to the sheet that the client takes home.
    await page.getByRole("button", { name: "Preview" }).click();
    const sheet = page.locator(".paper .sheet");
    await expect.poll(() => sheet.textContent()).toContain("Two-door, 1964");
    const verdict = (await page.locator("#answer .verdict").textContent()) ?? "";
    for (const words of [verdict, "shop, station, once a month to my sister", "Household socket, 13 A"])
      expect(await sheet.textContent()).toContain(words);
    expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(2);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("speaks in the reader's units alone, whatever was typed: not a kilometre nor a kilogram in miles and pounds", async () => {
    const { page } = await startOwnCar(1440);
    await page.locator(".tools select").selectOption("british");
    await answer(page, "usualDay_km", "30 km");
    await answer(page, "vehicle-kerb_kg", "740 kg");
    await answer(page, "driveline-limits-gearboxInput_Nm", "-4 Nm");
    await saidBelow(page);
    const says = (path: string) => page.locator(`#first-field-${path}-says`).textContent();
    expect(await says("usualDay_km")).toContain("= 18.64 miles");
    expect(await says("vehicle-kerb_kg")).toContain("= 1631 lb");
    expect(await says("driveline-limits-gearboxInput_Nm")).toMatch(
      /-4 Nm = -2\.95 lb ft is not possible \(0 to 3688 lb ft\)/,
    );
    await page.locator(".jobs > summary").click();
    const metric = await page.evaluate(() => {
      const typed = [...document.querySelectorAll<HTMLInputElement>("main input")].map(({ value }) => value);
      const isTyped = (text: string) => typed.some((each) => each !== "" && text.includes(each));
      // Other jobs are listed in their own units, and the title of a road to begin with says both.
      const others = "script, style, .job-list, option";
      return [...document.querySelectorAll("main *")]
        .filter((each) => !each.closest(others))
        .flatMap(({ childNodes }) => [...childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE))
        .map(({ textContent }) => textContent ?? "")
        .filter((text) => /\d\s*(km|kg|Nm)\b/.test(text) && !/\(\d+ mph\)/.test(text) && !isTyped(text));
    });
    expect(metric).toEqual([]);
    expect(await page.locator(".job-list").first().textContent()).toContain("18.6 miles a day");
    await page.context().close();
  });

  it("answers where the client knows nothing: usual values of the car's shape, a band, and what would narrow it", async () => {
    const { page, faults } = await startOwnCar(390);
    await page.selectOption("#first-shape", "pick-up-4x4");
    await answer(page, "usualDay_km", "");
    const said = () => page.locator(".first-questions .jobs-body > .sentence").textContent();
    await expect.poll(said).toContain("Waiting for “Usual day”: empty.");
    expect(await page.locator("#answer .say").textContent()).toContain("Waiting for “Usual day”: empty.");
    await page.locator(".first-questions .asked button", { hasText: "Use the usual 40 km" }).click();
    for (const path of quantities) await answer(page, path, "unknown");
    const below = await saidBelow(page);
    const questions = page.locator(".first-questions");
    expect(await questions.locator("[aria-invalid=true]").count()).toBe(0);
    expect(await page.inputValue("#first-field-vehicle-kerb_kg")).toBe("1500");
    expect(await page.inputValue("#first-field-usualDay_km")).toBe("40");
    expect(await page.inputValue("#first-field-longestDay_km")).toBe("");
    for (const path of quantities) {
      const hint = page.locator(`#first-field-${path}-hint`);
      expect(await hint.textContent()).toMatch(
        /Usual: .* write unknown if it is not known|Left empty, |unless the box is known/,
      );
      expect(await hint.isVisible()).toBe(true);
    }
    expect(below).toMatch(/ends between \d+ km (short|left) and \d+ km left\./);
    expect(await questions.locator(".measure-first li").first().textContent()).toMatch(
      /: it may cost \d+ km of a winter/,
    );
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("keeps nonsense at its question, goes on without it, and lets every answer be put right", async () => {
    const { page, faults } = await startOwnCar(1440);
    await answer(page, "usualDay_km", "12 miles");
    const before = await saidBelow(page);
    await answer(page, "vehicle-kerb_kg", "heavy");
    await answer(page, "requirement-topSpeed_kmh", "as it comes");
    await answer(page, "usualDay_km", "there and back");
    const says = (path: string) => page.locator(`#first-field-${path}-says`).textContent();
    expect(await says("vehicle-kerb_kg")).toMatch(/found heavy, .*Using 850 kg/s);
    expect(await says("usualDay_km")).toMatch(/found there and back, .*Using 19\.3 km/s);
    expect(await says("requirement-topSpeed_kmh")).toMatch(/^\s*Wrong: found as it comes/);
    expect(await saidBelow(page)).toBe(before);

    await answer(page, "requirement-topSpeed_kmh", "50 mph");
    await answer(page, "vehicle-kerb_kg", "14 1/4 cwt");
    await page.locator(".first-questions .asked button", { hasText: "112 lb" }).click();
    await answer(page, "usualDay_km", "30 miles");
    await answer(page, "longestDay_km", "20 miles");
    expect(await saidBelow(page)).not.toBe(before);
    expect(await page.locator(".first-questions [aria-invalid=true]").count()).toBe(0);
    expect(await says("vehicle-kerb_kg")).toContain("724 kg");
    expect(await page.locator(".first-questions li .to-mend").textContent()).toContain("changed places");
    await answer(page, "longestDay_km", "80 miles");
    expect(await page.locator(".first-questions li .to-mend").count()).toBe(0);
    await openWorking(page, "theCar");
    expect(await page.inputValue("#field-vehicle-kerb_kg")).toContain("14 1/4 cwt");
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

/** The questions that are answered by a quantity. */
const quantities = [
  "usualDay_km",
  "longestDay_km",
  "vehicle-kerb_kg",
  "requirement-startHill_ratio",
  "requirement-topSpeed_kmh",
  "driveline-limits-gearboxInput_Nm",
];

async function startOwnCar(width: number): Promise<OpenNotebook> {
  const notebook = await openNotebook(browser, width, 844, false, true);
  const { page } = notebook;
  await answered(page);
  await page.getByRole("button", { name: "New job" }).click();
  await page.waitForFunction(() => document.querySelector("h1")?.textContent === "New job");
  await answered(page);
  return notebook;
}

async function answer(page: Page, path: string, text: string): Promise<void> {
  await page.locator(`#first-field-${path}`).fill(text);
  await page.locator(`#first-field-${path}`).blur();
}

/** The answer and its doubt, below the questions, once it is of what is in the job now. */
async function saidBelow(page: Page): Promise<string> {
  // A change is on its way to the answer within two frames.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  await answered(page);
  const said = await page.locator(".first-questions .jobs-body > .sentence, .first-questions .doubt").allTextContents();
  return said.join(" ").replace(/\s+/g, " ").trim();
}
