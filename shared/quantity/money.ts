const NO_BREAK = "\u00a0";
/** Between thousands, as figures have it. */
const THIN = "\u202f";
/** Most that an amount is rounded to: 12 345 is 12 300. */
const DIGITS = 3;

/** The ends of an amount. */
interface Ends {
  readonly low: number;
  readonly high: number;
}

/**
 * An amount of money for people, to so many significant figures at most and never finer than a hundredth. The currency is the user's own
 * text: a sign such as £ goes before, any other behind. Thousands stand apart by a space from five digits on, since a comma is a
 * decimal comma to half of the readers. Not a number is written `-`.
 */
export function writeMoney(amount: number, currency: string, digits = DIGITS): string {
  if (!Number.isFinite(amount)) return "-";
  return withCurrency(inSteps(amount, stepOf(amount, digits)), currency);
}

/** From one amount to another, both as fine as the larger one, the currency once; one amount where both are written alike. */
export function moneyBetween({ low, high }: Ends, currency: string, digits = DIGITS): string {
  if (!Number.isFinite(low) || !Number.isFinite(high)) return "-";
  const step = stepOf(Math.max(Math.abs(low), Math.abs(high)), digits);
  const [from, to] = [inSteps(low, step), inSteps(high, step)];
  return withCurrency(from === to ? from : `${from} to ${to}`, currency);
}

/** The ends as `moneyBetween` writes them. */
export function roundedEnds({ low, high }: Ends, digits = DIGITS): Ends {
  const step = stepOf(Math.max(Math.abs(low), Math.abs(high)), digits);
  const rounded = (amount: number) => Math.round(amount / step) * step + 0;
  return { low: rounded(low), high: rounded(high) };
}

/** What the last figure of an amount stands for. */
function stepOf(amount: number, digits: number): number {
  const size = Math.abs(amount);
  return size === 0 ? 1 : Math.max(0.01, 10 ** (Math.floor(Math.log10(size)) + 1 - digits));
}

function inSteps(amount: number, step: number): string {
  const count = Math.round(amount / step);
  // A whole number where it is one: 12, and 12.5 or 1.25 where it is not.
  const amountInSteps = count * step + 0;
  const isWhole = Math.abs(amountInSteps - Math.round(amountInSteps)) < step / 2;
  const [whole = "", part] = amountInSteps.toFixed(isWhole ? 0 : Math.round(-Math.log10(step))).split(".");
  const apart = whole.replace("-", "").length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return part === undefined ? apart : `${apart}.${part}`;
}

function withCurrency(amount: string, currency: string): string {
  if (currency === "") return amount;
  if (!/^\p{Sc}$/u.test(currency)) return `${amount}${NO_BREAK}${currency}`;
  return amount.startsWith("-") ? `-${currency}${amount.slice(1)}` : `${currency}${amount}`;
}
