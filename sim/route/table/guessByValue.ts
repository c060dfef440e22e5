import { countsRows, looksLikeAngle, looksLikeHeight, looksLikeSpeed, moves, risesSteadily } from "./looksLike.ts";
import type { SampleColumn } from "./sampleColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import type { TakenRoles } from "./takenRoles.ts";
import { timeForm } from "./timeForm.ts";

/** Whole numbers one apart: seconds or the number of the row, which the numbers alone do not say. */
export const COUNTS_ROWS = "counts by one from row to row: a row number or seconds";

/**
 * Gives columns without a header the roles that are still missing, by what their values look like: time, position, speed
 * and, in a table without any header, height.
 */
export function guessByValue(layout: TableLayout, columns: readonly SampleColumn[], roles: TakenRoles): void {
  const isBare = (column: SampleColumn) =>
    column.named === "none" && (column.header === "" || layout.headers.length === 0);
  if (!roles.has("time")) {
    const forms = roles
      .free()
      .filter(({ cells }) => moves(cells))
      .map((column) => ({ column, form: timeForm(column.cells, column.unit, layout.decimal) }))
      .filter(({ form }) => form !== undefined);
    const angles = roles.free().filter((column) => isBare(column) && looksLikeAngle(column));
    const isAngle = (column: SampleColumn) => angles.length === 2 && angles.includes(column); // a drive north rises too
    const rising = forms.filter(
      ({ column, form }) =>
        form?.kind === "elapsed" && isBare(column) && risesSteadily(column.numbers) && !isAngle(column),
    );
    const read = forms.find(({ form }) => form?.kind !== "elapsed");
    const counted = rising.find(({ column }) => !countsRows(column.numbers));
    if (read) {
      roles.take(read.column, "time", "reads as times");
    } else if (counted) {
      roles.take(counted.column, "time", "numbers that rise steadily");
    } else if (rising[0]) {
      roles.leave(rising[0].column, COUNTS_ROWS);
    }
  }
  if (!roles.has("lat") && !roles.has("lon")) {
    const angles = roles.free().filter((column) => isBare(column) && looksLikeAngle(column));
    const [first, second] = angles;
    if (first && second) {
      const isSwapped = first.numbers.some((value) => Math.abs(value) > 90);
      const why = "numbers with four or more decimals that hardly move";
      roles.take(
        isSwapped ? second : first,
        "lat",
        isSwapped ? `${why}; the other goes beyond 90` : `${why}; first of two`,
      );
      roles.take(isSwapped ? first : second, "lon", isSwapped ? `${why}; goes beyond 90` : `${why}; second of two`);
    }
  }
  if (!roles.has("speed")) {
    const found = roles.free().find((column) => isBare(column) && looksLikeSpeed(column));
    if (found) {
      roles.take(found, "speed", "numbers from 0 to 250 that change as a speed does");
    }
  }
  if (!roles.has("height") && roles.has("lat") && columns.every((column) => column.header === "")) {
    const found = roles.free().find((column) => isBare(column) && looksLikeHeight(column));
    if (found) {
      roles.take(found, "height", "numbers that change slowly, as heights do");
    }
  }
}
