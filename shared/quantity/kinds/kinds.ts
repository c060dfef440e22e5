import { carKinds } from "./carKinds.ts";
import type { QuantityKindInfo } from "./defineKind.ts";
import { electricalKinds } from "./electricalKinds.ts";
import { heatKinds } from "./heatKinds.ts";
import { moneyKinds } from "./moneyKinds.ts";
import { numberKinds } from "./numberKinds.ts";
import { roadKinds } from "./roadKinds.ts";

/** Every kind there is. The bounds are the program's own; a field with better ones gives them. */
export const quantityKinds = {
  ...carKinds,
  ...roadKinds,
  ...electricalKinds,
  ...heatKinds,
  ...moneyKinds,
  ...numberKinds,
} as const;

/** Name of a kind: `mass`, `finalDrive`. */
export type QuantityKind = keyof typeof quantityKinds;

/** The entry of a kind, with the general type. */
export function kindInfo(kind: QuantityKind): QuantityKindInfo {
  return quantityKinds[kind];
}
