/** Draws that come out the same for the same seed, of a 32-bit counter mixed by multiplication and shifts. */
export interface Draws {
  between(least: number, most: number): number;
  /** Of a normal distribution, by Box and Muller's pair. */
  normal(): number;
}

export function drawsOf(seed: number): Draws {
  let count = seed * 2_654_435_761;
  const uniform = () => {
    count = (count + 0x9e3779b9) | 0;
    let mixed = Math.imul(count ^ (count >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  return {
    between: (least, most) => least + (most - least) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}
