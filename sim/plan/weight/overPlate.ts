import type { Weights } from "../../../shared/job/schema/weights.ts";
import { type Message, message } from "../../../shared/quantity/message.ts";
import { packSplit } from "./packSplit.ts";
import { overWords } from "./splitWords.ts";
import { type Load, packLoads } from "./weigh.ts";

/** The first state in which a car with a pack is over a plate or a tyre's load. */
export interface OverPlate {
  readonly load: Load;
  /** Over it whenever it is driven: empty already, or with its driver alone. */
  readonly isAlways: boolean;
  /** Another split between the foremost and the rearmost box would meet every plate, fully laden. */
  readonly otherSplit?: { readonly front: string; readonly rear: string };
}

/** Whether a car with a pack of `pack_kg` is over a plate or a tyre's load, first empty, then with its driver, laden and towing. */
export function overPlate(weights: Weights, pack: string, pack_kg: number): OverPlate | undefined {
  const load = packLoads(weights, pack, pack_kg).find(({ over }) => over.length > 0);
  if (load === undefined) return undefined;
  const split = packSplit(weights, pack_kg);
  return {
    load,
    isAlways: load.name === "empty" || load.name === "driver alone",
    ...(split?.low_frac !== undefined && { otherSplit: { front: split.front, rear: split.rear } }),
  };
}

/** That it may not be driven so, in sentences. */
export function overPlateWords(pack: string, { load, otherSplit }: OverPlate): Message {
  const helps = otherSplit
    ? message` Split otherwise between “${otherSplit.front}” and “${otherSplit.rear}” it would be within every plate.`
    : message``;
  return message`With ${pack}, ${load.name}: ${overWords(load.over)}. A car over its plate or over what its tyres carry may not be driven on the road; local codes decide.${helps}`;
}

/** The same in a line, for an answer that has other things to say. */
export function overPlateInShort({ load }: OverPlate): Message {
  const state = `${load.name.charAt(0).toUpperCase()}${load.name.slice(1)}`;
  return message`${state}, ${overWords(load.over)}: it may not be driven so; local codes decide.`;
}
