import type { Spread } from "../../trace/spread.ts";
import { spreadOver } from "../clean/draws/bands.ts";
import type { CleanedLog } from "../clean/report/cleanedLog.ts";
import type { Trip } from "./splitTrips.ts";

/** How far the log leaves the trips given open, taken together as one road; undefined where nothing was drawn of them. */
export function spreadOfTrips(
  { pieces, unmodelled_frac }: Pick<CleanedLog, "pieces" | "unmodelled_frac">,
  trips: readonly Pick<Trip, "fromRow" | "toRow">[],
): Spread | undefined {
  const isOfTrip = (from: number, to: number) => trips.some(({ fromRow, toRow }) => from < toRow && to > fromRow);
  return spreadOver(
    pieces.filter(({ from, to }) => isOfTrip(from, to)),
    unmodelled_frac,
  );
}
