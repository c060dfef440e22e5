import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM, MPS_PER_KMH, S_PER_MIN } from "../../../shared/units.ts";
import { effectWords } from "../../route/clean/repairEffects.ts";
import { countOf } from "../../route/log/countOf.ts";
import type { ColumnGuess } from "../../route/log/logFile.ts";
import { writeFar } from "../../route/log/writeFar.ts";
import { writeDuration } from "../../route/log/writeTime.ts";
import type { Likeness } from "../../route/roads/standardCycleLike.ts";
import type { Characteristics } from "../../trace/characteristics.ts";
import { totalCharacteristics } from "../../trace/totalCharacteristics.ts";
import { textTable } from "../printing/table.ts";
import { visibleLine } from "../printing/visible.ts";
import { wrapText } from "../printing/wrapText.ts";
import { momentForPeople } from "./logClock.ts";
import { formatWord } from "./logsJson.ts";
import type { RecordedDrives } from "./recordedDrives.ts";

/** What a person wants to know of logs: how each was read, what was mended in it, and the trips and days that came out. */
export function logsReport(drives: RecordedDrives, likenessOf: (trip: Characteristics) => Likeness): string {
  const { trips, days, cleaned } = drives;
  const parts = drives.files.map((file) => fileReport(file, drives));
  if (trips.trips.length === 0) {
    const far = writeFar(cleaned.series.distance_m[cleaned.series.count - 1] ?? 0);
    parts.push(
      cleaned.isStill
        ? "The car does not move in this log: its distance is about 0, and there is no trip."
        : cleaned.quality.noDrive !== undefined
          ? `No trip: ${cleaned.quality.noDrive}.`
          : `No trip: all moves are shorter than 50 m, ${far} in total.`,
    );
    return parts.join("\n\n");
  }
  parts.push(tripsTable(drives, likenessOf));
  if (days.length > 0) parts.push(daysTable(drives));
  const { count, distance_m } = trips.shunts;
  const moves = `${countOf(count, "move")} too short to count`;
  const shunts =
    count > 0 ? `; ${moves}, ${writeFar(distance_m)} in total, ${count === 1 ? "is no trip" : "are no trips"}` : "";
  parts.push(wrapText(`${sentence(drives.clock.words)}${shunts}.`));
  return parts.join("\n\n");
}

function fileReport({ log, cleaned, effects }: RecordedDrives["files"][number], { joined }: RecordedDrives): string {
  const { verdict, reasons, samplingNote } = cleaned.quality;
  const whole_m = cleaned.series.distance_m[cleaned.series.count - 1] ?? 0;
  const bad = log.badLines > 0 ? `, ${countOf(log.badLines, "line")} not usable` : "";
  const lines = [
    visibleLine(`${log.file}: ${formatWord(log).toUpperCase()}, ${countOf(log.fixes.count, "fix", "fixes")}${bad}`),
    wrapText([log.guess.encoding.toUpperCase(), ...log.guess.layout].join(", "), "  read as    "),
    ...(log.format === "table" ? [wrapText(columnWords(log.guess.columns), "  columns    ")] : []),
    ...log.questions
      .filter(({ decided, guess }) => decided && guess !== "")
      .map(({ name, guess, evidence }) =>
        wrapText(`${questionWords[name]} ${answerWords[guess] ?? guess}: ${evidence}`, "  taken as   "),
      ),
    wrapText(
      [`${verdict}: ${[...reasons, ...(samplingNote ? [samplingNote] : [])].join("; ")}`].join(""),
      "  quality    ",
    ),
    ...cleaned.repairs.flatMap(({ kind, detail }) => {
      const effect = effects?.get(kind);
      const moved = effect && wrapText(effectWords(effect, whole_m), "    moved    ");
      return [wrapText(detail, "  mended     "), ...(moved === undefined ? [] : [moved])];
    }),
    ...joined.problems
      .filter(({ where }) => where === log.file)
      .map(({ message }) => wrapText(message, "  left out   ")),
  ];
  if (cleaned.repairs.length === 0) lines.push("  mended     nothing");
  return lines.join("\n");
}

/** What each column was taken for, with the evidence where that is not its name. */
function columnWords(columns: readonly ColumnGuess[]): string {
  return columns
    .filter(({ role }) => role !== "none")
    .map(({ index, header, role, unit, evidence }) => {
      const name = header === "" ? `column ${index + 1}` : `"${header}"`;
      const inUnit = unit === "" ? "" : ` in ${answerWords[unit] ?? unit}`;
      const why = evidence.startsWith("header") ? "" : ` (${evidence})`;
      return `${name} is the ${roleWords[role] ?? role}${inUnit}${why}`;
    })
    .join(", ");
}

const questionWords: Readonly<Record<string, string>> = {
  speedUnit: "speeds in",
  hemisphere: "positions",
  interval: "seconds between rows",
  date: "first day",
  currentSign: "current",
  vehicle: "the car",
};

const roleWords: Readonly<Record<string, string>> = {
  lat: "latitude",
  lon: "longitude",
  latHemisphere: "hemisphere of the latitude",
  lonHemisphere: "hemisphere of the longitude",
  hdop: "dilution of precision",
  packVoltage: "pack's voltage",
  packCurrent: "pack's current",
  stateOfCharge: "state of charge",
  motorSpeed: "motor's speed",
};

const answerWords: Readonly<Record<string, string>> = {
  kmh: "km/h",
  mps: "m/s",
  NE: "north and east",
  NW: "north and west",
  SE: "south and east",
  SW: "south and west",
};

function tripsTable({ trips, clock }: RecordedDrives, likenessOf: (trip: Characteristics) => Likeness): string {
  const found = trips.trips.map((trip) => trip.characteristics);
  const figures = (of: Characteristics) => [
    formatNumber(of.distance_m / M_PER_KM),
    formatNumber(of.duration_s / S_PER_MIN),
    formatNumber(of.mean_mps / MPS_PER_KMH),
    formatNumber(of.max_mps / MPS_PER_KMH),
    of.climb_m === undefined ? "not known" : formatNumber(of.climb_m),
    String(of.stops),
  ];
  const rows = trips.trips.map((trip) => {
    const { id, difference } = likenessOf(trip.characteristics);
    return [momentForPeople(trip.start_s, clock), ...figures(trip.characteristics), `${id}: ${difference}`];
  });
  if (rows.length > 1) rows.push(["all of them", ...figures(totalCharacteristics(found))]);
  return textTable(
    [
      { heading: "trip" },
      { heading: "km", isNumber: true },
      { heading: "min", isNumber: true },
      { heading: "mean\n(km/h)", isNumber: true },
      { heading: "top\n(km/h)", isNumber: true },
      { heading: "climb\n(m)", isNumber: true },
      { heading: "stops", isNumber: true },
      { heading: "most like" },
    ],
    rows,
  );
}

function daysTable({ days }: RecordedDrives): string {
  return textTable(
    [
      { heading: "day" },
      { heading: "trips", isNumber: true },
      { heading: "km", isNumber: true },
      { heading: "min", isNumber: true },
      { heading: "longest parked" },
    ],
    days.map(({ date, trips, distance_m, driving_s, longestParking }) => [
      date,
      String(trips.length),
      formatNumber(distance_m / M_PER_KM),
      formatNumber(driving_s / S_PER_MIN),
      longestParking
        ? `${writeDuration(longestParking.to_s - longestParking.from_s)}, ${
            longestParking.place === "unknown" ? "place not known" : longestParking.place
          }`
        : "not seen",
    ]),
  );
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
