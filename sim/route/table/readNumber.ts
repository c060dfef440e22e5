export type DecimalSign = "." | ",";

const pointPattern = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i;

/**
 * The number written in a cell, or NaN for "no value": an empty cell, a word, or a number too large to be one.
 * With a decimal comma, a point is taken as a decimal sign too where no comma stands beside it.
 */
export function readNumber(text: string, decimal: DecimalSign): number {
  let plain = text.trim();
  if (decimal === "," && plain.includes(",")) {
    plain = plain.replace(",", ".");
  }
  if (!pointPattern.test(plain)) {
    return Number.NaN;
  }
  const value = Number(plain);
  return Number.isFinite(value) ? value : Number.NaN;
}
