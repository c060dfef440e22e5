import { effect } from "@preact/signals-core";
import { html, render } from "lit-html";
import { describe, expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import { openMeasuring, openRoutes } from "../../../sim/index.ts";
import { chapters } from "../../../web/chapters/index.ts";
import { knownField } from "../../../web/editing/fieldTable/fieldAt.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext, createForm } from "../../../web/fields/fieldContext.ts";
import { sections } from "../../../web/sections/index.ts";
import { createLogSession } from "../../../web/worker/roads/logSession.ts";
import { badTexts } from "../../support/badTexts.ts";
import { type Complaint, TRACES, walkField, writableFields } from "../../support/fieldWalk.ts";
import { noRoads } from "../../support/noRoads.ts";

/** The session that reads roads, without the worker around it and without the cycles. */
const roads = { ...noRoads, ...createLogSession(openRoutes, async () => ({}), openMeasuring) };

/** A demo with its curves cut to three points and its packs to two: the fields of a list are the same code under the same bounds. */
function shortDemo(which: number) {
  const short = (value: unknown): unknown => {
    if (Array.isArray(value))
      return value.length > 5 && typeof value[0] === "number"
        ? [value[0], value[Math.floor(value.length / 2)], value.at(-1)]
        : value.map(short);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, short(inner)]));
  };
  const job = readJob(demos[which]?.document);
  return readJob({
    ...(short({ ...job, roads: [] }) as object),
    year: job.year,
    packs: job.packs.slice(0, 2),
    roads: job.roads,
  });
}

/** Kinds of field that were walked; fields of a kind have one pattern of path, such as `packs-*-name`. */
const walkedKinds = new Set<string>();
const kindOf = (id: string) => id.replace(/-\d+/g, "-*");
/** Readers that have had every text: those of a quantity, of words, of a number. What is no field of the job has its own. */
const triedReaders = new Set<string>();
function readerOf(id: string): string {
  const field = knownField(id.replace(/^field-/, "").replaceAll("-", "."));
  if (!field) return kindOf(id);
  return "kind" in field ? `${field.type} ${field.kind}` : field.type;
}

/** What a field's own bounds and its being left empty decide; of all other texts its reader makes the same wherever it stands. */
const byField: readonly string[] = ["-40", "1e99", ""];

/** All texts for the first field of a reader; for others those that their own bounds decide, where they are the first of their kind, and one in turn. */
function textsFor(id: string, index: number): readonly string[] {
  const reader = readerOf(id);
  const inTurn = badTexts[index % badTexts.length] ?? "";
  const isFirst = !walkedKinds.has(kindOf(id));
  walkedKinds.add(kindOf(id));
  if (triedReaders.has(reader)) return isFirst ? [...new Set([...byField, inTurn])] : [inTurn];
  triedReaders.add(reader);
  return badTexts;
}

const parts = [...sections, ...chapters].flatMap(({ name, given }) => (given ? [[name, given] as const] : []));

/** Draws the fields of a part of the page for a demo, lets `prepare` ask for more of them, and walks those that `isWanted` wants. */
async function walk(
  which: number,
  given: NonNullable<(typeof sections)[number]["given"]>,
  prepare: (main: HTMLElement) => void = () => {},
  isWanted: (id: string) => boolean = () => true,
): Promise<void> {
  const jobEditor = createJobEditor({ job: shortDemo(which), drafts: {} });
  const context = createFieldContext(jobEditor, roads);
  const main = document.querySelector("main") as HTMLElement;
  render(html``, main);
  const end = effect(() => {
    render(given(createForm(context)), main);
  });
  prepare(main);
  const complaints: Complaint[] = [];
  for (const [index, field] of writableFields().filter(isWanted).entries()) {
    const texts = textsFor(field, index);
    const walked = await walkField({ id: field, texts, traces: TRACES, hasFindings: false });
    complaints.push(...walked.complaints.map((each) => ({ field, ...each })));
  }
  end();
  expect(complaints).toEqual([]);
  expect(Object.entries(jobEditor.drafts.value).filter(([, { problem }]) => problem !== undefined)).toEqual([]);
}

describe.each(demos.map(({ id }, which) => [id, which] as const))("every field of %s", (_, which) => {
  it.each(parts)(
    "in %s says what is wrong with bad input and keeps it, and takes the first text back",
    (_name, given) => {
      // Rows of a list are walked one and all in the first demo, and one of them in the others.
      const seen = new Set<string>();
      const isFirst = (id: string) => which === 0 || seen.size < seen.add(kindOf(id)).size;
      return walk(which, given, () => {}, isFirst);
    },
  );
});

describe("every field that is there only when it is asked for", () => {
  it.each(parts)("in %s does the same", (_name, given) => {
    const askForAll = (main: HTMLElement) => {
      const named = (words: RegExp) =>
        [...main.querySelectorAll("button")].find(({ textContent }) => words.test(textContent ?? ""));
      for (let add = named(/^\s*Add the /); add; add = named(/^\s*Add the /)) add.click();
      named(/^\s*Make a chart/)?.click();
      for (const { id } of main.querySelectorAll<HTMLSelectElement>("select[id^=kind-], #cycle-hills")) {
        const select = document.getElementById(id) as HTMLSelectElement | null;
        const last = [...(select?.options ?? [])].filter(({ disabled }) => !disabled).at(-1);
        if (!select || !last) continue;
        select.value = id === "cycle-hills" ? "typed" : last.value;
        select.dispatchEvent(new Event("change", { bubbles: true }));
      }
    };
    return walk(0, given, askForAll, (id) => !walkedKinds.has(kindOf(id)));
  });
});

it("has walked every kind of field", () => {
  expect(walkedKinds.size).toBeGreaterThan(150);
  expect(triedReaders.size).toBeGreaterThan(20);
  const unusual = [
    "cycle-heights",
    "own-*-caption",
    "sheet-rated_V",
    "field-motor-envelope-speed_rpm-*",
    "field-engine-curve-torque_Nm-*",
  ];
  expect([...walkedKinds]).toEqual(expect.arrayContaining(unusual));
});
