import type { Module } from "../../shared/job/schema/battery.ts";

/**
 * Capacity of each module in a pack of so many, in Ah: that of the weakest used where each was tested and the best were taken, else the
 * module's own. Strings side by side are taken to share the current evenly (assumed: alike in resistance), so that a pack is empty as soon
 * as its weakest module is, whichever string that is in. Where fewer were tested than are used, the weakest of all.
 */
export function weakest_Ah(module: Pick<Module, "capacity_Ah" | "tested">, modules: number): number {
  const { capacity_Ah, tested } = module;
  if (tested === undefined) return capacity_Ah;
  const best = tested.map((each) => each.capacity_Ah).sort((a, b) => b - a);
  return best[Math.min(modules, best.length) - 1];
}
