/** How often a road is driven in a day, in words: "about three rounds of it". */
export function inTimes(rounds: number): string {
  const words = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
  const nearest = Math.round(rounds);
  const isWhole = Math.abs(rounds - nearest) < 0.05;
  if (rounds < 0.75) return "less than one round of it";
  if (nearest === 1) return isWhole ? "one round of it" : "about one round of it";
  const count = words[nearest] ?? String(nearest);
  return `${isWhole ? "" : "about "}${count} rounds of it`;
}

/** A slope as a road sign has it: "1 in 9", to a half below 5. `grade_ratio` is rise over run, above 0. */
export function oneIn(grade_ratio: number): string {
  const run = 1 / grade_ratio;
  if (run >= 5) return `1 in ${Math.round(run)}`;
  const halves = Math.round(run * 2) / 2;
  return `1 in ${Number.isInteger(halves) ? halves : `${Math.floor(halves)}½`}`;
}
