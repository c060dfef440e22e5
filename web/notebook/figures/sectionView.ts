import { html, nothing, type TemplateResult } from "lit-html";
import { failureWords } from "../../../shared/failureWords.ts";
import { EmptyFields } from "../../editing/emptied.ts";
import { unbroken } from "../../look/unbroken.ts";
import type { AnySection } from "../../sections/parts/section.ts";

/** The places of a section that are filled as things become known. */
export interface Places {
  readonly whole: HTMLElement;
  readonly summary: HTMLElement;
  readonly given: HTMLElement;
  readonly worked: HTMLElement;
  readonly finding: HTMLElement;
  readonly reasons: HTMLElement;
  readonly note: HTMLElement;
}

/** The frame of a working: its head with a place for the summary, and, folded below it, empty places for given, worked and finding. */
export function sectionFrame(section: AnySection): TemplateResult {
  const id = section.name;
  const part = (name: "given" | "worked" | "finding", title: string) =>
    // No headings: three in every working would drown the workings themselves in a list of headings.
    html`<div class="part ${name}" role="group" aria-labelledby="${id}-${name}">
      <p class="part-head" id="${id}-${name}">${title}</p>
      <div class="body" data-place=${name}></div>
    </div>`;
  return html`<section id=${id} class="working" aria-labelledby="${id}-title" tabindex="-1">
    <h3 class="working-head">
      <button type="button" aria-expanded="false" aria-controls="${id}-body" aria-describedby="${id}-summary" data-opens=${id}>
        <span class="mark" aria-hidden="true"></span><span id="${id}-title">${section.title}</span>
      </button>
    </h3>
    <p class="summary" id="${id}-summary" data-place="summary"></p>
    <div class="working-body" id="${id}-body" hidden>
      <p class="question">${section.question}</p>
      ${section.given ? part("given", "Given") : nothing} ${part("worked", "Worked")} ${part("finding", "Finding")}
      <div class="below" data-place="reasons"></div>
      ${section.caution ? html`<p class="caution"><strong>Take care.</strong> ${section.caution}</p>` : nothing}
      <div class="below" data-place="note"></div>
    </div>
  </section>`;
}

/** The places of a frame that stands in the page. */
export function placesOf(whole: HTMLElement): Places {
  const place = (name: string) => whole.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? whole;
  return {
    whole,
    summary: place("summary"),
    given: place("given"),
    worked: place("worked"),
    finding: place("finding"),
    reasons: place("reasons"),
    note: place("note"),
  };
}

/** What a section found, or why it could not be worked. */
export function findingView(
  sentence: string,
  attention: readonly string[],
  isLate: boolean,
  inShort = sentence,
  offers: TemplateResult | typeof nothing = nothing,
): TemplateResult {
  // A long finding is led by what it comes to.
  const rest = sentence.startsWith(inShort) ? sentence.slice(inShort.length).trim() : "";
  return html`<p class="sentence">${unbroken(rest === "" ? sentence : inShort)}</p>
    ${rest === "" ? nothing : html`<p class="in-full">${unbroken(rest)}</p>`}
    ${attention.length > 0 ? html`<ul class="heed">${attention.map((each) => html`<li>${unbroken(each)}</li>`)}</ul>` : nothing}
    ${offers}
    <p class="late">${isLate ? "Calculating …" : nothing}</p>`;
}

/** Why a section could not be worked, and the way on. What waits for an empty field goes on by itself. */
export function failureView(section: AnySection, where: string, error: unknown, retry: () => void): TemplateResult {
  const words = failureWords(error);
  if (error instanceof EmptyFields) return html`<p class="failed">${words}</p>`;
  const place = where === section.name ? "This section" : `This section needs "${where}", which`;
  return html`<div class="failed">
    <p><strong>${place} could not be calculated.</strong> The rest of the page goes on.</p>
    <p>${words}</p>
    <p class="buttons"><button type="button" @click=${retry}>Try again</button></p>
  </div>`;
}
