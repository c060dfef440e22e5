import { inputError } from "../../../shared/problems.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { LogFile } from "../../route/log/logFile.ts";
import { type Characteristics, characteristics } from "../../trace/characteristics.ts";
import { totalCharacteristics } from "../../trace/totalCharacteristics.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import type { Command, Print } from "../command.ts";
import { likenessToCycles } from "../logs/cycleLikeness.ts";
import { answerOptions, idleAnswers, logAnswers } from "../logs/logAnswers.ts";
import { daysAWeek, daysDriven_km, logDaysJson, logFilesJson, logTripsJson } from "../logs/logsJson.ts";
import { logsReport } from "../logs/logsReport.ts";
import { type RecordedDrives, recordedDrives } from "../logs/recordedDrives.ts";
import { jsonText } from "../printing/json.ts";
import { traceFigures, tracesTable } from "../printing/traceFigures.ts";
import { isFileName, type RoadFile, readRoadFiles } from "../roads/roadFiles.ts";
import { writeRoad } from "../roads/writeRoad.ts";
import { watchOn } from "../serving/watch.ts";

type WrittenRoad = Exclude<RoadFile, { readonly kind: "log" }>;

const shownProblems = 5; // of one file; a broken log has thousands, and --json has more of them

export const trace: Command = {
  name: "trace",
  usage: "ID|FILE... [--json] [--moved] [--out FILE.csv [--force] [--keep-positions]]",
  summary:
    "what kind of driving cycles, speed traces and recorded logs ask for; logs are cleaned, every repair is said",
  options: {
    json: { type: "boolean", help: "for a program: files, trips and their total, units in the keys" },
    moved: {
      type: "boolean",
      help: "of logs: what each repair moved in distance, energy and climb, by cleaning again without it",
    },
    out: { type: "string", value: "FILE.csv", help: "write the road as a speed trace; of logs, all trips in one" },
    force: { type: "boolean", help: "with --out: replace a file of that name" },
    "keep-positions": { type: "boolean", help: "with --out: a log's positions too, in FILE.positions.csv" },
    ...answerOptions,
    speeds: { type: "string", value: "TEXT", help: 'for a planned route: "3 km at 50 km/h, 2 stops a km, then ..."' },
  },
  run(args, print, warn) {
    const { positionals } = args;
    if (positionals.length === 0)
      throw inputError("argument-missing", "trace", "found no cycle and no file, at least one is wanted: trace udds");
    const out = textOption(args, "out");
    const keepsPositions = hasOption(args, "keep-positions");
    if (keepsPositions && out === undefined)
      throw inputError(
        "positions-nowhere",
        "--keep-positions",
        "found no --out FILE.csv, beside which they would be kept",
      );
    const watch = watchOn(warn);
    const answers = { ...logAnswers(args), speeds: textOption(args, "speeds") };
    const roads = readRoadFiles(positionals, answers, watch);
    const written = roads.filter((road) => road.kind !== "log");
    const logs = roads.flatMap((road) => (road.kind === "log" ? [road.log] : []));
    const drives = logs.length > 0 ? recordedDrives(logs, watch, hasOption(args, "moved")) : undefined;
    for (const option of idleAnswers(answers, logs)) warn(`${option}: no file leaves this open, it is not used`);
    if (hasOption(args, "moved") && logs.length === 0) warn("--moved: no file is a recorded log, it is not used");
    if (answers.speeds !== undefined && !roads.some(({ kind }) => kind === "route"))
      warn("--speeds: no file is a planned route, it is not used");
    for (const log of logs) warnOf(log, warn);
    warnOfZones(logs, warn);
    if (out !== undefined) {
      if (drives ? written.length > 0 : written.length !== 1)
        throw inputError("out-many", "--out", `found ${roads.length} traces, one at a time can be written`);
      const sources = positionals.filter(isFileName);
      const road = drives ? { drives } : { trace: written[0].trace };
      writeRoad(road, out, { keepsPositions, mayReplace: hasOption(args, "force"), sources }, warn);
    }
    print(hasOption(args, "json") ? jsonText(jsonOf(roads, written, drives)) : reportOf(written, drives));
  },
};

function jsonOf(roads: readonly RoadFile[], written: readonly WrittenRoad[], drives: RecordedDrives | undefined) {
  const found = written.map(({ trace: road }) => characteristics(road));
  const argumentOf = (file: string) =>
    roads.find((road) => road.kind === "log" && road.log.file === file)?.argument ?? file;
  const ofLogs = drives ? logFilesJson(drives, argumentOf) : [];
  let nextLog = 0;
  return {
    files: roads.map((road) => (road.kind === "log" ? ofLogs[nextLog++] : writtenFileJson(road))),
    trips: [
      ...written.map(({ trace: { id, title } }, k) => ({ id, title, start: null, ...traceFigures(found[k]) })),
      ...(drives ? logTripsJson(drives, likenessToCycles()) : []),
    ],
    total: totalOf(found, drives),
    ...(drives
      ? {
          days: logDaysJson(drives),
          daysDriven_km: daysDriven_km(drives),
          daysAWeek: daysAWeek(drives),
          clock: drives.clock,
        }
      : {}),
  };
}

function writtenFileJson({ kind, argument, trace: road }: WrittenRoad) {
  return {
    file: argument,
    format: kind,
    fixes: road.time_s.length,
    badLines: 0,
    repairs: [],
    quality: kind === "route" ? "assumed" : "as written",
    trace: road.id,
  };
}

/** Distance, time and climb of everything; moves too short to be trips count in the distance. */
function totalOf(found: readonly Characteristics[], drives: RecordedDrives | undefined) {
  const all = [...found, ...(drives?.trips.trips ?? []).map((trip) => trip.characteristics)];
  if (all.length === 0) {
    const distance_km = (drives?.trips.shunts.distance_m ?? 0) / M_PER_KM;
    return { duration_s: 0, distance_km, moving_s: 0, climb_m: 0, descent_m: 0 };
  }
  const total = traceFigures(totalCharacteristics(all));
  return { ...total, distance_km: total.distance_km + (drives?.trips.shunts.distance_m ?? 0) / M_PER_KM };
}

function reportOf(written: readonly WrittenRoad[], drives: RecordedDrives | undefined): string {
  const found = written.map(({ trace: road }) => characteristics(road));
  const traces = written.map(({ trace: road }) => road);
  return [
    ...(written.length > 0 ? [tracesTable(traces, found, totalCharacteristics(found))] : []),
    ...(drives ? [logsReport(drives, likenessToCycles())] : []),
  ].join("\n\n");
}

/** A local clock among clocks in UTC may put a log hours from where it belongs. */
function warnOfZones(logs: readonly LogFile[], warn: Print): void {
  const isLocal = ({ format, hasZone }: LogFile) => format === "table" && !hasZone;
  if (logs.every(isLocal)) return;
  for (const log of logs.filter(isLocal))
    warn(
      `${log.file}: its clock has no zone and other logs are in UTC; put in order as written, which may be hours off`,
    );
}

/** What was found wrong in a log that could be read all the same. */
function warnOf({ file, problems }: LogFile, warn: Print): void {
  for (const { where, message } of problems.slice(0, shownProblems)) warn(`${where}: ${message}`);
  const more = problems.length - shownProblems;
  if (more > 0) warn(`${file}: ${more} more of these; --json lists them`);
}
