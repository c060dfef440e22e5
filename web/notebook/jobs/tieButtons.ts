import { html, nothing, type TemplateResult } from "lit-html";
import { tieSentence } from "../../store/tiedFile.ts";
import type { JobsPlace } from "./jobsPlace.ts";
import { clock } from "./moments.ts";

/** What can be done about a file that the job is saved along to, and how it stands. */
export function tieButtons({ jobs, attempt }: JobsPlace): TemplateResult {
  const tie = jobs.tie.value;
  const button = (words: string, work: () => Promise<void>) =>
    html`<button type="button" @click=${() => attempt(work)}>${words}</button>`;
  return html`${tie.kind === "none" ? button("Keep saving to a file", () => jobs.tieToFile()) : nothing}
    ${tie.kind === "asks" ? button("Allow the file again", () => jobs.allowFile()) : nothing}
    ${tie.kind === "changedOutside" ? button("Write over it", () => jobs.overwriteFile()) : nothing}
    ${tie.kind === "none" ? nothing : button("Stop saving to the file", () => jobs.untieFile())}
    ${tie.kind === "none" ? nothing : html`<span class="aside">${tieSentence(tie, clock)}</span>`}`;
}
