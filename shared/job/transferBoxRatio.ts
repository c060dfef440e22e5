import type { Driveline } from "./schema/driveline.ts";

// Apart from the schema, which the simulation has no use for and its worker no room.

/** What the transfer box gears down by in the range chosen; 1 without one. */
export function transferBox_ratio({ transferBox }: Pick<Driveline, "transferBox">): number {
  if (!transferBox) return 1;
  return transferBox.range === "low" ? transferBox.low_ratio : transferBox.high_ratio;
}
