// Longer than most files: one pass over the rows needs columns, time, angles and open questions together.
import { inputError } from "../../shared/problems.ts";
import { mpsPer, type Scale, scaleOf } from "./columnUnits.ts";
import { currentSignQuestion } from "./currentSign.ts";
import { type Encoding, eachLine } from "./decodeText.ts";
import { type ExtraName, emptyFix, type Fix, FixBuilder, type Fixes, hasValues } from "./fixes.ts";
import { guessColumns, guessedTimeForm } from "./guessColumns.ts";
import type { ColumnGuess, ColumnRole, FormatReading, Question, ReadLogOptions, SpeedUnit } from "./logFile.ts";
import { LongTable } from "./longTable.ts";
import { ProblemList } from "./problemList.ts";
import { type AngleForm, readAngle } from "./readAngle.ts";
import { readNumber } from "./readNumber.ts";
import { type DateOrder, dateParts, dayStart_s, readDate_s, readIsoMoment, splitDateTime } from "./readTime.ts";
import { speedUnitQuestion } from "./speedUnit.ts";
import type { Steps } from "./steps.ts";
import { splitRows, type TableLayout, tableLayout } from "./tableLayout.ts";
import { dateOrder, type TimeForm, TimeReader } from "./tableTime.ts";

/** Lines looked at before anything is read. */
const SAMPLE_LINES = 400;
/** Lines handed to the table parser at once. */
const BATCH_LINES = 500;
const RANGE_ERROR_m = 3; // dilution times this is a standard deviation: assumed, common practice

const extraOf: Partial<Record<ColumnRole, ExtraName>> = {
  packVoltage: "packVoltage_V",
  packCurrent: "packCurrent_A",
  motorSpeed: "motorSpeed_radps",
  temperature: "temperature_K",
};
/** Bounds of what a column may hold, in SI; what lies outside is no value. */
const bounds: Readonly<Partial<Record<ColumnRole, readonly [number, number]>>> = {
  height: [-500, 9000],
  accuracy: [0, 10000],
  packVoltage: [0, 2000],
  packCurrent: [-5000, 5000],
  motorSpeed: [-5000, 5000],
  temperature: [200, 600],
};

/**
 * Fixes of a table of values: delimiter, decimal sign, header, units row and preamble are found, columns guessed from
 * their names and values. Values are read as the file writes them; what it leaves open comes back as questions.
 */
export function* readTable(
  name: string,
  bytes: Uint8Array,
  encoding: Encoding,
  options: ReadLogOptions,
): Steps<FormatReading> {
  const sample: string[] = [];
  for (const _ of eachLine(bytes, encoding, (line) => sample.length < SAMPLE_LINES && sample.push(line), 4096)) {
    if (sample.length >= SAMPLE_LINES) {
      break;
    }
  }
  const layout = tableLayout(sample);
  if (!layout) {
    throw inputError(
      "notALog",
      name,
      "found text without a table of numbers in it, wanted a GPX, NMEA 0183, CSV or TSV log",
    );
  }
  const reading = new TableReading(name, layout, options);
  let batch: string[] = [];
  let firstOfBatch = layout.firstDataLine + 1;
  const flush = () => {
    reading.lines(batch, firstOfBatch);
    firstOfBatch += batch.length;
    batch = [];
  };
  const take = (line: string, lineNumber: number) => {
    if (lineNumber > layout.firstDataLine) {
      batch.push(line.includes("\n") ? "" : line);
      if (batch.length >= BATCH_LINES) {
        flush();
      }
    }
  };
  yield* eachLine(bytes, encoding, take, 4096);
  flush();
  return reading.finish(encoding);
}

class TableReading {
  private readonly problems: ProblemList;
  private readonly builder = new FixBuilder();
  private readonly guesses: readonly ColumnGuess[];
  private readonly index = new Map<ColumnRole, number>();
  private readonly scales = new Map<ColumnRole, Scale>();
  private form: TimeForm | undefined;
  private readonly time: TimeReader | undefined;
  private readonly angleForm: AngleForm;
  private readonly long: LongTable | undefined;
  private isDateSure = true;
  private sawSign = false;
  private rows = 0;
  private readonly name: string;
  private readonly layout: TableLayout;
  private readonly options: ReadLogOptions;

