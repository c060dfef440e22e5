import type { ReadonlySignal } from "@preact/signals-core";
import { unbroken } from "../look/unbroken.ts";
import type { AnySection } from "../sections/parts/section.ts";
import type { Reading } from "./graph/graph.ts";

/** The finding of the last question, which is the one the client came with. */
export function shortAnswer(
  sections: readonly AnySection[],
  readings: readonly ReadonlySignal<Reading<unknown>>[],
): string {
  const reading = readings.at(-1)?.value;
  return reading?.state === "ready" ? unbroken(sections.at(-1)?.inShort?.(reading.value as never) ?? "") : "";
}

/** What speaks against promising the answer yet; nothing where the doubts leave it standing. */
export function doubtOf(
  sections: readonly AnySection[],
  readings: readonly ReadonlySignal<Reading<unknown>>[],
): string {
  const { section, reading } = openQuestion(sections, readings);
  if (reading?.state !== "ready" || reading.isLate) return "";
  return unbroken(section?.attention?.(reading.value as never)[0] ?? "");
}

/** The band of the answer, and what would narrow it most; nothing until it is worked out. */
export function bandOf(sections: readonly AnySection[], readings: readonly ReadonlySignal<Reading<unknown>>[]): string {
  const { section, reading } = openQuestion(sections, readings);
  return reading?.state === "ready" ? unbroken(section?.sentence(reading.value as never) ?? "") : "";
}

function openQuestion(sections: readonly AnySection[], readings: readonly ReadonlySignal<Reading<unknown>>[]) {
  const place = sections.findIndex(({ name }) => name === "whatIsOpen");
  return { section: sections[place], reading: readings[place]?.value };
}
