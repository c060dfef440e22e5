import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { changedDemo, changedDemoFile } from "../support/changedDemo.ts";
import { finding, openFolds, openWorking, saidAt, worked, write } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** The notebook with these workings open and all that is folded in them; the rest is not drawn. */
async function openOn(...workings: readonly string[]): Promise<OpenNotebook> {
  const notebook = await openNotebook(browser, 1440, 900, false, true);
  for (const each of workings) await openWorking(notebook.page, each);
  await worked(notebook.page);
  await openFolds(notebook.page);
  return notebook;
}

/** Opens a job file whose title begins otherwise than the one on the page. */
async function openFile(page: Page, file: string, title: string): Promise<void> {
  await page.setInputFiles("#job-file", file);
  await page.waitForFunction((begins) => document.querySelector("h1")?.textContent?.startsWith(begins), title);
  await worked(page);
}

const undo = (page: Page) => page.locator(".tools button", { hasText: "Undo" }).click();
const radius = "vehicle.tyres.loadedRadius_mm";
const valueAt = (page: Page, path: string) => page.locator(`#field-${path.replaceAll(".", "-")}`).inputValue();
const press = (page: Page, section: string, words: string) =>
  page.locator(`#${section} button`, { hasText: words }).first().click();
const bring = (page: Page, name: string, text: string) =>
  page.setInputFiles("#motor-map", { name, mimeType: "text/csv", buffer: Buffer.from(text) });

/** Range at a steady 60 km/h, in km, as the table of the road load prints it. */
async function steadyRange_km(page: Page): Promise<number> {
  const row = page.locator("#roadLoad tbody tr", { has: page.locator("th", { hasText: /^\s*60\skm\/h/ }) });
  return Number.parseFloat((await row.locator("td").nth(1).textContent()) ?? "");
}

