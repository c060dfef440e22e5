import { html, type TemplateResult } from "lit-html";
import type { TypedDriving } from "../../sim/index.ts";
import type { Form } from "./form.ts";
import { type RoadQuantity, roadQuantity } from "./roadField.ts";

/** How a road told from memory is driven: stated, not known. Usual values are those of calm driving; assumed. */
export function drivingFields(
  form: Form,
  prefix: string,
): { readonly fields: readonly TemplateResult[]; readonly driving: TypedDriving | undefined } {
  const acceleration = { kind: "number", unit: "m/s²", min: 0.1, max: 5 } as const;
  const up = roadQuantity(form, { ...acceleration, id: `${prefix}-up`, label: "Speeds up at", usual: "0.9" });
  const down = roadQuantity(form, { ...acceleration, id: `${prefix}-down`, label: "Slows down at", usual: "1" });
  const stand = roadQuantity(form, {
    ...{ id: `${prefix}-stand`, label: "Stands at a stop for", kind: "duration", usual: "15 s", min: 0, max: 3600 },
  });
  return { fields: [up.field, down.field, stand.field], driving: drivingOf(up, down, stand) };
}

function drivingOf(up: RoadQuantity, down: RoadQuantity, stand: RoadQuantity): TypedDriving | undefined {
  if (up.value === undefined || down.value === undefined || stand.value === undefined) return undefined;
  return { acceleration_mps2: up.value, braking_mps2: down.value, stand_s: stand.value };
}

/** The driving as a note beside a road. */
export function drivingNote({ acceleration_mps2, braking_mps2, stand_s }: TypedDriving): string {
  return `speeds up at ${acceleration_mps2} m/s2, slows at ${braking_mps2} m/s2, stands ${stand_s} s: assumed`;
}

/** A field for the words a road goes by. */
export function roadTitleField(form: Form, id: string, usual: string): { field: TemplateResult; title: string } {
  const { texts } = form.view.bench.log;
  const text = texts.value[id] ?? usual;
  const field = html`<div class="field is-words">
    <label for=${id}>What the road is called</label>
    <span class="entry">
      <input
        id=${id}
        type="text"
        maxlength="200"
        .value=${text}
        @change=${(event: Event) => {
          texts.value = { ...texts.value, [id]: (event.target as HTMLInputElement).value };
        }}
      />
    </span>
  </div>`;
  return { field, title: text.trim() === "" ? usual : text };
}
