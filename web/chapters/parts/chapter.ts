import type { TemplateResult } from "lit-html";
import type { Drawing } from "../../charts/parts/figure/chart.ts";
import type { Form } from "../../fields/fieldContext.ts";
import type { Figure } from "../../sections/parts/section.ts";
import type { Values } from "../../sections/parts/values.ts";

/** One thing the client wants to know: a sentence and a figure, and the one or two inputs that belong to it. */
export interface Chapter<Name extends keyof Values = keyof Values, Result = unknown> {
  readonly name: string;
  readonly title: string;
  readonly inputs: readonly Name[];
  readonly compute: (values: Pick<Values, Name>) => Result;
  readonly sentence: (result: Result) => string;
  /** Nothing where there is nothing to draw; the sentence then says why. */
  readonly plot: (result: Result, drawing: Drawing) => Figure | undefined;
  readonly given?: (form: Form) => TemplateResult;
  /** The working that has the numbers behind it. */
  readonly working: string;
}

/** A chapter with its result's type kept between its parts and forgotten behind them. */
export interface AnyChapter extends Omit<Chapter, "inputs" | "compute" | "sentence" | "plot"> {
  readonly inputs: readonly (keyof Values)[];
  readonly compute: (values: never) => unknown;
  readonly sentence: (result: never) => string;
  readonly plot: (result: never, drawing: Drawing) => Figure | undefined;
}

/** Lets types flow from `inputs` into `compute` and from there into `sentence` and `plot`. */
export function defineChapter<const Name extends keyof Values, Result>(
  chapter: Chapter<Name, Result>,
): Chapter<Name, Result> {
  return chapter;
}