describe("a generic part", () => {
  it("says how sure it is and what it would replace, and is taken in one step, beside the measured value or in its place", async () => {
    const { page, faults } = await openOn("roadLoad");
    const origins = Object.entries(changedDemo({})["origins"] as object).filter(
      ([path]) => !/tyres\.rolling/.test(path),
    );
    const notMeasured = changedDemoFile({ title: "Rolling not measured", origins: Object.fromEntries(origins) });
    await openFile(page, notMeasured, "Rolling not measured");
    const before = await finding(page, "roadLoad");
    const pick = () => page.selectOption("#pick-tyres", { label: "Cross-ply of the period, small car" });
    await pick();
    const offer = page.locator("#roadLoad .offer");
    await offer.locator("summary").click();
    expect(await offer.textContent()).toMatch(/published law \(Wong2008, ch\. 1\)/);
    expect(await offer.textContent()).toMatch(/0\.015 to 0\.02/);
    expect(await offer.textContent()).toContain("Rolling radius of the tyre: 284 mm, measured; the part has 288 mm");

    await press(page, "roadLoad", "Take it, but keep this");
    await worked(page);
    expect(await valueAt(page, radius)).toBe("284");
    expect(await valueAt(page, "vehicle.tyres.rolling_coeff")).toBe("0.0169");
    expect(await finding(page, "roadLoad")).not.toBe(before);

    await undo(page);
    await worked(page);
    expect(await valueAt(page, "vehicle.tyres.rolling_coeff")).toBe("0.0136");
    expect(await finding(page, "roadLoad")).toBe(before);

    await pick();
    await press(page, "roadLoad", "Take all of it");
    expect(await valueAt(page, radius)).toBe("288");
    expect(await page.locator("#field-vehicle-tyres-loadedRadius_mm-from").inputValue()).toBe("usual");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("brings an accessory, and what it draws costs range", async () => {
    const { page } = await openOn("theCar", "energyPerKm");
    const before = await finding(page, "energyPerKm");
    await page.selectOption("#pick-accessory", { label: "Coolant pump" });
    await press(page, "theCar", "Add it");
    await worked(page);
    expect(await valueAt(page, "accessories.items.4.name")).toBe("coolant pump");
    expect(await finding(page, "energyPerKm")).not.toBe(before);
    await page.context().close();
  });

  it("without current limits says so at the emptied field", async () => {
    const { page } = await openOn("packs");
    await page.selectOption("#pick-module", { index: 3 });
    await write(page, "module.discharge.peak_A", "");
    expect(await saidAt(page, "module.discharge.peak_A")).toContain("a module without current limits");
    await page.context().close();
  });
});

const map = ["rpm,20,60,100", "1000,68,66,60", "3000,76,79,77", "6000,74,80,"].join("\n");

describe("a motor map from a file", () => {
  it("is shown as it was understood, drawn, and taken in one step", async () => {
    const { page, faults } = await openOn("motor", "energyPerKm", "theCar");
    const [energy, figures] = [await finding(page, "energyPerKm"), await page.locator("#motor figure").count()];
    await bring(page, "workshop.csv", map);
    await page.locator("#motor .offer").waitFor();
    const said = await page.locator("#motor .offer").textContent();
    expect(said).toContain("efficiencies read in percent");
    expect(said).toContain("filled by a four-term law");
    await worked(page);
    expect(await page.locator("#motor figure").count()).toBe(figures + 1);
    expect(await page.locator("#motor figcaption").last().textContent()).toContain("not taken into the job yet");
    expect(await finding(page, "energyPerKm")).toBe(energy);

    await write(page, "vehicle.load_kg", "150 kg");
    await undo(page);
    await worked(page);
    expect(await page.locator("#motor .offer").count()).toBe(1); // it lies there until it is taken or put back
    await press(page, "motor", "Take it as the motor's losses");
    await worked(page);
    expect(await page.locator("#kind-motor-loss").inputValue()).toBe("lossTable");
    expect(await finding(page, "energyPerKm")).not.toBe(energy);

    await undo(page);
    await worked(page);
    expect(await finding(page, "energyPerKm")).toBe(energy);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("that cannot be read is refused in a sentence, and the job is as it was; dropped on its place it is no job file", async () => {
    const { page, faults } = await openOn("motor");
    for (const [text, sentence] of [
      ["rpm,20,60,100\n1000,78,76,70\n", /a single speed above 0 rpm, at least 2 wanted/],
      [map.replace("79", "109"), /line 3: found 109 at 3000 rpm, 60 Nm/],
      ["good,better\nbest,fair\n", /bad\.csv/],
    ] as const) {
      await bring(page, "bad.csv", text);
      await page.locator("#motor .offer.is-refused").waitFor();
      expect(await page.locator("#motor .offer").textContent()).toMatch(sentence);
      expect(await page.locator("#kind-motor-loss").inputValue()).toBe("fourTerm");
      await bring(page, "good.csv", map);
      await page.locator("#motor .offer:not(.is-refused)").waitFor();
    }
    const data = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], "dropped.csv", { type: "text/csv" }));
      return transfer;
    }, map);
    await page.dispatchEvent("#motor .dropped-on", "drop", { dataTransfer: data });
    const offer = page.locator("#motor .offer", { hasText: "dropped.csv was understood" });
    await offer.waitFor();
    expect((await page.locator(".complaint").textContent())?.trim()).toBe("");
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

it("leaves what was picked up and not taken behind when another job is opened", async () => {
  const { page } = await openOn("motor", "packs", "charging");
  await page.selectOption("#pick-charger", { index: 1 });
  await bring(page, "workshop.csv", map);
  await page.locator("#motor .offer").waitFor();
  expect(await page.locator(".offer").count()).toBe(2);
  await openFile(page, "shared/demos/bakery-van.bellhousing.json", "Bakery");
  expect(await page.locator(".offer").count()).toBe(0);
  await page.context().close();
});

describe("datasheet figures", () => {
  it("is fitted with its residuals shown, and refuses torque and speed changed over at the field", async () => {
    const { page } = await openOn("motor");
    const fill = async (texts: Readonly<Record<string, string>>) => {
      for (const [key, text] of Object.entries(texts)) {
        await page.locator(`#sheet-${key}`).fill(text);
        await page.locator(`#sheet-${key}`).blur();
      }
    };
    await fill({
      peakTorque_Nm: "90 lb ft",
      peakPower_kW: "38",
      continuousPower_kW: "16",
      topSpeed_rpm: "8000",
      rated_V: "108",
    });
    await fill({ "points-0-speed_rpm": "60", "points-0-torque_Nm": "3000", "points-0-efficiency_frac": "89" });
    expect(await page.locator("#sheet-points-0-torque_Nm-says").textContent()).toContain("likely changed over");
    expect(await page.locator("#sheet-points-0-torque_Nm").inputValue()).toBe("3000");
    await fill({ "points-0-speed_rpm": "3000", "points-0-torque_Nm": "60" });
    const offer = page.locator("#motor .offer");
    expect(await offer.locator("tbody tr").count()).toBe(1);
    expect(await offer.textContent()).toContain("1 of at least 4 points");
    await press(page, "motor", "Take these figures");
    expect(await valueAt(page, "motor.envelope.torque_Nm")).toBe("90 lb ft");
    expect(await saidAt(page, "motor.envelope.torque_Nm")).toContain("122 Nm");
    await page.context().close();
  });
});

it("freewheeling hubs count in the range: free goes farther than locked; a front axle that drives allows none", async () => {
  const { page, faults } = await openOn("roadLoad", "motorAndGears");
  await openFile(page, "shared/demos/vineyard-pickup.bellhousing.json", "Vineyard");
  const free_km = await steadyRange_km(page);
  await page.selectOption("#field-driveline-transferBox-hubs", "locked");
  await worked(page);
  const locked_km = await steadyRange_km(page);
  expect(await page.locator("#transfer-box-in-words").textContent()).toContain("drag them along");
  expect(locked_km).toBeGreaterThan(0);
  expect(free_km).toBeGreaterThan(locked_km);

  await openFile(page, changedDemoFile({ title: "Front" }), "Front");
  await page.selectOption("#field-driveline-drivenAxle", "front");
  await press(page, "motorAndGears", "Add the transfer box");
  const group = page.locator("#group-driveline-transferBox");
  expect(await group.locator(".refused").textContent()).toContain("the front axle is engaged there");
  expect(await page.locator("#field-driveline-transferBox-hubs").count()).toBe(0);
  expect(faults).toEqual([]);
  await page.context().close();
});

it("gears carry a new name to those used, keep one that will not do with the reason, grow by one and shrink again", async () => {
  const third = "driveline.gears.2.name";
  const { page, faults } = await openOn("motorAndGears");
  await write(page, third, "top");
  await worked(page);
  expect(await finding(page, "motorAndGears")).toContain("In second and top gear");
  await write(page, third, "second");
  expect(await saidAt(page, third)).toMatch(/^Wrong: .*"second" twice/);
  expect(await valueAt(page, third)).toBe("second");
  expect(await finding(page, "motorAndGears")).toContain("In second and top gear");
  await write(page, third, "third");
  expect(await saidAt(page, third)).toBe("");

  await press(page, "motorAndGears", "Add a gear");
  expect(await valueAt(page, "driveline.gears.4.gear_ratio")).toBe("0.75");
  await page.locator("#motorAndGears button", { hasText: "Remove fifth" }).click();
  expect(await page.locator("#field-driveline-gears-4-gear_ratio").count()).toBe(0);
  expect(faults).toEqual([]);
  await page.context().close();
});
