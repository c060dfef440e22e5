// What a log staged shows: its figures and tables. Past 150 lines, all of it wording.
import type { Job } from "../../../shared/job/job.ts";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import type { Candidate, Channels, Trace } from "../../../sim/index.ts";
import { daysDistribution } from "../../charts/daysDistribution.ts";
import type { Drawing } from "../../charts/parts/figure/chart.ts";
import { emptyFigure } from "../../charts/parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "../../charts/parts/figure/figureUnits.ts";
import { threeFigures } from "../../charts/parts/figure/threeFigures.ts";
import { cutTrackEnds } from "../../charts/parts/track/cutTrackEnds.ts";
import { behindAlong, useAlong } from "../../charts/parts/track/useAlong.ts";
import { rawAgainstCleaned } from "../../charts/rawAgainstCleaned.ts";
import { routeMap } from "../../charts/routeMap.ts";
import type { LogInView } from "../../log/logInView.ts";
import { medianDay, pieceChoices } from "../../log/logPieces.ts";
import { CUT_m, type KeptTrack } from "../../log/logStaging.ts";
import { dayWords } from "../../log/logText.ts";
import { durationWords } from "../../log/readingWords.ts";
import type { Drive, PieceView } from "../../worker/roads/roadsApi.ts";
import { keepDrawn } from "./keepDrawn.ts";
import type { Figure, Table, Worked } from "./section.ts";

export interface LogInput {
  readonly shown: LogInView;
  readonly units: UnitHabit;
  readonly job: Pick<Job, "usualDay_km" | "longestDay_km">;
  readonly candidates: readonly Pick<Candidate, "name" | "range_km">[];
}

/** Raw against cleaned, the map, the trips, and the days with how far the packs go; a figure each time it is asked. */
export function* logWorked({ shown, units, job, candidates }: LogInput, drawing: Drawing): Generator<Worked, void> {
  const { drive, view, cutsEnds, labels } = shown;
  if (drive.trips.length === 0) return;
  const words = view && pieceChoices(drive, units).find(({ key }) => key === view.piece)?.words;
  if (view && words !== undefined) {
    const { document, width_px, units: figureUnits } = drawing;
    yield speedFigure(view, words, document, width_px, figureUnits);
    if (view.track) {
      yield { ...placeFigure(view, words, cutsEnds, document, width_px, figureUnits), name: "logMap" };
    }
  }
  yield tripTable(drive, units);
  yield dayTable(drive, labels, units);
  const driven = drive.days.filter((day) => day.trips > 0);
  if (driven.length < 2) return;
  const usual_m = medianDay(drive)?.distance_m ?? 0;
  yield {
    name: "logDays",
    caption: `How long are the days? Those of the log by their distance; the middle day is ${writeQuantity("distance", usual_m / M_PER_KM, units)}, the job's own usual and longest day are marked`,
    chart: daysDistribution(
      {
        days_m: driven.map(({ distance_m }) => distance_m),
        usual_m: job.usualDay_km * M_PER_KM,
        longest_m: (job.longestDay_km ?? job.usualDay_km) * M_PER_KM,
        packs: candidates.map(({ name, range_km }, index) => ({ name, index, range_m: range_km * M_PER_KM })),
      },
      drawing,
    ),
  };
}

// What a log staged looks like does not follow the job, and a week of it takes a tenth of a second to draw.
const speedFigure = keepDrawn(
  ({ raw, cleaned, tripRows }: PieceView, words: string, ...on: DrawnOn): Figure => ({
    name: "log",
    caption: `What was mended in the log? As recorded and as cleaned: ${words}${tripRows.length > 1 ? ", its trips laid end to end" : ""}; what was mended is shaded`,
    chart: rawAgainstCleaned({ raw, cleaned }, drawingOn(on)),
  }),
);
const placeFigure = keepDrawn(
  ({ cleaned, track, tripRows }: PieceView, words: string, cutsEnds: boolean, ...on: DrawnOn): Figure => {
    const { time_s, speed_mps, isRepaired } = cleaned;
    const places = track ?? { latitude_deg: new Float64Array(0), longitude_deg: new Float64Array(0) };
    const whole = { ...places, time_s, speed_mps, isRepaired, partRows: tripRows.slice(1) };
    return mapFigure(whole, cutsEnds, `Where was it driven? The track of ${words}`, drawingOn(on));
  },
);

/** A drawing's parts, each of which can be told to be the same as before. */
type DrawnOn = [document: Document, width_px: number, units: Drawing["units"]];

function drawingOn([document, width_px, units]: DrawnOn): Drawing {
  return { document, width_px, ...(units && { units }) };
}

