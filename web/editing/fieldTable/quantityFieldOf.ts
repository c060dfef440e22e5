import type { QuantityKind } from "../../../shared/quantity/kinds.ts";
import type { Field, Usual } from "./fieldList.ts";

/** What a field of a quantity may have beside its label. */
export interface Aside {
  readonly help?: string;
  readonly usual?: Usual;
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

/** The job does without the value. */
export const optional = { isOptional: true } as const;
/** The value is decided by the workshop, so nobody asks where it comes from. */
export const chosen = { isChosen: true } as const;
