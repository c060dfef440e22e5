import { nearest } from "../../shared/nearest.ts";
import { inputError } from "../../shared/problems.ts";
import { phase } from "./phase.ts";
import { readTraceCsv } from "./readTraceCsv.ts";
import type { Trace } from "./trace.ts";

/** A published speed table; the table itself lies in `cycles/ID.csv`, and whoever can read files brings it. */
export interface StandardCycle {
  readonly id: string;
  readonly title: string;
  /** Standard and place in it, in words for a person. */
  readonly source: string;
  readonly phases: readonly CyclePhase[];
}

/** A part of a cycle that starts and ends at rest. The row at its end is the first row of the next one. */
export interface CyclePhase {
  readonly id: string;
  readonly title: string;
  readonly from_s: number;
  readonly to_s: number;
}

const us86 = "United States, 40 CFR Part 86, Appendix I";
const gtr15 = "UN GTR No. 15, Annex 1";
const r83 = "UN Regulation No. 83, Annex 4a";

/** Lengths of the phases, in seconds: 589, 433, 455 and 323 [GTR15, Annex 1]. */
const low: CyclePhase = { id: "low", title: "low", from_s: 0, to_s: 589 };
const medium: CyclePhase = { id: "medium", title: "medium", from_s: 589, to_s: 1022 };
const high: CyclePhase = { id: "high", title: "high", from_s: 1022, to_s: 1477 };
const extraHigh: CyclePhase = { id: "extra-high", title: "extra high", from_s: 1477, to_s: 1800 };

/**
 * The cycles on board, in the order in which they are listed to a person. Where each table comes from and what was checked
 * stands in cycles/PROVENANCE.md [CFR86, Appendix I (a), (e), (g)] [CFR600, Appendix I] [GTR15, Annex 1] [UNR83, Annex 4a].
 */
export const standardCycles: readonly StandardCycle[] = [
  {
    id: "udds",
    title: "US urban schedule (UDDS)",
    source: `${us86}, paragraph (a)`,
    phases: [
      { id: "transient", title: "transient", from_s: 0, to_s: 505 },
      { id: "stabilized", title: "stabilized", from_s: 505, to_s: 1369 },
    ],
  },
  {
    id: "hwfet",
    title: "US highway schedule (HWFET)",
    source: "United States, 40 CFR Part 600, Appendix I",
    phases: [],
  },
  { id: "us06", title: "US fast and hard driving (US06)", source: `${us86}, paragraph (g)`, phases: [] },
  { id: "nycc", title: "New York City cycle (NYCC)", source: `${us86}, paragraph (e)`, phases: [] },
  {
    id: "wltc-class-1",
    title: "WLTC class 1",
    source: `${gtr15}, class 1`,
    phases: [low, medium, { id: "low-again", title: "low again", from_s: 1022, to_s: 1611 }],
  },
  { id: "wltc-class-2", title: "WLTC class 2", source: `${gtr15}, class 2`, phases: [low, medium, high, extraHigh] },
  { id: "wltc-class-3b", title: "WLTC class 3b", source: `${gtr15}, class 3b`, phases: [low, medium, high, extraHigh] },
  { id: "ece-15", title: "European urban cycle (ECE-15), once", source: `${r83}, Part One`, phases: [] },
  { id: "eudc", title: "European extra-urban cycle (EUDC)", source: `${r83}, Part Two`, phases: [] },
  {
    id: "nedc",
    title: "European cycle (NEDC): ECE-15 four times, then EUDC",
    source: `${r83}, Parts One and Two`,
    phases: [
      { id: "urban", title: "urban, four times", from_s: 0, to_s: 780 },
      { id: "extra-urban", title: "extra-urban", from_s: 780, to_s: 1180 },
    ],
  },
];

const wholeIds: readonly string[] = standardCycles.map(({ id }) => id);

/** Every id that `cycleTrace` takes: whole cycles and their phases, `wltc-class-3b` and `wltc-class-3b:low`. */
export const cycleIds: readonly string[] = standardCycles.flatMap(({ id, phases }) => [
  id,
  ...phases.map((part) => `${id}:${part.id}`),
]);

/** The cycle and, after a colon, the phase that an id names. Throws InputError with the nearest id for an unknown one. */
export function findCycle(id: string): { readonly cycle: StandardCycle; readonly phase?: CyclePhase } {
  const cycle = standardCycles.find((one) => one.id === id.split(":")[0]);
  if (!cycle) throw inputError("cycle-unknown", id, `found no cycle of this name; ${advice(id, cycleIds, wholeIds)}`);
  if (id === cycle.id) return { cycle };
  const part = cycle.phases.find((one) => id === `${cycle.id}:${one.id}`);
  if (part) return { cycle, phase: part };
  const parts = cycle.phases.map((one) => `${cycle.id}:${one.id}`);
  const hint = parts.length === 0 ? `${cycle.id} has no phases` : advice(id, parts, parts);
  throw inputError("cycle-unknown", id, `found no phase of this name; ${hint}`);
}

function advice(typed: string, ids: readonly string[], listed: readonly string[]): string {
  const near = nearest(typed, ids);
  return near ? `did you mean ${near}` : `known are ${listed.join(", ")}`;
}

/** A whole cycle from the text of its table, under the catalogue's id and title. */
export function cycleFromCsv(id: string, text: string): Trace {
  const { cycle } = findCycle(id);
  return { ...readTraceCsv(`${cycle.id}.csv`, text), id: cycle.id, title: cycle.title };
}

/**
 * The trace an id names, a whole cycle or a phase of one. `texts` holds the tables by cycle id; a missing one is a mistake
 * of the caller. Throws InputError, with the nearest id, for an unknown one.
 */
export function cycleTrace(id: string, texts: Readonly<Record<string, string>>): Trace {
  const found = findCycle(id);
  const text = texts[found.cycle.id];
  if (text === undefined) throw new Error(`the table of the cycle ${found.cycle.id} was not brought along`);
  const whole = cycleFromCsv(found.cycle.id, text);
  if (!found.phase) return whole;
  const part = phase(whole, found.phase.from_s, found.phase.to_s);
  return { ...part, id, title: `${whole.title}, ${found.phase.title}` };
}
