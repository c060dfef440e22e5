import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { isForReader } from "../../../shared/failureWords.ts";
import { inputError } from "../../../shared/problems.ts";
import { keepShared } from "../../editing/keepShared.ts";
import { refuseLoops } from "./refuseLoops.ts";

/** What is known of a named value right now. */
export type Reading<T> =
  | { readonly state: "waiting" }
  /** `isLate`: a newer answer is on its way, and this one still stands for what was before. */
  | { readonly state: "ready"; readonly value: T; readonly isLate: boolean }
  | { readonly state: "failed"; readonly message: string; readonly where: string; readonly error: unknown };

interface Named {
  readonly name: string;
}

/** A value that somebody else sets. */
interface Source extends Named {
  readonly from: ReadonlySignal<unknown>;
}

/** A value worked out at once from others. */
interface Worked extends Named {
  readonly inputs: readonly string[];
  /**
   * Values that must not be late for it to be worked out again, most of them its inputs: until they are there the value of before stands, and is
   * late too. Else it would be worked out twice a change, the first time from a job of now and drives of before.
   */
  readonly waitsFor?: readonly string[];
  readonly compute: (values: never) => unknown;
}

/** A value asked for elsewhere, which answers later. */
interface Asked extends Named {
  readonly inputs: readonly string[];
  /** Values that must not be late for it to be asked: else it would be asked twice a change, and the first answer be thrown away. */
  readonly waitsFor?: readonly string[];
  /** What stands while the answer is out, and where there is none: for an answer that makes surer what stands without it. Never late. */
  readonly meanwhile?: unknown;
  readonly ask: (values: never) => Promise<unknown>;
}

export type Definition = Source | Worked | Asked;

export interface Graph {
  /** The reading of a name; throws for a name nobody defines. */
  read(name: string): ReadonlySignal<Reading<unknown>>;
  /** Adds values that follow from those known so far; throws as `createGraph` does. */
  add(definitions: readonly Definition[]): void;
  /** Asks again for what failed. */
  retry(): void;
  /** Ends all asking. */
  stop(): void;
}

/**
 * Named values that follow one another. A change reaches only what depends on it, and what comes out the same reaches
 * nothing further; a value that fails says so by name and leaves the rest alone. Throws InputError for a name defined
 * twice, a name nobody defines, and a loop, naming the values in it. Where `subject` changes, the values are of something else
 * from then on (another job): what was asked before is no answer any more, not even a late one.
 */
export function createGraph(definitions: readonly Definition[], subject?: ReadonlySignal<unknown>): Graph {
  const byName = new Map<string, Definition>();
  const tries = signal(0);
  const readings = new Map<string, ReadonlySignal<Reading<unknown>>>();
  const stops: (() => void)[] = [];
  const read = (name: string): ReadonlySignal<Reading<unknown>> => {
    const made = readings.get(name);
    if (made) return made;
    const definition = byName.get(name);
    if (!definition) throw inputError("unknownValue", name, "found no value of this name");
    const reading = make(definition, read, stops, { subject, tries });
    readings.set(name, reading);
    return reading;
  };
  const add = (more: readonly Definition[]) => {
    for (const definition of more) {
      if (byName.has(definition.name)) throw inputError("twice", definition.name, "found this name defined twice");
      byName.set(definition.name, definition);
    }
    refuseLoops(new Map([...byName.values()].map((each) => [each.name, "inputs" in each ? needed(each) : []])));
    for (const { name } of more) read(name);
  };
  add(definitions);
  return {
    read,
    add,
    retry: () => {
      tries.value += 1;
    },
    stop: () => void stops.map((stop) => stop()),
  };
}

type Read = (name: string) => ReadonlySignal<Reading<unknown>>;

/** What makes a question be asked anew although its inputs are the same. */
interface Anew {
  readonly subject: ReadonlySignal<unknown> | undefined;
  readonly tries: ReadonlySignal<number>;
}

function make(definition: Definition, read: Read, stops: (() => void)[], anew: Anew): ReadonlySignal<Reading<unknown>> {
  if ("from" in definition) {
    return computed(() => ({ state: "ready", value: definition.from.value, isLate: false }));
  }
  const inputs = definition.inputs.map((name) => ({ name, reading: read(name) }));
  const isAwaiting = awaiting((definition.waitsFor ?? []).map(read));
  return "compute" in definition
    ? worked(definition, inputs, isAwaiting)
    : asked(definition, inputs, isAwaiting, stops, anew);
}

type Inputs = readonly { readonly name: string; readonly reading: ReadonlySignal<Reading<unknown>> }[];

