// Time and memory against size of a GPX log: node --expose-gc --import tsx tests/bench/routeSize.ts
// Each size runs in a process of its own, so that the peak of its memory is its own.
import { spawnSync } from "node:child_process";
import { cleanLogInSteps } from "../../sim/route/cleanLog.ts";
import { readLogInSteps } from "../../sim/route/readLog.ts";
import { splitTrips } from "../../sim/route/splitTrips.ts";
import type { Steps } from "../../sim/route/steps.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { type LogRow, makeLog, makeTruth, withParking } from "../support/logMaker.ts";

const size = Number(process.argv[2] ?? Number.NaN);
if (Number.isNaN(size)) {
  for (const one of [5, 20, 50]) {
    const run = spawnSync(process.execPath, ["--import", "tsx", import.meta.filename, String(one)], {
      encoding: "utf8",
    });
    process.stdout.write(run.stdout + run.stderr);
  }
} else {
  measure(gpxOf(size * 1e6));
}

/** A drive of a standard cycle, half an hour's pause after it, over and over until the file has its size. */
function gpxOf(bytes: number): Uint8Array {
  const truth = makeTruth(
    withParking(cycleSpeeds_mps("wltc-class-3b"), 300),
    1,
    (distance_m) => 100 + distance_m / 100,
  );
  const file = Buffer.alloc(bytes + 4096);
  let at = file.write('<?xml version="1.0"?>\n<gpx version="1.1" creator="invented"><trk><trkseg>\n');
  let start_s = 1714723200;
  for (let drive = 0; at < bytes; drive++) {
    const rows = makeLog(
      truth,
      {
        seed: drive,
        sampling_s: 1,
        position_m: 3,
        white_m: 0.5,
        speed_mps: 0.15,
        height_m: 3,
        hasMultipath: true,
        hasDropouts: true,
      },
      start_s,
    );
    for (const row of rows) {
      if (at >= bytes) {
        break;
      }
      at += file.write(pointOf(row), at);
    }
    start_s += 3900;
  }
  at += file.write("</trkseg></trk></gpx>\n", at);
  return new Uint8Array(file.buffer, file.byteOffset, at);
}

function pointOf(row: LogRow): string {
  const time = new Date(row.time_s * 1000).toISOString();
  return `<trkpt lat="${row.lat_deg.toFixed(6)}" lon="${row.lon_deg.toFixed(6)}"><ele>${row.height_m.toFixed(1)}</ele><time>${time}</time><speed>${row.speed_mps.toFixed(2)}</speed></trkpt>\n`;
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
