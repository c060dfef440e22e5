// Longer than most files: the tokeniser's events and what becomes of them are one reader.
import sax from "sax";
import { inputError } from "../../shared/problems.ts";
import { type Encoding, textPieces } from "./decodeText.ts";
import { emptyFix, type Fix, FixBuilder, type Fixes, hasValues } from "./fixes.ts";
import type { ColumnGuess, FormatReading } from "./logFile.ts";
import { ProblemList } from "./problemList.ts";
import { type Moment, readIsoMoment } from "./readTime.ts";
import type { Steps } from "./steps.ts";

/** Elements nest a handful deep in a log; beyond this the file is not one. */
const DEEPEST = 64;
/** Usual error of one receiver's range, so that dilution times this is a standard deviation: assumed, common practice. */
const RANGE_ERROR_m = 3;

/**
 * Fixes of a GPX 1.0 or 1.1 file [GPX11, element trkType]: tracks and segments, or the points of a route. Prefixes
 * are ignored. Speed is read where 1.0 has it and from any extension, in m/s. Broken or cut XML is read as far as it
 * goes, every fault with its line. Entities are refused, nothing is expanded or fetched.
 */
export function* readGpx(name: string, bytes: Uint8Array, encoding: Encoding): Steps<FormatReading> {
  const reading = new GpxReading(name);
  const parser = sax.parser(true, { position: true });
  let depth = 0;
  parser.onerror = (error) => {
    reading.problems.note("brokenXml", parser.line + 1, `found broken XML, ${firstLine(error.message)}`);
    parser.error = null as unknown as Error; // the tokeniser's own way to go on after an error
  };
  parser.ondoctype = (doctype) => {
    if (/<!ENTITY/i.test(doctype)) {
      throw inputError("xmlEntities", name, "found XML that declares entities, which a log never needs; it is refused");
    }
    if (/\b(?:SYSTEM|PUBLIC)\s+["']/.test(doctype)) {
      const found = "found XML that draws on a definition outside the file, which a log never needs";
      throw inputError("xmlEntities", name, `${found}; it is refused, and nothing is fetched`);
    }
  };
  parser.onopentag = (tag) => {
    if (++depth > DEEPEST) {
      throw inputError("notALog", name, `found elements nested more than ${DEEPEST} deep, wanted a GPX log`);
    }
    reading.open(localName(tag.name), tag.attributes as Readonly<Record<string, string>>, parser.line + 1);
  };
  parser.onclosetag = (tagName) => {
    depth = Math.max(0, depth - 1);
    reading.close(localName(tagName));
  };
  parser.ontext = (text) => reading.text(text);
  parser.oncdata = (text) => reading.text(text);

  let seenRoot = false;
  for (const { text, done_frac } of textPieces(bytes, encoding)) {
    if (!seenRoot && /<!ENTITY/i.test(text)) {
      throw inputError("xmlEntities", name, "found XML that declares entities, which a log never needs; it is refused");
    }
    parser.write(text);
    seenRoot ||= depth > 0;
    yield done_frac;
  }
  reading.end(depth, parser.line + 1);
  return reading.finish(encoding);
}

class GpxReading {
  readonly problems: ProblemList;
  private readonly track = new FixBuilder();
  private readonly route = new FixBuilder();
  private readonly elements = new Map<string, number>();
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
      this.point.lat_deg = degrees(attributes["lat"], 90);
      this.point.lon_deg = degrees(attributes["lon"], 180);
      if (Number.isNaN(this.point.lat_deg) || Number.isNaN(this.point.lon_deg)) {
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
    const zeroHeights = builder.count > 1 && allZero(columns.height_m, builder.count);
    if (zeroHeights) {
      columns.height_m.fill(Number.NaN, 0, builder.count);
      this.problems.note("zeroHeights", 0, "found every height to be 0 m, taken as not recorded");
    }
    if (this.zoneless > 0) {
      const message = `found ${this.zoneless} times without a zone, read as UTC, as the format lays down`;
      this.problems.note("timesWithoutZone", 0, message);
    }
    const fixes = builder.finish();
    return {
      fixes,
      hasTimes: hasValues(fixes.time_s),
      hasZone: this.zoneless === 0,
      utcOffset_s: commonest(this.offsets),
      badLines: this.problems.badLines,
      problems: this.problems.finish(),
      guess: { encoding, layout: this.layout(builder === this.track, fixes), columns: guessOf(fixes) },
      questions: [],
    };
  }

  private layout(isTrack: boolean, fixes: Fixes): readonly string[] {
    const count = (name: string) => this.elements.get(name) ?? 0;
    const points = isTrack ? `${count("trkpt")} track points` : `${count("rtept")} route points`;
    const parts = [
      ...(hasValues(fixes.time_s) ? ["times in UTC"] : ["no times"]),
      ...(hasValues(fixes.height_m) ? ["heights in metres"] : ["no heights"]),
      ...(hasValues(fixes.speed_mps) ? ["speed in m/s"] : ["no recorded speed"]),
    ];
    return [`GPX, ${points}`, parts.join(", ")];
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
      point.height_m = finite(text, -500, 9000);
    } else if (element === "speed") {
      point.speed_mps = finite(text, 0, 1000);
    } else if (element === "hdop") {
      point.accuracy_m = finite(text, 0, 100) * RANGE_ERROR_m;
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
      this.elements.set(this.pointName, (this.elements.get(this.pointName) ?? 0) + 1);
    }
    this.point = undefined;
    this.pointName = "";
  }
}

function guessOf(fixes: Fixes): readonly ColumnGuess[] {
  const column = (index: number, header: string, role: ColumnGuess["role"], unit: string): ColumnGuess => ({
    index,
    header,
    role,
    unit,
    evidence: "laid down by the format",
    sample: "",
  });
  const columns = [column(0, "lat", "lat", "deg"), column(1, "lon", "lon", "deg")];
  if (hasValues(fixes.time_s)) {
    columns.push(column(2, "time", "time", "ISO"));
  }
  if (hasValues(fixes.height_m)) {
    columns.push(column(3, "ele", "height", "m"));
  }
  if (hasValues(fixes.speed_mps)) {
    columns.push(column(4, "speed", "speed", "mps"));
  }
  return columns;
}

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1).toLowerCase();
}

function degrees(text: string | undefined, limit_deg: number): number {
  return text === undefined || text.trim() === "" ? Number.NaN : finite(text, -limit_deg, limit_deg);
}

/** The number in the text, or NaN for "no value" where there is none or it lies outside what the quantity can be. */
function finite(text: string, least: number, most: number): number {
  const value = text.trim() === "" ? Number.NaN : Number(text);
  return value >= least && value <= most ? value : Number.NaN;
}

function shown(text: string | undefined): string {
  return (text ?? "").slice(0, 40);
}

function firstLine(text: string): string {
  return text.split("\n", 1)[0].toLowerCase().slice(0, 80);
}

function allZero(column: Float64Array, count: number): boolean {
  for (let i = 0; i < count; i++) {
    if (column[i] !== 0) {
      return false;
    }
  }
  return true;
}

function commonest(counts: ReadonlyMap<number, number>): number {
  let best = 0;
  let most = 0;
  for (const [value, count] of counts) {
    if (count > most) {
      best = value;
      most = count;
    }
  }
  return best;
}
