import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { Field, Likely, Usual } from "./fieldList.ts";

/** What a field of a quantity may have beside its label. */
export interface Aside {
  readonly help?: string;
  readonly usual?: Usual;
  readonly likely?: Likely;
  readonly isOptional?: boolean;
  readonly isChosen?: boolean;
  readonly needed?: string;
}

/** A field for a quantity of a kind. */
export function quantity(kind: QuantityKind, label: string, aside: Aside = {}): Field {
  return { type: "quantity", kind, label, ...aside };
}

/** The value that stands in where nobody knows, and why this one. */
export function usual(value: number, why: string): { usual: Usual } {
  return { usual: { value, why } };
}

/** Where nearly all such values lie, in the kind's unit: beyond it the page asks. Assumed, common practice, no source. */
export function likely(min: number, max: number, of: string): { likely: Likely } {
  return { likely: { min, max, of } };
}

/** The job does without the value. */
export const optional = { isOptional: true } as const;
/** The value is decided by the workshop, so nobody asks where it comes from. */
export const chosen = { isChosen: true } as const;
