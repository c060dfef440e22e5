import { computed, effect, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { failureWords } from "../../../shared/failureWords.ts";
import { type Explanations, openExplanations } from "../../../sim/index.ts";
import { reloadView } from "../../look/reloadView.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import { fetchPart } from "../../worker/fetchPart.ts";
import type { Graph } from "../graph/graph.ts";
import type { ReasonsOf } from "./reasonsView.ts";

interface Opened {
  readonly facts: typeof import("./reasonFacts.ts");
  readonly view: typeof import("./reasonsView.ts");
  readonly known: Explanations;
}

const opened = signal<Opened | undefined>(undefined);
/** Why they could not be fetched. */
const missing = signal<string | undefined>(undefined);
let isAskedFor = false;

/** The reasons are a piece of their own, fetched when somebody first asks why. Where that fails, closing and opening asks again. */
function askFor(): void {
  if (isAskedFor) return;
  isAskedFor = true;
  missing.value = undefined;
  const pieces = () => Promise.all([import("./reasonFacts.ts"), import("./reasonsView.ts"), openExplanations()]);
  fetchPart(pieces).then(
    ([facts, view, known]) => {
      opened.value = { facts, view, known };
    },
    (error: unknown) => {
      isAskedFor = false;
      missing.value = failureWords(error);
    },
  );
}

/** Keeps the reasons of a section's numbers below it, folded up; they follow the job while they are open. */
export function fillReasons(section: AnySection, place: HTMLElement, graph: Graph): void {
  const { explains = [] } = section;
  if (explains.length === 0) return;
  const isOpen = signal(false);
  const toggle = (event: Event) => {
    isOpen.value = (event.target as HTMLDetailsElement).open;
    if (isOpen.value) askFor();
  };
  const lines = computed(() =>
    isOpen.value && opened.value ? reasons(section, explains, graph, opened.value) : nothing,
  );
  effect(() => {
    render(
      html`<details class="reasons" @toggle=${toggle}>
        <summary>How this was calculated</summary>
        ${isOpen.value && missing.value !== undefined ? reloadView(missing.value) : lines.value}
      </details>`,
      place,
    );
  });
}

function reasons(section: AnySection, keys: readonly string[], graph: Graph, { facts, view, known }: Opened) {
  const standing = facts.standingIn(graph);
  const [job, units, answer] = [standing("job"), standing("units"), standing("answerIndex")];
  if (!job || !units) return nothing;
  // The band is of the answer; everything else of the pack that single-pack figures show.
  const index = section.inputs.includes("unknowns") ? answer : standing("packIndex");
  const found = facts.reasonFacts(standing, index);
  const name = found?.run.name ?? "";
  const whose = index === answer ? `with ${name}, the pack of the answer` : `with ${name}, the pack in view`;
  const of: ReasonsOf = { job, units, facts: found, whose };
  return view.reasonsView(keys, of, known);
}
