import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/**
 * Shares from 0 to 1 for so many variants of so many inputs, an input after another: each input's shares fall one into each of as many equal
 * pieces as there are variants, in an order of its own (a Latin hypercube), so that a few hundred variants cover every band evenly. The same
 * for the same seed, on every machine.                                                              [McKayBeckmanConover1979]
 */
export function drawShares(inputs: number, variants: number, seed: number): Float64Array[] {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  return Array.from({ length: inputs }, () => {
    const shares = Float64Array.from({ length: variants }, (_, i) => (i + uniform()) / variants);
    for (let last = variants - 1; last > 0; last--) {
      const other = Math.floor(uniform() * (last + 1));
      [shares[last], shares[other]] = [shares[other], shares[last]];
    }
    return shares;
  });
}
