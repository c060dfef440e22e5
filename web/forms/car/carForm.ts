import { html, type TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { kindChoice } from "../../fields/kindChoice.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

const [BALANCE, ROOF, TRAILER, INERTIA] = ["balance", "roof", "trailer", "inertia"].map((key) => `vehicle.${key}`);

/** Where the weight sits, what is on the roof and behind the car, and how turning parts are counted. */
export function carForm(form: Form): TemplateResult {
  const { inertia } = form.job.vehicle;
  return html`
    ${optionalGroup(
      form,
      {
        path: BALANCE,
        name: "weight balance",
        without: "Not known: tyre grip is left out, so no wheel spins here.",
        start: () => ({
          wheelbase_mm: usualOf(`${BALANCE}.wheelbase_mm`),
          gravityHeight_mm: usualOf(`${BALANCE}.gravityHeight_mm`),
          frontShare_frac: usualOf(`${BALANCE}.frontShare_frac`),
        }),
      },
      () => form.fields(`${BALANCE}.wheelbase_mm`, `${BALANCE}.gravityHeight_mm`, `${BALANCE}.frontShare_frac`),
    )}
    ${optionalGroup(
      form,
      {
        path: ROOF,
        name: "roof load",
        without: "Nothing on the roof.",
        start: () => ({ mass_kg: 40, dragArea_m2: usualOf(`${ROOF}.dragArea_m2`) }),
      },
      () => form.fields(`${ROOF}.mass_kg`, `${ROOF}.dragArea_m2`),
    )}
    ${optionalGroup(
      form,
      {
        path: TRAILER,
        name: "trailer",
        without: "Nothing behind the car.",
        start: () => ({
          mass_kg: 400,
          dragArea_m2: usualOf(`${TRAILER}.dragArea_m2`),
          rolling_coeff: usualOf(`${TRAILER}.rolling_coeff`),
        }),
      },
      () => form.fields(`${TRAILER}.mass_kg`, `${TRAILER}.dragArea_m2`, `${TRAILER}.rolling_coeff`),
    )}
    <fieldset class="group">
      <legend>Turning parts</legend>
      ${kindChoice(
        form,
        INERTIA,
        "What turns is counted",
        [
          { key: "parts", words: "part by part: wheels and rotor", make: () => ({ kind: "parts" }) },
          {
            key: "massFactor",
            words: "as more mass",
            make: () => ({ kind: "massFactor", mass_ratio: usualOf(`${INERTIA}.mass_ratio`) }),
          },
        ],
        inertia.kind,
      )}
      ${inertia.kind === "massFactor" ? form.fields(`${INERTIA}.mass_ratio`) : ""}
    </fieldset>
  `;
}
