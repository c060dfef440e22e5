import { looksLikeAngle, looksLikeHeight, looksLikeSpeed, risesSteadily } from "./looksLike.ts";
import type { SampleColumn } from "./sampleColumns.ts";
import type { TableLayout } from "./tableLayout.ts";
import type { TakenRoles } from "./takenRoles.ts";
import { timeForm } from "./timeForm.ts";

/**
 * Gives columns without a header the roles that are still missing, by what their values look like: time, position, speed
 * and, in a table without any header, height.
 */
export function guessByValue(layout: TableLayout, columns: readonly SampleColumn[], roles: TakenRoles): void {
  const isBare = (column: SampleColumn) =>
    column.named === "none" && (column.header === "" || layout.headers.length === 0);
  if (!roles.has("time")) {
    const found = roles.free().find((column) => {
      const form = timeForm(column.cells, column.unit, layout.decimal);
      return form !== undefined && (form.kind !== "elapsed" || (isBare(column) && risesSteadily(column.numbers)));
    });
    if (found) {
      roles.take(found, "time", found.numbers.length > 0 ? "numbers that rise steadily" : "reads as times");
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
