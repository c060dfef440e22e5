import { inputError } from "../../../shared/problems.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { type Characteristics, characteristics } from "../../trace/characteristics.ts";
import { type CleanedLog, Mended, PARKED_s } from "../clean/report/cleanedLog.ts";
import { toTrace } from "../roads/toTrace.ts";

export interface TripOptions {
  /**
   * Standing at least this long ends a trip, 30 s to 7200 s; `PARKED_s` where it is not given.
   */
  readonly parkedLonger_s?: number | undefined;
  /** Anything shorter is shunting, or a receiver's start, and no trip, as long as the log has longer moves; 200 m. */
  readonly shortest_m?: number | undefined;
}

/** One drive from rest to rest (or to where the log breaks off), as columns at one row a second. */
export interface Trip {
  readonly start_s: number;
  readonly end_s: number;
  /** First and last row of the cleaned series. */
  readonly fromRow: number;
  readonly toRow: number;
  readonly speed_mps: Float64Array;
  /** NaN throughout where the log has no heights. */
  readonly elevation_m: Float64Array;
  readonly characteristics: Characteristics;
  readonly stopsPerKm: number;
  /** Share of its seconds that were bridged, not measured. */
  readonly bridged_frac: number;
}

/** A time the car was parked, between trips or before and after them, as far as the log shows it. */
export interface Parking {
  readonly from_s: number;
  readonly to_s: number;
  /** True where the logger was off or lost, false where it logged a standing car. */
  readonly isGap: boolean;
  /** NaN where the log has no positions. */
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

export interface Trips {
  readonly trips: readonly Trip[];
  readonly parkings: readonly Parking[];
  /** Moves too short to be trips, with the distance they add up to. */
  readonly shunts: { readonly count: number; readonly distance_m: number };
}

/** A move this long is a trip in a log without any longer than `shortest_m`. Assumed: above what a parked receiver drifts. */
const shortestAlone_m = 50;

/**
 * The trips of a cleaned log, split where it stands longer than the time given and where the log itself has a break. A
 * trip begins with the last second of standing before it and ends with the first one after it.
 */
export function splitTrips(cleaned: CleanedLog, options: TripOptions = {}): Trips {
  const parkedLonger_s = options.parkedLonger_s ?? PARKED_s;
  const shortest_m = options.shortest_m ?? 200;
  if (!(parkedLonger_s >= 30 && parkedLonger_s <= 7200)) {
    throw inputError("badOption", "parkedLonger_s", `found ${parkedLonger_s} s, allowed are 30 to 7200 s`);
  }
  const { series } = cleaned;
  const trips: Trip[] = [];
  const parkings: Parking[] = [];
  const shunts = { count: 0, distance_m: 0 };
  const ends = [...series.breaks, series.count];
  let from = 0;
  const pieces: Piece[] = [];
  for (const end of ends) {
    pieces.push(...movingPieces(series.speed_mps, from, end, parkedLonger_s));
    from = end;
  }
  const length_m = ({ from: first, to }: Piece) => series.distance_m[to] - series.distance_m[first];
  // A log of nothing longer is one of a hill or a start, and its moves are what was meant to be recorded.
  const isShort = pieces.every((piece) => length_m(piece) < shortest_m);
  const least_m = isShort ? Math.min(shortest_m, shortestAlone_m) : shortest_m;
  for (const piece of pieces) {
    const distance_m = length_m(piece);
    if (distance_m < least_m) {
      shunts.count += distance_m > 0 ? 1 : 0;
      shunts.distance_m += distance_m;
    } else {
      trips.push(tripOf(cleaned, piece.from, piece.to));
    }
  }
  addParkings(cleaned, trips, parkedLonger_s, parkings);
  return { trips, parkings, shunts };
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

function movingPieces(speed_mps: Float64Array, from: number, end: number, parkedLonger_s: number): readonly Piece[] {
  const pieces: Piece[] = [];
  let first = -1;
  let lastMoving = -1;
  for (let i = from; i < end; i++) {
    if (speed_mps[i] <= 0) {
      continue;
    }
    if (first >= 0 && i - lastMoving - 1 > parkedLonger_s) {
      pieces.push({ from: first, to: Math.min(end - 1, lastMoving + 1) });
      first = -1;
    }
    first = first < 0 ? Math.max(from, i - 1) : first;
    lastMoving = i;
  }
  if (first >= 0) {
    pieces.push({ from: first, to: Math.min(end - 1, lastMoving + 1) });
  }
  return pieces.filter((piece) => piece.to > piece.from);
}

function tripOf(cleaned: CleanedLog, fromRow: number, toRow: number): Trip {
  const { series } = cleaned;
  const speed_mps = series.speed_mps.slice(fromRow, toRow + 1);
  const elevation_m = series.elevation_m.slice(fromRow, toRow + 1);
  let bridged = 0;
  for (let i = fromRow; i <= toRow; i++) {
    bridged += (series.flags[i] & Mended.bridged) !== 0 ? 1 : 0;
  }
  const found = characteristics(toTrace({ speed_mps, elevation_m }, "trip", "trip"));
  return {
    start_s: series.time_s[fromRow],
    end_s: series.time_s[toRow],
    fromRow,
    toRow,
    speed_mps,
    elevation_m,
    characteristics: found,
    stopsPerKm: found.stops / (found.distance_m / M_PER_KM),
    bridged_frac: bridged / (toRow - fromRow + 1),
  };
}

/** Everything between trips that lasts long enough; shunting on the yard in between does not end a parking. */
function addParkings(cleaned: CleanedLog, trips: readonly Trip[], parkedLonger_s: number, parkings: Parking[]): void {
  const { series, track, gaps } = cleaned;
  const add = (fromRow: number, toRow: number) => {
    const [from_s, to_s] = [series.time_s[fromRow], series.time_s[toRow]];
    const lost = gaps.filter((gap) => gap.row > fromRow && gap.row <= toRow);
    const isElsewhere = lost.some((gap) => gap.kind === "signalLoss");
    if (to_s - from_s >= parkedLonger_s && !isElsewhere) {
      const latitude_deg = track?.latitude_deg[fromRow] ?? Number.NaN;
      const longitude_deg = track?.longitude_deg[fromRow] ?? Number.NaN;
      parkings.push({ from_s, to_s, isGap: lost.length > 0, latitude_deg, longitude_deg });
    }
  };
  if (trips.length === 0) {
    add(0, series.count - 1);
    return;
  }
  add(0, trips[0].fromRow);
  for (let t = 1; t < trips.length; t++) {
    add(trips[t - 1].toRow, trips[t].fromRow);
  }
  add(trips[trips.length - 1].toRow, series.count - 1);
}
