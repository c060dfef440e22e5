import { S_PER_DAY } from "../../../shared/units.ts";
import {
  type DateOrder,
  readClock_s,
  readDate_s,
  readIsoMoment,
  readPackedClock_s,
  splitDateTime,
} from "../log/readTime.ts";
import { type DecimalSign, readNumber } from "./readNumber.ts";
import { SPREADSHEET_DAY0_s, type TimeForm } from "./timeForm.ts";

/** Reads the cells of one table's time, row after row: clocks without a date turn over at midnight. */
export class TimeReader {
  utcOffset_s: number | undefined;
  zoneless = 0;
  private day_s: number;
  private lastClock_s = Number.NaN;
  private readonly form: TimeForm;
  private readonly separateDate: DateOrder | undefined;
  private readonly decimal: DecimalSign;

  constructor(form: TimeForm, separateDate: DateOrder | undefined, firstDay_s: number, decimal: DecimalSign) {
    this.form = form;
    this.separateDate = separateDate;
    this.day_s = firstDay_s;
    this.decimal = decimal;
  }

  /** Seconds of the moment in the cell (and the date cell beside it), or NaN where it is none. */
  read(cell: string, dateCell: string): number {
    const form = this.form;
    if (form.kind === "iso") {
      const moment = readIsoMoment(cell);
      if (moment && moment.utcOffset_s === undefined) {
        this.zoneless++;
      } else if (moment) {
        this.utcOffset_s ??= moment.utcOffset_s;
      }
      return moment?.time_s ?? Number.NaN;
    }
    if (form.kind === "dateTime") {
      this.zoneless++;
      const [date, clock] = splitDateTime(cell) ?? ["", ""];
      return (readDate_s(date, form.order) ?? Number.NaN) + (readClock_s(clock) ?? Number.NaN);
    }
    if (form.kind === "clock") {
      this.zoneless++;
      const clock_s = form.isPacked ? readPackedClock_s(cell) : readClock_s(cell);
      return this.clock(clock_s ?? Number.NaN, dateCell);
    }
    if (form.kind === "dayNumber") {
      this.zoneless++;
      const time_s = SPREADSHEET_DAY0_s + S_PER_DAY * readNumber(cell, this.decimal);
      return Math.round(time_s * 1000) / 1000; // days are written to about a millisecond
    }
    return readNumber(cell, this.decimal) / form.perSecond;
  }

  private clock(clock_s: number, dateCell: string): number {
    if (this.separateDate) {
      return (readDate_s(dateCell, this.separateDate) ?? Number.NaN) + clock_s;
    }
    if (clock_s < this.lastClock_s - S_PER_DAY / 2) {
      this.day_s += S_PER_DAY;
    }
    if (!Number.isNaN(clock_s)) {
      this.lastClock_s = clock_s;
    }
    return this.day_s + clock_s;
  }
}
