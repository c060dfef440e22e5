import type { Comparison } from "../../support/comparison.ts";
import { batteryTerminals } from "./batteryTerminals.ts";
import { coastDown } from "./coastDown.ts";
import { cycleEnergy } from "./cycleEnergy.ts";
import { cycleMoments } from "./cycleMoments.ts";
import { measuredCar } from "./measuredCar.ts";
import { motorLosses } from "./motorLosses.ts";
import { practice } from "./practice.ts";
import { roadLoads } from "./roadLoads.ts";
import { standingStarts } from "./standingStarts.ts";

/** Everything held against outside figures, by topic. */
export const topics: Readonly<Record<string, readonly Comparison[]>> = {
  "road load": roadLoads,
  "coast-down": coastDown,
  "standing starts": standingStarts,
  "cycle energy": cycleEnergy,
  "motor losses": motorLosses,
  "cycle moments": cycleMoments,
  "battery terminals": batteryTerminals,
  "a measured car": measuredCar,
  "a workshop's thumb rules": practice,
};
