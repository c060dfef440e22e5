const WEEK_days = 7;
const DAY_ms = 86_400_000;

/**
 * On how many days a week a car is driven, by the dates ("2024-05-01") of its driven days in any order: the middle one of what every seven days
 * in a row hold, from the first date to the last. A week always driven alike counts as it is, wherever the log begins; seven days without
 * driving are a holiday, which the year has beside its weeks. Nothing where the dates span no week.
 */
export function drivenDaysAWeek(dates: readonly string[]): number | undefined {
  const days = new Set(dates.map((date) => Math.round(Date.parse(`${date}T00:00:00Z`) / DAY_ms)));
  const sorted = [...days].sort((a, b) => a - b);
  const counts: number[] = [];
  for (let from = sorted[0]; from + WEEK_days - 1 <= sorted[sorted.length - 1]; from++) {
    let driven = 0;
    for (let day = from; day < from + WEEK_days; day++) driven += days.has(day) ? 1 : 0;
    if (driven > 0) counts.push(driven);
  }
  counts.sort((a, b) => a - b);
  return counts[Math.floor(counts.length / 2)];
}
