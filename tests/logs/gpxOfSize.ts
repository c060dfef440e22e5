import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { amongHouses, type LogRow, makeLog, makeTruth, withParking } from "./logMaker.ts";

/** The cycle driven is this long, so that its hill ends where it began. */
const LENGTH_m = 23_266;

/** A drive of a standard cycle, half an hour's pause after it, over and over until the file has its size. */
export function gpxOfSize(bytes: number): Uint8Array {
  const truth = makeTruth(
    withParking(cycleSpeeds_mps("wltc-class-3b"), 300),
    1,
    (distance_m) => 160 - 60 * Math.cos((2 * Math.PI * distance_m) / LENGTH_m),
  );
  const file = Buffer.alloc(bytes + 4096);
  let at = file.write('<?xml version="1.0"?>\n<gpx version="1.1" creator="invented"><trk><trkseg>\n');
  let start_s = 1714723200;
  for (let drive = 0; at < bytes; drive++) {
    const rows = makeLog(truth, { ...amongHouses, seed: drive }, start_s);
    for (const row of rows) {
      if (at >= bytes) {
        break;
      }
      at += file.write(pointOf(row), at);
    }
    start_s += 3900;
  }
  at += file.write("</trkseg></trk></gpx>\n", at);
  return new Uint8Array(file.buffer, file.byteOffset, at);
}

function pointOf(row: LogRow): string {
  const time = new Date(row.time_s * 1000).toISOString();
  return `<trkpt lat="${row.latitude_deg.toFixed(6)}" lon="${row.longitude_deg.toFixed(6)}"><ele>${row.elevation_m.toFixed(1)}</ele><time>${time}</time><speed>${row.speed_mps.toFixed(2)}</speed></trkpt>\n`;
}