function worked(definition: Worked, inputs: Inputs, isAwaiting: () => boolean): ReadonlySignal<Reading<unknown>> {
  let before: { values: readonly unknown[]; reading: Reading<unknown> } | undefined;
  return computed(() => {
    const gathered = gather(inputs);
    if (gathered.state !== "ready") return gathered;
    const { values } = gathered;
    const isHeld = before?.reading.state === "ready" && isAwaiting();
    const isLate = gathered.isLate || isHeld;
    if (before && (isHeld || isSame(before.values, values))) {
      if (before.reading.state === "ready" && before.reading.isLate !== isLate) {
        before = { values: before.values, reading: { ...before.reading, isLate } };
      }
      return before.reading;
    }
    let reading: Reading<unknown>;
    try {
      // What came out the same is the same object, so that it reaches nothing further and no figure is drawn anew for it.
      const value = keepShared(
        before?.reading.state === "ready" ? before.reading.value : undefined,
        definition.compute(named(inputs, values)),
      );
      const isUnchanged =
        before?.reading.state === "ready" && before.reading.isLate === isLate && Object.is(before.reading.value, value);
      reading = isUnchanged && before ? before.reading : { state: "ready", value, isLate };
    } catch (error) {
      reading = failure(definition.name, error);
    }
    before = { values, reading };
    return reading;
  });
}

function asked(
  definition: Asked,
  inputs: Inputs,
  isAwaiting: () => boolean,
  stops: (() => void)[],
  { subject, tries }: Anew,
): ReadonlySignal<Reading<unknown>> {
  const meanwhile: Reading<unknown> | undefined =
    "meanwhile" in definition ? { state: "ready", value: definition.meanwhile, isLate: false } : undefined;
  const reading = signal<Reading<unknown>>(meanwhile ?? { state: "waiting" });
  let asking = 0; // number of the latest question; an answer to any other is dropped
  let before: readonly unknown[] | undefined;
  let about = subject?.peek();
  let tried = tries.peek();
  stops.push(
    effect(() => {
      const gathered = gather(inputs);
      if (tries.value !== tried && reading.peek().state === "failed") before = undefined;
      tried = tries.peek();
      if (subject && subject.value !== about) {
        about = subject.value;
        asking += 1;
        before = undefined;
        reading.value = meanwhile ?? { state: "waiting" };
      }
      if (gathered.state === "waiting") return;
      if (gathered.state === "failed") {
        asking += 1;
        before = undefined;
        reading.value = meanwhile ?? gathered;
        return;
      }
      const shown = reading.peek();
      const late = (): Reading<unknown> =>
        meanwhile ??
        (shown.state !== "ready" ? { state: "waiting" } : shown.isLate ? shown : { ...shown, isLate: true });
      if (isAwaiting()) {
        asking += 1;
        before = undefined;
        reading.value = late();
        return;
      }
      if (before && isSame(before, gathered.values)) return;
      before = gathered.values;
      asking += 1;
      const mine = asking;
      reading.value = late();
      definition.ask(named(inputs, gathered.values)).then(
        (value) => {
          if (mine === asking) reading.value = { state: "ready", value, isLate: false };
        },
        (error: unknown) => {
          if (mine !== asking) return;
          const failed = failure(definition.name, error);
          reading.value = meanwhile ?? failed;
        },
      );
    }),
    () => {
      asking += 1;
    },
  );
  return reading;
}

/** Whether any of what a value waits for is late now; what failed or never was there is not waited for. */
function awaiting(awaited: readonly ReadonlySignal<Reading<unknown>>[]): () => boolean {
  return () => awaited.some((reading) => isReadyLate(reading.value));
}

/** All that a value has to be made after. */
function needed({ inputs, waitsFor = [] }: Worked | Asked): readonly string[] {
  return [...new Set([...inputs, ...waitsFor])];
}

function isReadyLate(reading: Reading<unknown>): boolean {
  return reading.state === "ready" && reading.isLate;
}

type Gathered = Exclude<Reading<never>, { state: "ready" }> | { state: "ready"; values: unknown[]; isLate: boolean };

function gather(inputs: Inputs): Gathered {
  const values: unknown[] = [];
  let isLate = false;
  let waiting: Gathered | undefined;
  for (const { reading } of inputs) {
    const { value } = reading;
    if (value.state === "failed") return value;
    if (value.state === "waiting") waiting = value;
    else {
      values.push(value.value);
      isLate ||= value.isLate;
    }
  }
  return waiting ?? { state: "ready", values, isLate };
}

function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.every((value, i) => Object.is(value, b[i]));
}

/** The values under their names. The definition's own type says which they are, so nothing is lost by `never` here. */
function named(inputs: Inputs, values: readonly unknown[]): never {
  return Object.fromEntries(inputs.map(({ name }, i) => [name, values[i]])) as never;
}

function failure(where: string, error: unknown): Reading<never> {
  // The page says of a fault of ours only that it is one; what it was is for whoever mends it.
  if (!isForReader(error)) globalThis.reportError?.(error);
  return { state: "failed", where, message: error instanceof Error ? error.message : String(error), error };
}
