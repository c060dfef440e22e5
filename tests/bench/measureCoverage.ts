// How often the bands of a fit hold the truth, over many cars built otherwise than their job: `npx tsx tests/bench/measureCoverage.ts [SEEDS]`.
import { mixedDrive } from "../logs/builtCar.ts";
import { coverageOf, jobWithDatasheet, recover } from "../logs/recoverBuilt.ts";

const seeds = Number(process.argv[2] ?? 200);
const from = Number(process.argv[3] ?? 1);
const trace = mixedDrive();
const job = jobWithDatasheet();
const recoveries = Array.from({ length: seeds }, (_, k) => recover(job, trace, from + k));
console.log(`${seeds} drives of ${Math.round(trace.time_s.length / 60)} min at 1 Hz, bands of 90 %`);
for (const one of coverageOf(recoveries)) {
  const { id, count, held_frac, half, error, bias, ownHeld_frac, ownHalf, ownError } = one;
  console.log(
    `${id.padEnd(12)} fitted ${String(count).padStart(3)}`,
    `  by itself: holds ${(100 * held_frac).toFixed(1)} %  half ${half.toFixed(3)}  rms error ${error.toFixed(3)}  bias ${bias.toFixed(3)}`,
    `  with what looks alike: holds ${(100 * ownHeld_frac).toFixed(1)} %  half ${ownHalf.toFixed(3)}  rms error ${ownError.toFixed(3)}`,
  );
}
const off_s = recoveries.map(({ linedUp, fit }) => [linedUp.offset_s - 7, linedUp.sign, fit.misfit_ratio]);
console.log(
  `clock: worst ${Math.max(...off_s.map(([off]) => Math.abs(off))).toFixed(2)} s off; misfit ${(off_s.reduce((sum, [, , misfit]) => sum + misfit, 0) / seeds).toFixed(2)}`,
);
