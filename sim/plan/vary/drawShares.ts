import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { SOBOL_DIMENSIONS, scrambled, sobolCells } from "../../math/sobol.ts";

/**
 * Shares from 0 to 1 for so many variants of so many inputs, an input after another: each input's shares fall one into each of as many equal
 * pieces as there are variants (a Latin hypercube [McKayBeckmanConover1979]). In which order is that of a scrambled Sobol sequence [JoeKuo2008,
 * Owen1995], an input a dimension of it, so that two inputs and more cover their bands evenly together too; inputs beyond its dimensions are in an order
 * of their own. The same for the same seed, on every machine.
 *
 * The ends of nine tenths of 256 variants err by 2.1 % of that band's width for a sum of six inputs drawn alike, a Latin hypercube in random order by
 * 3.2 %, independent draws by 3.6 % (root mean square of 300 seeds against the closed form); at ten years in winter of the three demos, on their
 * own roads, by 2.0, 1.6 and 0.2 % against 4096 variants, where it was 2.4, 1.6 and 0.3 % in random order and 3.3, 3.9 and 0.4 % independently (ten
 * seeds). Rank correlations err by a fifth of what independent draws do.
 */
export function drawShares(inputs: number, variants: number, seed: number): Float64Array[] {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  return Array.from({ length: inputs }, (_, input) => {
    const pieces = input < SOBOL_DIMENSIONS ? evenOrder(input, variants, uniform) : anyOrder(variants, uniform);
    return Float64Array.from(pieces, (piece) => (piece + uniform()) / variants);
  });
}

/** The pieces of an input in the order of its dimension of a scrambled Sobol sequence. */
function evenOrder(dimension: number, variants: number, uniform: () => number): Uint32Array {
  const bits = Math.max(1, Math.ceil(Math.log2(variants)));
  const cells = scrambled(sobolCells(dimension, bits, variants), bits, uniform);
  // Where there are more cells than variants, those that have one are counted: the order stays, and each variant has a piece.
  const rank = new Uint32Array(2 ** bits);
  for (const cell of cells) rank[cell] = 1;
  let before = 0;
  for (let cell = 0; cell < rank.length; cell++) {
    const has = rank[cell];
    rank[cell] = before;
    before += has;
  }
  return cells.map((cell) => rank[cell]);
}

/** The pieces of an input in an order of its own. */
function anyOrder(variants: number, uniform: () => number): Uint32Array {
  const pieces = Uint32Array.from({ length: variants }, (_, i) => i);
  for (let last = variants - 1; last > 0; last--) {
    const other = Math.floor(uniform() * (last + 1));
    [pieces[last], pieces[other]] = [pieces[other], pieces[last]];
  }
  return pieces;
}
