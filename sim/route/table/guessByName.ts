import { readAngle } from "./readAngle.ts";
import type { SampleColumn } from "./sampleColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import type { TakenRoles } from "./takenRoles.ts";
import { type TimeForm, timeForm } from "./timeForm.ts";

/** Gives columns the roles that their headers name: the time first, then hemispheres, which need no name, then the rest. */
export function guessByName(layout: TableLayout, roles: TakenRoles): void {
  takeTime(layout, roles);
  takeHemispheres(roles);
  takeNamed(layout, roles);
}

/** Among columns named like a time, the first that states a day wins; then any that reads as a time. */
function takeTime(layout: TableLayout, roles: TakenRoles): void {
  if (roles.has("time")) {
    return;
  }
  const forms = roles
    .free()
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
    roles.take(best.column, "time", `header "${best.column.header}"`);
  }
}

/** A clock that stands still through the sample (a receiver's before its lock) is of no use. */
function moves(cells: readonly string[]): boolean {
  return cells.length < 3 || new Set(cells).size > 1;
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

function takeNamed(layout: TableLayout, roles: TakenRoles): void {
  // Where two columns name a speed, the receiver's own is the better: a dashboard's reads high by law.
  const ranked = [...roles.free()].sort((a, b) => rank(a) - rank(b));
  for (const column of ranked) {
    const role = column.named;
    if (role === "none" || role === "time" || roles.has(role)) {
      continue;
    }
    const isAngle = role === "lat" || role === "lon";
    const holds = isAngle
      ? column.cells.some((cell) => readAngle(cell, "degrees", layout.decimal, 1e5) !== undefined)
      : column.numbers.length > 0;
    const isDate = role === "date" && column.cells.some((cell) => /\d/.test(cell));
    if (holds || isDate) {
      roles.take(column, role, `header "${column.header}"`);
    }
  }
}

function rank(column: SampleColumn): number {
  return /gps/i.test(column.header) ? 0 : 1;
}
