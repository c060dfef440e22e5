import { M_PER_KM } from "../../../shared/units.ts";
import { drivenDaysAWeek } from "../../plan/year/daysAWeek.ts";
import type { Likeness } from "../../route/roads/standardCycleLike.ts";
import type { Characteristics } from "../../trace/characteristics.ts";
import { traceFigures } from "../printing/traceFigures.ts";
import { momentForPrograms } from "./logClock.ts";
import type { RecordedDrives } from "./recordedDrives.ts";

type LikenessOf = (trip: Characteristics) => Likeness;

/** What `--json` says of each log. Nothing in it says where the car was. */
export function logFilesJson({ files, joined }: RecordedDrives, argumentOf: (file: string) => string) {
  return files.map(({ log, cleaned, effects }) => {
    const givenWay = joined.problems.filter(({ where }) => where === log.file);
    const { verdict, reasons, interval_s, bridged_frac, speedSource, heightSource, samplingNote } = cleaned.quality;
    return {
      file: argumentOf(log.file),
      format: formatWord(log),
      fixes: log.fixes.count,
      badLines: log.badLines,
      repairs: [
        ...cleaned.repairs.map(({ kind, count, detail }) => {
          const moved = effects?.get(kind);
          return { kind, count, detail, ...(moved && { moved }) };
        }),
        ...(givenWay.length === 0
          ? []
          : [
              {
                kind: "sameMinutes",
                count: givenWay.length,
                detail: givenWay.map(({ message }) => message).join("; "),
              },
            ]),
      ],
      quality: verdict,
      reasons,
      isStill: cleaned.isStill,
      interval_s,
      bridged_frac,
      speedSource,
      heightSource,
      ...(samplingNote === undefined ? {} : { samplingNote }),
      ...(cleaned.spread && { spread: cleaned.spread }),
      readAs: {
        encoding: log.guess.encoding,
        layout: log.guess.layout,
        columns: log.guess.columns
          .filter(({ role }) => role !== "none")
          .map(({ header, role, unit, evidence }) => ({ header, role, unit, evidence })),
      },
      decided: log.questions
        .filter(({ decided }) => decided)
        .map(({ name, guess, evidence }) => ({ name, answer: guess, evidence })),
      problems: log.problems.map(({ code, where, message }) => ({ code, where, message })),
    };
  });
}

/** The trips of all logs together, in order of time. */
export function logTripsJson({ trips, clock }: RecordedDrives, likenessOf: LikenessOf) {
  return trips.trips.map((trip) => ({
    start: momentForPrograms(trip.start_s, clock),
    end: momentForPrograms(trip.end_s, clock),
    ...traceFigures(trip.characteristics),
    stopsPerKm: trip.stopsPerKm,
    bridged_frac: trip.bridged_frac,
    resembles: likenessOf(trip.characteristics),
  }));
}

/** Days in local time. */
export function logDaysJson({ days, clock }: RecordedDrives) {
  return days.map(({ date, trips, distance_m, driving_s, climb_m, longestParking }) => ({
    date,
    trips: trips.length,
    distance_km: distance_m / M_PER_KM,
    driving_s,
    climb_m,
    longestParking: longestParking
      ? {
          from: momentForPrograms(longestParking.from_s, clock),
          to: momentForPrograms(longestParking.to_s, clock),
          duration_s: longestParking.to_s - longestParking.from_s,
          place: longestParking.place,
        }
      : null,
  }));
}

/** How far each day went on which the car was driven, to a tenth of a kilometre: as `year.daysDriven_km` of a job file takes them. */
export function daysDriven_km({ days }: RecordedDrives): number[] {
  return days.flatMap(({ trips, distance_m }) =>
    trips.length > 0 ? [Math.round((10 * distance_m) / M_PER_KM) / 10] : [],
  );
}

/** How many days a week the car was driven, as `year.daysAWeek` of a job file takes it; nothing where the dates span no week. */
export function daysAWeek({ days }: RecordedDrives): number | undefined {
  return drivenDaysAWeek(days.flatMap(({ date, trips }) => (trips.length > 0 ? [date] : [])));
}

/** What people call the format; a table is called by what divides its columns. */
export function formatWord({ format, guess }: RecordedDrives["files"][number]["log"]): string {
  if (format !== "table") return format;
  return guess.columns.length > 1 && guess.layout.includes("columns divided by tabs") ? "tsv" : "csv";
}
