/** From here on the numbers of a scale are in thousands: longer ones have no room beside it. */
const LONG = 100_000;

/** What one on the scale of an axis of money stands for, and the label of that axis, for amounts up to `most`. */
export function moneyAxis(what: string, currency: string, most: number): { scale: number; label: string } {
  const scale = most >= LONG ? 1000 : 1;
  const label = `${what}${scale === 1 ? "" : ", thousands"}${currency === "" ? "" : ` (${currency})`}`;
  return { scale, label };
}