  constructor(name: string, layout: TableLayout, options: ReadLogOptions) {
    this.name = name;
    this.layout = layout;
    this.options = options;
    this.problems = new ProblemList(name);
    this.long = LongTable.find(layout);
    this.guesses = this.long?.guesses ?? guessColumns(layout, options.columns);
    for (const guess of this.guesses) {
      if (guess.role !== "none") {
        this.index.set(guess.role, guess.index);
        this.scales.set(guess.role, scaleOf(guess.role, guess.unit));
      }
    }
    const timeGuess = this.guesses.find((guess) => guess.role === "time");
    this.form = timeGuess && guessedTimeForm(layout, timeGuess);
    const dateGuess = this.guesses.find((guess) => guess.role === "date");
    const dates = dateGuess && dateOrder(layout.rows.map((row) => row[dateGuess.index] ?? ""));
    let separateDate = dates?.order;
    if (this.form?.kind === "dateTime") {
      this.isDateSure = this.form.isSure;
    } else if (this.form?.kind === "clock" && dates) {
      this.isDateSure = dates.isSure;
    }
    if (!this.isDateSure && options.date !== undefined) {
      const order = orderOfFirstDate(this.writtenDates(timeGuess, dateGuess), options.date, name);
      this.form = this.form?.kind === "dateTime" ? { ...this.form, order } : this.form;
      separateDate = dates && order;
    }
    const firstDay_s = options.date === undefined ? 0 : (readIsoMoment(`${options.date} 00:00`)?.time_s ?? 0);
    this.time = this.form && new TimeReader(this.form, separateDate, firstDay_s, layout.decimal);
    this.angleForm = this.findAngleForm();
    if (!this.long && !this.index.has("speed") && !(this.index.has("lat") && this.index.has("lon"))) {
      const headers = layout.headers.filter((header) => header.trim() !== "").join(", ");
      const found =
        headers === "" ? `${layout.fieldCount} columns without names` : `the columns ${headers.slice(0, 200)}`;
      throw inputError("noSpeedOrPosition", name, `found ${found}, wanted a speed, or a latitude and a longitude`);
    }
  }

