import type { Module, Pack } from "../../shared/job/schema/battery.ts";
import { asModules } from "./wholePack.ts";

/** Modules of a pack with their boxes, bars and lids, in kilograms: modules x (1 + share for boxes). */
export function packMass_kg(given: Pack, of: Module): number {
  const { pack, module } = asModules(given, of);
  return pack.seriesModules * pack.parallelModules * module.mass_kg * (1 + pack.boxes_frac);
}
