import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { changedDemo, changedDemoFile } from "../support/changedDemo.ts";
import { answered, expectNoSidewaysScroll, openWorking, saidAt, write } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
let notebook: OpenNotebook;
beforeAll(async () => {
  browser = await startChromium();
  notebook = await openNotebook(browser, 1440, 900, false, true);
  await notebook.page.evaluate(() => {
    Object.assign(window, { ran: 0 });
  });
  // A figure that nobody has scrolled to has no size yet, and what is in it could not be measured against it.
  await notebook.page.addStyleTag({ content: ".figure-reader { content-visibility: visible !important }" });
});
afterAll(async () => browser?.close());

const markup = `<img src=x onerror="ran=1"><script>ran=1</script>"'&`;
const arabic = "سيارة العميل من الميناء";
const long = "W".repeat(180);
const { packs, driveline, roads } = changedDemo({}) as {
  packs: { name: string }[];
  driveline: { gears: { name: string }[] };
  roads: { title: string }[];
};
const named = (name: string) => ({
  "vehicle.name": name,
  "motor.name": name,
  "module.name": name,
  "charger.name": name,
  client: name,
  workshop: name,
  use: `${name} `.repeat(8),
  packs: packs.map((pack, i) => ({ ...pack, name: `${name} ${i}` })),
  "driveline.gears": driveline.gears.map((gear, i) => ({ ...gear, name: i < 3 ? gear.name : name.slice(0, 60) })),
  roads: roads.map((road) => ({ ...road, title: name })),
  notes: [{ after: "theCar", text: `${markup} **${name}** [here](javascript:ran=1)` }],
});
const many = Array.from({ length: 12 }, (_, i) => ({
  ...packs[i % packs.length],
  name: `Pack ${i}`,
  parallelModules: i + 1,
}));
const jobs: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
  ["HTML and scripts in every text", { title: markup, ...named(markup) }],
  ["words written from right to left", { title: arabic, ...named(arabic) }],
  ["words too long for any line", { title: long, ...named(long) }],
  ["one pack", { title: "One pack", packs: packs.slice(0, 1) }],
  ["twelve packs", { title: "Twelve packs", packs: many }],
  ["no pack that is enough", { title: "Not enough", usualDay_km: 190 }],
  ["a car that does not start", { title: "No start", "controller.torqueCap_Nm": 3 }],
  ["nothing known", { title: "Nothing known", origins: {} }],
];

/** What of answer, chapters and sheet is broken: numbers gone wrong, words outside their figure or cut off in their box. */
function broken(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    for (const part of document.querySelectorAll<HTMLElement>("#answer, .chapter, .paper .sheet")) {
      const words = [
        part.textContent ?? "",
        ...[...part.querySelectorAll("svg")].map((svg) => svg.getAttribute("aria-label") ?? ""),
      ];
      for (const text of words) {
        const wrong = /.{0,30}\b(NaN|undefined|null|Infinity|\[object)\b.{0,30}/.exec(text);
        if (wrong) found.push(wrong[0]);
      }
      if (part.querySelector("img, script, iframe, a[href^='javascript']"))
        found.push("something that is typed became an element");
      for (const svg of part.querySelectorAll("svg[role=img]")) {
        const { left, right } = svg.getBoundingClientRect();
        for (const text of svg.querySelectorAll("text")) {
          const box = text.getBoundingClientRect();
          if (box.width > 0 && (box.left < left - 3 || box.right > right + 3))
            found.push(`outside the figure: ${text.textContent}`);
        }
      }
      for (const each of part.querySelectorAll<HTMLElement>("*")) {
        const { overflowX, textOverflow } = getComputedStyle(each);
        const isCut =
          textOverflow !== "ellipsis" &&
          (overflowX === "hidden" || overflowX === "clip") &&
          each.scrollWidth > each.clientWidth + 1;
        if (isCut && each.clientWidth > 1 && !each.closest(".unseen, svg"))
          found.push(`cut: ${each.outerHTML.slice(0, 100)}`);
      }
    }
    return found;
  });
}

describe("a job with", () => {
  it.each(jobs)("%s is whole on the answer, in the chapters and on the sheet", async (_, changes) => {
    const { page, faults } = notebook;
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.setInputFiles("#job-file", changedDemoFile(changes));
    await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, changes["title"]);
    await answered(page);
    const preview = page.getByRole("button", { name: "Preview", exact: true });
    if ((await preview.count()) > 0) await preview.click();
    await page.locator(".paper .sheet").waitFor();
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 900 });
      await answered(page);
      // Figures take the new width a moment after the window has it.
      await expect.poll(() => broken(page), { message: `${width} px` }).toEqual([]);
      await expectNoSidewaysScroll(page);
    }
    expect(await page.evaluate(() => (window as unknown as { ran: number }).ran)).toBe(0);
    expect(faults).toEqual([]);
  });

  it("a client's name of 500 characters keeps it as typed and says what is allowed", async () => {
    const { page, faults } = notebook;
    await page.setViewportSize({ width: 1440, height: 900 });
    await openWorking(page, "theJob");
    await write(page, "client", "N".repeat(500));
    expect(await saidAt(page, "client")).toMatch(/^Wrong: .*200/);
    expect(await page.inputValue("#field-client")).toBe("N".repeat(500));
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);
  });

  it("no road is not opened, with a sentence that says so", async () => {
    const { page, faults } = notebook;
    const before = await page.locator(".masthead h1").textContent();
    await page.setInputFiles("#job-file", changedDemoFile({ title: "Nowhere", roads: [] }));
    await page.waitForFunction(() => document.querySelector(".complaint")?.textContent?.trim() !== "");
    expect(await page.locator(".complaint").textContent()).toMatch(/roads/);
    expect(await page.locator(".masthead h1").textContent()).toBe(before);
    expect(faults).toEqual([]);
  });
});
