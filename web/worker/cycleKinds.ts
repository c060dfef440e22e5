import type { Routes } from "../../sim/index.ts";

/** What each standard cycle asks for, to compare trips with. */
export type CycleKinds = Parameters<Routes["standardCycleLike"]>[1];

/** Works the standard cycles' characteristics out when they are first asked for, and once. */
export function createCycleKinds(
  cycleText: (cycle: string) => Promise<Record<string, string>>,
): (room: Routes) => Promise<CycleKinds> {
  let kinds: Promise<CycleKinds> | undefined;
  return (room) => {
    kinds ??= Promise.all(
      room.standardCycles.map(async ({ id }) => ({
        id,
        characteristics: room.characteristics(room.cycleTrace(id, await cycleText(id))),
      })),
    );
    return kinds;
  };
}
