import type { Comparison } from "../../support/comparison.ts";
import { batteryTerminals } from "./batteryTerminals.ts";
import { coastDown } from "./coastDown.ts";
import { cycleEnergy } from "./cycleEnergy.ts";
import { motorLosses } from "./motorLosses.ts";
import { standingStarts } from "./standingStarts.ts";

/** Everything held against outside figures, by topic. */
export const topics: Readonly<Record<string, readonly Comparison[]>> = {
  "coast-down": coastDown,
  "standing starts": standingStarts,
  "cycle energy": cycleEnergy,
  "motor losses": motorLosses,
  "battery terminals": batteryTerminals,
};
