// Longer than most files: each guess takes columns away from the next one, so their order must be read in one place.
import { columnByName } from "./columnByName.ts";
import { unitNamed } from "./columnUnits.ts";
import type { ColumnGuess, ColumnRole } from "./logFile.ts";
import { readAngle } from "./readAngle.ts";
import { readNumber } from "./readNumber.ts";
import type { TableLayout } from "./tableLayout.ts";
import { type TimeForm, timeForm } from "./tableTime.ts";

/** One column of the sample, looked at once. */
interface Column {
  readonly index: number;
  readonly header: string;
  readonly unit: string;
  readonly named: ColumnRole | "none";
  readonly cells: readonly string[];
  readonly numbers: readonly number[];
}

/**
 * What each column of a table holds: first by its header's words and unit, then, for what is still missing, by its
 * values. Every guess carries its evidence. A choice made by a person wins over both.
 */
export function guessColumns(
  layout: TableLayout,
  chosen: Partial<Record<ColumnRole, number | "none">> = {},
): readonly ColumnGuess[] {
  const columns = columnsOf(layout);
  const taken = new Map<number, { role: ColumnRole; evidence: string }>();
  const settled = new Set<ColumnRole>();
  for (const [role, index] of Object.entries(chosen) as [ColumnRole, number | "none"][]) {
    settled.add(role);
    if (index !== "none" && columns[index]) {
      taken.set(index, { role, evidence: "chosen" });
    }
  }
  const has = (role: ColumnRole) => settled.has(role);
  const take = (column: Column, role: ColumnRole, evidence: string) => {
    taken.set(column.index, { role, evidence });
    settled.add(role);
  };
  const free = () => columns.filter((column) => !taken.has(column.index));

  takeTime(layout, free(), has, take);
  takeHemispheres(free(), take);
  takeByName(layout, free(), has, take);
  takeByValue(layout, columns, free, has, take);
  return columns.map((column) => {
    const choice = taken.get(column.index);
    return {
      index: column.index,
      header: column.header,
      role: choice?.role ?? "none",
      unit: column.unit,
      evidence:
        choice?.evidence ?? (column.header === "" ? "values like none looked for" : "header like none looked for"),
      sample:
        column.cells
          .find((cell) => cell.trim() !== "")
          ?.trim()
          .slice(0, 40) ?? "",
    };
  });
}

/** The form of a guessed time column. */
export function guessedTimeForm(layout: TableLayout, guess: ColumnGuess): TimeForm | undefined {
  const cells = layout.rows.slice(0, 300).map((row) => row[guess.index] ?? "");
  return timeForm(cells, guess.unit, layout.decimal);
}

type Has = (role: ColumnRole) => boolean;
type Take = (column: Column, role: ColumnRole, evidence: string) => void;

function columnsOf(layout: TableLayout): readonly Column[] {
  const sample = layout.rows.slice(0, 300);
  return Array.from({ length: layout.fieldCount }, (_, index) => {
    const header = (layout.headers[index] ?? "").trim();
    const byName = header === "" ? { role: "none" as const, unit: "" } : columnByName(header);
    const cells = sample.map((row) => row[index] ?? "");
    const numbers = cells.map((cell) => readNumber(cell, layout.decimal)).filter((value) => !Number.isNaN(value));
    const unit = unitNamed(layout.units[index] ?? "") || byName.unit;
    return { index, header, unit, named: byName.role, cells, numbers };
  });
}

/** Among columns named like a time, the first that states a day wins; then any that reads as a time. */
function takeTime(layout: TableLayout, columns: readonly Column[], has: Has, take: Take): void {
  if (has("time")) {
    return;
  }
  const forms = columns
    .filter((column) => (column.named === "time" || column.named === "date") && moves(column.cells))
    .map((column) => ({ column, form: timeForm(column.cells, column.unit, layout.decimal) }))
    .filter((entry) => entry.form !== undefined);
  const isDated = (form: TimeForm | undefined) =>
    form?.kind === "iso" || form?.kind === "dateTime" || form?.kind === "epoch";
  const best =
    forms.find(({ form, column }) => isDated(form) && column.named === "time") ??
    forms.find(({ form }) => isDated(form)) ??
    forms.find(({ form, column }) => form?.kind === "clock" && column.named === "time") ??
    forms.find(({ column }) => column.named === "time");
  if (best) {
    take(best.column, "time", `header "${best.column.header}"`);
  }
}

/** A clock that stands still through the sample (a receiver's before its lock) is of no use. */
function moves(cells: readonly string[]): boolean {
  return cells.length < 3 || new Set(cells).size > 1;
}

