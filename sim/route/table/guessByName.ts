import { moves } from "./looksLike.ts";
import { readAngle } from "./readAngle.ts";
import type { SampleColumn } from "./sampleColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import type { TakenRoles } from "./takenRoles.ts";
import { type TimeForm, timeForm } from "./timeForm.ts";

/** Gives columns the roles that their headers name: the time first, then hemispheres, which need no name, then the rest. */
export function guessByName(layout: TableLayout, roles: TakenRoles, isPackWanted: boolean): void {
  takeTime(layout, roles);
  takeHemispheres(roles);
  takeNamed(layout, roles, isPackWanted);
}

/**
 * Among columns named like a time, the first that states a day wins; then any that reads as a time; one named as time since
 * something only where there is no other. A clock of whole minutes gives way to any column beside it that tells rows apart.
 */
function takeTime(layout: TableLayout, roles: TakenRoles): void {
  if (roles.has("time")) {
    return;
  }
  const all = roles
    .free()
    .filter((column) => moves(column.cells))
    .map((column) => ({ column, form: timeForm(column.cells, column.unit, layout.decimal) }))
    .filter((entry) => entry.form !== undefined);
  const forms = all.filter(({ column }) => column.named === "time" || column.named === "date");
  const fine = forms.filter(({ column }) => !isCoarse(column.cells));
  const best =
    bestTime(fine) ?? all.find(({ form, column }) => isDated(form) && !isCoarse(column.cells)) ?? bestTime(forms);
  if (best && forms.length > 0) {
    roles.take(best.column, "time", `header "${best.column.header}"`);
  }
}

interface TimeColumn {
  readonly column: SampleColumn;
  readonly form: TimeForm | undefined;
}

function isDated(form: TimeForm | undefined): boolean {
  return form !== undefined && form.kind !== "clock" && form.kind !== "elapsed";
}

function bestTime(forms: readonly TimeColumn[]): TimeColumn | undefined {
  const named = forms.filter(({ column }) => column.named === "time");
  return (
    named.find(({ form }) => isDated(form)) ??
    forms.find(({ form }) => isDated(form)) ??
    named.find(({ form }) => form?.kind === "clock") ??
    named.find(({ column }) => !/since|trip|duration|dauer/i.test(column.header)) ??
    named[0]
  );
}

/** A clock of whole minutes that repeats: it does not tell one row from the next. */
function isCoarse(cells: readonly string[]): boolean {
  const isMinute = (cell: string) => /\d:\d{2}(?!\d)(?!:\d*[1-9])/.test(cell);
  return 2 * new Set(cells).size < cells.length && cells.every((cell) => cell.trim() === "" || isMinute(cell));
}

/** A column of nothing but N and S, or E and W, needs no name. */
function takeHemispheres(roles: TakenRoles): void {
  for (const column of roles.free()) {
    const filled = column.cells.map((cell) => cell.trim().toUpperCase()).filter((cell) => cell !== "");
    if (filled.length > 0 && filled.every((cell) => cell === "N" || cell === "S")) {
      roles.take(column, "latHemisphere", "holds only N and S");
    } else if (filled.length > 0 && filled.every((cell) => cell === "E" || cell === "W")) {
      roles.take(column, "lonHemisphere", "holds only E and W");
    }
  }
}

function takeNamed(layout: TableLayout, roles: TakenRoles, isPackWanted: boolean): void {
  // Where two columns name a speed, the receiver's own is the better: a dashboard's reads high by law.
  const ranked = [...roles.free()].sort((a, b) => rank(a) - rank(b));
  // Where a pack is wanted and nothing else could be it, whoever knows the pack says what is wrong with 12 V.
  const isTakenAsIs = isPackWanted && ranked.filter(({ named }) => named === "packVoltage").length === 1;
  for (const column of ranked) {
    const role = column.named;
    if (role === "none" || role === "time" || roles.has(role)) {
      continue;
    }
    const isAngle = role === "lat" || role === "lon";
    const holds = isAngle
      ? column.cells.some((cell) => readAngle(cell, "degrees", layout.decimal, 1e5) !== undefined)
      : column.numbers.length > 0;
    if (role === "vehicle" && new Set(column.cells.filter((cell) => cell.trim() !== "")).size > 0) {
      roles.take(column, role, `header "${column.header}"`);
      continue;
    }
    const isDate = role === "date" && column.cells.some((cell) => /\d/.test(cell));
    if (role === "packVoltage" && !isTakenAsIs && is12V(column.numbers)) {
      roles.leave(column, "9 to 16 V: a 12 V system, no traction pack");
      continue;
    }
    if (holds || isDate) {
      roles.take(column, role, `header "${column.header}"`);
    }
  }
}

function rank(column: SampleColumn): number {
  return /gps/i.test(column.header) ? 0 : 1;
}

/** What a 12 V system holds from cranking to charging; the smallest traction packs have twice as much. Common practice, no source. */
function is12V(numbers: readonly number[]): boolean {
  return numbers.length > 0 && numbers.every((value) => value >= 9 && value <= 16);
}
