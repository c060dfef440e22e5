import { html, nothing, type TemplateResult } from "lit-html";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { originWords } from "../../fields/originChoice.ts";
import { withoutRoad } from "../../log/takeRoad.ts";
import { cycleRoadForm } from "./cycleRoadForm.ts";
import { logForm } from "./logForm.ts";
import { typedRoadForm } from "./typedRoadForm.ts";

const ID = "roads";

/** Ways to a road of the client's own: a log, a list typed from memory, a standard cycle; and out of the job again. */
export function roadsForm(form: Form): TemplateResult {
  const { roads, origins } = form.job;
  const index = roads.findIndex(({ id }) => id === form.view.roadId.value);
  const road = roads[index];
  const origin = origins[`roads.${index}`];
  const takeOut = () => {
    attempt(form, ID, `Road taken out: ${road?.title}`, (state) => withoutRoad(state, road?.id ?? ""));
  };
  return html`${
    origin && road
      ? html`<p class="aside">
            ${road.title}: ${originWords[origin.from]}${origin.note ? `, ${origin.note}` : ""}${
              origin.typed ? html`. As typed: “${origin.typed}”` : nothing
            }.
          </p>`
      : nothing
  }
    ${logForm(form)} ${form.fold("A road without a log, typed from memory", typedRoadForm(form))}
    ${form.fold("A standard cycle, repeated or with hills", cycleRoadForm(form))}
    ${
      roads.length > 1 && road
        ? html`<p class="buttons">
            <button type="button" @click=${takeOut}>Take “${road.title}” out of the job</button>
          </p>`
        : nothing
    } ${refusal(form, ID)}`;
}
