import type { TemplateResult } from "lit-html";
import type { TypedDriving } from "../../../sim/index.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { type RoadQuantity, roadQuantity } from "../../fields/roadField.ts";
import { tooLong, wordsField } from "../../fields/wordsField.ts";

/** How a road told from memory is driven: stated, not known. Usual values are those of calm driving; assumed. */
export function drivingFields(
  form: Form,
  prefix: string,
): { readonly fields: readonly TemplateResult[]; readonly driving: TypedDriving | undefined } {
  const acceleration = { kind: "number", unit: "m/s²", min: 0.1, max: 5 } as const;
  const up = roadQuantity(form, { ...acceleration, id: `${prefix}-up`, label: "Speeds up at", usual: "0.9" });
  const down = roadQuantity(form, { ...acceleration, id: `${prefix}-down`, label: "Slows down at", usual: "1" });
  const stop = roadQuantity(form, {
    id: `${prefix}-stand`,
    label: "Stands at a stop for",
    kind: "duration",
    usual: "15 s",
    min: 0,
    max: 3600,
  });
  return { fields: [up.field, down.field, stop.field], driving: drivingOf(up, down, stop) };
}

function drivingOf(up: RoadQuantity, down: RoadQuantity, stop: RoadQuantity): TypedDriving | undefined {
  if (up.value === undefined || down.value === undefined || stop.value === undefined) return undefined;
  return { acceleration_mps2: up.value, braking_mps2: down.value, stand_s: stop.value };
}

/** The driving as a note beside a road. */
export function drivingNote({ acceleration_mps2, braking_mps2, stand_s }: TypedDriving): string {
  return `speeds up at ${acceleration_mps2} m/s2, slows at ${braking_mps2} m/s2, stands ${stand_s} s: assumed`;
}

/** As many letters as the job file keeps of a road's title. */
const LONGEST_TITLE = 200;

/** A field for the words a road goes by; `problem` where they are too many. */
export function roadTitleField(
  form: Form,
  id: string,
  usual: string,
): { field: TemplateResult; title: string; problem: string | undefined } {
  const { texts } = form.view.staging.log;
  const text = texts.value[id] ?? usual;
  const problem = tooLong(text, LONGEST_TITLE);
  const write = (typed: string) => {
    texts.value = { ...texts.value, [id]: typed };
  };
  const field = wordsField({ id, label: "What the road is called", text, problem, isPlain: true, write });
  return { field, title: text.trim() === "" ? usual : text, problem };
}
