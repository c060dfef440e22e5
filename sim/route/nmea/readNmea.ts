import { S_PER_DAY } from "../../../shared/units.ts";
import { countOf } from "../log/countOf.ts";
import { type Encoding, eachLine } from "../log/decodeText.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { hasValues } from "../log/fixes.ts";
import type { FormatReading, Question, ReadLogOptions } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import { readIsoMoment } from "../log/readTime.ts";
import type { Steps } from "../log/steps.ts";
import { addSentence, emptyEpoch, type NmeaEpoch } from "./nmeaEpoch.ts";
import { type Sentence, sentencesOf } from "./nmeaSentence.ts";
import { nmeaClock_s } from "./nmeaTime.ts";

/**
 * Fixes of an NMEA 0183 log from its RMC, GGA, GNS, VTG and ZDA sentences, any talker, wherever in a line they stand
 * [NMEA0183, sentence formats]. A sentence that fails its checksum is counted and left out, one without a checksum is
 * read and noted. Void fixes are left out. GGA and GNS carry no date: it comes from RMC or ZDA, and turns over where the
 * clock passes midnight.
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

/** Gathers sentences into moments and moments into fixes, and keeps the day that their clocks belong to. */
class NmeaReading {
  private readonly problems: ProblemList;
  private readonly builder = new FixBuilder();
  private readonly options: ReadLogOptions;
  private epoch: NmeaEpoch | undefined;
  private day_s = 0;
  private lastClock_s = Number.NaN;
  private datedFrom = -1;
  private readonly counts = { void: 0, noChecksum: 0, sentences: 0 };

  constructor(name: string, options: ReadLogOptions) {
    this.problems = new ProblemList(name);
    this.options = options;
  }

  line(line: string, lineNumber: number): void {
    for (const sentence of sentencesOf(line)) {
      if ("fault" in sentence) {
        this.problems.bad(sentence.fault, lineNumber, sentence.message);
      } else {
        this.counts.sentences++;
        this.counts.noChecksum += sentence.hasChecksum ? 0 : 1;
        this.take(sentence, lineNumber);
      }
    }
  }

  finish(encoding: Encoding): FormatReading {
    this.flush();
    if (this.counts.void > 0) {
      this.problems.note("voidFixes", 0, `found ${countOf(this.counts.void, "moment")} without a lock, left out`);
    }
    if (this.counts.noChecksum > 0) {
      const sentences = countOf(this.counts.noChecksum, "sentence");
      this.problems.note("noChecksum", 0, `found ${sentences} without a checksum, read unchecked`);
    }
    const questions = this.dateQuestions();
    const fixes = this.builder.finish();
    const sentences = countOf(this.counts.sentences, "sentence");
    const layout = [`NMEA 0183, ${sentences}`, "times in UTC, speed in knots, height in metres"];
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

  private take(sentence: Sentence, line: number): void {
    if (sentence.type === "VTG") {
      if (this.epoch) {
        addSentence(this.epoch, sentence); // it has no clock of its own
      }
      return;
    }
    const clock_s = nmeaClock_s(sentence.fields[1]);
    if (clock_s === undefined) {
      return; // before lock, receivers leave the clock empty
    }
    if (this.epoch?.clock_s !== clock_s) {
      this.flush();
    }
    this.epoch ??= emptyEpoch(clock_s, line);
    addSentence(this.epoch, sentence);
  }

  private flush(): void {
    const epoch = this.epoch;
    this.epoch = undefined;
    if (!epoch) {
      return;
    }
    if (epoch.clock_s < this.lastClock_s - S_PER_DAY / 2) {
      this.day_s += S_PER_DAY;
    }
    this.lastClock_s = epoch.clock_s;
    if (!Number.isNaN(epoch.day_s)) {
      if (this.datedFrom < 0) {
        this.datedFrom = this.builder.count;
        this.moveUndated(epoch.day_s - this.day_s);
      }
      this.day_s = epoch.day_s;
    }
    const hasPlace = !Number.isNaN(epoch.latitude_deg) && !Number.isNaN(epoch.longitude_deg);
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
