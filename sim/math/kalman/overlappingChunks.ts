/** Moments smoothed at once: a long log is smoothed piece by piece, so that memory stays bounded. */
const CHUNK = 16384;

/** Results are wanted from `from` to `to` (not included); to have them, moments `first` to `last` (not included) are smoothed. */
export interface Chunk {
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
}

/** n moments cut into chunks, each smoothed with `overlap` more on either side, after which its ends no longer matter. */
export function overlappingChunks(n: number, overlap: number): readonly Chunk[] {
  const chunks: Chunk[] = [];
  for (let from = 0; from < n; from += CHUNK) {
    const to = Math.min(n, from + CHUNK);
    chunks.push({ from, to, first: Math.max(0, from - overlap), last: Math.min(n, to + overlap) });
  }
  return chunks;
}
