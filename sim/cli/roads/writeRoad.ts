import { inputError } from "../../../shared/problems.ts";
import type { Trace } from "../../trace/trace.ts";
import { writeTraceCsv } from "../../trace/writeTraceCsv.ts";
import type { Print } from "../command.ts";
import { checkPlace, isSameFile, writeText } from "../files/files.ts";
import { cleanedWhole } from "../logs/cleanedWhole.ts";
import type { RecordedDrives } from "../logs/recordedDrives.ts";

/** What is to be written: a road as it was read, or the trips of logs. */
type RoadToWrite = { readonly trace: Trace } | { readonly drives: RecordedDrives };

interface WritingRoad {
  readonly keepsPositions: boolean;
  /** Whether files of these names may be replaced. */
  readonly mayReplace: boolean;
  /** Files that were read, never written. */
  readonly sources: readonly string[];
}

/**
 * Writes a road as a strict trace CSV: time, speed, height, and never where it was. With `keepsPositions` the positions of a log's
 * trips go into a second file beside it, with the same times, since a strict trace has exactly its columns. Throws InputError
 * where it would write over a file that was read or, without leave, over another, and where there are no positions to keep.
 */
export function writeRoad(
  road: RoadToWrite,
  out: string,
  { keepsPositions, mayReplace, sources }: WritingRoad,
  warn: Print,
): void {
  const beside = positionsPath(out);
  const ifThere = mayReplace ? "replace" : "ask";
  for (const path of keepsPositions ? [out, beside] : [out])
    if (sources.some((source) => isSameFile(source, path)))
      throw inputError("out-source", path, "found the file that is read, it is left as it is; choose another name");
  const trace = "drives" in road ? cleanedWhole(road.drives) : road.trace;
  if (keepsPositions) checkPlace(beside, ifThere);
  const positions = keepsPositions ? positionsCsv(road, out) : undefined;
  writeText(out, writeTraceCsv(trace), ifThere);
  if (positions === undefined) {
    warn(`written: ${out}${"drives" in road ? ", without positions" : ""}`);
    return;
  }
  writeText(beside, positions, ifThere);
  warn(`written: ${out}, without positions; they are in ${beside}, which shows where the car lives`);
}

/** `week.positions.csv` beside `week.csv`. */
function positionsPath(out: string): string {
  return `${out.replace(/\.csv$/i, "")}.positions.csv`;
}

function positionsCsv(road: RoadToWrite, out: string): string {
  const track = "drives" in road ? road.drives.cleaned.track : undefined;
  if (!("drives" in road) || !track)
    throw inputError("positions-none", "--keep-positions", `found no positions in what is written to ${out}`);
  const lines = ["time_s,latitude_deg,longitude_deg"];
  let time_s = 0;
  for (const { fromRow, toRow } of road.drives.trips.trips) {
    for (let row = fromRow; row <= toRow; row++) {
      const isKnown = Number.isFinite(track.latitude_deg[row]) && Number.isFinite(track.longitude_deg[row]);
      // Seven decimals are a centimetre.
      const place = isKnown ? `${track.latitude_deg[row].toFixed(7)},${track.longitude_deg[row].toFixed(7)}` : ",";
      lines.push(`${time_s},${place}`);
      time_s += 1;
    }
  }
  return `${lines.join("\n")}\n`;
}
