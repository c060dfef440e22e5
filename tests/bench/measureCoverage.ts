// How often the bands of a fit hold the truth, over many cars built otherwise than their job, and what is found of the car that is named:
// `npx tsx tests/bench/measureCoverage.ts [SEEDS] [FIRST SEED] [traces|table|receiver]`. Files go through readers and cleaning, which takes some
// two seconds each.
import { mixedDrive } from "../logs/builtCar.ts";
import {
  behind_s,
  coverageOf,
  jobWithDatasheet,
  namedTruth,
  type Recovery,
  recover,
  type Way,
} from "../logs/recoverBuilt.ts";

const [seeds, first] = [Number(process.argv[2] ?? 200), Number(process.argv[3] ?? 1)];
const way = (process.argv[4] ?? "traces") as Way;
const NAMED = 10;
const trace = mixedDrive();
const job = jobWithDatasheet();

const recoveries = Array.from({ length: seeds }, (_, k) => recover(job, trace, first + k, way));
console.log(`${seeds} drives of ${Math.round(trace.time_s.length / 60)} min at 1 Hz by ${way}, bands of 90 %`);
for (const one of coverageOf(recoveries)) {
  const { id, count, held_frac, half, error, bias, ownHeld_frac, ownHalf, ownError, ownBias, widest } = one;
  console.log(
    `${id.padEnd(12)} fitted ${String(count).padStart(3)}`,
    `  by itself: holds ${(100 * held_frac).toFixed(1)} %  half ${half.toFixed(3)}  rms error ${error.toFixed(3)}  bias ${bias.toFixed(3)}`,
    `  with what looks alike: holds ${(100 * ownHeld_frac).toFixed(1)} %  half ${ownHalf.toFixed(3)} (widest ${widest.toFixed(3)})  rms error ${ownError.toFixed(3)}  bias ${ownBias.toFixed(3)}`,
  );
}
console.log(clockWords(recoveries));

console.log(
  `\nThe named car, ${NAMED} drives with noise of their own: rolling +20 %, drag +10 %, +120 W, half the regen, gain 1 %, 7 s`,
);
const named = Array.from({ length: NAMED }, (_, k) => recover(job, trace, first + k, way, namedTruth));
for (const id of ["rolling", "drag", "accessories", "regen"] as const) {
  const all = named.flatMap(({ fit }) => fit.fitted.filter((fitted) => fitted.id === id));
  const mean = (of: (one: (typeof all)[number]) => number) => all.reduce((sum, one) => sum + of(one), 0) / all.length;
  const [value, low, high] = [mean((one) => one.value), mean((one) => one.low), mean((one) => one.high)];
  console.log(
    `${id.padEnd(12)} hidden ${namedTruth[id]}  found ${value.toFixed(3)} (${low.toFixed(3)} to ${high.toFixed(3)} by itself), ${all.length} of ${NAMED} fitted`,
  );
}
console.log(clockWords(named));

function clockWords(of: readonly Recovery[]): string {
  const worst_s = Math.max(...of.map(({ linedUp }) => Math.abs(linedUp.offset_s - behind_s)));
  const wrong = of.filter(({ linedUp, seed }) => linedUp.sign !== (seed % 2 === 0 ? 1 : -1)).length;
  const misfit = of.reduce((sum, { fit }) => sum + fit.misfit_ratio, 0) / of.length;
  return `clock: worst ${worst_s.toFixed(2)} s off; sign wrong ${wrong} times; misfit ${misfit.toFixed(2)}`;
}
