import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { isAtOrBelow, withPath } from "../../../shared/job/path.ts";
import { surfaces } from "../../../shared/parts/surfaces.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { partPicker } from "../parts/partPicker.ts";

const PRESSURE = "environment.pressure_kPa";
const ALTITUDE = "environment.altitude_m";
const ID = "kind-air-pressure";

/** The weather and the road's surface: temperature, air pressure one way or the other, wind, grip. */
export function airForm(form: Form): TemplateResult {
  const known = knownBy(form.job);
  const choose = (event: Event) => {
    const to = (event.target as HTMLSelectElement).value;
    attempt(form, ID, "Air pressure", ({ job, drafts }) => ({
      job: withAir(job, to),
      drafts: Object.fromEntries(
        Object.entries(drafts).filter(([path]) => !isAtOrBelow(path, PRESSURE) && !isAtOrBelow(path, ALTITUDE)),
      ),
    }));
  };
  const ways = { usual: "taken as 100 kPa", pressure: "measured", altitude: "from the height above the sea" };
  return html`${form.fields("environment.temperature_degC", "environment.headWind_kmh", "environment.pack_degC")}
    <div class="field is-words">
      <label for=${ID}>Air pressure is</label>
      <span class="entry">
        <select id=${ID} @change=${choose}>
          ${Object.entries(ways).map(
            ([key, words]) => html`<option value=${key} .selected=${key === known}>${words}</option>`,
          )}
        </select>
      </span>
      ${refusal(form, ID)}
      <span class="as-printed">${ways[known]}</span>
    </div>
    ${known === "pressure" ? form.fields(PRESSURE) : known === "altitude" ? form.fields(ALTITUDE) : ""}
    ${form.fields("environment.grip_coeff")}
    ${partPicker(form, {
      id: "surface",
      label: "Usual grip by surface",
      parts: surfaces,
      path: "environment",
      into: "values",
    })}`;
}

function knownBy({ environment }: Job): "usual" | "pressure" | "altitude" {
  if (environment.pressure_kPa !== undefined) return "pressure";
  return environment.altitude_m === undefined ? "usual" : "altitude";
}

/** The job with its air pressure known another way; a height of nought and 101.3 kPa are the sea's. */
function withAir(job: Job, to: string): Job {
  const { [PRESSURE]: _pressure, [ALTITUDE]: _altitude, ...origins } = job.origins;
  const none = withPath(withPath({ ...job, origins }, PRESSURE, undefined), ALTITUDE, undefined);
  if (to === "pressure") return withPath(none, PRESSURE, 101.3);
  return to === "altitude" ? withPath(none, ALTITUDE, 0) : none;
}