function mapFigure(
  whole: Parameters<typeof routeMap>[0],
  cutsEnds: boolean,
  caption: string,
  drawing: Drawing,
): Figure {
  const cut = cutTrackEnds(whole, cutsEnds ? CUT_m : 0);
  const isGone = cut.time_s.length === 0;
  const { height } = drawing.units ?? METRIC;
  const format = (length_m: number) => `${threeFigures(inUnit(height, length_m))} ${height.sign}`;
  const tooShort = `Every trip is shorter than the ${format(2 * CUT_m)} that maps leave out, so there is no track to show.`;
  return {
    caption: `${caption}${cutsEnds ? `, without the first and last ${format(CUT_m)} of every trip` : ""}`,
    chart: isGone ? emptyFigure(drawing, tooShort) : routeMap(cut, drawing),
  };
}

/** The map of a recorded road in the job with a run over it, or the sentence that its positions are not here. */
export function keptMap(
  { keptTrack, road, channels }: { keptTrack: KeptTrack; road: Trace; channels: Channels | undefined },
  drawing: Drawing,
): Figure {
  const { document, width_px, units } = drawing;
  return trackFigure(keptTrack, road, channels, document, width_px, units);
}

const trackFigure = keepDrawn(
  ({ track }: KeptTrack, road: Trace, channels: Channels | undefined, ...on: DrawnOn): Figure => {
    const drawing = drawingOn(on);
    if (!track || track.latitude_deg.length !== road.time_s.length) {
      const gone =
        "The positions of this road are not in this browser: they never go into a job file. Speed, distance and height are all here.";
      return { caption: `Where was it driven? ${road.title}`, chart: emptyFigure(drawing, gone) };
    }
    const { time_s, speed_mps } = road;
    const along_m = distanceAlong_m(time_s, speed_mps);
    const whole = {
      ...track,
      time_s,
      speed_mps,
      partRows: track.tripRows.slice(1),
      ...(channels && { use_Whpkm: useAlong(channels, along_m), isBehind: behindAlong(channels, along_m) }),
    };
    return mapFigure(
      whole,
      true,
      channels ? `Where does the road take its energy? ${road.title}` : `Where was it driven? ${road.title}`,
      drawing,
    );
  },
);

/** Metres along a trace at each of its samples. */
function distanceAlong_m(time_s: Float64Array, speed_mps: Float64Array): Float64Array {
  const along_m = new Float64Array(time_s.length);
  for (let i = 1; i < time_s.length; i++) {
    const mean_mps = ((speed_mps[i] as number) + (speed_mps[i - 1] as number)) / 2;
    along_m[i] = (along_m[i - 1] as number) + mean_mps * ((time_s[i] as number) - (time_s[i - 1] as number));
  }
  return along_m;
}

function tripTable({ trips }: Drive, units: UnitHabit): Table {
  return {
    caption: "Trips in the log",
    columns: [
      { title: "Trip" },
      { title: "Start", isText: true },
      { title: "Distance" },
      { title: "Time" },
      { title: "Mean speed" },
      { title: "Top speed" },
      { title: "Climb" },
      { title: "Stops" },
      { title: "Most like", isText: true },
    ],
    rows: trips.map((trip, i) => [
      String(i + 1),
      `${shortDay(trip.date)}\u00a0${trip.clock}`,
      writeQuantity("distance", trip.distance_m / M_PER_KM, units),
      durationWords(trip.duration_s),
      writeQuantity("speed", trip.mean_mps / MPS_PER_KMH, units),
      writeQuantity("speed", trip.max_mps / MPS_PER_KMH, units),
      trip.climb_m === undefined ? "not known" : writeQuantity("elevation", trip.climb_m, units),
      String(trip.stops),
      trip.like === "" ? "nothing on board" : `${trip.like}: ${inReadersUnits(trip.difference, units)}`,
    ]),
  };
}

function dayTable({ days, places }: Drive, labels: LogInView["labels"], units: UnitHabit): Table {
  return {
    caption: "Days of the log, and how long the car stands for a charge",
    columns: [
      { title: "Day" },
      { title: "Trips" },
      { title: "Distance" },
      { title: "Driving" },
      { title: "Climb" },
      { title: "Longest time parked", isText: true },
    ],
    rows: days.map(({ date, trips, distance_m, driving_s, climb_m, parked }) => [
      shortDay(date),
      String(trips),
      writeQuantity("distance", distance_m / M_PER_KM, units),
      durationWords(driving_s),
      writeQuantity("elevation", climb_m, units),
      parked
        ? `${durationWords(parked.long_s)} from ${parked.from}${placeWords(parked.place, places, labels)}`
        : "not in the log",
    ]),
  };
}

function placeWords(place: number | undefined, places: Drive["places"], labels: LogInView["labels"]): string {
  return place === undefined ? "" : `, ${labels[place] ?? places[place]?.label ?? "unknown"}`;
}

/** A day that stays on one line of a narrow table; the log's year is known. */
function shortDay(date: string): string {
  return dayWords(date)
    .replace(/ \d{4}$/, "")
    .replaceAll(" ", "\u00a0");
}
