import { type Answer, answerFor } from "../../../sim/index.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../support/inventedCandidate.ts";

// 10 km for every kWh today, half of that in winter, a quarter at ten years in winter; a usual day of 10 km.
export function answered(
  sizes: readonly number[],
  share = 0.1,
  changes: Parameters<typeof inventedUse>[0] = {},
): Answer {
  const unknowns = sizes.map((size) => [inventedUnknown(10 * size, 10 * size * share, 10 * size * share)]);
  return answerFor(
    inventedUse(changes),
    sizes.map((size) => inventedCandidate(size)),
    unknowns,
  );
}
