import type { Page } from "playwright-core";

/** What a page must never show, whatever was typed: marks of a number or an object that was not looked at. */
export const TRACES = String.raw`\bNaN\b|\bundefined\b|\bInfinity\b|\[object|\bat \S+\.(?:js|ts):\d+`;

/** Something amiss at a field after a text was put in. */
export interface Complaint {
  readonly field: string;
  readonly text: string;
  readonly what: string;
}

export interface Walked {
  readonly complaints: readonly Complaint[];
  /** Ids of the fields that were walked. */
  readonly fields: readonly string[];
  /** How many texts were put in, the good one at the end of each field included. */
  readonly tried: number;
}

/**
 * Puts every text into every field of `ids` as somebody pasting it would, leaves the field, and looks at the field and at
 * the page each time; then puts back what stood there first. All of it runs inside the page, by real input events. A text
 * that the field takes as it is changes the job, so nothing is said here of figures: see `waitSettled` for those.
 */
export async function walkFields(
  page: Page,
  ids: readonly string[],
  textsFor: (id: string, index: number) => readonly string[],
): Promise<Walked> {
  const complaints: Complaint[] = [];
  let tried = 0;
  for (const [index, id] of ids.entries()) {
    const walked = await page.evaluate(walkField, {
      id,
      texts: textsFor(id, index),
      traces: TRACES,
      hasFindings: true,
    });
    complaints.push(...walked.complaints.map((each) => ({ field: id, ...each })));
    tried += walked.tried;
  }
  return { complaints, fields: ids, tried };
}

/**
 * Ids of all that can be written in on the page, in its order; throws where one has no id, since it has no label then. Runs in a page, as
 * `walkField` does.
 */
export function writableFields(): string[] {
  const all = [...document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>("main input, main textarea")];
  const written = all.filter((each) => !["checkbox", "radio", "range", "file", "button"].includes(each.type));
  const nameless = written.filter(({ id }) => id === "").map(({ outerHTML }) => outerHTML.slice(0, 100));
  if (nameless.length > 0) throw new Error(`fields without an id: ${nameless.join("; ")}`);
  return written.map(({ id }) => id);
}

/** What `walkField` is told: the field, what is put into it, and how the page looks that it stands on. */
export interface FieldToWalk {
  readonly id: string;
  readonly texts: readonly string[];
  /** What the page must never show, as a regular expression. */
  readonly traces: string;
  /** Whether answer and findings stand on the page, and have to stay. */
  readonly hasFindings: boolean;
}

/**
 * Puts every text into a field and looks at what is said of it. Runs in the page of a browser or in a test's own; takes what it needs as
 * an argument, since nothing else of this file is there.
 */
