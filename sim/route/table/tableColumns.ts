import { type Scale, scaleOf } from "../log/columnUnits.ts";
import { type Bounds, bounded, fixBounds } from "../log/fixBounds.ts";
import type { ColumnGuess, ColumnRole } from "../log/logFile.ts";
import { type DecimalSign, readNumber } from "./readNumber.ts";

/** Bounds of what a column may hold, in SI; what lies outside is no value. */
const boundsOfRole: Readonly<Partial<Record<ColumnRole, Bounds>>> = {
  height: fixBounds.elevation_m,
  accuracy: fixBounds.accuracy_m,
  hdop: fixBounds.hdop,
  speed: fixBounds.speed_mps,
  packVoltage: [0, 2000],
  packCurrent: [-5000, 5000],
  motorSpeed: [-5000, 5000],
  temperature: [200, 600],
  stateOfCharge: [0, 100],
};
const anything: Bounds = [-1e12, 1e12];

/** Which column of a table holds what, and how its numbers become SI. */
export class TableColumns {
  private readonly index = new Map<ColumnRole, number>();
  private readonly scales = new Map<ColumnRole, Scale>();
  private readonly decimal: DecimalSign;

  constructor(guesses: readonly ColumnGuess[], decimal: DecimalSign) {
    this.decimal = decimal;
    for (const guess of guesses) {
      if (guess.role !== "none") {
        this.index.set(guess.role, guess.index);
        this.scales.set(guess.role, scaleOf(guess.role, guess.unit));
      }
    }
  }

  has(role: ColumnRole): boolean {
    return this.index.has(role);
  }

  /** The cell as written, empty where the row or the table has none. */
  cell(row: readonly string[], role: ColumnRole): string {
    return row[this.index.get(role) ?? -1] ?? "";
  }

  /** The cell's number in SI (a speed's as written, its unit being settled later); NaN where it is none or out of bounds. */
  number(row: readonly string[], role: ColumnRole): number {
    const scale = this.scales.get(role);
    const written = readNumber(this.cell(row, role), this.decimal);
    return scale ? bounded(written * scale.factor + scale.offset, boundsOfRole[role] ?? anything) : Number.NaN;
  }
}
