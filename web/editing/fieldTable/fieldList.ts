import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import { carFields } from "./carFields.ts";
import { chargingFields } from "./chargingFields.ts";
import { conditionFields } from "./conditionFields.ts";
import { costFields } from "./costFields.ts";
import { driveFields } from "./driveFields.ts";
import { gearFields } from "./gearFields.ts";
import { jobFields } from "./jobFields.ts";
import { moduleFields } from "./moduleFields.ts";
import { motorFields } from "./motorFields.ts";
import { packFields } from "./packFields.ts";
import { vehicleFields } from "./vehicleFields.ts";
import { weekFields } from "./weekFields.ts";
import { weightFields } from "./weightFields.ts";
import { wiringFields } from "./wiringFields.ts";
import { yearFields } from "./yearFields.ts";

/** What stands in for a value that nobody knows yet. */
export interface Usual {
  readonly value: number;
  /** Why this one, shown beside it. */
  readonly why: string;
}

/** Where nearly all such values lie: beyond it the page asks, and still takes the value. */
export interface Likely {
  readonly min: number;
  readonly max: number;
  /** Of what: `a car`. */
  readonly of: string;
}

export type Field =
  | {
      readonly type: "quantity";
      readonly kind: QuantityKind;
      readonly label: string;
      readonly help?: string;
      readonly usual?: Usual;
      readonly likely?: Likely;
      /** May be left empty: the job does without it. */
      readonly isOptional?: boolean;
      /** A thing that is decided, not a fact of the car: nobody asks where it comes from. */
      readonly isChosen?: boolean;
      /** What to say where nothing is written and neither a usual value nor none at all will do. */
      readonly needed?: string;
    }
  | { readonly type: "line" | "text"; readonly label: string; readonly help?: string; readonly isOptional?: boolean }
  | {
      readonly type: "choice";
      readonly label: string;
      readonly help?: string;
      readonly choices: Readonly<Record<string, string>>;
    }
  | { readonly type: "yesNo"; readonly label: string; readonly help?: string };

/** Every field of the page by its path in the job; `*` stands for a place in a list. */
export const fieldList: Readonly<Record<string, Field>> = {
  ...jobFields,
  ...carFields,
  ...vehicleFields,
  ...weightFields,
  ...gearFields,
  ...motorFields,
  ...driveFields,
  ...packFields,
  ...moduleFields,
  ...chargingFields,
  ...costFields,
  ...conditionFields,
  ...wiringFields,
  ...weekFields,
  ...yearFields,
};
