import { batch } from "@preact/signals-core";
import type { Paper } from "./form.ts";
import { isBareNumber } from "./isBareNumber.ts";
import type { QuantityFieldSpec } from "./quantityField.ts";
import { readField } from "./readField.ts";

/**
 * Takes a typed quantity into the job: its value where the text can be read, the usual value where it says unknown or
 * nothing, and otherwise the text itself as a draft with the sentence that says why it is refused.
 */
export function enterQuantity(paper: Paper, path: string, field: QuantityFieldSpec, typed: string): void {
  // Together, so that the page's fields are looked over once a key and not for each thing that changes.
  batch(() => {
    paper.typing.value = { path, text: typed };
    paper.typedHere.add(path);
    take(paper, path, field, typed);
  });
}

function take(paper: Paper, path: string, field: QuantityFieldSpec, typed: string): void {
  const { desk, view } = paper;
  const about = { what: field.label };
  const reading = readField(paper, path, field, typed);

  if (!reading || (reading.ok && reading.unknown)) {
    if (field.usual) desk.edit(path, "", field.usual.value, { ...about, from: "usual" });
    else if (field.isOptional) desk.edit(path, "", undefined, about);
    else {
      desk.keepDraft(
        path,
        typed,
        field.needed ?? "nothing written, and no usual value could stand in for it",
        field.label,
      );
    }
    return;
  }
  if (!reading.ok) {
    desk.keepDraft(path, typed, reading.problem.message, field.label);
    return;
  }

  const { value, plusMinus } = reading;
  // A bare number means the unit shown beside it; written down alone it would mean another one after a change of units.
  const kept = isBareNumber(typed) && view.units.value !== "metric" ? "" : typed;
  desk.edit(path, kept, value, {
    ...about,
    ...(plusMinus !== undefined && value !== 0 && { plusMinus_frac: Math.min(2, Math.abs(plusMinus / value)) }),
  });
}
