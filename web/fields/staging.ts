import { type Signal, signal } from "@preact/signals-core";
import type { MotorLoss } from "../../shared/job/motor.ts";
import type { MotorMap } from "../../sim/index.ts";
import { createLogStaging, type LogStaging } from "../log/logStaging.ts";

/** A motor map as it was brought: read, with the form that a job keeps it in, or why it could not be. */
export type BroughtMap =
  | { readonly name: string; readonly map: MotorMap; readonly loss: MotorLoss }
  | { readonly name: string; readonly problems: readonly string[] };

/** What is staged and is not in the job yet: a part picked up, a map brought, a datasheet half copied. */
export interface Staging {
  /** The part chosen in each picker, by the picker's id. */
  readonly chosen: Signal<Readonly<Record<string, string>>>;
  /** Why the job refused a change, by the place on the page where it was asked for. */
  readonly refused: Signal<Readonly<Record<string, string>>>;
  readonly map: Signal<BroughtMap | undefined>;
  /** Texts in the datasheet's fields, by field. */
  readonly state: Signal<Readonly<Record<string, string>>>;
  /** The client's own log. */
  readonly log: LogStaging;
}

export function createStaging(): Staging {
  return {
    chosen: signal({}),
    refused: signal({}),
    map: signal(undefined),
    state: signal({}),
    log: createLogStaging(),
  };
}

/** Clears the staging for another job, which none of it belongs to. */
export function clearStaging({ chosen, refused, map, state }: Staging): void {
  chosen.value = {};
  refused.value = {};
  map.value = undefined;
  state.value = {};
}
