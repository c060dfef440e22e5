import { sobolDirections } from "./sobolDirections.ts";

/** Dimensions that have direction numbers. */
export const SOBOL_DIMENSIONS = sobolDirections.length + 1;

/**
 * One coordinate of the first points of the Sobol sequence, the first dimension being 0, as the cell of 2^bits equal ones of the span from 0 to 1 in
 * which it lies. As many points as there are cells have one in each, and so do any two, four, eight … of them in halves, quarters, eighths;
 * points of several dimensions fill boxes in the same way. `bits` is at most 31, and no more points than cells are asked for.
 *                                                                              [JoeKuo2008, eqs 2-4; points in plain, not in Gray-code order]
 */
export function sobolCells(dimension: number, bits: number, count: number): Uint32Array {
  const direction = directionsOf(dimension, bits);
  const cells = new Uint32Array(count);
  for (let point = 1; point < count; point++) {
    // What the point without its lowest one is, and that bit's direction.
    const lowest = 31 - Math.clz32(point & -point);
    cells[point] = cells[point & (point - 1)] ^ direction[lowest];
  }
  return cells;
}

/** Direction numbers of a dimension, the largest first, as cells. */
function directionsOf(dimension: number, bits: number): Uint32Array {
  const direction = new Uint32Array(bits);
  if (dimension === 0) return direction.map((_, i) => 2 ** (bits - 1 - i));
  const [degree, inner, ...first] = sobolDirections[dimension - 1];
  for (let i = 0; i < bits; i++) {
    if (i < degree) {
      direction[i] = Math.floor(first[i] * 2 ** (bits - 1 - i));
      continue;
    }
    direction[i] = direction[i - degree] ^ (direction[i - degree] >>> degree);
    for (let k = 1; k < degree; k++) if ((inner >>> (degree - 1 - k)) & 1) direction[i] ^= direction[i - k];
  }
  return direction;
}

/**
 * The same cells scrambled: each half of the span, each half of a half and so on changes places with its other half or not, by a bit drawn from
 * `uniform`. What fills boxes evenly still does, and every single point is evenly distributed.                       [Owen1995, sec. 3]
 */
export function scrambled(cells: Uint32Array, bits: number, uniform: () => number): Uint32Array {
  const isSwapped = Uint8Array.from({ length: 2 ** bits }, () => (uniform() < 0.5 ? 1 : 0));
  return cells.map((cell) => {
    let out = 0;
    for (let bit = bits - 1, node = 1; bit >= 0; bit--) {
      const half = (cell >>> bit) & 1;
      out = 2 * out + (half ^ isSwapped[node]);
      node = 2 * node + half;
    }
    return out;
  });
}
