import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { explanations } from "../../sim/index.ts";
import { labelOf } from "../inputs/fieldAt.ts";
import { fieldIds } from "../inputs/fieldParts.ts";
import { originWords } from "../inputs/originChoice.ts";
import { writeAtPath } from "../inputs/writeAtPath.ts";
import { atPath } from "./atPath.ts";
import { unbroken } from "./unbroken.ts";

/** Why a section's numbers are what they are: formula, the values they hang on with their origins, source. */
export function reasonsView(keys: readonly string[], job: Job, units: UnitHabit): TemplateResult {
  const known = keys.map((key) => explanations[key]).filter((each) => each !== undefined);
  if (known.length === 0) return html`${nothing}`;
  return html`<details class="reasons">
    <summary>Why are these numbers so?</summary>
    ${known.map(
      ({ result, formula, inputs, source }) =>
        html`<h4>${result}</h4>
          <p class="formula">${formula.replaceAll(" x ", " × ")}</p>
          <ul>
            ${inputs.flatMap((path) => valuesBelow(job, path)).map((path) => reason(job, path, units))}
          </ul>
          <p>Source: ${source}.</p>`,
    )}
  </details>`;
}

/** Long tables and lists are not told number by number. */
const TOLD_AT_MOST = 8;

/** Paths of the numbers at or below a path; the path itself where they are a table. */
function valuesBelow(job: Job, path: string): string[] {
  const value = atPath(job, path);
  if (typeof value !== "object" || value === null) return value === undefined ? [] : [path];
  const numbers = Object.entries(value).filter(([, each]) => typeof each === "number");
  if (Array.isArray(value) || numbers.length === 0 || numbers.length > TOLD_AT_MOST) return [path];
  return numbers.map(([key]) => `${path}.${key}`);
}

function reason(job: Job, path: string, units: UnitHabit): TemplateResult {
  const value = atPath(job, path);
  const origin = job.origins[path];
  const isUsual = origin?.from === "usual" || origin?.from === "guessed";
  const shown = typeof value === "number" ? `: ${unbroken(writeAtPath(path, value, units))}` : "";
  const label = wordsFor(path);
  const named = label === path ? html`${label}` : html`<a href="#${fieldIds(path).input}">${label}</a>`;
  return html`<li class=${isUsual ? "is-open" : ""}>${named}${shown}${origin ? ` (${originWords[origin.from]})` : ""}</li>`;
}

const groups: Readonly<Record<string, string>> = {
  packs: "the layout of each pack",
  accessories: "the accessories",
  controller: "the controller's limits",
  "controller.regen": "the limits of regenerative braking",
  "driveline.gears": "the ratios and efficiencies of the gears",
  "driveline.limits": "what the old driveline stands",
  "motor.loss": "the losses of motor and controller",
  "motor.envelope": "the motor's torque and power",
  "module.openCircuit": "the open-circuit curve of the cells",
  "module.resistance": "the resistance of a module",
  "module.discharge": "the discharge limits of a module",
  "module.charge": "the charge limits of a module",
};

function wordsFor(path: string): string {
  return groups[path] ?? labelOf(path);
}
