const pattern = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;

/**
 * The number that a text of a file or a command line is, digits with a decimal point and perhaps an exponent, and nothing
 * else; NaN for anything else and for a number too large to be one. The work grows with the text's length, not its square.
 */
export function plainNumber(text: string): number {
  const value = pattern.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}
