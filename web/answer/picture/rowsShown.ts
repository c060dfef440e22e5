import type { Answer } from "../../../sim/index.ts";

/** Rows that the picture has at most. */
const ROWS = 4;

/**
 * The packs of the picture, by size: the one chosen, the one recommended, those asked for, the next smaller one, which is deliberately too
 * small, the one that is enough with the whole band, the next larger one and the largest, in this order of claim, at most four.
 */
export function rowsShown({ packs, recommended, enough, largest }: Answer, chosen: number | undefined): number[] {
  const bySize = packs.map((_, i) => i).sort((a, b) => packs[a].usable_kWh - packs[b].usable_kWh);
  const usable = bySize.filter((i) => packs[i].stop === undefined);
  const at = recommended === undefined ? -1 : usable.indexOf(recommended);
  const claims = [
    chosen,
    recommended,
    ...usable.filter((i) => packs[i].isAskedFor),
    at > 0 ? usable[at - 1] : undefined,
    largest?.index,
    enough,
    at >= 0 ? usable[at + 1] : undefined,
    ...usable,
    ...bySize,
  ];
  const shown = new Set<number>();
  for (const claim of claims) if (claim !== undefined && claim < packs.length && shown.size < ROWS) shown.add(claim);
  return bySize.filter((i) => shown.has(i));
}
