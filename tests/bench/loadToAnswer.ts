/**
 * The answer screen in the built notebook and a real browser: from the load of the page to the first answer, each time as a first
 * visit, and from a change of the load to the answer redrawn for it, with the demo's five packs on the 30-minute cycle and all
 * workings folded. A change is over in the frame after the one in which the packs stand newly driven in the table. Prints the middle,
 * the 95th percentile and the worst, what a change costs the page's thread in processor time (which a busy machine moves least), and
 * how busy the machine was; figures for the text of a change, never a gate. Run with `npx tsx tests/bench/loadToAnswer.ts`.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { build } from "vite";
import { listen } from "../../sim/cli/serving/listen.ts";
import { staticServer } from "../../sim/cli/serving/staticServer.ts";
import { chromiumFlags, chromiumPath } from "../support/chromium.ts";
import { answered } from "../support/notebookPage.ts";

const VISITS = 7;
const CHANGES = 40;

process.env["NODE_ENV"] = "production";
const folder = mkdtempSync(join(tmpdir(), "bellhousing-bench-"));
await build({ mode: "production", logLevel: "error", build: { outDir: folder, emptyOutDir: true } });
const server = staticServer(folder);
const url = `http://127.0.0.1:${await listen(server, 0)}/`;
const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...chromiumFlags] });
try {
  const first_ms: number[] = [];
  for (let i = 0; i < VISITS; i++) first_ms.push(await firstAnswer(browser));
  console.log(`first answer after the load, ${VISITS} first visits: ${spread(first_ms)}`);

  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await answered(page);
  await page.selectOption("#answer-road", { label: "Published mixed cycle, class 3b" });
  await answered(page);
  await page.waitForTimeout(2000);
  const spent_ms = await threadClock(page);
  const before_ms = await spent_ms();
  const times_ms = await page.evaluate(changeLoad, CHANGES);
  const after_ms = await spent_ms();
  console.log(`a change of the load to the answer redrawn, ${CHANGES} changes: ${spread(times_ms)}`);
  console.log(`the page's thread: ${((after_ms - before_ms) / CHANGES).toFixed(0)} ms of processor a change`);
  console.log(`load of the machine: ${loadavg()[0]?.toFixed(1)}`);
} finally {
  await browser.close();
  server.close();
  server.closeAllConnections();
  rmSync(folder, { recursive: true, force: true });
}

function spread(of_ms: readonly number[]): string {
  const sorted = of_ms.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]?.toFixed(0);
  return `median ${at(0.5)} ms, p95 ${at(0.95)} ms, worst ${at(1)} ms`;
}

/** A clock of the processor time that the page's thread has taken so far, in milliseconds. */
async function threadClock(page: Page): Promise<() => Promise<number>> {
  const developer = await page.context().newCDPSession(page);
  await developer.send("Performance.enable", { timeDomain: "threadTicks" });
  return async () => {
    const { metrics } = await developer.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  };
}

/** From the start of a first visit to the frame with the first verdict. */
async function firstAnswer(visitor: Browser): Promise<number> {
  const context = await visitor.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(`new MutationObserver((_, observer) => {
    if (!document.querySelector("#answer .verdict")) return;
    observer.disconnect();
    requestAnimationFrame(() => setTimeout(() => { globalThis.answered_ms = performance.now(); }));
  }).observe(document, { childList: true, subtree: true })`);
  await page.goto(url);
  await page.waitForFunction(() => "answered_ms" in globalThis, undefined, { timeout: 120_000 });
  const answered_ms = await page.evaluate<number>("globalThis.answered_ms");
  await context.close();
  return answered_ms;
}

/** Runs in the page: changes the load to and fro, and waits each time for the packs driven with it. */
async function changeLoad(changes: number): Promise<number[]> {
  const field = document.querySelector<HTMLInputElement>("#answer-field-vehicle-load_kg");
  const answer = document.querySelector<HTMLElement>("#answer");
  if (!field || !answer) throw new Error("no load on the page");
  const times_ms: number[] = [];
  for (let i = 0; i < changes; i++) {
    const start_ms = performance.now();
    field.value = String(60 + ((i * 37) % 200));
    field.dispatchEvent(new Event("input", { bubbles: true }));
    if (answer.dataset["late"] !== "all") throw new Error("a change of the load that drove nothing anew");
    await new Promise<void>((resolve) => {
      new MutationObserver((_, observer) => {
        if (answer.dataset["late"] === "all") return;
        observer.disconnect();
        requestAnimationFrame(() => setTimeout(resolve));
      }).observe(answer, { attributes: true });
    });
    times_ms.push(performance.now() - start_ms);
    await new Promise((resolve) => setTimeout(resolve, 150));
  }
  return times_ms;
}
