// Longer than most files: sentences, moments and the turning date are one state.
import GPS from "gps";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { type Encoding, eachLine } from "./decodeText.ts";
import { emptyFix, FixBuilder, hasValues } from "./fixes.ts";
import type { FormatReading, Question, ReadLogOptions } from "./logFile.ts";
import { ProblemList } from "./problemList.ts";
import { dayStart_s, readIsoMoment } from "./readTime.ts";
import type { Steps } from "./steps.ts";

const S_PER_DAY = 86400;
/** Usual error of one receiver's range, so that dilution times this is a standard deviation: assumed, common practice. */
const RANGE_ERROR_m = 3;
const sentencePattern = /\$[A-Z]{2}(RMC|GGA|VTG|GNS|ZDA),[^$*\r\n]*(\*[0-9A-Fa-f]{2})?/g;

/** What the sentences of one moment said. */
interface Epoch {
  clock_s: number;
  day_s: number;
  isVoid: boolean;
  lat_deg: number;
  lon_deg: number;
  speed_mps: number;
  height_m: number;
  accuracy_m: number;
  line: number;
}

/**
 * Fixes of an NMEA 0183 log from its RMC, GGA, GNS, VTG and ZDA sentences, any talker, wherever in a line they stand
 * [NMEA0183, sentence formats]. The checksum is the exclusive-or of all characters between $ and *; a sentence that
 * fails it is counted and left out, one without a checksum is read and noted. Void fixes are left out. GGA and GNS
 * carry no date: it comes from RMC or ZDA, and turns over where the clock passes midnight.
 */
export function* readNmea(
  name: string,
  bytes: Uint8Array,
  encoding: Encoding,
  options: ReadLogOptions,
): Steps<FormatReading> {
  const reading = new NmeaReading(name, options);
  yield* eachLine(bytes, encoding, (line, lineNumber) => reading.line(line, lineNumber));
  return reading.finish(encoding);
}

class NmeaReading {
  private readonly problems: ProblemList;
  private readonly builder = new FixBuilder();
  private readonly options: ReadLogOptions;
  private epoch: Epoch | undefined;
  private day_s = 0;
  private lastClock_s = Number.NaN;
  private datedFrom = -1;
  private readonly counts = { void: 0, noChecksum: 0, midnights: 0, sentences: 0 };

  constructor(name: string, options: ReadLogOptions) {
    this.problems = new ProblemList(name);
    this.options = options;
  }

  line(line: string, lineNumber: number): void {
    let found = 0;
    for (const match of line.matchAll(sentencePattern)) {
      found++;
      this.sentence(match[0], match[1], match[2] !== undefined, lineNumber);
    }
    if (found === 0 && /[A-Z]{2}(?:RMC|GGA|GNS|VTG|ZDA),/.test(line)) {
      this.problems.bad("brokenSentence", lineNumber, "found part of a sentence, wanted one from $ to the checksum");
    }
  }

  finish(encoding: Encoding): FormatReading {
    this.flush();
    if (this.counts.void > 0) {
      this.problems.note("voidFixes", 0, `found ${this.counts.void} moments without a lock, left out`);
    }
    if (this.counts.noChecksum > 0) {
      const message = `found ${this.counts.noChecksum} sentences without a checksum, read unchecked`;
      this.problems.note("noChecksum", 0, message);
    }
    const questions = this.dateQuestions();
    const fixes = this.builder.finish();
    const layout = [`NMEA 0183, ${this.counts.sentences} sentences`, "times in UTC, speed in knots, height in metres"];
    if (hasValues(fixes.speed_mps)) {
      layout.push("speed from RMC or VTG");
    }
    return {
      fixes,
      hasTimes: hasValues(fixes.time_s),
      hasZone: true,
      utcOffset_s: 0,
      badLines: this.problems.badLines,
      problems: this.problems.finish(),
      guess: { encoding, layout, columns: [] },
      questions,
    };
  }

  private sentence(text: string, type: string, hasChecksum: boolean, line: number): void {
    if (!hasChecksum) {
      if (!text.includes(",", 7) || text.length < 12) {
        this.problems.bad("brokenSentence", line, "found a sentence cut short, wanted one up to its checksum");
        return;
      }
      this.counts.noChecksum++;
    }
    const full = hasChecksum ? text : `${text.trimEnd()}*${checksum(text.trimEnd())}`;
    const parsed = parse(full);
    if (parsed === false) {
      this.problems.bad("brokenSentence", line, `found a ${type} sentence with fields out of form`);
      return;
    }
    if (!parsed.valid) {
      const wanted = checksum(full.slice(0, full.lastIndexOf("*")));
      this.problems.bad("badChecksum", line, `found checksum ${full.slice(-2)} in ${type}, the text gives ${wanted}`);
      return;
    }
    this.counts.sentences++;
    this.take(parsed, full.split(","), line);
  }

