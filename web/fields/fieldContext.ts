import { computed, effect, type ReadonlySignal, type Signal, signal, untracked } from "@preact/signals-core";
import { html, nothing, type TemplateResult } from "lit-html";
import { drivenRoad } from "../../shared/job/drivenRoad.ts";
import type { Job } from "../../shared/job/job.ts";
import { isAtOrBelow } from "../../shared/job/path.ts";
import type { OwnChart } from "../../shared/job/schema/chart.ts";
import type { QuantityOptions } from "../../shared/quantity/reading/reading.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { Along } from "../charts/parts/axes/roadAxis.ts";
import { fieldAt } from "../editing/fieldTable/fieldAt.ts";
import type { EditorState, JobEditor } from "../editing/jobEditor.ts";
import type { RoadsApi } from "../worker/roads/roadsApi.ts";
import { choiceField } from "./choiceField.ts";
import { quantityField } from "./quantityField.ts";
import { createStaging, type Staging } from "./staging.ts";
import { textField } from "./textField.ts";
import { typedInto } from "./typedInto.ts";
import { yesNoField } from "./yesNoField.ts";

/** What reading a text needs: the job it is read against, the units of a bare number, what was asked before. */
export interface Parsing {
  readonly jobEditor: Pick<JobEditor, "job">;
  readonly view: Pick<PageView, "units">;
  /** What was asked once and need not be asked again, such as which hundredweight is meant. */
  readonly remembered: Signal<Pick<QuantityOptions, "cwt" | "gallon">>;
}

/** What a field that is written in needs: whom it tells, and where it stands. */
export interface Editing {
  readonly jobEditor: JobEditor;
  /** The text in the field that is being typed in: shown as it is, and not yet told off. */
  readonly typing: JobEditor["typing"];
  /** Before the ids of fields that stand on the page a second time. */
  readonly idPrefix: string;
}

/** What the fields of one page share: what parses, what edits, and what is looked at (`view`). */
export interface FieldContext extends Parsing, Editing {
  readonly jobEditor: JobEditor;
  readonly view: PageView;
  /** Paths typed in since the job was opened: only there is asked what only the person can say. */
  readonly typedHere: Set<string>;
}

/** What the page shows and how: units, charts and the road driven are the job's, the rest is only looked at. */
interface PageView {
  readonly units: ReadonlySignal<UnitHabit>;
  readonly roadId: ReadonlySignal<string>;
  readonly along: Signal<Along>;
  /** Nothing chosen: the pack that is enough. */
  readonly packIndex: Signal<number | undefined>;
  readonly charts: ReadonlySignal<readonly OwnChart[]>;
  /** Whether sections that are not for the client are left out on the screen too. */
  readonly isForClient: Signal<boolean>;
  /** Workings that stand open, by name; the same with every job. */
  readonly openWorkings: Signal<ReadonlySet<string>>;
  /** What is staged for the open job; that of another job is another one. */
  readonly staging: Staging;
}

/** The fields of a section, drawn from the job as it is now. */
export interface Form {
  readonly job: Job;
  readonly jobEditor: JobEditor;
  readonly view: PageView;
  /** The field of a path of the job; `label` where its own words would not tell it from its neighbours. */
  field(path: string, label?: string): TemplateResult;
  /** A state of the job with a text put into the field of a path, as if typed there. */
  typedInto(state: EditorState, path: string, text: string): EditorState;
  /** Several fields side by side. */
  fields(...fields: readonly (string | TemplateResult)[]): TemplateResult;
  /** Fields that a first answer does without, folded away under a few words. */
  fold(words: string, content: TemplateResult, ...paths: readonly string[]): TemplateResult;
}

/**
 * What the fields of a page share. All of it that is not in the job belongs to the job that is open, and is begun anew with
 * another one. `roads` is asked for what takes long.
 */
export function createFieldContext(jobEditor: JobEditor, roads: RoadsApi): FieldContext {
  let before: Staging | undefined;
  const staging = computed(() => {
    jobEditor.opened.value;
    before?.log.end();
    before?.measured.end();
    before = untracked(() => createStaging(jobEditor, roads));
    return before;
  });
  const view: PageView = {
    units: computed(() => jobEditor.job.value.units),
    roadId: computed(() => drivenRoad(jobEditor.job.value).id),
    along: signal<Along>("time"),
    packIndex: signal<number | undefined>(undefined),
    charts: computed(() => jobEditor.job.value.charts),
    isForClient: signal(false),
    openWorkings: signal<ReadonlySet<string>>(new Set()),
    get staging() {
      return staging.value;
    },
  };
  const { typing } = jobEditor;
  const context: FieldContext = { jobEditor, typing, remembered: signal({}), view, typedHere: new Set(), idPrefix: "" };
  effect(() => {
    jobEditor.opened.value;
    context.typedHere.clear();
    context.remembered.value = {};
    view.packIndex.value = undefined;
    view.isForClient.value = false;
  });
  return context;
}

export function createForm(context: FieldContext): Form {
  const { jobEditor } = context;
  const form: Form = {
    job: jobEditor.job.value,
    jobEditor,
    view: context.view,
    field(path, label) {
      const field = { ...fieldAt(path), ...(label !== undefined && { label }) };
      if (field.type === "quantity") return quantityField(context, path, field);
      if (field.type === "choice") return choiceField(context, path, field);
      if (field.type === "yesNo") return yesNoField(context, path, field);
      return textField(context, path, field);
    },
    typedInto: (state, path, text) => typedInto(context, state, path, text),
    fields: (...fields) =>
      html`<div class="fields">${fields.map((each) => (typeof each === "string" ? form.field(each) : each))}</div>`,
    fold(words, content, ...paths) {
      const waiting = Object.keys(jobEditor.drafts.value);
      const wrong = waiting.filter((key) => paths.some((path) => isAtOrBelow(key, path))).length;
      const note = wrong === 0 ? nothing : html` <span class="to-mend">(${wrong} wrong)</span>`;
      return html`<details class="fold"><summary>${words}${note}</summary><div class="folded">${content}</div></details>`;
    },
  };
  return form;
}