/** A column of nothing but N and S, or E and W, needs no name. */
function takeHemispheres(columns: readonly Column[], take: Take): void {
  for (const column of columns) {
    const filled = column.cells.map((cell) => cell.trim().toUpperCase()).filter((cell) => cell !== "");
    if (filled.length > 0 && filled.every((cell) => cell === "N" || cell === "S")) {
      take(column, "latHemisphere", "holds only N and S");
    } else if (filled.length > 0 && filled.every((cell) => cell === "E" || cell === "W")) {
      take(column, "lonHemisphere", "holds only E and W");
    }
  }
}

function takeByName(layout: TableLayout, columns: readonly Column[], has: Has, take: Take): void {
  // Where two columns name a speed, the receiver's own is the better: a dashboard's reads high by law.
  const ranked = [...columns].sort((a, b) => rank(a) - rank(b));
  for (const column of ranked) {
    const role = column.named;
    if (role === "none" || role === "time" || has(role)) {
      continue;
    }
    const isAngle = role === "lat" || role === "lon";
    const holds = isAngle
      ? column.cells.some((cell) => readAngle(cell, "degrees", layout.decimal, 1e5) !== undefined)
      : column.numbers.length > 0;
    const isDate = role === "date" && column.cells.some((cell) => /\d/.test(cell));
    if (holds || isDate) {
      take(column, role, `header "${column.header}"`);
    }
  }
}

function rank(column: Column): number {
  return /gps/i.test(column.header) ? 0 : 1;
}

function takeByValue(
  layout: TableLayout,
  columns: readonly Column[],
  free: () => Column[],
  has: Has,
  take: Take,
): void {
  const isBare = (column: Column) => column.named === "none" && (column.header === "" || layout.headers.length === 0);
  if (!has("time")) {
    const found = free().find((column) => {
      const form = timeForm(column.cells, column.unit, layout.decimal);
      return form !== undefined && (form.kind !== "elapsed" || (isBare(column) && risesSteadily(column.numbers)));
    });
    if (found) {
      take(found, "time", found.numbers.length > 0 ? "numbers that rise steadily" : "reads as times");
    }
  }
  if (!has("lat") && !has("lon")) {
    const angles = free().filter((column) => isBare(column) && looksLikeAngle(column));
    const [first, second] = angles;
    if (first && second) {
      const isSwapped = first.numbers.some((value) => Math.abs(value) > 90);
      const why = "numbers with four or more decimals that hardly move";
      take(isSwapped ? second : first, "lat", isSwapped ? `${why}; the other goes beyond 90` : `${why}; first of two`);
      take(isSwapped ? first : second, "lon", isSwapped ? `${why}; goes beyond 90` : `${why}; second of two`);
    }
  }
  if (!has("speed")) {
    const found = free().find((column) => isBare(column) && looksLikeSpeed(column));
    if (found) {
      take(found, "speed", "numbers from 0 to 250 that change as a speed does");
    }
  }
  if (!has("height") && has("lat") && columns.every((column) => column.header === "")) {
    const found = free().find((column) => isBare(column) && looksLikeHeight(column));
    if (found) {
      take(found, "height", "numbers that change slowly, as heights do");
    }
  }
}

function risesSteadily(numbers: readonly number[]): boolean {
  let rising = 0;
  for (let i = 1; i < numbers.length; i++) {
    rising += numbers[i] > numbers[i - 1] ? 1 : 0;
  }
  return numbers.length > 2 && rising >= 0.9 * (numbers.length - 1);
}

function looksLikeAngle(column: Column): boolean {
  const decimals = column.cells.filter((cell) => /[.,]\d{4,}\s*[NSEW]?$/i.test(cell.trim())).length;
  const range = spread(column.numbers);
  const isLettered = column.cells.some((cell) => /[NSEW]/i.test(cell) && readAngle(cell, "degrees", ".", 1e5));
  const isNear = column.numbers.length > 0 && range < 5 && column.numbers.every((value) => Math.abs(value) <= 180);
  const isMinutes =
    column.numbers.length > 0 && range < 500 && column.numbers.every((value) => Math.abs(value) < 18060);
  return decimals >= 0.7 * column.cells.length && (isNear || isMinutes || isLettered);
}

function looksLikeSpeed(column: Column): boolean {
  return (
    column.numbers.length > 0.5 * column.cells.length &&
    column.numbers.every((value) => value >= 0 && value <= 250) &&
    spread(column.numbers) > 2 &&
    !risesSteadily(column.numbers)
  );
}

function looksLikeHeight(column: Column): boolean {
  let largest = 0;
  for (let i = 1; i < column.numbers.length; i++) {
    largest = Math.max(largest, Math.abs(column.numbers[i] - column.numbers[i - 1]));
  }
  return (
    column.numbers.length > 0.5 * column.cells.length &&
    column.numbers.every((value) => value >= -450 && value <= 6000) &&
    spread(column.numbers) > 0 &&
    largest < 60
  );
}

function spread(numbers: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of numbers) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return numbers.length > 0 ? most - least : 0;
}
