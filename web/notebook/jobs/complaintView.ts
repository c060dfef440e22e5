import { html, nothing, type TemplateResult } from "lit-html";
import { failureWords, isForReader } from "../../../shared/failureWords.ts";
import { InputError } from "../../../shared/problems.ts";
import { StoreRefusal } from "../../store/database/storeRefusal.ts";

/** What is wrong with what was asked for, one item a fault; empty where nothing is. */
export type Complaint = readonly string[];

/** More faults than this are counted instead of told: nobody mends the two-hundredth before the first. */
const MOST_TOLD = 30;

/** What a failure says to a person: every problem of wrong input by itself, what the browser refused in the browser's words. */
export function complaintOf(error: unknown): Complaint {
  if (error instanceof InputError) return error.problems.map(({ where, message }) => `${where}: ${message}`);
  if (error instanceof DOMException || error instanceof StoreRefusal) return [error.message];
  if (!isForReader(error)) globalThis.reportError?.(error);
  return [failureWords(error)];
}

/** One sentence for one fault, a list for more. */
export function complaintView(complaint: Complaint): TemplateResult | typeof nothing {
  const [only, ...others] = complaint;
  if (only === undefined) return nothing;
  if (others.length === 0) return html`<p>${only}</p>`;
  const untold = complaint.length - MOST_TOLD;
  return html`<p>${complaint.length} things are wrong:</p>
    <ul>
      ${complaint.slice(0, MOST_TOLD).map((each) => html`<li>${each}</li>`)}
    </ul>
    ${untold > 0 ? html`<p>And ${untold} more.</p>` : nothing}`;
}
