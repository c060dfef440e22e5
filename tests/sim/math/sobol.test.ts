import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { SOBOL_DIMENSIONS, scrambled, sobolCells } from "../../../sim/math/sobol.ts";

const BITS = 10;
/** Bits that repeat, by a congruential generator. */
function bitsOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
/** How many of the points lie in each box of 2^a by 2^b of a square of 2^bits cells a side. */
function inBoxes(x: Uint32Array, y: Uint32Array, bits: number, a: number, b: number): number[] {
  const counts = new Array<number>(2 ** (a + b)).fill(0);
  x.forEach((cell, i) => {
    counts[(cell >>> (bits - a)) * 2 ** b + (y[i] >>> (bits - b))] += 1;
  });
  return counts;
}

describe("the Sobol sequence", () => {
  it("has the points of general mathematics software in all of its dimensions (tests/reference/data/sobol.py)", () => {
    const file = join(import.meta.dirname, "../../reference/data/sobol.json");
    const reference: number[][] = JSON.parse(readFileSync(file, "utf8"));
    expect(SOBOL_DIMENSIONS).toBe(32);
    for (let dimension = 0; dimension < SOBOL_DIMENSIONS; dimension++) {
      const cells = sobolCells(dimension, BITS, 2 ** BITS);
      expect(reference.map((_, bit) => cells[2 ** bit])).toEqual(reference.map((row) => row[dimension]));
    }
  });

  it("is van der Corput's in its first dimension: the bits of the number in reverse", () => {
    expect([...sobolCells(0, 3, 8)]).toEqual([0, 4, 2, 6, 1, 5, 3, 7]);
  });

  it("has one point in every box of as many as there are points, in its first two dimensions, scrambled or not", () => {
    const [x, y] = [0, 1].map((dimension) => sobolCells(dimension, 8, 256));
    for (const isScrambled of [false, true]) {
      const [u, v] = isScrambled ? [scrambled(x, 8, bitsOf(1)), scrambled(y, 8, bitsOf(2))] : [x, y];
      for (let a = 0; a <= 8; a++) expect(new Set(inBoxes(u, v, 8, a, 8 - a))).toEqual(new Set([1]));
    }
  });
});

describe("a scrambled one", () => {
  it("has as many points in each half, quarter and cell as before, in another order", () => {
    const cells = sobolCells(4, 8, 256);
    const other = scrambled(cells, 8, bitsOf(7));
    expect([...other].sort((a, b) => a - b)).toEqual(Array.from({ length: 256 }, (_, i) => i));
    expect([...other]).not.toEqual([...cells]);
  });

  it("keeps together what was in one half: all of it goes to the same one", () => {
    for (const seed of [1, 2, 3]) {
      const halves = scrambled(Uint32Array.of(0, 1, 2, 3, 4, 5, 6, 7), 3, bitsOf(seed)).map((cell) => cell >>> 2);
      expect(new Set(halves.slice(0, 4)).size).toBe(1);
      expect(halves[0]).not.toBe(halves[4]);
    }
  });

  it("stays where nothing is swapped, and is turned round where everything is", () => {
    const cells = Uint32Array.of(0, 1, 2, 3);
    expect([...scrambled(cells, 2, () => 0.9)]).toEqual([0, 1, 2, 3]);
    expect([...scrambled(cells, 2, () => 0.1)]).toEqual([3, 2, 1, 0]);
  });
});
