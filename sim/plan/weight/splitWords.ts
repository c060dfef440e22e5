import type { Weights } from "../../../shared/job/schema/weights.ts";
import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import { greatestWhere } from "../../math/halving.ts";
import { packSplit } from "./packSplit.ts";
import type { Over } from "./weigh.ts";

/** Lighter and heavier than any pack in such a car. */
const LIGHTEST_kg = 1;
const HEAVIEST_kg = 3000;

/** How much of a pack may sit where, in a sentence; nothing with a single box. */
export function splitWords(pack: string, pack_kg: number, weights: Weights): Message | undefined {
  const split = packSplit(weights, pack_kg);
  if (split === undefined) return undefined;
  const { front, rear, low_frac, high_frac, over } = split;
  if (low_frac === undefined || high_frac === undefined) {
    const most_kg = heaviestPack_kg(weights);
    const most = most_kg > 0 ? message` At most ${whole("mass", most_kg)} of pack may sit in the two.` : message``;
    return message`${pack}, fully laden: no split between ${front} and ${rear} meets every plate; at best ${overWords(over)}.${most}`;
  }
  if (low_frac <= 0 && high_frac >= 1)
    return message`${pack}, fully laden: it may sit in ${front} and ${rear} in any parts.`;
  return message`${pack}, fully laden: ${q("fraction", low_frac, 2)} to ${q("fraction", high_frac, 2)} of it may sit in ${front} (${whole("mass", low_frac * pack_kg, "up")} to ${whole("mass", high_frac * pack_kg)}), the rest in ${rear}.`;
}

/** The heaviest pack of which some split between the foremost and the rearmost box meets every plate, in kg; 0 where none does. */
export function heaviestPack_kg(weights: Weights): number {
  const most_kg = greatestWhere(
    LIGHTEST_kg,
    HEAVIEST_kg,
    (pack_kg) => packSplit(weights, pack_kg)?.low_frac !== undefined,
  );
  return most_kg > LIGHTEST_kg ? most_kg : 0;
}

/** What is over, and by how much. */
export function overWords(over: readonly Over[]): Message {
  return over.flatMap(({ what, by_kg }, i) => [
    ...(i === 0 ? [] : [", "]),
    ...message`${what} ${whole("mass", by_kg, "up")} over`,
  ]);
}
