import type { Problem } from "../../problems.ts";
import type { UnitHabit } from "../writeQuantity.ts";

/** What a field may tell the reader about itself. */
export interface QuantityOptions {
  /** Bounds in the kind's own unit, where the field has narrower ones than the kind. */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** How the field is called in a problem: `kerb mass`, `vehicle.kerb_kg`. */
  readonly label?: string | undefined;
  /** The hundredweight meant by `cwt`, once it has been asked. */
  readonly cwt?: "112" | "100" | undefined;
  /** The gallon meant by `mpg`, once it has been asked. */
  readonly gallon?: "imperial" | "us" | undefined;
  /** The unit of a number written without one; the kind's own unit if absent. */
  readonly bareUnit?: string | undefined;
  /** Whose units what was understood is repeated in; the job file's own if absent. */
  readonly units?: UnitHabit | undefined;
}

/** One answer to a question: what could have been written so that nothing was left to ask. */
interface QuantityChoice {
  readonly label: string;
  /** Text that reads without the question. */
  readonly text: string;
  /** Options worth keeping for the next field, so that it is asked once. */
  readonly remember?: Pick<QuantityOptions, "cwt" | "gallon">;
}

/** Something only the person who wrote it can say. */
export interface QuantityQuestion {
  readonly id:
    | "cwt"
    | "gallon"
    | "comma"
    | "gradient"
    | "percent"
    | "consumption"
    | "clock"
    | "tyre"
    | "teeth"
    | "side";
  readonly text: string;
  readonly choices: readonly QuantityChoice[];
}

/** A value was found. Where a question stands beside it, the value is the likelier answer until it is put. */
export interface Understood {
  readonly ok: true;
  readonly unknown: false;
  /** In the unit the job file has for this kind; always finite. */
  readonly value: number;
  /** Plus or minus, in the same unit, where it was written or where a rule of thumb has one. */
  readonly plusMinus?: number;
  /** `14 1/4 cwt = 724 kg` */
  readonly understood: string;
  /** Whether the text is plainly this value, so that repeating it beside the field would say nothing. */
  readonly isAsTyped: boolean;
  readonly notes: readonly string[];
  readonly question?: QuantityQuestion;
}

/** The workshop says that it does not know: the usual value with its band takes its place. */
interface Unknown {
  readonly ok: true;
  readonly unknown: true;
  readonly understood: string;
}

/** Nothing that can be used. What was typed stays with the field. */
export interface Refused {
  readonly ok: false;
  readonly problem: Problem;
  /** What was likely meant, as text that reads. */
  readonly likely?: string;
  readonly question?: QuantityQuestion;
}

export type QuantityReading = Understood | Unknown | Refused;
