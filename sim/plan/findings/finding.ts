import { quantity as q, type Said, type SaidQuantity } from "../../../shared/quantity/said.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { Finding } from "../driveReport.ts";

/** A finding that a person may want to know. */
export function note(kind: string, sentence: Said): Finding {
  return { kind, weight: "note", sentence };
}

/** A finding that a person must know. */
export function warning(kind: string, sentence: Said): Finding {
  return { kind, weight: "warning", sentence };
}

/** A length on the road: less than a kilometre as what is measured with a tape. */
export function roadLength(distance_km: number): SaidQuantity {
  return distance_km < 1 ? q("elevation", distance_km * M_PER_KM) : q("distance", distance_km);
}

/** Parts of a sentence with commas between them. */
export function listed(parts: readonly Said[]): Said {
  return parts.flatMap((part, i) => (i === 0 ? part : [", ", ...part]));
}
