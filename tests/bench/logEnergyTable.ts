// What cleaning keeps of a drive's energy, over three makers of logs: npx tsx tests/bench/logEnergyTable.ts [seeds] [intervals] [none|recorded|both] [first seed]
import { logCases, type Recovered, recovered } from "../logs/logCases.ts";

const seeds = Number(process.argv[2] ?? 3);
const intervals = (process.argv[3] ?? "1,5,10,30").split(",").map(Number);
const which = process.argv[4] ?? "both";
const columns = which === "both" ? [true, false] : [which === "recorded"];
const first = Number(process.argv[5] ?? 1);

const percent = (value: number) => (100 * value).toFixed(1).padStart(6);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const meanAbs = (values: readonly number[]) => mean(values.map(Math.abs));

function line(name: string, found: readonly Recovered[]): string {
  const energy = found.map(({ energy_frac }) => energy_frac);
  const level = found.map(({ level_frac }) => level_frac);
  const distance = found.map(({ distance_frac }) => distance_frac);
  const width = found.map(({ log }) => (log.spread ? log.spread.energy_ratio.high - log.spread.energy_ratio.low : 0));
  const share = (isHeld: (one: Recovered) => boolean) =>
    `in band ${percent(found.filter(isHeld).length / found.length).slice(0, 4)}`;
  const farWidth = found.map(({ log }) =>
    log.spread ? log.spread.distance_ratio.high - log.spread.distance_ratio.low : 0,
  );
  const stops = mean(found.map((each) => each.stops));
  const trueStops = mean(found.map((each) => each.trueStops));
  return [
    name.padEnd(26),
    `energy ${percent(meanAbs(energy))} mean ${percent(mean(energy))}`,
    `level ${percent(meanAbs(level))} mean ${percent(mean(level))}`,
    `${share(({ isInBand }) => isInBand)} +-${percent(mean(width) / 2)}`,
    `distance ${percent(meanAbs(distance))} mean ${percent(mean(distance))} ${share(({ isDistanceInBand }) => isDistanceInBand)} +-${percent(mean(farWidth) / 2)}`,
    `climb ${percent(mean(found.map(({ climb_frac }) => climb_frac)))}`,
    `stops ${stops.toFixed(1)}/${trueStops.toFixed(1)} ${share(({ areStopsInBand }) => areStopsInBand)}`,
  ].join("  ");
}

console.log(
  `errors in %, mean absolute and mean, over ${seeds} logs of each kind from seed ${first} on; energy at the wheel with heights`,
);
for (const hasSpeed of columns) {
  for (const sampling_s of intervals) {
    const byName = new Map<string, Recovered[]>();
    for (let seed = first; seed < first + seeds; seed++) {
      for (const one of logCases(seed, sampling_s, hasSpeed)) {
        byName.set(one.name, [...(byName.get(one.name) ?? []), recovered(one)]);
      }
    }
    console.log(`\n${hasSpeed ? "recorded speeds" : "positions alone"}, every ${sampling_s} s`);
    for (const [name, found] of byName) console.log(line(name, found));
    console.log(line("all", [...byName.values()].flat()));
  }
}
