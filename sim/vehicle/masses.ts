import type { Vehicle } from "../../shared/job/schema/vehicle.ts";

/**
 * The car as driven without a trailer: as arrived - taken out + put in (or as weighed when converted) + pack + load + what is
 * on the roof.
 */
export function testMass_kg(vehicle: Vehicle, pack_kg: number): number {
  const bare_kg = vehicle.converted_kg ?? vehicle.kerb_kg - vehicle.removed_kg + vehicle.added_kg;
  return bare_kg + pack_kg + vehicle.load_kg + (vehicle.roof?.mass_kg ?? 0);
}
