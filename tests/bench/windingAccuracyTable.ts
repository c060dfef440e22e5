// What comes back of logs of the second maker against what was: npx tsx tests/bench/windingAccuracyTable.ts [seeds]
import { type Recovered, recoverWinding } from "../logs/recoverWinding.ts";

const seeds = Number(process.argv[2] ?? 20);

const percent = (values: readonly number[]) => {
  const sorted = values.map(Math.abs).sort((a, b) => a - b);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const at = (share: number) => 100 * (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0);
  return `${(100 * mean).toFixed(2).padStart(6)} ${at(0.9).toFixed(2).padStart(6)} ${at(1).toFixed(2).padStart(6)}`;
};
const within = (values: readonly number[], bound: number) =>
  `${values.filter((value) => Math.abs(value) <= bound).length}/${values.length}`.padStart(6);
const mean = (found: readonly Recovered[], pick: (each: Recovered) => number) =>
  (found.reduce((sum, each) => sum + pick(each), 0) / found.length).toFixed(0);

console.log(
  `errors in %: mean, what nine in ten stay below, worst; logs within 1 % (distance) and 3 % (energy) of ${seeds}`,
);
console.log(
  "speed     noise  road    distance                    energy, level               energy with hills           climb    stops",
);
for (const speed_mps of [0.15, undefined]) {
  for (const position_m of [3, 8]) {
    for (const country of ["town", "hills"] as const) {
      const elevation_m = position_m === 3 ? 3 : 10;
      const found = Array.from({ length: seeds }, (_, i) =>
        recoverWinding(country, { seed: i + 1, position_m, speed_mps, elevation_m }),
      );
      const [far, level, hilly] = (["distance_frac", "level_frac", "hilly_frac"] as const).map((key) =>
        found.map((each) => each[key]),
      ) as [number[], number[], number[]];
      console.log(
        [
          (speed_mps === undefined ? "none" : "recorded").padEnd(9),
          `${position_m} m`.padEnd(6),
          country.padEnd(6),
          `${percent(far)} ${within(far, 0.01)}`,
          ` ${percent(level)} ${within(level, 0.03)}`,
          ` ${percent(hilly)} ${within(hilly, 0.03)}`,
          ` ${mean(found, ({ climb }) => climb.found_m)}/${mean(found, ({ climb }) => climb.true_m)}`.padEnd(9),
          ` ${mean(found, ({ stops }) => stops.found)}/${mean(found, ({ stops }) => stops.true)}`,
        ].join(" "),
      );
    }
  }
}
