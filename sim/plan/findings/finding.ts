import { type Message, type MessageQuantity, quantity as q } from "../../../shared/quantity/message.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { Finding } from "../driveReport.ts";

/** A finding that a person may want to know. */
export function note(kind: string, sentence: Message): Finding {
  return { kind, weight: "note", sentence };
}

/** A finding that a person must know. */
export function warning(kind: string, sentence: Message): Finding {
  return { kind, weight: "warning", sentence };
}

/** A length on the road: less than a kilometre as what is measured with a tape. */
export function roadLength(distance_km: number): MessageQuantity {
  return distance_km < 1 ? q("elevation", distance_km * M_PER_KM) : q("distance", distance_km);
}

/** Parts of a sentence with commas between them. */
export function listed(parts: readonly Message[]): Message {
  return parts.flatMap((part, i) => (i === 0 ? part : [", ", ...part]));
}
