import { accuracyOfHdop_m } from "../log/accuracyOfHdop.ts";
import { countOf } from "../log/countOf.ts";
import type { Encoding } from "../log/decodeText.ts";
import { type Bounds, bounded, fixBounds } from "../log/fixBounds.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { emptyFix, type Fix, hasValues } from "../log/fixes.ts";
import type { FormatReading } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import { type Moment, readIsoMoment } from "../log/readTime.ts";
import { gpxGuess } from "./gpxGuess.ts";

/** What the elements of a GPX file say, gathered point by point [GPX11, element trkType]; the tokeniser is the caller's. */
export class GpxReading {
  readonly problems: ProblemList;
  private readonly track = new FixBuilder();
  private readonly route = new FixBuilder();
  private point: Fix | undefined;
  private pointName = "";
  private field = "";
  private value = "";
  private segment = 0;
  private zoneless = 0;
  private offsets = new Map<number, number>();

  constructor(name: string) {
    this.problems = new ProblemList(name);
  }

  open(element: string, attributes: Readonly<Record<string, string>>, line: number): void {
    if (element === "trkpt" || element === "rtept") {
      this.keepPoint(); // a point that was never closed
      this.pointName = element;
      this.point = emptyFix(line, this.segment);
      this.point.latitude_deg = numberIn(attributes["lat"], fixBounds.latitude_deg);
      this.point.longitude_deg = numberIn(attributes["lon"], fixBounds.longitude_deg);
      if (Number.isNaN(this.point.latitude_deg) || Number.isNaN(this.point.longitude_deg)) {
        const found = `lat="${shown(attributes["lat"])}" lon="${shown(attributes["lon"])}"`;
        this.problems.bad("badPosition", line, `found ${found}, wanted degrees within 90 and 180`);
        this.point = undefined;
      }
    } else if (element === "trkseg" || element === "rte" || element === "trk") {
      this.keepPoint();
      this.segment++;
    }
    this.field = element;
    this.value = "";
  }

  text(text: string): void {
    if (this.point && this.value.length < 100) {
      this.value += text;
    }
  }

  close(element: string): void {
    if (element === this.pointName) {
      this.keepPoint();
    } else if (this.point && element === this.field) {
      this.take(this.point, element, this.value.trim());
    }
    this.field = "";
  }

  end(depth: number, line: number): void {
    if (this.point) {
      this.problems.bad("cutFile", this.point.line, "found a point that the end of the file cuts in half, left out");
    } else if (depth > 0) {
      this.problems.note(
        "cutFile",
        line,
        "found the end of the file before the end of the log, read as far as it goes",
      );
    }
  }

  finish(encoding: Encoding): FormatReading {
    const builder = this.track.count > 0 ? this.track : this.route;
    const columns = builder.columns;
    const zeroHeights =
      builder.count > 1 && columns.elevation_m.subarray(0, builder.count).every((elevation_m) => elevation_m === 0);
    if (zeroHeights) {
      columns.elevation_m.fill(Number.NaN, 0, builder.count);
      this.problems.note("zeroHeights", 0, "found every height to be 0 m, taken as not recorded");
    }
    if (this.zoneless > 0) {
      const times = countOf(this.zoneless, "time");
      this.problems.note("timesWithoutZone", 0, `found ${times} without a zone, read as UTC, as the format lays down`);
    }
    const fixes = builder.finish();
    return {
      fixes,
      hasTimes: hasValues(fixes.time_s),
      hasZone: this.zoneless === 0,
      utcOffset_s: commonest(this.offsets),
      badLines: this.problems.badLines,
      problems: this.problems.finish(),
      guess: gpxGuess(encoding, builder === this.track, fixes),
      questions: [],
    };
  }

  private take(point: Fix, element: string, text: string): void {
    if (element === "time") {
      const moment = readIsoMoment(text);
      if (moment) {
        this.takeTime(point, moment);
      } else {
        this.problems.bad("badTime", point.line, `found time "${shown(text)}", wanted one like 2024-05-03T08:12:05Z`);
      }
    } else if (element === "ele") {
      point.elevation_m = numberIn(text, fixBounds.elevation_m);
    } else if (element === "speed") {
      point.speed_mps = numberIn(text, fixBounds.speed_mps);
    } else if (element === "hdop") {
      point.accuracy_m = accuracyOfHdop_m(numberIn(text, fixBounds.hdop));
    }
  }

  private takeTime(point: Fix, moment: Moment): void {
    point.time_s = moment.time_s;
    if (moment.utcOffset_s === undefined) {
      this.zoneless++;
    } else {
      this.offsets.set(moment.utcOffset_s, (this.offsets.get(moment.utcOffset_s) ?? 0) + 1);
    }
  }

  private keepPoint(): void {
    if (this.point) {
      (this.pointName === "trkpt" ? this.track : this.route).add(this.point);
    }
    this.point = undefined;
    this.pointName = "";
  }
}

/** The number in the text, or NaN for "no value" where there is none or it lies outside what the quantity can be. */
function numberIn(text: string | undefined, bounds: Bounds): number {
  return text === undefined || text.trim() === "" ? Number.NaN : bounded(Number(text), bounds);
}

function shown(text: string | undefined): string {
  return (text ?? "").slice(0, 40);
}

/** The value counted most often, the first of equals; 0 where there is none. */
function commonest(counts: ReadonlyMap<number, number>): number {
  return [...counts].reduce((most, each) => (each[1] > most[1] ? each : most), [0, 0])[0];
}
