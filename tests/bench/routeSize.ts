// Time and memory against size of a GPX log: node --expose-gc --import tsx tests/bench/routeSize.ts
// Each size runs in a process of its own, so that the peak of its memory is its own.
import { spawnSync } from "node:child_process";
import { cleanLogInSteps } from "../../sim/route/clean/cleanLog.ts";
import type { Steps } from "../../sim/route/log/steps.ts";
import { readLogInSteps } from "../../sim/route/readLog.ts";
import { splitTrips } from "../../sim/route/trips/splitTrips.ts";
import { gpxOfSize } from "../logs/gpxOfSize.ts";

const size = Number(process.argv[2] ?? Number.NaN);
if (Number.isNaN(size)) {
  for (const one of [5, 20, 50]) {
    const run = spawnSync(process.execPath, ["--import", "tsx", import.meta.filename, String(one)], {
      encoding: "utf8",
    });
    process.stdout.write(run.stdout + run.stderr);
  }
} else {
  measure(gpxOfSize(size * 1e6));
}

function measure(bytes: Uint8Array): void {
  const before_MB = process.memoryUsage().rss / 1e6;
  let peak_MB = before_MB;
  let longest_ms = 0;
  const run = <T>(steps: Steps<T>): T => {
    for (;;) {
      const start_ms = performance.now();
      const next = steps.next();
      longest_ms = Math.max(longest_ms, performance.now() - start_ms);
      peak_MB = Math.max(peak_MB, process.memoryUsage().rss / 1e6);
      if (next.done) {
        return next.value;
      }
    }
  };
  const cpu = process.cpuUsage();
  const start_ms = performance.now();
  const log = run(readLogInSteps("made.gpx", bytes));
  const read_ms = performance.now();
  const cleaned = run(cleanLogInSteps(log));
  const clean_ms = performance.now();
  const used = process.cpuUsage(cpu);
  const { trips } = splitTrips(cleaned);
  console.log(
    `${(bytes.length / 1e6).toFixed(0)} MB, ${log.fixes.count} fixes, ${trips.length} trips: read ${((read_ms - start_ms) / 1000).toFixed(1)} s, ` +
      `clean ${((clean_ms - read_ms) / 1000).toFixed(1)} s, processor ${((used.user + used.system) / 1e6).toFixed(1)} s, peak ${peak_MB.toFixed(0)} MB in all ` +
      `(${before_MB.toFixed(0)} MB before, the file included), longest slice ${longest_ms.toFixed(0)} ms`,
  );
}