  lines(lines: readonly string[], firstLine: number): void {
    if (lines.length === 0) {
      return;
    }
    const rows = splitRows(lines.join("\n"), this.layout.delimiter);
    const isAligned = rows.length === lines.length;
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i];
      if (row.length === 0 || (row.length === 1 && row[0].trim() === "")) {
        continue;
      }
      this.row(row, isAligned ? firstLine + i : firstLine);
    }
  }

  finish(encoding: Encoding): FormatReading {
    this.long?.flush((fix) => this.builder.add(fix));
    const columns = this.builder.columns;
    const questions: Question[] = [...this.timeQuestions()];
    const fixesAsWritten: Fixes = this.builder.finish();
    if (hasValues(fixesAsWritten.speed_mps)) {
      const unit = speedUnitQuestion(fixesAsWritten, this.options.speedUnit, this.statedSpeedUnit());
      questions.push(unit);
      const factor = mpsPer[unit.guess as SpeedUnit];
      for (let i = 0; i < this.builder.count; i++) {
        columns.speed_mps[i] = fixesAsWritten.speed_mps[i] * factor;
      }
    }
    if (hasValues(fixesAsWritten.lat_deg)) {
      questions.push(this.hemisphereQuestion());
    }
    const fixes = this.builder.finish();
    const sign = currentSignQuestion(fixes, this.options.currentSign);
    if (sign) {
      questions.push(sign.question);
      const current_A = fixes.extras.packCurrent_A;
      current_A?.forEach((value, i) => {
        current_A[i] = value * sign.factor;
      });
    }
    const zoneless = this.time?.zoneless ?? 0;
    return {
      fixes,
      hasTimes: hasValues(fixes.time_s),
      hasZone: zoneless === 0,
      utcOffset_s: this.time?.utcOffset_s ?? 0,
      badLines: this.problems.badLines,
      problems: this.problems.finish(),
      guess: { encoding, layout: [...this.layout.words, this.timeWords()], columns: this.guesses },
      questions,
    };
  }

  private row(row: readonly string[], line: number): void {
    const cell = (role: ColumnRole) => row[this.index.get(role) ?? -1] ?? "";
    const fix = emptyFix(line, 0);
    if (this.time) {
      fix.time_s = this.time.read(cell("time"), cell("date"));
      if (Number.isNaN(fix.time_s) || Math.abs(fix.time_s) > 1e10) {
        this.problems.bad("badTime", line, `found time "${cell("time").slice(0, 40)}", wanted one like the others`);
        return;
      }
    } else if (this.options.interval_s !== undefined) {
      fix.time_s = this.rows * this.options.interval_s;
    } else {
      fix.time_s = this.rows;
    }
    this.rows++;
    if (this.long) {
      this.long.row(row, fix, (done) => this.builder.add(done));
      return;
    }
    if (!this.position(fix, cell, line)) {
      return;
    }
    fix.speed_mps = bounded(readNumber(cell("speed"), this.layout.decimal), 0, 1000);
    fix.height_m = this.scaled("height", cell("height"));
    fix.accuracy_m = this.index.has("accuracy")
      ? this.scaled("accuracy", cell("accuracy"))
      : bounded(readNumber(cell("hdop"), this.layout.decimal), 0, 100) * RANGE_ERROR_m;
    for (const [role, extra] of Object.entries(extraOf) as [ColumnRole, ExtraName][]) {
      if (this.index.has(role)) {
        fix.extras[extra] = this.scaled(role, cell(role));
      }
    }
    const isEmpty = Number.isNaN(fix.lat_deg) && Number.isNaN(fix.speed_mps) && Object.keys(fix.extras).length === 0;
    if (isEmpty) {
      this.problems.bad("badLine", line, `found "${row.join(" ").slice(0, 60)}", wanted a speed or a position`);
      return;
    }
    this.builder.add(fix);
  }

  /** False where the row's position is not to be had and the row says nothing else. */
  private position(fix: Fix, cell: (role: ColumnRole) => string, line: number): boolean {
    if (!this.index.has("lat") || !this.index.has("lon")) {
      return true;
    }
    const latText = cell("lat") + cell("latHemisphere").trim();
    const lonText = cell("lon") + cell("lonHemisphere").trim();
    if (cell("lat").trim() === "" && cell("lon").trim() === "") {
      return true;
    }
    const lat = readAngle(latText, this.angleForm, this.layout.decimal, 90);
    const lon = readAngle(lonText, this.angleForm, this.layout.decimal, 180);
    if (!lat || !lon) {
      const found = `${latText.slice(0, 20)}, ${lonText.slice(0, 20)}`;
      this.problems.bad("badPosition", line, `found position "${found}", wanted degrees within 90 and 180`);
      return false;
    }
    this.sawSign ||= lat.isSigned || lon.isSigned;
    const hemisphere = this.options.hemisphere;
    fix.lat_deg = lat.isSigned || !hemisphere?.includes("S") ? lat.value_deg : -lat.value_deg;
    fix.lon_deg = lon.isSigned || !hemisphere?.includes("W") ? lon.value_deg : -lon.value_deg;
    return true;
  }

  private scaled(role: ColumnRole, text: string): number {
    const scale = this.scales.get(role);
    const [least, most] = bounds[role] ?? [-1e12, 1e12];
    return scale
      ? bounded(readNumber(text, this.layout.decimal) * scale.factor + scale.offset, least, most)
      : Number.NaN;
  }

  private writtenDates(time: ColumnGuess | undefined, date: ColumnGuess | undefined): readonly string[] {
    return this.layout.rows.map((row) =>
      date ? (row[date.index] ?? "") : (splitDateTime(row[time?.index ?? -1] ?? "")?.[0] ?? ""),
    );
  }

  private findAngleForm(): AngleForm {
    const beyond = (role: ColumnRole, limit: number) => {
      const index = this.index.get(role);
      const cells = index === undefined ? [] : this.layout.rows.map((row) => row[index] ?? "");
      return cells.some((cell) => {
        const number = readNumber(cell.replace(/[NSEW]/gi, ""), this.layout.decimal);
        return Math.abs(number) > limit && Math.abs(number) % 100 < 60;
      });
    };
    return beyond("lat", 90) || beyond("lon", 180) ? "degreesMinutes" : "degrees";
  }

  private statedSpeedUnit(): SpeedUnit | undefined {
    const unit = this.long ? this.long.speedUnit : this.guesses.find((guess) => guess.role === "speed")?.unit;
    return unit !== undefined && unit in mpsPer ? (unit as SpeedUnit) : undefined;
  }

  private hemisphereQuestion(): Question {
    const { hemisphere } = this.options;
    const isPlain = this.angleForm === "degrees";
    const signed = "the file writes signs or letters";
    const convention = "decimal degrees without a minus: north and east, as WGS84 degrees are written";
    const open = "degrees and minutes without sign or letter";
    return {
      name: "hemisphere",
      option: "--hemisphere",
      choices: ["NE", "NW", "SE", "SW"],
      guess: hemisphere ?? "NE",
      evidence: this.sawSign ? signed : hemisphere ? "given" : isPlain ? convention : open,
      decided: this.sawSign || hemisphere !== undefined || isPlain,
    };
  }

  private timeQuestions(): readonly Question[] {
    const date = (guess: string, evidence: string, decided: boolean): Question => ({
      name: "date",
      option: "--date",
      choices: [],
      guess,
      evidence,
      decided,
    });
    if (!this.form) {
      this.shiftToDate();
      const given = this.options.interval_s;
      const evidence = given === undefined ? "no column of times in the file" : "given";
      const guess = given === undefined ? "1" : String(given);
      return [{ name: "interval", option: "--interval", choices: [], guess, evidence, decided: given !== undefined }];
    }
    if (this.form.kind === "elapsed") {
      this.shiftToDate();
      return [date(this.options.date ?? "", "time counts from the start of the log: no day, and none needed", true)];
    }
    const given = this.options.date;
    if (this.form.kind === "clock" && !this.index.has("date")) {
      const byName = dateInName(this.name);
      if (given === undefined && byName) {
        this.shift(byName.time_s);
        return [date(byName.date, "the file's name", true)];
      }
      return [date(given ?? "", given ? "given" : "times of day without a date", given !== undefined)];
    }
    if (!this.isDateSure) {
      const why = "dates that all read as day first and as month first";
      return [date(given ?? "", given ? "given" : why, given !== undefined)];
    }
    return [];
  }

  private shiftToDate(): void {
    if (this.options.date !== undefined) {
      this.shift(readIsoMoment(`${this.options.date} 00:00`)?.time_s ?? 0);
    }
  }

  private shift(by_s: number): void {
    for (let i = 0; i < this.builder.count; i++) {
      this.builder.columns.time_s[i] += by_s;
    }
  }

  private timeWords(): string {
    const form = this.form;
    if (!form) {
      return "no times";
    }
    const words: Readonly<Record<TimeForm["kind"], string>> = {
      iso: "times as date and clock (ISO)",
      dateTime: form.kind === "dateTime" ? `times as date and clock, ${form.order}` : "",
      clock: this.index.has("date") ? "date and clock in two columns" : "times of day",
      epoch: form.kind === "epoch" ? `times counted from 1970 in 1/${form.perSecond} s` : "",
      elapsed: form.kind === "elapsed" ? `time from the start, ${form.why}` : "",
    };
    return words[form.kind];
  }
}

/** The order in which the first date of the file is the day given. Throws `InputError` where it is that in neither. */
function orderOfFirstDate(dates: readonly string[], given: string, name: string): DateOrder {
  const first = dates.find((date) => dateParts(date)) ?? "";
  const day_s = readIsoMoment(`${given} 00:00`)?.time_s;
  const order = (["dmy", "mdy"] as const).find((one) => readDate_s(first, one) === day_s);
  if (order) {
    return order;
  }
  throw inputError("badOption", "--date", `found ${given}, but the first date of ${name} is written ${first}`);
}

function bounded(value: number, least: number, most: number): number {
  return value >= least && value <= most ? value : Number.NaN;
}

/** A day written into the file's name, as loggers do: 2024-05-03, 20240503. */
function dateInName(name: string): { readonly date: string; readonly time_s: number } | undefined {
  const found = /(?:^|\D)(20\d{2})[-_.]?(\d{2})[-_.]?(\d{2})(?:\D|$)/.exec(name);
  const time_s = found ? dayStart_s(Number(found[1]), Number(found[2]), Number(found[3])) : undefined;
  return found && time_s !== undefined ? { date: `${found[1]}-${found[2]}-${found[3]}`, time_s } : undefined;
}
