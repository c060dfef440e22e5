import { html, nothing, type TemplateResult } from "lit-html";
import { linkSentence } from "../../store/files/linkedFile.ts";
import type { JobsPlace } from "./jobsPlace.ts";
import { clock } from "./moments.ts";

/** What can be done about a file that the job is saved along to, and how it stands. */
export function linkButtons({ jobs, attempt }: JobsPlace): TemplateResult {
  const link = jobs.fileLink.value;
  const button = (words: string, work: () => Promise<void>) =>
    html`<button type="button" @click=${() => attempt(work)}>${words}</button>`;
  return html`${link.kind === "none" ? button("Keep saving to a file", () => jobs.linkFile()) : nothing}
    ${link.kind === "asks" ? button("Allow the file again", () => jobs.allowFile()) : nothing}
    ${link.kind === "changedOutside" ? button("Write over it", () => jobs.overwriteFile()) : nothing}
    ${link.kind === "none" ? nothing : button("Stop saving to the file", () => jobs.unlinkFile())}
    ${link.kind === "none" ? nothing : html`<span class="aside">${linkSentence(link, clock)}</span>`}`;
}
