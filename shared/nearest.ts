const leastBeginning = 3; // letters; shorter ones begin too many words

/**
 * What a mistyped `word` most likely means: the first of `known` that begins with it (`wltc-class-3` lies as near to class 1 as to
 * class 3b), else the nearest by edit distance, or nothing where all are far off.
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const begun = known.find((candidate) => candidate.toLowerCase().startsWith(word.toLowerCase()));
  if (begun !== undefined && word.length >= leastBeginning) return begun;
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.floor(word.length / 2)) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Levenshtein's count of single-letter changes between two words. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
