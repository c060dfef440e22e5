import { J_PER_WH, M_PER_KM } from "../../../shared/units.ts";
import type { PackModel } from "../../battery/packModel.ts";
import { lookUp } from "../../math/uniformTable.ts";
import type { Candidate } from "../driveReport.ts";

/** Energy drawn from the cells for each metre of the road, in joules; nothing for a car that does not move or gains on the way. */
export function perMetre_J({
  ledger_Wh,
  distance_km,
}: Pick<Candidate, "ledger_Wh" | "distance_km">): number | undefined {
  if (distance_km <= 0 || ledger_Wh.total <= 0) return undefined;
  return (ledger_Wh.total * J_PER_WH) / (distance_km * M_PER_KM);
}

/** Pieces that a pack's window is walked through in; the tables behind it have 256 from empty to full. */
const PIECES = 512;

/**
 * State of charge from which `stored_J` of open-circuit energy bring a pack to its ceiling: by trapezoids from there down, straight
 * within the last. The floor where that is more than it holds.
 */
export function chargeBefore_frac(pack: PackModel, stored_J: number): number {
  const { floor_frac, ceiling_frac, capacity_C } = pack;
  const piece_frac = (ceiling_frac - floor_frac) / PIECES;
  let left_J = stored_J;
  let above_V = lookUp(pack.openCircuit_V, ceiling_frac);
  for (let piece = 1; piece <= PIECES; piece++) {
    const below_V = lookUp(pack.openCircuit_V, ceiling_frac - piece * piece_frac);
    const piece_J = 0.5 * (above_V + below_V) * piece_frac * capacity_C;
    if (piece_J >= left_J) return ceiling_frac - (piece - 1 + left_J / piece_J) * piece_frac;
    left_J -= piece_J;
    above_V = below_V;
  }
  return floor_frac;
}
