import { expect } from "vitest";

/** Shares of a border by which sizes lie beside it: nothing, a rounding error, and up to three hundredths. */
const BESIDE = [0, 1e-12, 1e-9, 1e-6, 1e-4, 5e-4, 0.001, 0.002, 0.003, 0.004, 0.005, 0.006, 0.008, 0.01, 0.02, 0.03];

/**
 * Claims that a writer of sizes with their unit writes no size in two ways on both sides of its borders, and none smaller than one before it. `sizes` has
 * what each unit is of the smallest.
 */
export function expectWrittenOnce(
  write: (size: number) => string,
  borders: readonly number[],
  sizes: Readonly<Record<string, number>>,
): void {
  const texts = new Map<number, string>();
  let before = Number.NEGATIVE_INFINITY;
  const around = borders.flatMap((border) => BESIDE.flatMap((share) => [border * (1 - share), border * (1 + share)]));
  for (const size of around.sort((a, b) => a - b)) {
    const text = write(size);
    const parts = [...text.matchAll(/([\d.]+)\s?([a-z]+)/gi)];
    expect(parts.length, text).toBeGreaterThan(0);
    const value = parts.reduce((sum, [, number, unit = ""]) => {
      expect(Object.keys(sizes), text).toContain(unit);
      return sum + Number(number) * (sizes[unit] ?? Number.NaN);
    }, 0);
    // Numbers read back differ in their last bits only.
    const key = Number(value.toPrecision(12));
    expect(text, `${size} is as much as ${texts.get(key)}`).toBe(texts.get(key) ?? text);
    expect(key, `${text} after ${before}`).toBeGreaterThanOrEqual(before);
    texts.set(key, text);
    before = key;
  }
}
