import type { Weights } from "./schema/weights.ts";

/** Loads of the two axles as weighed, in kilograms. */
export function weighedAxles({ weighed }: Weights): { readonly front_kg: number; readonly rear_kg: number } {
  if ("front_kg" in weighed) return weighed;
  return {
    front_kg: weighed.frontLeft_kg + weighed.frontRight_kg,
    rear_kg: weighed.rearLeft_kg + weighed.rearRight_kg,
  };
}
