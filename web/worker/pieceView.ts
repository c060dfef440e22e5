import { inputError } from "../../shared/problems.ts";
import { firstWhere, Mended, type Trip } from "../../sim/index.ts";
import type { Sorted } from "./roads/driveOf.ts";
import type { Piece, PieceView } from "./roads/roadsApi.ts";

/** What is shown as repaired of the cleaned rows: not where the car stands, which is no repair. */
const SHOWN = Mended.bridged | Mended.multipath | Mended.limited;

/** The trips of a piece, in order. */
export function pieceTrips({ found, days }: Sorted, piece: Piece): readonly Trip[] {
  const [kind, which = ""] = piece.split(":");
  const indexes =
    kind === "trip"
      ? [Number(which)]
      : kind === "day"
        ? (days.find(({ date }) => date === which)?.trips ?? [])
        : undefined;
  const trips = indexes ? found.trips.filter((_, i) => indexes.includes(i)) : found.trips;
  if (trips.length === 0)
    throw inputError("noTrips", "road", "found no trip in this part of the log, wanted at least one");
  return trips;
}

/** The trips of a piece laid end to end, raw and cleaned, with the positions for a map where the log has any. */
export function pieceView(sorted: Sorted, piece: Piece): PieceView {
  const { cleaned } = sorted;
  const trips = pieceTrips(sorted, piece);
  const rows = trips.reduce((sum, trip) => sum + trip.toRow - trip.fromRow + 1, 0);
  const column = () => new Float64Array(rows);
  const out = { time_s: column(), speed_mps: column(), elevation_m: column(), isRepaired: new Uint8Array(rows) };
  const track = cleaned.track && { latitude_deg: column(), longitude_deg: column() };
  const raw: { time_s: number[]; speed_mps: number[]; elevation_m: number[] } = {
    time_s: [],
    speed_mps: [],
    elevation_m: [],
  };
  const tripRows: number[] = [];
  let at = 0;
  for (const trip of trips) {
    tripRows.push(at);
    const end = trip.toRow + 1;
    out.speed_mps.set(trip.speed_mps, at);
    out.elevation_m.set(trip.elevation_m, at);
    for (let row = trip.fromRow; row < end; row++) {
      const i = at + row - trip.fromRow;
      out.time_s[i] = i;
      out.isRepaired[i] = (cleaned.series.flags[row] & SHOWN) === 0 ? 0 : 1;
    }
    if (track && cleaned.track) {
      track.latitude_deg.set(cleaned.track.latitude_deg.subarray(trip.fromRow, end), at);
      track.longitude_deg.set(cleaned.track.longitude_deg.subarray(trip.fromRow, end), at);
    }
    const { time_s, speed_mps, elevation_m } = cleaned.raw;
    for (
      let k = firstWhere(0, time_s.length, (i) => time_s[i] >= trip.start_s);
      k < time_s.length && time_s[k] <= trip.end_s;
      k++
    ) {
      raw.time_s.push(at + time_s[k] - trip.start_s);
      raw.speed_mps.push(speed_mps[k]);
      raw.elevation_m.push(elevation_m[k]);
    }
    at += end - trip.fromRow;
  }
  const hasHeights = out.elevation_m.some((elevation_m) => !Number.isNaN(elevation_m));
  const { elevation_m: cleanedElevation_m, ...others } = out;
  return {
    piece,
    tripRows,
    raw: {
      time_s: Float64Array.from(raw.time_s),
      speed_mps: Float64Array.from(raw.speed_mps),
      ...(hasHeights && { elevation_m: Float64Array.from(raw.elevation_m) }),
    },
    cleaned: { ...others, ...(hasHeights && { elevation_m: cleanedElevation_m }) },
    ...(track && { track }),
  };
}
