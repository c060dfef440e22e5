/**
 * From a push of the slider to every figure redrawn, in the built notebook and a real browser: the demo's five packs on
 * the 30-minute WLTC. A change is over in the frame in which no section is late and no figure waits to be drawn: all that
 * follow from the change stand in the page then, near and far ones alike (the browser lays out those far off when they come
 * near). Prints the middle, the 95th percentile, how many figures were drawn anew, what the change costs the page's thread
 * in processor time (which a busy machine moves least), and the longest task on it; a number for the change's text, never a
 * gate. Run with `npx tsx tests/bench/sliderToFigures.ts`.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { build } from "vite";
import { listen } from "../../sim/cli/listen.ts";
import { staticServer } from "../../sim/cli/staticServer.ts";
import { chromiumFlags, chromiumPath } from "../support/chromium.ts";

const PUSHES = 60;

process.env["NODE_ENV"] = "production";
const folder = mkdtempSync(join(tmpdir(), "bellhousing-staging-"));
await build({ mode: "production", logLevel: "error", build: { outDir: folder, emptyOutDir: true } });
const server = staticServer(folder);
const port = await listen(server, 0);
const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...chromiumFlags] });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`http://127.0.0.1:${port}/`);
  await page.locator("#view-road").waitFor();
  await page.selectOption("#view-road", "wltc");
  await page.waitForTimeout(4000);
  const developer = await page.context().newCDPSession(page);
  await developer.send("Performance.enable", { timeDomain: "threadTicks" });
  const spent_ms = async (what: string) => {
    const { metrics } = await developer.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === what)?.value ?? Number.NaN);
  };
  const kinds = ["TaskDuration", "ScriptDuration"];
  // tsx marks the names of inner functions by a call that the page does not know.
  await page.evaluate("globalThis.__name = (named) => named");
  for (const [what, selector] of [
    ["the slider of the usual day, which asks for the verdict anew", "#slider-day"],
    ["the load, which drives every pack and draws anew every figure that follows from it", "#field-vehicle-load_kg"],
  ]) {
    const before_ms = await Promise.all(kinds.map(spent_ms));
    const { times_ms, first_ms, tasks_ms, figures, anew } = await page.evaluate(measure, { pushes: PUSHES, selector });
    const after_ms = await Promise.all(kinds.map(spent_ms));
    const [all, script] = kinds.map((_, i) => ((after_ms[i] - before_ms[i]) / PUSHES).toFixed(0));
    const at = (of_ms: readonly number[], share: number) =>
      of_ms.toSorted((a, b) => a - b)[Math.min(of_ms.length - 1, Math.floor(share * of_ms.length))]?.toFixed(0);
    console.log(`${what}: ${PUSHES} changes, five packs, 1800 s`);
    console.log(
      `  all redrawn: median ${at(times_ms, 0.5)} ms, p95 ${at(times_ms, 0.95)} ms, worst ${at(times_ms, 1)} ms`,
    );
    console.log(`  what is being read redrawn: median ${at(first_ms, 0.5)} ms, p95 ${at(first_ms, 0.95)} ms`);
    console.log(`  figures drawn anew: ${(anew / PUSHES).toFixed(1)} of ${figures}`);
    console.log(`  the page's thread: ${all} ms of processor a change, ${script} of them script`);
    console.log(`  tasks over 50 ms on the page's thread: ${tasks_ms.length}, longest ${Math.max(0, ...tasks_ms)} ms`);
  }
} finally {
  await browser.close();
  server.close();
  rmSync(folder, { recursive: true, force: true });
}

/** Runs in the page: changes the field to and fro, and waits each time until nothing is late. */
async function measure({ pushes, selector }: { pushes: number; selector: string }) {
  const tasks_ms: number[] = [];
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks_ms.push(Math.round(duration));
  }).observe({ entryTypes: ["longtask"] });
  const field = document.querySelector<HTMLInputElement>(selector);
  const section = field?.closest("section");
  if (!field || !section) throw new Error(`no ${selector} on the page`);
  field.scrollIntoView();
  const isBusy = () => document.querySelector("[data-drawing], section[data-late]:not(#whatIsOpen)") !== null;
  const turn = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const drawn = () => [...document.querySelectorAll(".figure-reader > svg")];
  let anew = 0;
  const times_ms: number[] = [];
  const first_ms: number[] = [];
  for (let i = 0; i < pushes; i++) {
    const stood = new Set(drawn());
    const start_ms = performance.now();
    const before = section.querySelector(".finding .body")?.textContent;
    field.value = String(30 + (i % 40));
    field.dispatchEvent(new Event("input", { bubbles: true }));
    let isSeen = false;
    do {
      await turn();
      if (!isSeen && section.querySelector(".finding .body")?.textContent !== before) {
        isSeen = true;
        first_ms.push(performance.now() - start_ms);
      }
    } while (isBusy());
    times_ms.push(performance.now() - start_ms);
    anew += drawn().filter((svg) => !stood.has(svg)).length;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return { times_ms, first_ms, tasks_ms, figures: drawn().length, anew };
}
