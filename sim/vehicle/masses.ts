import type { Vehicle } from "../../shared/job/schema/vehicle.ts";
import { MM_PER_M } from "../../shared/units.ts";

/**
 * The car as driven without a trailer: as arrived - taken out + put in (or as weighed when converted) + pack + load + what is
 * on the roof.
 */
export function testMass_kg(vehicle: Vehicle, pack_kg: number): number {
  const bare_kg = vehicle.converted_kg ?? vehicle.kerb_kg - vehicle.removed_kg + vehicle.added_kg;
  return bare_kg + pack_kg + vehicle.load_kg + (vehicle.roof?.mass_kg ?? 0);
}

/**
 * What resists a change of speed at the tyres, in kg, of everything that is moved: mass with the wheels, J / r² of them, or mass times
 * one factor. The motor's rotor, or an engine's flywheel, comes on top.
 */
export function inertia_kg({ inertia, tyres }: Vehicle, moved_kg: number): number {
  const radius_m = tyres.loadedRadius_mm / MM_PER_M;
  return inertia.kind === "parts"
    ? moved_kg + tyres.wheelsInertia_kgm2 / (radius_m * radius_m)
    : moved_kg * inertia.mass_ratio;
}
