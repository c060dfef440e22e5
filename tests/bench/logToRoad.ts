/**
 * What a large log does to the page's thread: a GPX of a given size is brought, looked at as one piece, and made a road of
 * the job, in the built notebook and a real browser. Prints, for each step, how long it takes and the tasks over 50 ms on
 * the page's thread; numbers for the change's text, never a gate. `npx tsx tests/bench/logToRoad.ts [MB] [--profile]`;
 * with --profile also where the page's thread spent its time.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type CDPSession, chromium, type Page } from "playwright-core";
import { build } from "vite";
import { listen } from "../../sim/cli/serving/listen.ts";
import { staticServer } from "../../sim/cli/serving/staticServer.ts";
import { gpxOfSize } from "../logs/gpxOfSize.ts";
import { chromiumFlags, chromiumPath } from "../support/chromium.ts";

const size_MB = Number(process.argv[2] ?? 50);
const isProfiled = process.argv.includes("--profile");

process.env["NODE_ENV"] = "production";
const folder = mkdtempSync(join(tmpdir(), "bellhousing-staging-"));
const log = join(folder, "week.gpx");
await build({
  mode: "production",
  logLevel: "error",
  build: { outDir: join(folder, "page"), emptyOutDir: true, minify: !isProfiled },
});
writeFileSync(log, gpxOfSize(size_MB * 1e6));
const server = staticServer(join(folder, "page"));
const port = await listen(server, 0);
const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...chromiumFlags] });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  page.on("pageerror", (error) => console.log(`page error: ${error.message}`));
  await page.goto(`http://127.0.0.1:${port}/`);
  await page.locator("#view-road").waitFor();
  await page.waitForTimeout(3000);
  // tsx marks the names of inner functions by a call that the page does not know.
  await page.evaluate("globalThis.__name = (named) => named");
  await page.evaluate(watchTasks);
  const session = await page.context().newCDPSession(page);

  await step(page, session, `bring ${size_MB} MB`, async () => {
    await page.setInputFiles("#road-log", log);
    await page.waitForSelector("#theRoad .offer", { timeout: 120_000 });
    await page.waitForSelector("#theRoad .log-work", { state: "detached", timeout: 120_000 });
  });
  await step(page, session, "show the whole", () => page.selectOption("#log-piece", "whole").then(() => {}));
  await step(page, session, "leave a repair out", async () => {
    await page.locator("#log-repair-heightNoise").uncheck();
    await page.waitForSelector("#theRoad .log-work", { state: "detached", timeout: 120_000 });
  });
  await step(page, session, "make it a road", async () => {
    await page.locator("#theRoad button", { hasText: "Make it a road of this job" }).click();
    const isDriven = () => document.querySelector("#theRoad .sentence")?.textContent?.includes("Client's own");
    await page.waitForFunction(isDriven, undefined, { timeout: 60_000 }).catch(async () => {
      throw new Error(`no road: ${await page.locator("#theRoad [role=status]").allTextContents()}`);
    });
  });
  await step(page, session, "push the slider once", () =>
    page.evaluate(() => {
      const slider = document.querySelector<HTMLInputElement>("#slider-day");
      if (!slider) throw new Error("no slider on the page");
      slider.value = "44";
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    }),
  );
  await step(page, session, "change the charger", async () => {
    await page.locator("#field-charger\\.efficiency_frac").fill("88 %");
    await page.keyboard.press("Tab");
  });
  await step(page, session, "take it back", async () => {
    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(100);
    await page.keyboard.press("Control+z");
  });
} finally {
  await browser.close();
  server.close();
  rmSync(folder, { recursive: true, force: true });
}

interface Task {
  readonly at_ms: number;
  readonly long_ms: number;
}

/** Runs one step until nothing is late for half a second, and prints what it did to the page's thread. */
async function step(page: Page, session: CDPSession, name: string, work: () => Promise<void>): Promise<void> {
  if (isProfiled) {
    await session.send("Profiler.enable");
    await session.send("Profiler.setSamplingInterval", { interval: 500 });
    await session.send("Profiler.start");
  }
  await page.evaluate(() => {
    (globalThis as unknown as { tasks: Task[] }).tasks = [];
  });
  const start_ms = performance.now();
  await work();
  let quietSince_ms = performance.now();
  let done_ms = quietSince_ms;
  while (performance.now() - quietSince_ms < 1000) {
    await page.waitForTimeout(50);
    const isBusy = await page.evaluate(
      () => document.querySelector("[data-drawing], section[data-late], .log-work") !== null,
    );
    if (isBusy) {
      quietSince_ms = performance.now();
      done_ms = quietSince_ms;
    }
  }
  const tasks = await page.evaluate(() => (globalThis as unknown as { tasks: Task[] }).tasks);
  const longest = tasks.toSorted((a, b) => b.long_ms - a.long_ms).slice(0, 6);
  console.log(
    `${name}: ${((done_ms - start_ms) / 1000).toFixed(1)} s; ${tasks.length} tasks over 50 ms` +
      (tasks.length > 0 ? `, longest ${longest.map(({ long_ms }) => long_ms.toFixed(0)).join(", ")} ms` : ""),
  );
  if (!isProfiled) return;
  const { profile } = await session.send("Profiler.stop");
  printProfile(profile);
}

/** Runs in the page: notes tasks over 50 ms. */
function watchTasks(): void {
  const place = globalThis as unknown as { tasks: Task[] };
  place.tasks = [];
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) place.tasks.push({ at_ms: startTime, long_ms: duration });
  }).observe({ entryTypes: ["longtask"] });
}

type Profile = Awaited<ReturnType<typeof profileOf>>["profile"];
declare function profileOf(): ReturnType<CDPSession["send"]> extends never
  ? never
  : Promise<{
      profile: {
        nodes: {
          id: number;
          callFrame: { functionName: string; lineNumber: number; url: string };
          children?: number[];
        }[];
        samples?: number[];
        timeDeltas?: number[];
      };
    }>;

/** Time by function with all it calls, and alone, most first. */
function printProfile({ nodes, samples = [], timeDeltas = [] }: Profile): void {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const parents = new Map<number, number>();
  for (const { id, children = [] } of nodes) for (const child of children) parents.set(child, id);
  const alone = new Map<string, number>();
  const withAll = new Map<string, number>();
  const nameOf = (id: number) => {
    const frame = byId.get(id)?.callFrame;
    return `${frame?.functionName || "(nameless)"} ${frame?.url.split("/").at(-1) ?? ""}:${frame?.lineNumber ?? ""}`;
  };
  samples.forEach((id, i) => {
    const long_ms = (timeDeltas[i] ?? 0) / 1000;
    alone.set(nameOf(id), (alone.get(nameOf(id)) ?? 0) + long_ms);
    const seen = new Set<string>();
    for (let at: number | undefined = id; at !== undefined; at = parents.get(at)) seen.add(nameOf(at));
    for (const name of seen) withAll.set(name, (withAll.get(name) ?? 0) + long_ms);
  });
  for (const [title, times] of [
    ["with all it calls", withAll],
    ["alone", alone],
  ] as const) {
    console.log(`  ${title}:`);
    const most = [...times].filter(([name]) => !/idle|root/.test(name)).sort(([, a], [, b]) => b - a);
    for (const [name, long_ms] of most.slice(0, 25)) console.log(`    ${long_ms.toFixed(0).padStart(6)} ms  ${name}`);
  }
}
