import { atPath } from "../../shared/job/path.ts";
import { kindInfo } from "../../shared/quantity/kinds/kinds.ts";
import type { QuantityReading } from "../../shared/quantity/reading/reading.ts";
import { readQuantity } from "../../shared/quantity.ts";
import { allowedRange } from "../editing/fieldTable/allowedRange.ts";
import type { Parsing } from "./fieldContext.ts";
import type { QuantityFieldSpec } from "./quantityField.ts";
import { shownQuantity } from "./shownQuantity.ts";

/**
 * What a text in a field means: a bare number has the unit shown beside the field, the bounds are the job's own, and
 * what was asked once is not asked again. Nothing for an empty field.
 */
export function readField(
  context: Parsing,
  path: string,
  field: QuantityFieldSpec,
  text: string,
): QuantityReading | undefined {
  if (text.trim() === "") return undefined;
  const job = context.jobEditor.job.value;
  const { unit } = shownQuantity(field.kind, atPath(job, path), undefined, context.view.units.value);
  const { min: low, max } = allowedRange(job, path) ?? {};
  // Teeth turned over make a gear that no box has, though the job's wide bounds would take it: 9/41 is 0.22.
  const min = field.kind === "gearRatio" && low !== undefined ? Math.max(low, kindInfo("gearRatio").min) : low;
  return readQuantity(field.kind, text, {
    ...context.remembered.value,
    label: field.label,
    bareUnit: unit,
    units: context.view.units.value,
    min,
    max,
  });
}
