import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { amongHouses, makeLog, makeTruth, withParking } from "../../../logs/logMaker.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

const S_PER_DAY = 86_400;

export const start_s = Date.UTC(2024, 4, 3, 8) / 1000;

export const truth = makeTruth(
  withParking(cycleSpeeds_mps("udds"), 300),
  1,
  (along_m) => 50 + 20 * Math.sin(along_m / 800),
);

export const drive_km = truth.distance_m[truth.distance_m.length - 1] / 1000;

export const rows = makeLog(truth, { ...amongHouses, seed: 2 }, start_s);

/** Its first minutes, for what does not hang on how long a log is: most of what reading one takes is proportional to that. */
export const beginning = rows.slice(0, 700);

export const beginning_km = truth.distance_m[Math.round(beginning[beginning.length - 1].time_s - start_s)] / 1000;

export const dayLater = (days: number) => rows.map((row) => ({ ...row, time_s: row.time_s + days * S_PER_DAY }));

export interface Found {
  files: {
    file: string;
    format: string;
    fixes: number;
    badLines: number;
    repairs: { kind: string; count: number; detail: string; moved?: { climb_m: number } }[];
    quality: string;
    isStill: boolean;
    decided: { name: string; answer: string; evidence: string }[];
    readAs: { encoding: string };
  }[];
  trips: { start: string | null; duration_s: number; distance_km: number; climb_m: number | null; stops: number }[];
  total: { distance_km: number; moving_s: number; climb_m: number | null };
  days: { date: string; trips: number; distance_km: number }[];
  daysDriven_km: number[];
}

/** Files of the names and contents given, in a folder of the test's own. */
export function logFiles(contents: Readonly<Record<string, string | Uint8Array>>): string[] {
  const folder = emptyFolder();
  return Object.entries(contents).map(([name, content]) => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  });
}

export async function found(...words: readonly string[]): Promise<Found> {
  const { code, out, err } = await runCommand("trace", ...words, "--json");
  expect({ code, err }).toMatchObject({ code: 0, err: expect.not.stringContaining("fault of this program") });
  return JSON.parse(out) as Found;
}

export async function refused(...words: readonly string[]): Promise<string> {
  const { code, out, err } = await runCommand("trace", ...words);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  return err;
}

/** A table of a minute or more: the header, and a row a second. */
export function table(header: string, row: (second: number) => string, seconds = 300): string {
  return `${header}\n${Array.from({ length: seconds }, (_, second) => row(second)).join("\n")}\n`;
}

export const clock = (second: number) => new Date((start_s + second) * 1000).toISOString().slice(11, 19);

export const bare = (points: string) => `<gpx version="1.1"><trk><trkseg>${points}</trkseg></trk></gpx>`;

export const bareAt = (lat_deg: number, lon_deg: number, second?: number) =>
  `<trkpt lat="${lat_deg}" lon="${lon_deg}">${
    second === undefined ? "" : `<time>${new Date((start_s + second) * 1000).toISOString()}</time>`
  }</trkpt>`;
