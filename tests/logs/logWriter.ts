import type { LogRow } from "./logMaker.ts";

const encoder = new TextEncoder();

/** The rows as GPX 1.1, speed in an extension where there is one. */
export function writeGpx(rows: readonly LogRow[]): Uint8Array {
  const points = rows.map((row) => {
    const ele = Number.isNaN(row.elevation_m) ? "" : `<ele>${row.elevation_m.toFixed(1)}</ele>`;
    const speed = Number.isNaN(row.speed_mps)
      ? ""
      : `<extensions><x:speed>${row.speed_mps.toFixed(2)}</x:speed></extensions>`;
    return `<trkpt lat="${row.latitude_deg.toFixed(7)}" lon="${row.longitude_deg.toFixed(7)}">${ele}<time>${isoOf(row.time_s)}</time>${speed}</trkpt>`;
  });
  return encoder.encode(
    `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1" xmlns:x="urn:invented">\n<trk><trkseg>\n${points.join("\n")}\n</trkseg></trk></gpx>\n`,
  );
}

/** The rows as a table with commas. */
export function writeCsv(rows: readonly LogRow[], unit: "km/h" | "m/s" = "km/h"): Uint8Array {
  const factor = unit === "km/h" ? 3.6 : 1;
  const cell = (value: number, digits: number) => (Number.isNaN(value) ? "" : value.toFixed(digits));
  const lines = rows.map((row) =>
    [
      isoOf(row.time_s),
      cell(row.latitude_deg, 7),
      cell(row.longitude_deg, 7),
      cell(row.speed_mps * factor, 2),
      cell(row.elevation_m, 1),
    ].join(","),
  );
  return encoder.encode(`time,latitude,longitude,speed (${unit}),altitude (m)\n${lines.join("\n")}\n`);
}

/** The rows as RMC and GGA sentences. */
export function writeNmea(rows: readonly LogRow[]): Uint8Array {
  const lines = rows.flatMap((row) => {
    const iso = isoOf(row.time_s);
    const clock = `${iso.slice(11, 13)}${iso.slice(14, 16)}${iso.slice(17, 22)}`;
    const date = `${iso.slice(8, 10)}${iso.slice(5, 7)}${iso.slice(2, 4)}`;
    const lat = `${angle(row.latitude_deg, 2)},${row.latitude_deg < 0 ? "S" : "N"}`;
    const lon = `${angle(row.longitude_deg, 3)},${row.longitude_deg < 0 ? "W" : "E"}`;
    const knots = Number.isNaN(row.speed_mps) ? "" : ((row.speed_mps * 3600) / 1852).toFixed(2);
    const height = Number.isNaN(row.elevation_m) ? ",M" : `${row.elevation_m.toFixed(1)},M`;
    return [
      `GNRMC,${clock},A,${lat},${lon},${knots},,${date},,`,
      `GNGGA,${clock},${lat},${lon},1,09,0.9,${height},46.9,M,,`,
    ];
  });
  return encoder.encode(lines.map((line) => `$${line}*${checksum(line)}\r\n`).join(""));
}

function isoOf(time_s: number): string {
  return new Date(Math.round(time_s * 1000)).toISOString();
}

function angle(value_deg: number, width: number): string {
  const size = Math.abs(value_deg);
  const whole = Math.floor(size);
  return `${String(whole).padStart(width, "0")}${((size - whole) * 60).toFixed(5).padStart(8, "0")}`;
}

function checksum(line: string): string {
  let sum = 0;
  for (let i = 0; i < line.length; i++) {
    sum ^= line.charCodeAt(i);
  }
  return sum.toString(16).toUpperCase().padStart(2, "0");
}
