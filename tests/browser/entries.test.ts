import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { answered, openFolds, saidAt, write } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
let page: Page;
let faults: readonly string[];
beforeAll(async () => {
  browser = await startChromium();
  ({ page, faults } = await openNotebook(browser, 1280, 900, false, true));
  await openWorking(page, "theCar", "roadLoad", "motor", "motorAndGears", "packs", "theRoad", "ownCharts");
  await page.locator("#field-vehicle-kerb_kg").waitFor();
});
afterAll(async () => browser?.close());

const idOf = (path: string) => `field-${path.replaceAll(".", "-")}`;
const saying = () => page.locator("#answer [data-part=say]").textContent();
const isRefused = (path: string) => page.locator(`#${idOf(path)}`).getAttribute("aria-invalid");
/** What is asked at a field. */
const askedAt = (path: string) =>
  page
    .locator(`.field:has(> .entry > #${idOf(path)}) .asked`)
    .allTextContents()
    .then((all) => all.join(" "));

/** Opens the folds around a field, and writes into it. */
async function enter(path: string, text: string): Promise<void> {
  await page.evaluate((id) => {
    for (let at = document.getElementById(id); at; at = at.parentElement) {
      if (at instanceof HTMLDetailsElement) at.open = true;
    }
  }, idOf(path));
  await write(page, path, text);
}

describe("what is put into a field", () => {
  it.each([
    ["vehicle.kerb_kg", "953", "Kerb weight as it arrives"],
    ["vehicle.tyres.loadedRadius_mm", "285", "Rolling radius of the tyre"],
  ])(
    "is empty where %s is emptied: the answer waits for it, and nothing stands in for it unasked",
    async (path, good, name) => {
      await enter(path, "");
      expect(await saidAt(page, path)).toBe("Empty: what depends on it waits.");
      expect(await askedAt(path)).toContain("Use the usual");
      await expect.poll(saying).toContain(`Waiting for “${name}”: empty.`);
      await enter(path, good);
      await expect.poll(saying).not.toContain("Waiting");
    },
  );

  it.each([
    ["vehicle.roadLoad.frontalArea_m2", "0", "0 m² is unusual: a car has 1.2 to 5 m²"],
    ["vehicle.roadLoad.frontalArea_m2", "13", "13 m² is unusual: a car has 1.2 to 5 m²"],
    ["vehicle.roadLoad.drag_coeff", "0", "0 is unusual: a car has 0.2 to 1.1"],
  ])("is asked about where %s is %s", async (path, odd, question) => {
    const good = await page.inputValue(`#${idOf(path)}`);
    const summary = () => page.locator("#roadLoad .summary").textContent();
    await expect.poll(summary).not.toContain("to check");
    await enter(path, odd);
    expect(await askedAt(path)).toContain(question);
    // With what follows from it: a drag that no car has, too.
    await expect.poll(summary).toMatch(/[1-9]\d* to check/);
    await enter(path, good);
    expect(await askedAt(path)).not.toContain("unusual");
    await expect.poll(summary).not.toContain("to check");
  });

  it("counts as typed and not as guessed, and nobody asks where a count comes from", async () => {
    await enter("packs.0.parallelModules", "3");
    expect(await page.locator(`#${idOf("packs.0.parallelModules")}-from`).count()).toBe(0);
    await enter("motor.mass_kg", "53");
    const from = await page.locator(`#${idOf("motor.mass_kg")}-from`).inputValue();
    expect(from).not.toBe("guessed");
  });

  it.each([
    ["vehicle.load_kg", "1,371", "= 1371 kg"],
    ["vehicle.load_kg", "1.371,6", "= 1371.6 kg; comma read as the decimal point"],
    ["vehicle.load_kg", "900+40+35", "= 975 kg"],
    ["vehicle.roadLoad.frontalArea_m2", "58 in x 55 in x 0.82", "= 1.69 m²"],
    ["vehicle.roadLoad.drag_coeff", "0.50 to 0.65", "= 0.575 ± 0.075; a band: its middle is used"],
    ["driveline.finalDrive_ratio", "10 and 43 teeth", "= 4.3; taken as 43/10"],
  ])("of %s is read from “%s” and repeated beside the field", async (path, typed, echo) => {
    const good = await page.inputValue(`#${idOf(path)}`);
    await enter(path, typed);
    expect(await isRefused(path)).toBe("false");
    expect(await saidAt(page, path)).toContain(echo);
    await enter(path, good);
  });

  it("is asked about where it was likely meant otherwise: 940 % for 94 %", async () => {
    const path = "packs.0.ceiling_frac";
    await enter(path, "940 %");
    expect(await isRefused(path)).toBe("true");
    await page.locator(".asked button", { hasText: "94 %" }).click();
    expect(await page.inputValue(`#${idOf(path)}`)).toBe("94 %");
    expect(await isRefused(path)).toBe("false");
  });

  it("of a typed road may have a hill of 80 m", async () => {
    await openFolds(page);
    await page.locator("#typed-road").fill("300 m at 30 km/h, then 80 m at 20 km/h, 1 in 7; 300 m at 30 km/h");
    await page.locator("#typed-road").blur();
    await page.locator(".field:has(#typed-road)", { hasText: "0.68 km in 2 min" }).waitFor();
  });
});

it("keeps half-typed words of what is not in the job yet, of charts and of a motor's datasheet over a reload", async () => {
  await page.getByRole("button", { name: "Make a chart" }).click();
  const words: Readonly<Record<string, string>> = {
    "own-0-caption": "Where the loss",
    "typed-title": "The road to the sta",
    "typed-road": "3 km at 50",
    "sheet-peakTorque_Nm": "12",
    "sheet-peakPower_kW": "about",
  };
  await openFolds(page);
  for (const [id, text] of Object.entries(words)) await page.locator(`#${id}`).fill(text);
  await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
  await page.reload();
  await answered(page);
  for (const [id, text] of Object.entries(words)) expect(await page.inputValue(`#${id}`), id).toBe(text);
  expect(faults).toEqual([]);
});
