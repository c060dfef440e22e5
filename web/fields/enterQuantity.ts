import { batch } from "@preact/signals-core";
import { bandOf } from "./bandOf.ts";
import type { FieldContext } from "./fieldContext.ts";
import { isBareNumber } from "./isBareNumber.ts";
import type { QuantityFieldSpec } from "./quantityField.ts";
import { readField } from "./readField.ts";

/**
 * Takes a typed quantity into the job: its value where the text can be read, the usual value where it says unknown, and
 * otherwise the text itself as a draft with the sentence that says why it is refused. An emptied field is a draft too:
 * nothing stands in for it unasked.
 */
export function enterQuantity(context: FieldContext, path: string, field: QuantityFieldSpec, typed: string): void {
  // Together, so that the page's fields are looked over once a key and not for each thing that changes.
  batch(() => {
    context.typing.value = { path, text: typed };
    context.typedHere.add(path);
    take(context, path, field, typed);
  });
}

function take(context: FieldContext, path: string, field: QuantityFieldSpec, typed: string): void {
  const { jobEditor, view } = context;
  const about = { what: field.label };
  const reading = readField(context, path, field, typed);

  if (!reading) {
    if (field.isOptional) jobEditor.edit(path, "", undefined, about);
    else jobEditor.keepDraft(path, "", field.needed ?? "what depends on it waits", field.label);
    return;
  }
  if (reading.ok && reading.unknown) {
    if (field.usual) jobEditor.edit(path, "", field.usual.value, { ...about, from: "usual" });
    else if (field.isOptional) jobEditor.edit(path, "", undefined, about);
    else jobEditor.keepDraft(path, typed, field.needed ?? "there is no usual value of it", field.label);
    return;
  }
  if (!reading.ok) {
    jobEditor.keepDraft(path, typed, reading.problem.message, field.label);
    return;
  }

  const { value } = reading;
  const { plusMinus_frac, problem } = bandOf(field.kind, value, reading.plusMinus);
  if (problem !== undefined) {
    jobEditor.keepDraft(path, typed, problem, field.label);
    return;
  }
  // A bare number means the unit shown beside it; written down alone it would mean another one after a change of units.
  const kept = isBareNumber(typed) && view.units.value !== "metric" ? "" : typed;
  jobEditor.edit(path, kept, value, {
    ...about,
    ...(plusMinus_frac !== undefined && { plusMinus_frac }),
  });
}