export async function walkField({ id, texts, traces, hasFindings }: FieldToWalk) {
  type Writable = HTMLInputElement | HTMLTextAreaElement;
  const complaints: { text: string; what: string }[] = [];
  const turn = () => new Promise((resolve) => setTimeout(resolve));
  const fieldNow = () => document.getElementById(id) as Writable | null;
  const first = fieldNow();
  if (!first) return { complaints: [{ text: "", what: "is gone from the page" }], tried: 0 };
  const good = first.value;
  const origin = () => document.getElementById(`${id}-from`) as HTMLSelectElement | null;
  const isReadElsewhere = id === "typed-road";
  const isWords = first.closest(".is-words") !== null;

  const put = async (text: string) => {
    const field = fieldNow();
    if (!field) return;
    field.focus({ preventScroll: true });
    field.value = text;
    field.dispatchEvent(new InputEvent("input", { bubbles: true, inputType: "insertFromPaste" }));
    fieldNow()?.dispatchEvent(new Event("change", { bubbles: true }));
    fieldNow()?.blur();
    await turn();
  };
  const wait = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));
  /** Words are what they are, and a bare number has its unit beside it; all else must be answered. */
  const needsAnswer = (value: string) =>
    !isWords && value.trim() !== "" && (isReadElsewhere || !/^\s*[-+]?[\d.]+(e[-+]?\d+)?\s*$/i.test(value));
  const saidAt = (field: Writable) =>
    (field.getAttribute("aria-describedby") ?? "")
      .split(" ")
      .flatMap((each) => document.getElementById(each) ?? [])
      .filter((each) => !each.classList.contains("hint"));

  // Words are shown wherever they belong, long after they were put in: a mark among them that can be told from our own.
  const asTyped = texts.map((text) => (isWords && /^(NaN|Infinity)$/.test(text) ? `${text}, said the owner` : text));
  for (const text of asTyped) {
    const note = (what: string) => complaints.push({ text, what });
    await put(text);
    const field = fieldNow();
    if (!field) {
      note("is gone from the page");
      continue;
    }
    // A line has no breaks: the browser itself takes them out of what is pasted.
    const asKept = field instanceof HTMLInputElement ? text.replace(/[\r\n]/g, "") : text.replace(/\r\n?/g, "\n");
    if (field.maxLength >= 0 && asKept.length > field.maxLength)
      note(`cuts off after ${field.maxLength} letters in silence`);
    const isEmpty = text.trim() === "";

    const isUsual =
      isEmpty && (origin()?.value === "usual" || field.closest(".field")?.querySelector(".origin-said") !== null);
    // A text that is read by a worker is answered a little later, on a busy machine much later.
    const isAnswered = () =>
      fieldNow()?.getAttribute("aria-invalid") === "true" ||
      saidAt(field).some((each) => each.textContent?.trim() !== "");
    for (let i = 0; i < 1500 && needsAnswer(field.value) && !isAnswered(); i++) await wait(20);
    const said = saidAt(field);
    const words = said.map((each) => each.textContent?.replace(/\s+/g, " ").trim() ?? "").join(" ");
    const isInvalid = field.getAttribute("aria-invalid") === "true";
    if (
      field.value !== asKept &&
      !(isEmpty && field.value.trim() === "") &&
      !isUsual &&
      !(isEmpty && good === field.value)
    ) {
      note(`has "${field.value.slice(0, 60)}" in the place of what was typed`);
    }
    if (isInvalid) {
      const isSeen = said.some(
        (each) =>
          (!hasFindings || each.checkVisibility({ visibilityProperty: true })) && each.textContent?.trim() !== "",
      );
      if (!isSeen) note("is called invalid, and no sentence at it says why");
      if (!/^(Wrong|Empty): .{15,}\.( |$)/.test(words))
        note(`is refused with no sentence of use: "${words.slice(0, 120)}"`);
      if (words.length > 700) note(`is refused with ${words.length} letters`);
    } else {
      if (needsAnswer(field.value) && words === "") note("is neither refused nor said how it was understood");
      const mayBeBelow = /temperature|_degC|Wind|altitude|place_mm|insuranceMore|Drift/;
      const isBelowNothing = text.startsWith("-") && !mayBeBelow.test(id);
      if ((isBelowNothing || /^(letters|<img|=1|NaN|Infinity|1e99|🚗|a paragraph)/.test(text)) && !isWords)
        note("is taken");
    }
    // What was typed into a number's field may be told of as it was typed.
    const all = (document.querySelector("main")?.textContent ?? "").replace(/(NaN|Infinity), said the owner/g, "");
    const page = isEmpty || isWords ? all : all.split(text.slice(0, 20).trim()).join("");
    const trace = new RegExp(traces).exec(page);
    if (trace) note(`leaves "${page.slice(Math.max(0, trace.index - 40), trace.index + 40)}" on the page`);
    if (document.images.length > 0) note("puts a picture on the page");
    // An emptied field takes them off by intention: what depends on it waits.
    if (hasFindings && !isEmpty && document.querySelectorAll("main .answer, main section .sentence").length < 5)
      note("takes the findings off the page");
  }

  await put(good);
  const field = fieldNow();
  if (field?.value !== good)
    complaints.push({ text: good, what: `reads "${field?.value}" once the first text is back` });
  if (field?.getAttribute("aria-invalid") === "true") {
    complaints.push({
      text: good,
      what: `is still refused: ${saidAt(field)
        .map((each) => each.textContent)
        .join(" ")}`,
    });
  }
  return { complaints, tried: texts.length + 1 };
}
