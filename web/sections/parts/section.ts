import type { TemplateResult } from "lit-html";
import type { Chart, Drawing } from "../../charts/parts/figure/chart.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import type { Form } from "../../fields/fieldContext.ts";
import type { Values } from "./values.ts";

/** A drawn figure. Its number comes from where it stands on the page. */
export interface Figure {
  /** What notes call it by, beside the section's name, where the section has several; letters and digits. */
  readonly name?: string;
  readonly caption: string;
  readonly chart: Chart;
}

/** A table of results; a number column is set flush right. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly { readonly title: string; readonly isText?: boolean }[];
  /** Cells as they are read; the first of a row is its head. */
  readonly rows: readonly (readonly string[])[];
  /** Said below the table. */
  readonly note?: string;
}

export type Worked = Figure | Table;

/** A change of the job that a result suggests. */
export interface Offer {
  readonly words: string;
  /** What was done, for the line that tells of it. */
  readonly done: string;
  readonly change: (state: EditorState) => EditorState;
}

/** One question of the job: what is given, what was worked, and what was found. */
export interface Section<Name extends keyof Values = keyof Values, Result = unknown> {
  readonly name: string;
  readonly title: string;
  /** The question in the reader's words. */
  readonly question: string;
  /** The fields, drawn anew at every change of the job. */
  readonly given?: (form: Form) => TemplateResult;
  /** Before the ids of its fields, where they stand in other workings too. */
  readonly idPrefix?: string;
  /** Beginnings of the paths whose fields this section shows, so that what is to mend there is said in the contents. */
  readonly fields?: readonly string[];
  readonly inputs: readonly Name[];
  readonly compute: (values: Pick<Values, Name>) => Result;
  /** A generator draws each of its figures in a turn of its own, for those that take long. */
  readonly plot: (result: Result, drawing: Drawing) => readonly Worked[] | Generator<Worked, void>;
  readonly sentence: (result: Result) => string;
  /** The finding in its shortest form. */
  readonly inShort?: (result: Result) => string;
  /** The line beside the title while the working is folded: its result, no full sentence; the finding in short where there is none. */
  readonly summary?: (result: Result) => string;
  /** What in the result needs somebody's attention, a sentence each. */
  readonly attention?: (result: Result) => readonly string[];
  /** What can be done with the result: a button each, with the change of the job that it makes. */
  readonly offers?: (result: Result) => readonly Offer[];
  /** Keys of the results whose formula, inputs and source can be opened. */
  readonly explains?: readonly string[];
  /** Where the work can hurt someone. */
  readonly caution?: string;
}

/** A section with its result's type kept between its parts and forgotten behind them. */
export interface AnySection
  extends Omit<Section, "inputs" | "compute" | "plot" | "sentence" | "inShort" | "summary" | "attention" | "offers"> {
  readonly inputs: readonly (keyof Values)[];
  readonly compute: (values: never) => unknown;
  readonly plot: (result: never, drawing: Drawing) => readonly Worked[] | Generator<Worked, void>;
  readonly sentence: (result: never) => string;
  readonly inShort?: (result: never) => string;
  readonly summary?: (result: never) => string;
  readonly attention?: (result: never) => readonly string[];
  readonly offers?: (result: never) => readonly Offer[];
}

/** Lets types flow from `inputs` into `compute` and from there into `plot` and `sentence`. */
export function defineSection<const Name extends keyof Values, Result>(
  section: Section<Name, Result>,
): Section<Name, Result> {
  return section;
}
