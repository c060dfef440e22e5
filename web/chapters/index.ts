import chargeTimes from "./chargeTimes.ts";
import gearboxTakesIt from "./gearboxTakesIt.ts";
import type { AnyChapter } from "./parts/chapter.ts";
import whatItCosts from "./whatItCosts.ts";
import whereEnergyGoes from "./whereEnergyGoes.ts";
import yourRoad from "./yourRoad.ts";

/** The chapters for the client, in the order they are read. */
export const chapters: readonly AnyChapter[] = [yourRoad, whereEnergyGoes, gearboxTakesIt, chargeTimes, whatItCosts];
