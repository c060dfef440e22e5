import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demos } from "../../shared/demos/index.ts";
import { emptyFolder } from "../support/emptyFolder.ts";
import { startChromium } from "../support/openNotebook.ts";
import { runCommand } from "../support/runCommand.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
});

async function sheetOf(document: unknown): Promise<string> {
  const path = join(emptyFolder(), "job.json");
  writeFileSync(path, JSON.stringify(document));
  expect((await runCommand("sheet", path, "--out", `${path}.html`)).code).toBe(0);
  return `file://${path}.html`;
}

const first = demos[0].document as Record<string, unknown> & Record<"packs" | "roads", readonly object[]>;
const longest = {
  ...first,
  packs: first.packs.map((pack, i) => ({ ...pack, name: `${"Packname".repeat(20)} ${i}` })),
  roads: first.roads.map((road) => ({ ...road, title: "Roadtitle".repeat(20) })),
  title: "A title of many words ".repeat(9).slice(0, 200),
  client: "Clientname".repeat(50).slice(0, 200),
  use: "Words of use in one long breath. ".repeat(60).slice(0, 2000),
};

describe("the client sheet on paper", () => {
  it.each([
    ...demos.map(({ id, document }) => [id, document] as const),
    ["the longest words a job takes", longest] as const,
  ])("of %s is two pages, A4 and Letter, and nothing is cut", async (_name, document) => {
    const page = await browser.newPage({ viewport: { width: 900, height: 1200 } });
    await page.goto(await sheetOf(document));
    for (const format of ["A4", "Letter"] as const) {
      const pdf = await page.pdf({
        format,
        preferCSSPageSize: false,
        margin: { top: "13mm", bottom: "13mm", left: "15mm", right: "15mm" },
      });
      const text = pdf.toString("latin1");
      expect(text.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
      // The picture in lines, not in dots, in the handbook face throughout.
      expect(text).not.toMatch(/\/Subtype\s*\/Image/);
      const faces = new Set(text.match(/\/FontName\s*\/[^\s/]+/g));
      expect([...faces].filter((face) => !face.includes("SourceSerif"))).toEqual([]);
      expect(faces.size).toBeGreaterThan(1);
    }
    await page.emulateMedia({ media: "print" });
    const cut = await page.evaluate(() =>
      [...window.document.querySelectorAll<HTMLElement>(".sheet .page")]
        .filter((each) => each.scrollHeight > each.clientHeight + 1)
        .map((each) => `${each.scrollHeight} of ${each.clientHeight} px`),
    );
    expect(cut).toEqual([]);
    await page.close();
  });
});
