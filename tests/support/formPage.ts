import { effect } from "@preact/signals-core";
import { nothing, render, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import { createJobEditor, type EditorState } from "../../web/editing/jobEditor.ts";
import { createFieldContext, createForm, type FieldContext, type Form } from "../../web/fields/fieldContext.ts";
import type { RoadsApi } from "../../web/worker/roads/roadsApi.ts";
import { noRoads } from "./noRoads.ts";

type Control = HTMLInputElement & HTMLSelectElement;
let end = () => {};

/** A form on a page of its own, drawn anew with each change, and what somebody at it does and sees. */
export function formPage(
  start: Job | EditorState,
  draw: (form: Form, context: FieldContext) => TemplateResult | typeof nothing,
  roads: RoadsApi = noRoads,
) {
  end();
  const jobEditor = createJobEditor("job" in start ? start : { job: start, drafts: {} });
  const context = createFieldContext(jobEditor, roads);
  const main = document.querySelector("main") as HTMLElement;
  render(nothing, main);
  end = effect(() => {
    render(draw(createForm(context), context), main);
  });
  const at = (selector: string): Control => {
    const found = main.querySelector<Control>(selector);
    if (!found) throw new Error(`nothing at ${selector}`);
    return found;
  };
  const fire = (selector: string, type: string) => at(selector).dispatchEvent(new Event(type, { bubbles: true }));
  const plain = (text: string | null) => (text ?? "").replace(/\s+/g, " ").trim();
  return {
    jobEditor,
    context,
    main,
    at,
    fire,
    job: () => jobEditor.job.value,
    has: (selector: string) => main.querySelector(selector) !== null,
    /** Types a text, without leaving the field. */
    type(selector: string, text: string) {
      at(selector).value = text;
      fire(selector, "input");
    },
    /** Chooses of a list. */
    choose(selector: string, value: string) {
      at(selector).value = value;
      fire(selector, "change");
    },
    press(words: RegExp) {
      const button = [...main.querySelectorAll("button")].find(({ textContent }) => words.test(plain(textContent)));
      if (!button) throw new Error(`no button ${words}`);
      button.click();
    },
    buttons: () => [...main.querySelectorAll("button")].map(({ textContent }) => plain(textContent)),
    /** The words of the page, or of a part of it, without the line breaks of the source. */
    said: (selector?: string) => plain((selector === undefined ? main : at(selector)).textContent),
    texts: (selector: string) => [...main.querySelectorAll(selector)].map(({ textContent }) => plain(textContent)),
  };
}