  private take(parsed: Exclude<ReturnType<typeof GPS.Parse>, false>, fields: readonly string[], line: number): void {
    if (parsed.type === "VTG") {
      if (this.epoch && parsed.speed !== null) {
        this.epoch.speed_mps = inRange(parsed.speed * MPS_PER_KMH, 0, 1000);
      }
      return;
    }
    const clock_s = clockOf(fields[1]);
    if (clock_s === undefined) {
      return; // before lock, receivers leave the clock empty
    }
    const epoch = this.epochAt(clock_s, line);
    if (parsed.type === "RMC") {
      epoch.day_s = dayOf(fields[9]) ?? epoch.day_s;
      epoch.isVoid ||= parsed.status !== "active";
      if (parsed.speed !== null) {
        epoch.speed_mps = inRange(parsed.speed * MPS_PER_KMH, 0, 1000);
      }
      this.place(epoch, parsed.lat, parsed.lon);
    } else if (parsed.type === "GGA") {
      epoch.isVoid ||= parsed.quality === null;
      epoch.height_m = inRange(parsed.alt, -500, 9000);
      epoch.accuracy_m = inRange(parsed.hdop, 0, 100) * RANGE_ERROR_m;
      this.place(epoch, parsed.lat, parsed.lon);
    } else if (parsed.type === "GNS") {
      epoch.isVoid ||= /^N*$/.test(parsed.mode ?? "");
      epoch.height_m = inRange(parsed.alt, -500, 9000);
      epoch.accuracy_m = inRange(parsed.hdop, 0, 100) * RANGE_ERROR_m;
      this.place(epoch, parsed.lat, parsed.lon);
    } else if (parsed.type === "ZDA") {
      epoch.day_s = dayStart_s(Number(fields[4]), Number(fields[3]), Number(fields[2])) ?? epoch.day_s;
    }
  }

  private place(epoch: Epoch, lat_deg: number | null, lon_deg: number | null): void {
    const lat = inRange(lat_deg, -90, 90);
    const lon = inRange(lon_deg, -180, 180);
    if (!Number.isNaN(lat) && !Number.isNaN(lon)) {
      epoch.lat_deg = lat;
      epoch.lon_deg = lon;
    }
  }

  private epochAt(clock_s: number, line: number): Epoch {
    if (this.epoch && this.epoch.clock_s === clock_s) {
      return this.epoch;
    }
    this.flush();
    const { time_s: _time_s, segment: _segment, extras: _extras, ...empty } = emptyFix(line, 0);
    this.epoch = { ...empty, clock_s, day_s: Number.NaN, isVoid: false };
    return this.epoch;
  }

  private flush(): void {
    const epoch = this.epoch;
    this.epoch = undefined;
    if (!epoch) {
      return;
    }
    if (epoch.clock_s < this.lastClock_s - S_PER_DAY / 2) {
      this.day_s += S_PER_DAY;
      this.counts.midnights++;
    }
    this.lastClock_s = epoch.clock_s;
    if (!Number.isNaN(epoch.day_s)) {
      if (this.datedFrom < 0) {
        this.datedFrom = this.builder.count;
        this.moveUndated(epoch.day_s - this.day_s);
      }
      this.day_s = epoch.day_s;
    }
    const hasPlace = !Number.isNaN(epoch.lat_deg) && !Number.isNaN(epoch.lon_deg);
    if (epoch.isVoid || (!hasPlace && Number.isNaN(epoch.speed_mps))) {
      this.counts.void++;
      return;
    }
    const { clock_s, day_s: _day_s, isVoid: _isVoid, ...values } = epoch;
    this.builder.add({ ...values, time_s: this.day_s + clock_s, segment: 0, extras: {} });
  }

  /** Fixes before the first dated sentence were counted from day 0; now the day is known. */
  private moveUndated(shift_s: number): void {
    for (let i = 0; i < this.builder.count; i++) {
      this.builder.columns.time_s[i] += shift_s;
    }
  }

  private dateQuestions(): readonly Question[] {
    if (this.datedFrom >= 0 || this.builder.count === 0) {
      return [];
    }
    const given = this.options.date === undefined ? undefined : readIsoMoment(`${this.options.date} 00:00`);
    if (given) {
      this.moveUndated(given.time_s);
    }
    return [
      {
        name: "date",
        option: "--date",
        choices: [],
        guess: this.options.date ?? "",
        evidence: given ? "given" : "no sentence with a date (RMC or ZDA) in the file, only times of day",
        decided: given !== undefined,
      },
    ];
  }
}

/** The parser throws where a letter field is out of form; to us that is one broken sentence. */
function parse(sentence: string): ReturnType<typeof GPS.Parse> {
  try {
    return GPS.Parse(sentence);
  } catch {
    return false;
  }
}

function checksum(sentence: string): string {
  let sum = 0;
  for (let i = 1; i < sentence.length; i++) {
    sum ^= sentence.charCodeAt(i);
  }
  return (sum & 0xff).toString(16).toUpperCase().padStart(2, "0");
}

/** hhmmss.sss; read here because the parser fills a missing date with the computer's own. */
function clockOf(field: string | undefined): number | undefined {
  const found = /^(\d{2})(\d{2})(\d{2}(?:\.\d*)?)$/.exec(field ?? "");
  if (!found) {
    return undefined;
  }
  const clock_s = Number(found[1]) * 3600 + Number(found[2]) * 60 + Number(found[3]);
  return clock_s <= S_PER_DAY ? clock_s : undefined;
}

/** ddmmyy; 80 to 99 are the last century's. */
function dayOf(field: string | undefined): number | undefined {
  const found = /^(\d{2})(\d{2})(\d{2})$/.exec(field ?? "");
  if (!found) {
    return undefined;
  }
  const year = Number(found[3]);
  return dayStart_s(year >= 80 ? 1900 + year : 2000 + year, Number(found[2]), Number(found[1]));
}

function inRange(value: number | null, least: number, most: number): number {
  return value !== null && value >= least && value <= most ? value : Number.NaN;
}
