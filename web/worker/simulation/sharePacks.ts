import type { Pack } from "../../../shared/job/schema/battery.ts";

/**
 * The packs of a job, by index, in so many parts that take about as long to drive until they are empty: the largest first, each to the part
 * that has least. A pack of twice as many modules goes twice as far.
 */
export function sharePacks(packs: readonly Pack[], parts: number): number[][] {
  const modules = packs.map(({ seriesModules, parallelModules }) => seriesModules * parallelModules);
  const shares = Array.from({ length: parts }, () => ({ indexes: [] as number[], modules: 0 }));
  for (const index of packs.map((_, i) => i).sort((a, b) => modules[b] - modules[a])) {
    const least = shares.reduce((a, b) => (b.modules < a.modules ? b : a));
    least.indexes.push(index);
    least.modules += modules[index];
  }
  return shares.map(({ indexes }) => indexes).filter((indexes) => indexes.length > 0);
}

/** What was found for each part, in the order of the job again. */
export function inOrder<T>(parts: readonly (readonly number[])[], found: readonly (readonly T[])[]): T[] {
  const places = parts.flatMap((indexes, part) => indexes.map((index, k) => ({ index, value: found[part][k] })));
  return places.sort((a, b) => a.index - b.index).map(({ value }) => value);
}
