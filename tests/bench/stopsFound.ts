// The share of a cycle's stops that the drives drawn of a log of it have: npx tsx tests/bench/stopsFound.ts [logs of each]
import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { makeLog, makeTruth } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { stopsOf } from "../logs/stopsOf.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";

const logs = Number(process.argv[2] ?? 5);
/** How often each is driven in a row: a log of a few minutes shows little of its driver. */
const cycles = { udds: 1, nycc: 3, hwfet: 2, us06: 3, "wltc-class-3b": 1 };
const pooled = ["udds", "us06", "wltc-class-3b"];

for (const sampling_s of [10, 30]) {
  const sums = { found: 0, stops: 0 };
  for (const speed_mps of [0.15, undefined]) {
    for (const [cycle, times] of Object.entries(cycles)) {
      const one_mps = cycleSpeeds_mps(cycle);
      const speeds_mps = Array.from({ length: times }, () => one_mps).flat();
      let [found, stops] = [0, 0];
      for (let seed = 1; seed <= logs; seed++) {
        const truth = makeTruth(speeds_mps, 2000 + seed);
        const spoiling = { seed: 40 + seed, sampling_s, position_m: 5, white_m: 0.5, speed_mps };
        const rows = makeLog(truth, { ...spoiling, hasMultipath: true, hasDropouts: true });
        const { pieces } = cleanLog(readLog("made.gpx", writeGpx(rows)));
        const goes = pieces.reduce((sum, piece) => sum + piece.goes.reduce((a, b) => a + b, 0) / piece.goes.length, 0);
        found += Math.max(0, goes - 1) / (logs * times);
        stops += stopsOf(truth.speed_mps) / (logs * times);
      }
      const how = speed_mps === undefined ? "positions" : "speeds";
      console.log(
        `${cycle.padEnd(14)} ${how.padEnd(10)} every ${sampling_s} s: ${found.toFixed(1)} of ${stops.toFixed(1)}`,
      );
      if (!pooled.includes(cycle)) continue;
      sums.found += found;
      sums.stops += stops;
    }
  }
  console.log(`every ${sampling_s} s ${((100 * sums.found) / sums.stops).toFixed(0)} % are found`);
}
