// What cleaning a long log costs: npx tsx tests/bench/longLog.ts [hours]. Prints processor time, the largest memory held, and what came out.
import { resourceUsage } from "node:process";
import { cleanLog } from "../../sim/route/clean/cleanLog.ts";
import { readLog } from "../../sim/route/readLog.ts";
import { amongHouses, makeLog, makeTruth } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";

const S_PER_H = 3600;
const hours = Number(process.argv[2] ?? 10);
const cycle = cycleSpeeds_mps("wltc-class-3b");
const speeds = Array.from({ length: hours * S_PER_H }, (_, i) => cycle[i % cycle.length]);
const truth = makeTruth(speeds, 1, (along_m) => 100 + 30 * Math.sin(along_m / 900));
const bytes = writeGpx(makeLog(truth, { ...amongHouses, seed: 1 }));

const seconds = (from: NodeJS.CpuUsage) => {
  const { user, system } = process.cpuUsage(from);
  return ((user + system) / 1e6).toFixed(1);
};
const before_MB = resourceUsage().maxRSS / 1024;
const start = process.cpuUsage();
const file = readLog("long.gpx", bytes);
const read = seconds(start);
const cleaning = process.cpuUsage();
const log = cleanLog(file);
const cleaned = seconds(cleaning);
const after_MB = resourceUsage().maxRSS / 1024;
const far = log.series.distance_m[log.series.count - 1] / truth.distance_m[truth.distance_m.length - 1] - 1;
console.log(
  `${hours} h at 1 Hz, ${(bytes.length / 1e6).toFixed(1)} MB: read in ${read} s, cleaned in ${cleaned} s of processor time`,
);
console.log(
  `memory at most ${after_MB.toFixed(0)} MB, ${before_MB.toFixed(0)} MB before; distance off by ${(100 * far).toFixed(2)} %`,
);
