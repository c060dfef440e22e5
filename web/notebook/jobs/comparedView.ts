import { html, type TemplateResult } from "lit-html";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { knownField, labelOf } from "../../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../../editing/fieldTable/writeAtPath.ts";
import type { Difference } from "../../store/versions/jobDiff.ts";
import { tableView } from "../figures/tableView.ts";
import type { Compared } from "./jobsPlace.ts";

/** Two states of jobs side by side: what differs, then and now. How things were typed and where from is left out. */
export function comparedView({ title, differences }: Compared, units: UnitHabit): TemplateResult {
  const listed = differences.filter(({ path }) => !path.startsWith("origins."));
  if (listed.length === 0) return html`<p>Nothing differs from “${title}”.</p>`;
  const rows = listed.map((each) => [
    knownField(each.path) ? labelOf(each.path) : each.place,
    side(each, each.before, units),
    side(each, each.after, units),
  ]);
  const columns = [{ title: "Value" }, { title: title, isText: true }, { title: "Here, now", isText: true }];
  return tableView({ caption: `“${title}” beside the job as it is here`, columns, rows }, "compared");
}

function side({ path }: Difference, value: unknown, units: UnitHabit): string {
  if (value === undefined) return "not there";
  if (typeof value === "number") return writeAtPath(path, value, units);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return value.length > 60 ? `${value.slice(0, 60)}…` : value;
  return Array.isArray(value) ? `a list of ${value.length}` : "given";
}
