import { countOf } from "./countOf.ts";
import type { Encoding } from "./decodeText.ts";
import { type Bounds, bounded } from "./fixBounds.ts";
import type { FixBuilder } from "./fixBuilder.ts";
import { type Fix, type Fixes, hasValues } from "./fixes.ts";
import type { ColumnGuess, FormatReading, LogGuess } from "./logFile.ts";
import type { ProblemList } from "./problemList.ts";
import { readIsoMoment } from "./readTime.ts";

/** Names that a format gives to what a point has, and what it calls a point. */
export interface XmlWords {
  readonly format: string;
  readonly point: string;
  readonly columns: Readonly<Record<"lat" | "lon" | "time" | "height" | "speed", string>>;
}

/** Times of points in XML, which lays UTC down; those without a zone are read so, and counted. */
export class XmlTimes {
  private zoneless = 0;
  private readonly offsets = new Map<number, number>();
  private readonly problems: ProblemList;

  constructor(problems: ProblemList) {
    this.problems = problems;
  }

  /** Puts the time written into the point, or notes what stands there where it is none. */
  take(point: Fix, text: string): void {
    const moment = readIsoMoment(text);
    if (!moment) {
      const found = `found time "${text.slice(0, 40)}", wanted one like 2024-05-03T08:12:05Z`;
      this.problems.bad("badTime", point.line, found);
      return;
    }
    point.time_s = moment.time_s;
    if (moment.utcOffset_s === undefined) {
      this.zoneless++;
    } else {
      this.offsets.set(moment.utcOffset_s, (this.offsets.get(moment.utcOffset_s) ?? 0) + 1);
    }
  }

  /** What all times together say, with a note where some had no zone. */
  finish(): { readonly hasZone: boolean; readonly utcOffset_s: number } {
    if (this.zoneless > 0) {
      const times = countOf(this.zoneless, "time");
      this.problems.note("timesWithoutZone", 0, `found ${times} without a zone, read as UTC, as the format lays down`);
    }
    return { hasZone: this.zoneless === 0, utcOffset_s: commonest(this.offsets) };
  }
}

/** The fixes of points gathered from XML, and how they were understood. Heights that are all 0 m were not recorded. */
export function finishXml(
  builder: FixBuilder,
  problems: ProblemList,
  times: XmlTimes,
  encoding: Encoding,
  words: XmlWords,
): FormatReading {
  const { elevation_m } = builder.columns;
  const count = builder.count;
  if (count > 1 && elevation_m.subarray(0, count).every((each_m) => each_m === 0)) {
    elevation_m.fill(Number.NaN, 0, count);
    problems.note("zeroHeights", 0, "found every height to be 0 m, taken as not recorded");
  }
  const zone = times.finish();
  const fixes = builder.finish();
  return {
    fixes,
    hasTimes: hasValues(fixes.time_s),
    ...zone,
    badLines: problems.badLines,
    problems: problems.finish(),
    guess: guessOf(encoding, words, fixes),
    questions: [],
  };
}

/** The number in the text, or NaN for "no value" where there is none or it lies outside what the quantity can be. */
export function numberIn(text: string | undefined, bounds: Bounds): number {
  return text === undefined || text.trim() === "" ? Number.NaN : bounded(Number(text), bounds);
}

/** How a file was understood: of speeds, heights and times it says only what the points have. */
function guessOf(encoding: string, { format, point, columns }: XmlWords, fixes: Fixes): LogGuess {
  const parts = [
    ...(hasValues(fixes.time_s) ? ["times in UTC"] : ["no times"]),
    ...(hasValues(fixes.elevation_m) ? ["heights in metres"] : ["no heights"]),
    ...(hasValues(fixes.speed_mps) ? ["speed in m/s"] : ["no recorded speed"]),
  ];
  const found: readonly (readonly [role: keyof XmlWords["columns"], unit: string, isThere: boolean])[] = [
    ["lat", "deg", true],
    ["lon", "deg", true],
    ["time", "ISO", hasValues(fixes.time_s)],
    ["height", "m", hasValues(fixes.elevation_m)],
    ["speed", "mps", hasValues(fixes.speed_mps)],
  ];
  return {
    encoding,
    layout: [`${format}, ${countOf(fixes.count, point)}`, parts.join(", ")],
    columns: found
      .filter(([, , isThere]) => isThere)
      .map(([role, unit], index): ColumnGuess => {
        const evidence = "laid down by the format";
        return { index, header: columns[role], role, unit, evidence, sample: "" };
      }),
  };
}

/** The value counted most often, the first of equals; 0 where there is none. */
function commonest(counts: ReadonlyMap<number, number>): number {
  return [...counts].reduce((most, each) => (each[1] > most[1] ? each : most), [0, 0])[0];
}
