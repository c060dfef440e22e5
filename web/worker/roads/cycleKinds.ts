import type { Routes } from "../../../sim/index.ts";

/** What each standard cycle asks for, to compare trips with. */
export type CycleKinds = Parameters<Routes["standardCycleLike"]>[1];

/** Works the standard cycles' characteristics out when they are first asked for, and once. */
export function createCycleKinds(
  cycleText: (cycle: string) => Promise<Record<string, string>>,
): (routes: Routes) => Promise<CycleKinds> {
  let kinds: Promise<CycleKinds> | undefined;
  return (routes) => {
    kinds ??= Promise.all(
      routes.standardCycles.map(async ({ id }) => ({
        id,
        characteristics: routes.characteristics(routes.cycleTrace(id, await cycleText(id))),
      })),
    );
    return kinds;
  };
}
