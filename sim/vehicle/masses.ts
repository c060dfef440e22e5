import type { Module, Pack } from "../../shared/job/battery.ts";
import type { Vehicle } from "../../shared/job/vehicle.ts";

/** Modules of a pack with their boxes, bars and lids, in kilograms: modules x (1 + share for boxes). */
export function packMass_kg(pack: Pack, module: Module): number {
  return pack.seriesModules * pack.parallelModules * module.mass_kg * (1 + pack.boxes_frac);
}

/** The car as driven without a trailer: as arrived - taken out + put in + pack + load + what is on the roof. */
export function testMass_kg(vehicle: Vehicle, pack_kg: number): number {
  return (
    vehicle.arriving_kg -
    vehicle.removed_kg +
    vehicle.added_kg +
    pack_kg +
    vehicle.load_kg +
    (vehicle.roof?.mass_kg ?? 0)
  );
}
