/** The middle one of days by their length, in km; of two middle ones the longer, as the usual day of a log is chosen. */
export function middleDay_km(days_km: readonly number[]): number {
  const sorted_km = [...days_km].sort((a, b) => a - b);
  return sorted_km[Math.floor(sorted_km.length / 2)];
}

/**
 * Of days sorted by their length the one below which a share of them lies, from 0 to 1, in km: always one of the list. On straight lines
 * between them a client who drives 30 or 90 would have days of 60, which no log showed.
 */
export function dayAtShare_km(sorted_km: readonly number[], share: number): number {
  return sorted_km[Math.min(sorted_km.length - 1, Math.floor(share * sorted_km.length))];
}
