import type { ColumnGuess, Question, ReadLogOptions } from "../log/logFile.ts";
import { splitDateTime } from "../log/readTime.ts";
import { columnByName } from "./columnByName.ts";
import { dateInName, givenDay_s, orderOfFirstDate } from "./givenDate.ts";
import { COUNTS_ROWS } from "./guessByValue.ts";
import type { TableColumns } from "./tableColumns.ts";
import { sampleRows, type TableLayout } from "./tableLayout.ts";
import { dateOrder, type TimeForm, timeForm } from "./timeForm.ts";
import { TimeReader } from "./timeReader.ts";

const epochUnits = new Map([
  [1, "seconds"],
  [1e3, "milliseconds"],
  [1e6, "microseconds"],
  [1e9, "nanoseconds"],
]);

/** Gives the rows of one table their times: from its columns of time and date, or else by counting rows. */
export class TableTimes {
  private readonly form: TimeForm | undefined;
  private readonly reader: TimeReader | undefined;
  private readonly isDateSure: boolean;
  private readonly name: string;
  private readonly columns: TableColumns;
  private readonly options: ReadLogOptions;
  private readonly whyNoTimes: string;
  private rows = 0;

  constructor(
    name: string,
    layout: TableLayout,
    guesses: readonly ColumnGuess[],
    columns: TableColumns,
    options: ReadLogOptions,
  ) {
    this.name = name;
    this.columns = columns;
    this.options = options;
    const timeGuess = guesses.find((guess) => guess.role === "time");
    const cellsOf = (rows: TableLayout["rows"], role: "time" | "date") => rows.map((row) => columns.cell(row, role));
    const guessed = timeGuess && timeForm(cellsOf(sampleRows(layout), "time"), timeGuess.unit, layout.decimal);
    const separate = columns.has("date") ? cellsOf(layout.rows, "date") : undefined;
    const dates = separate && dateOrder(separate);
    this.isDateSure =
      guessed?.kind === "dateTime" ? guessed.isSure : guessed?.kind !== "clock" || dates?.isSure !== false;
    let form = guessed;
    let separateOrder = dates?.order;
    if (!this.isDateSure && options.date !== undefined) {
      const written = separate ?? cellsOf(layout.rows, "time").map((cell) => splitDateTime(cell)?.[0] ?? "");
      const order = orderOfFirstDate(written, options.date, name);
      form = form?.kind === "dateTime" ? { ...form, order } : form;
      separateOrder = separateOrder && order;
    }
    this.whyNoTimes = whyNoTimes(guesses);
    this.form = form;
    this.reader = form && new TimeReader(form, separateOrder, givenDay_s(options.date), layout.decimal);
  }

  /** Local time less UTC where the times say it, else 0. */
  get utcOffset_s(): number {
    return this.reader?.utcOffset_s ?? 0;
  }

  /** Whether no time read so far came without a zone. */
  get hasZone(): boolean {
    return (this.reader?.zoneless ?? 0) === 0;
  }

  /** The next row's time in seconds, or what stands there where it is none. */
  read(row: readonly string[]): number | { readonly found: string } {
    if (this.reader) {
      const cell = this.columns.cell(row, "time");
      const time_s = this.reader.read(cell, this.columns.cell(row, "date"));
      if (Number.isNaN(time_s) || Math.abs(time_s) > 1e10) {
        return { found: cell.slice(0, 40) };
      }
      return time_s;
    }
    const time_s = this.rows * (this.options.interval_s ?? 1);
    this.rows++;
    return time_s;
  }

  /** What the times leave open, and how far all of them are to be shifted, once all have been read. */
  settle(): { readonly questions: readonly Question[]; readonly shift_s: number } {
    const { form } = this;
    const { date: given, interval_s } = this.options;
    if (!form) {
      const evidence = interval_s === undefined ? this.whyNoTimes : "given";
      const about = { name: "interval", option: "--interval", choices: [] } as const;
      const answer = { guess: String(interval_s ?? 1), evidence, decided: interval_s !== undefined };
      return { questions: [{ ...about, ...answer }], shift_s: givenDay_s(given) };
    }
    if (form.kind === "elapsed") {
      const evidence = "time counts from the start of the log: no day, and none needed";
      return { questions: [dateQuestion(given ?? "", evidence, true)], shift_s: givenDay_s(given) };
    }
    if (form.kind === "clock" && !this.columns.has("date")) {
      const byName = given === undefined ? dateInName(this.name) : undefined;
      if (byName) {
        return { questions: [dateQuestion(byName.date, "the file's name", true)], shift_s: byName.time_s };
      }
      return { questions: [answeredBy(given, "times of day without a date")], shift_s: 0 };
    }
    if (!this.isDateSure) {
      return { questions: [answeredBy(given, "dates that all read as day first and as month first")], shift_s: 0 };
    }
    return { questions: [], shift_s: 0 };
  }

  /** How times are written, in words. */
  words(): string {
    const { form } = this;
    switch (form?.kind) {
      case undefined:
        return "no times";
      case "iso":
        return "times as date and clock (ISO)";
      case "dateTime":
        return `times as date and clock, ${form.order}`;
      case "clock":
        return `${this.columns.has("date") ? "date and clock in two columns" : "times of day"}${form.isPacked ? ", as hhmmss" : ""}`;
      case "epoch":
        return `times counted from 1970 in ${epochUnits.get(form.perSecond)}`;
      case "dayNumber":
        return "times as a spreadsheet's count of days";
      case "elapsed":
        return `time from the start, ${form.why}`;
    }
  }
}

/** What stands where times would be: a column named like one that reads as none, or one that only counts rows. */
function whyNoTimes(guesses: readonly ColumnGuess[]): string {
  const free = guesses.filter(({ role, sample }) => role === "none" && sample !== "");
  const named = free.find(({ header }) => columnByName(header).role === "time");
  if (named) {
    return `"${named.sample}" in the column "${named.header.slice(0, 40)}", which does not read as times that go on`;
  }
  const counter = free.find(({ evidence }) => evidence === COUNTS_ROWS);
  return counter ? `column ${counter.index + 1}, which ${COUNTS_ROWS}` : "no column that reads as times";
}

function dateQuestion(guess: string, evidence: string, decided: boolean): Question {
  return { name: "date", option: "--date", choices: [], guess, evidence, decided };
}

function answeredBy(given: string | undefined, why: string): Question {
  return dateQuestion(given ?? "", given === undefined ? why : "given", given !== undefined);
}
