import type { Spread } from "../../../shared/spread.ts";
import { spreadOver } from "./draws/bands.ts";
import type { CleanedLog } from "./report/cleanedLog.ts";

/** How far the log leaves the trips given, by their first and last row of the series, open, taken together as one road; undefined where nothing was drawn of them. */
export function spreadOfTrips(
  { pieces, unmodelled }: Pick<CleanedLog, "pieces" | "unmodelled">,
  trips: readonly { readonly fromRow: number; readonly toRow: number }[],
): Spread | undefined {
  const isOfTrip = (from: number, to: number) => trips.some(({ fromRow, toRow }) => from < toRow && to > fromRow);
  return spreadOver(
    pieces.filter(({ from, to }) => isOfTrip(from, to)),
    unmodelled,
  );
}
