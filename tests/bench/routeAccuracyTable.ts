// What comes back from made logs against what was: npx tsx tests/bench/routeAccuracyTable.ts [seeds]
import { recover } from "../logs/routeAccuracy.ts";

const seeds = Number(process.argv[2] ?? 6);
const levels = [
  { name: "open", position_m: 3, elevation_m: 3 },
  { name: "town", position_m: 5, elevation_m: 5 },
  { name: "street", position_m: 8, elevation_m: 10 },
] as const;

const percent = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const rms = Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
  return `${(100 * mean).toFixed(2).padStart(6)} (${(100 * rms).toFixed(2).padStart(5)})`;
};
const mean = (values: readonly number[]) => (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(0);

console.log(`errors in % as mean (root mean square) over ${seeds} logs a line; climb and stops as found/true`);
console.log("speed     noise   every  cycle          distance        energy          climb m   stops");
for (const speed_mps of [0.15, undefined]) {
  for (const sampling_s of [1, 5, 10, 30]) {
    for (const level of levels) {
      for (const cycle of ["udds", "wltc-class-3b"]) {
        const found = Array.from({ length: seeds }, (_, i) =>
          recover(cycle, {
            seed: i + 1,
            sampling_s,
            position_m: level.position_m,
            white_m: 0.5,
            speed_mps,
            elevation_m: level.elevation_m,
            hasMultipath: true,
            hasDropouts: true,
          }),
        );
        const climb = `${mean(found.map(({ climb }) => climb.found_m))}/${mean(found.map(({ climb }) => climb.true_m))}`;
        const stops = `${mean(found.map(({ stops }) => stops.found))}/${mean(found.map(({ stops }) => stops.true))}`;
        console.log(
          [
            (speed_mps === undefined ? "none" : "recorded").padEnd(9),
            level.name.padEnd(7),
            `${sampling_s} s`.padEnd(6),
            cycle.padEnd(14),
            percent(found.map(({ distance_frac }) => distance_frac)),
            " ",
            percent(found.map(({ energy_frac }) => energy_frac)),
            " ",
            climb.padEnd(9),
            stops,
          ].join(" "),
        );
      }
    }
  }
}
