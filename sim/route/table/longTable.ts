import { scaleOf, unitNamed } from "../log/columnUnits.ts";
import { emptyFix, type Fix } from "../log/fixes.ts";
import type { ColumnGuess, ColumnRole } from "../log/logFile.ts";
import { columnByName } from "./columnByName.ts";
import { extraOfRole } from "./extraOfRole.ts";
import { guessColumns } from "./guessColumns.ts";
import { readNumber } from "./readNumber.ts";
import { looksLikeValue, sampleRows, type TableLayout } from "./tableLayout.ts";

/** More different names than this are no list of signals. */
const MOST_SIGNALS = 80;
/** A fix is closed where the time moves on this far, so that a signal that fell silent cannot hold it open. */
const LONGEST_FIX_s = 2;

/**
 * A table with one value a row: time, name of the signal, value and perhaps its unit. Values that lie between two
 * readings of the leading signal (the latitude, or else the speed) become one fix at the first one's time.
 */
export class LongTable {
  /** The unit the speed's name or unit cell states, or "". */
  speedUnit = "";
  readonly guesses: readonly ColumnGuess[];
  private readonly nameIndex: number;
  private readonly valueIndex: number;
  private readonly unitIndex: number;
  private readonly layout: TableLayout;
  private readonly leading: ColumnRole;
  private open: Fix | undefined;
  private hasLead = false;

  private constructor(layout: TableLayout, guesses: readonly ColumnGuess[], leading: ColumnRole) {
    const index = (role: ColumnRole) => guesses.find((guess) => guess.role === role)?.index ?? -1;
    this.layout = layout;
    this.guesses = guesses;
    this.nameIndex = index("name");
    this.valueIndex = index("value");
    this.unitIndex = index("unit");
    this.leading = leading;
  }

  /** The long table in a layout, or undefined where it is an ordinary one. */
  static find(layout: TableLayout, isPackWanted = false): LongTable | undefined {
    if (layout.fieldCount < 3 || layout.fieldCount > 8) {
      return undefined;
    }
    const rows = sampleRows(layout);
    const cellsOf = (index: number) => rows.map((row) => (row[index] ?? "").trim());
    const ordinary = guessColumns(layout);
    const time = ordinary.find((guess) => guess.role === "time");
    let name = -1;
    const indexes = Array.from({ length: layout.fieldCount }, (_, i) => i);
    for (const index of indexes) {
      const cells = cellsOf(index);
      const distinct = new Set(cells);
      const roles = new Set([...distinct].map((cell) => columnByName(cell).role).filter((role) => role !== "none"));
      const isWords = cells.filter((cell) => cell !== "" && !looksLikeValue(cell)).length > 0.9 * cells.length;
      if (isWords && distinct.size >= 2 && distinct.size <= MOST_SIGNALS && roles.size >= 1 && name < 0) {
        const hasPack = isPackWanted && roles.has("packVoltage") && roles.has("packCurrent");
        const leads = roles.has("speed") || (roles.has("lat") && roles.has("lon")) || hasPack;
        name = leads ? index : -1;
      }
    }
    if (name < 0 || !time) {
      return undefined;
    }
    const isNumeric = (index: number) =>
      cellsOf(index).filter((cell) => !Number.isNaN(readNumber(cell, layout.decimal))).length > 0.5 * rows.length;
    const values = indexes.filter((index) => index !== name && index !== time.index && isNumeric(index));
    const value = values.find((index) => /val|wert|valeur/i.test(layout.headers[index] ?? "")) ?? values[0];
    if (value === undefined || values.length > 3) {
      return undefined;
    }
    const unit = indexes.find(
      (index) => index !== name && cellsOf(index).some((cell) => cell !== "" && unitNamed(cell) !== ""),
    );
    const names = new Set(cellsOf(name).map((cell) => columnByName(cell).role));
    const roleOf = new Map<number, ColumnRole>([
      [time.index, "time"],
      [name, "name"],
      [value, "value"],
      ...(unit !== undefined && unit !== value ? [[unit, "unit"] as const] : []),
    ]);
    const guesses = ordinary.map((guess) => ({
      ...guess,
      role: roleOf.get(guess.index) ?? ("none" as const),
      evidence: roleOf.has(guess.index) ? "one value a row" : guess.evidence,
    }));
    const leading = names.has("lat") ? "lat" : names.has("speed") ? "speed" : "packCurrent";
    return new LongTable(layout, guesses, leading);
  }

  row(row: readonly string[], empty: Fix, done: (fix: Fix) => void): void {
    const { role, unit: namedUnit } = columnByName(row[this.nameIndex] ?? "");
    const value = readNumber(row[this.valueIndex] ?? "", this.layout.decimal);
    if (role === "none" || Number.isNaN(value)) {
      return;
    }
    const unit = unitNamed(row[this.unitIndex] ?? "") || namedUnit;
    const isNext =
      (role === this.leading && this.hasLead) || (this.open && empty.time_s - this.open.time_s > LONGEST_FIX_s);
    if (isNext || (this.open && empty.time_s < this.open.time_s)) {
      this.flush(done);
    }
    this.open ??= { ...emptyFix(empty.line, 0), time_s: empty.time_s };
    if (role === this.leading) {
      this.hasLead = true;
      this.open.time_s = empty.time_s;
    }
    this.put(this.open, role, value, unit);
  }

  flush(done: (fix: Fix) => void): void {
    const fix = this.open;
    this.open = undefined;
    this.hasLead = false;
    if (!fix) {
      return;
    }
    const hasPlace = !Number.isNaN(fix.latitude_deg) && !Number.isNaN(fix.longitude_deg);
    if (!hasPlace) {
      fix.latitude_deg = Number.NaN;
      fix.longitude_deg = Number.NaN;
    }
    if (hasPlace || !Number.isNaN(fix.speed_mps) || Object.keys(fix.extras).length > 0) {
      done(fix);
    }
  }

  private put(fix: Fix, role: ColumnRole, value: number, unit: string): void {
    const scale = scaleOf(role, unit);
    const extra = extraOfRole[role];
    if (role === "lat" && Math.abs(value) <= 90) {
      fix.latitude_deg = value;
    } else if (role === "lon" && Math.abs(value) <= 180) {
      fix.longitude_deg = value;
    } else if (role === "speed" && value >= 0 && value <= 1000) {
      fix.speed_mps = value;
      this.speedUnit ||= unit;
    } else if (role === "height" && value > -500 && value < 30000) {
      fix.elevation_m = value * scale.factor;
    } else if (extra) {
      fix.extras[extra] = value * scale.factor + scale.offset;
    }
  }
}
