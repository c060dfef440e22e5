/** A distance for a sentence, to three figures: `410 m`, `12.3 km`, `5280 km`; never with a power of ten. */
export function writeFar(distance_m: number): string {
  const rounded = (value: number) => Number(value.toPrecision(3));
  return distance_m >= 10_000 ? `${rounded(distance_m / 1000)} km` : `${rounded(distance_m)} m`;
}
