import { inputError } from "../../../shared/problems.ts";
import { accuracyOfHdop_m } from "../log/accuracyOfHdop.ts";
import { mpsPer } from "../log/columnUnits.ts";
import { countOf } from "../log/countOf.ts";
import type { Encoding } from "../log/decodeText.ts";
import { FixBuilder } from "../log/fixBuilder.ts";
import { type ExtraName, emptyFix, hasValues } from "../log/fixes.ts";
import type { ColumnGuess, ColumnRole, FormatReading, Question, ReadLogOptions, SpeedUnit } from "../log/logFile.ts";
import { ProblemList } from "../log/problemList.ts";
import { speedUnitQuestion } from "../log/speedUnit.ts";
import { currentSignQuestion } from "./currentSign.ts";
import { extraOfRole } from "./extraOfRole.ts";
import { guessColumns } from "./guessColumns.ts";
import { LongTable } from "./longTable.ts";
import { splitRows } from "./splitRows.ts";
import { TableColumns } from "./tableColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import { TablePositions } from "./tablePositions.ts";
import { TableTimes } from "./tableTimes.ts";
import { Vehicles } from "./vehicles.ts";

/** One table on its way into fixes: rows as they come, then what they leave open. */
export class TableReading {
  private readonly problems: ProblemList;
  private readonly builder = new FixBuilder();
  private readonly vehicles = new Vehicles();
  private readonly name: string;
  private readonly layout: TableLayout;
  private readonly options: ReadLogOptions;
  private readonly long: LongTable | undefined;
  private readonly guesses: readonly ColumnGuess[];
  private readonly columns: TableColumns;
  private readonly times: TableTimes;
  private readonly positions: TablePositions;

  /** Throws `InputError` where the table has neither speeds nor positions, or a date given is not its first. */
  constructor(name: string, layout: TableLayout, options: ReadLogOptions) {
    this.name = name;
    this.problems = new ProblemList(name);
    this.layout = layout;
    this.options = options;
    this.long = LongTable.find(layout, options.isPackWanted);
    this.guesses = this.long?.guesses ?? guessColumns(layout, options.columns, options.isPackWanted);
    this.columns = new TableColumns(this.guesses, layout.decimal);
    this.times = new TableTimes(name, layout, this.guesses, this.columns, options);
    this.positions = new TablePositions(layout, this.columns, options.hemisphere);
    const hasPositions = this.columns.has("lat") && this.columns.has("lon");
    const hasPack = options.isPackWanted === true && this.columns.has("packVoltage") && this.columns.has("packCurrent");
    if (!this.long && !this.columns.has("speed") && !hasPositions && !hasPack) {
      const headers = layout.headers.filter((header) => header.trim() !== "").join(", ");
      const nameless = `${countOf(layout.fieldCount, "column")} without names`;
      const found = headers === "" ? nameless : `the columns ${headers.slice(0, 200)}`;
      throw inputError(
        "noSpeedOrPosition",
        name,
        `found ${found}, wanted a speed, or a latitude and a longitude${options.isPackWanted ? ", or the pack's volts and amps" : ""}`,
      );
    }
  }

  /** Takes lines in; `firstLine` is the number of the first of them in the file. */
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

  /** The fixes in SI, with every question the table leaves open. */
  finish(encoding: Encoding): FormatReading {
    this.long?.flush((fix) => this.builder.add(fix));
    const { questions, shift_s } = this.times.settle();
    const { time_s } = this.builder.columns;
    for (let i = 0; i < this.builder.count; i++) {
      time_s[i] += shift_s;
    }
    const vehicle = this.vehicles.choose(this.options.vehicle, this.name);
    if (vehicle) {
      this.builder.keep(vehicle.isOf);
    }
    const asked = [...(vehicle ? [vehicle.question] : []), ...questions, ...this.speedQuestions()];
    const fixes = this.builder.finish();
    if (hasValues(fixes.latitude_deg)) {
      asked.push(this.positions.question());
    }
    const sign = currentSignQuestion(fixes, this.options.currentSign);
    if (sign) {
      asked.push(sign.question);
      const current_A = fixes.extras.packCurrent_A;
      current_A?.forEach((value, i) => {
        current_A[i] = value * sign.factor;
      });
    }
    return {
      fixes,
      hasTimes: hasValues(fixes.time_s),
      hasZone: this.times.hasZone,
      utcOffset_s: this.times.utcOffset_s,
      badLines: this.problems.badLines,
      problems: this.problems.finish(),
      guess: { encoding, layout: [...this.layout.words, this.times.words()], columns: this.guesses },
      questions: asked,
    };
  }

  /** Settles the unit of the recorded speeds, which are still as written, and turns them into m/s. */
  private speedQuestions(): readonly Question[] {
    const written = this.builder.finish();
    if (!hasValues(written.speed_mps)) {
      return [];
    }
    const question = speedUnitQuestion(written, this.options.speedUnit, this.statedSpeedUnit());
    const factor = mpsPer[question.guess as SpeedUnit];
    for (let i = 0; i < this.builder.count; i++) {
      this.builder.columns.speed_mps[i] = written.speed_mps[i] * factor;
    }
    return [question];
  }

  private statedSpeedUnit(): SpeedUnit | undefined {
    const unit = this.long ? this.long.speedUnit : this.guesses.find((guess) => guess.role === "speed")?.unit;
    return unit !== undefined && unit in mpsPer ? (unit as SpeedUnit) : undefined;
  }

  private row(row: readonly string[], line: number): void {
    const fix = emptyFix(line, 0);
    const time = this.times.read(row);
    if (typeof time !== "number") {
      this.problems.bad("badTime", line, `found time "${time.found}", wanted one like the others`);
      return;
    }
    fix.time_s = time;
    if (this.long) {
      this.long.row(row, fix, (done) => this.builder.add(done));
      return;
    }
    const bad = this.positions.read(row, fix);
    if (bad) {
      this.problems.bad("badPosition", line, `found position "${bad.found}", wanted degrees within 90 and 180`);
      return;
    }
    const { columns } = this;
    fix.speed_mps = columns.number(row, "speed");
    fix.elevation_m = columns.number(row, "height");
    fix.accuracy_m = columns.has("accuracy")
      ? columns.number(row, "accuracy")
      : accuracyOfHdop_m(columns.number(row, "hdop"));
    for (const [role, extra] of Object.entries(extraOfRole) as [ColumnRole, ExtraName][]) {
      if (columns.has(role)) {
        fix.extras[extra] = columns.number(row, role);
      }
    }
    const isEmpty =
      Number.isNaN(fix.latitude_deg) && Number.isNaN(fix.speed_mps) && Object.keys(fix.extras).length === 0;
    if (isEmpty) {
      this.problems.bad("badLine", line, `found "${row.join(" ").slice(0, 60)}", wanted a speed or a position`);
      return;
    }
    this.builder.add(fix);
    if (columns.has("vehicle")) {
      this.vehicles.add(columns.cell(row, "vehicle"));
    }
  }
}
