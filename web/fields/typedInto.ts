import { edited } from "../editing/editField.ts";
import { fieldAt } from "../editing/fieldTable/fieldAt.ts";
import type { EditorState } from "../editing/jobEditor.ts";
import { bandOf } from "./bandOf.ts";
import type { FieldContext } from "./fieldContext.ts";
import { isBareNumber } from "./isBareNumber.ts";
import { readField } from "./readField.ts";

/**
 * The state after a text was put into the field of a path, as if typed there: its value in the job, or the text kept as a
 * draft with the sentence that says why it is refused. An empty text changes nothing.
 */
export function typedInto(context: FieldContext, state: EditorState, path: string, text: string): EditorState {
  const field = fieldAt(path);
  const typed = text.trim();
  if (typed === "") return state;
  const refused = (problem: string): EditorState => ({
    ...state,
    drafts: { ...state.drafts, [path]: { typed, problem } },
  });
  if (field.type === "choice") {
    const key = Object.entries(field.choices).find(([id, words]) => isSame(typed, id) || isSame(typed, words))?.[0];
    return key === undefined
      ? refused(`found ${typed}, one of ${Object.values(field.choices).join(", ")} wanted`)
      : edited(state, path, typed, key);
  }
  if (field.type !== "quantity") return edited(state, path, typed, typed);
  const about = { what: field.label };
  const reading = readField(context, path, field, typed);
  if (!reading?.ok) return refused(reading?.problem.message ?? "nothing written");
  if (reading.unknown) {
    return field.usual ? edited(state, path, "", field.usual.value, { ...about, from: "usual" }) : state;
  }
  const { value } = reading;
  const { plusMinus_frac, problem } = bandOf(field.kind, value, reading.plusMinus);
  if (problem !== undefined) return refused(problem);
  const kept = isBareNumber(typed) && context.view.units.value !== "metric" ? "" : typed;
  return edited(state, path, kept, value, { ...about, ...(plusMinus_frac !== undefined && { plusMinus_frac }) });
}

function isSame(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
