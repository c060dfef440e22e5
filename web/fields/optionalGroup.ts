import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { knownField } from "../editing/fieldTable/fieldAt.ts";
import { withGroup, withoutGroup } from "../editing/groupEdits.ts";
import { attempt, refusal } from "./attempt.ts";
import type { Form } from "./fieldContext.ts";

/** A group that a job may have or do without. */
export interface GroupOf {
  readonly path: string;
  /** What it is, for its legend and its buttons: `roof load`. */
  readonly name: string;
  /** What holds while the job has no such group. */
  readonly without: string;
  /** The group to start from; its numbers are said to be usual ones. */
  readonly start: (job: Job) => Readonly<Record<string, unknown>>;
}

/** The fields of a group with a button that takes it out, or a button that puts it in. */
export function optionalGroup(form: Form, group: GroupOf, content: () => TemplateResult): TemplateResult {
  const { path, name, without, start } = group;
  const isThere = atPath(form.job, path) !== undefined;
  const add = () => {
    const value = start(form.job);
    attempt(form, path, `${name} added`, (state) => withGroup(state, path, value, usualOrigins(path, value)));
  };
  const remove = () => attempt(form, path, `${name} removed`, (state) => withoutGroup(state, path));
  return html`<fieldset class="group" id="group-${path.replaceAll(".", "-")}">
    <legend>${name.charAt(0).toUpperCase()}${name.slice(1)}</legend>
    ${
      isThere
        ? html`${content()}
          <p class="buttons"><button type="button" @click=${remove}>Remove the ${name}</button></p>`
        : html`<p class="aside">${without}</p>
          <p class="buttons"><button type="button" @click=${add}>Add the ${name}</button></p>`
    }
    ${refusal(form, path)}
  </fieldset>`;
}

/** Of a group's numbers, those in lists too, that a field asks the origin of: usual ones. */
export function usualOrigins(path: string, value: Readonly<Record<string, unknown>>) {
  const keys = Object.entries(value).flatMap(([key, each]) => {
    const list: readonly unknown[] = Array.isArray(each) ? each : [];
    const inList = list.flatMap((one, i) => (typeof one === "number" ? [`${key}.${i}`] : []));
    return typeof each === "number" ? [key] : inList;
  });
  return Object.fromEntries(
    keys
      .filter((key) => {
        const field = knownField(`${path}.${key}`);
        return field?.type === "quantity" && !field.isChosen;
      })
      .map((key) => [key, { from: "usual" as const }]),
  );
}

/** The usual value of a field; 0 where it has none. */
export function usualOf(path: string): number {
  const field = knownField(path);
  return field?.type === "quantity" ? (field.usual?.value ?? 0) : 0;
}
