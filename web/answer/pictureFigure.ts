import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render, type TemplateResult } from "lit-html";
import type { FieldContext } from "../fields/fieldContext.ts";
import type { AnswerPicture } from "./picture/answerDrawing.ts";
import { drawAnswer } from "./picture/drawAnswer.ts";
import { eveningsByPack } from "./picture/eveningDots.ts";
import { readAnswer } from "./picture/readAnswer.ts";
import { readEvenings } from "./picture/readEvenings.ts";
import { pinnedWords } from "./pin.ts";
import type { ShownAnswer } from "./shownAnswer.ts";

interface Shown {
  readonly shown: ReadonlySignal<ShownAnswer>;
  /** The answer of `shown`, apart from whether it is late. */
  readonly standing: ReadonlySignal<ShownAnswer["answer"]>;
  readonly rows: ReadonlySignal<readonly number[]>;
  readonly chosen: ReadonlySignal<number | undefined>;
  readonly choose: (index: number) => void;
  readonly context: FieldContext;
}

/** What stands over and under the picture on one screen: bar, verdict, sentence, table. The rows take what is left. */
const AROUND_px = 470;
/** On paper: the width of an A4 page between its margins, and rows of the usual height. */
const PAPER_px = { width_px: 672, height_px: 800 };
const ROW_px = { least: 60, most: 112, narrow: 84 };

/** What is calculated sooner is not said to be calculated: the words would flicker at every key. */
const SAID_ms = 200;

/** Puts the picture into its place, draws it anew when anything in it changes, and lets it be read by keys and by pointing. */
export function pictureFigure(place: HTMLElement, { shown, standing, rows, chosen, choose, context }: Shown): void {
  const { view, jobEditor } = context;
  const at = signal<number | undefined>(undefined);
  const size = signal({ width_px: Math.max(320, place.clientWidth), height_px: innerHeight });
  render(
    html`<div class="answer-figure" tabindex="0" role="group" aria-label="Picture of the packs: up and down choose a pack, left and right read along it"></div>
      <p class="answer-reading" aria-live="polite"></p>`,
    place,
  );
  const [figure, reading] = place.children as unknown as [HTMLElement, HTMLElement];
  let isOnPaper = false;
  const follow = () => {
    const now = isOnPaper
      ? PAPER_px
      : { width_px: Math.max(300, Math.floor(place.clientWidth / 4) * 4), height_px: innerHeight };
    if (now.width_px !== size.peek().width_px || now.height_px !== size.peek().height_px) size.value = now;
  };
  const lay = (onPaper: boolean) => {
    isOnPaper = onPaper;
    follow();
  };
  // A frame later: what is drawn changes the size again, which an observer may not do while it is asked.
  new ResizeObserver(() => requestAnimationFrame(follow)).observe(place);
  addEventListener("resize", follow);
  // A telephone prints no telephone's picture.
  addEventListener("beforeprint", () => lay(true));
  addEventListener("afterprint", () => lay(false));

  effect(() => {
    jobEditor.opened.value;
    at.value = undefined;
  });

  let picture: AnswerPicture | undefined;
  const line = document.createElementNS("http://www.w3.org/2000/svg", "line");
  line.setAttribute("class", "reading-line");
  const showLine = () => {
    const left = at.peek();
    if (!picture || left === undefined) return line.remove();
    const x = `${picture.toPixel(left)}`;
    for (const [key, value] of Object.entries({ x1: x, x2: x, y1: picture.top_px, y2: picture.bottom_px })) {
      line.setAttribute(key, `${value}`);
    }
    picture.svg.append(line);
  };
  const pinned = computed(() => {
    const found = jobEditor.job.value.pinned;
    return found && new Map(found.answer.packs.map(({ name, left_km }) => [name, left_km ?? {}]));
  });
  const year = computed(() => shown.value.year);
  const evenings = computed(() => year.value && eveningsByPack(year.value, view.units.value));
  effect(() => {
    const answer = standing.value;
    if (!answer) {
      picture = undefined;
      figure.replaceChildren();
      return;
    }
    const { width_px, height_px } = size.value;
    const space_px = Math.floor((height_px - AROUND_px) / Math.max(1, rows.value.length));
    const rowHeight_px = width_px < 600 ? ROW_px.narrow : Math.max(ROW_px.least, Math.min(ROW_px.most, space_px));
    picture = drawAnswer(answer, {
      document,
      width_px,
      rowHeight_px,
      units: view.units.value,
      rows: rows.value,
      chosen: chosen.value,
      ...(evenings.value && { evenings: evenings.value }),
      ...(pinned.value && {
        pinned: pinned.value,
        pinnedWords: `pinned: ${pinnedWords(jobEditor.job.value, view.units.value)}`,
      }),
    });
    figure.replaceChildren(picture.svg);
    showLine();
  });
  const isYearLate = computed(() => shown.value.isYearLate === true);
  const saidLate = signal(shown.peek().late);
  let saying: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const { late } = shown.value;
    clearTimeout(saying);
    const show = () => {
      saidLate.value = late;
    };
    if (late === "none" || !standing.peek()) show();
    else saying = setTimeout(show, SAID_ms);
  });
  effect(() => {
    const answer = standing.value;
    const late = saidLate.value;
    const left = at.value;
    showLine();
    const read = answer && chosen.value !== undefined && left !== undefined;
    const unit = view.units.value === "metric" ? "Kilometres" : "Miles";
    render(
      read
        ? (evenings.value &&
            readEvenings(answer.packs[chosen.value]?.name ?? "", evenings.value, left, view.units.value)) ||
            readAnswer(answer, chosen.value, left, view.units.value)
        : late === "all"
          ? html`Calculating. ${answer ? "The grey figures are for the job before the last change." : nothing}`
          : late === "bands"
            ? "Calculating what is not known; the bars are as wide as before the change."
            : evenings.value
              ? eveningsKey(late === "none" && isYearLate.value)
              : html`<strong>${unit} left on coming home.</strong> <span class="key"><svg viewBox="0 0 14 14" aria-hidden="true"><circle cx="7" cy="7" r="5" class="key-new" /></svg> new</span>
                <span class="key"><svg viewBox="0 0 14 14" aria-hidden="true"><circle cx="7" cy="7" r="5.5" class="key-winter" /></svg> winter</span>
                <span class="key"><svg viewBox="0 0 14 14" aria-hidden="true"><rect x="2" y="2" width="10" height="10" class="key-winter" /></svg> ten years, winter</span>
                <span class="key">bars: what is not known</span>`,
      reading,
    );
  });

  const move = (by: number) => {
    if (!picture) return;
    const { from, to } = picture.axis;
    at.value = Math.round(Math.max(from, Math.min(to, (at.peek() ?? 0) + by)));
  };
  const step = (by: number) => {
    const place = rows.peek().indexOf(chosen.peek() ?? -1);
    const next = rows.peek()[Math.max(0, Math.min(rows.peek().length - 1, place + by))];
    if (next !== undefined) choose(next);
  };
  const keys: Readonly<Record<string, () => void>> = {
    ArrowUp: () => step(-1),
    ArrowDown: () => step(1),
    ArrowLeft: () => move(-1),
    ArrowRight: () => move(1),
    PageDown: () => move(-10),
    PageUp: () => move(10),
    Home: () => {
      at.value = 0;
    },
    Escape: () => {
      at.value = undefined;
      figure.blur();
    },
  };
  figure.addEventListener("keydown", (event) => {
    const act = keys[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    act();
  });
  const pointed = (event: PointerEvent | MouseEvent) => {
    if (!picture) return;
    const box = picture.svg.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  figure.addEventListener("pointermove", (event) => {
    const point = pointed(event);
    if (!picture || !point) return;
    const left = Math.round(picture.fromPixel(point.x));
    at.value = left < picture.axis.from ? undefined : left;
  });
  figure.addEventListener("pointerleave", () => {
    at.value = undefined;
  });
  figure.addEventListener("click", (event) => {
    const point = pointed(event);
    const index = picture && point && rows.peek()[picture.rowAt(point.y)];
    if (index !== undefined) choose(index);
  });
}

/** What the dots are. */
function eveningsKey(isLate: boolean): TemplateResult {
  const dot = (name: string) =>
    html`<svg viewBox="0 0 14 14" aria-hidden="true"><circle cx="7" cy="7" r="4.5" class=${name} /></svg>`;
  return html`<strong>Every evening of the year.</strong> A dot is a driving day:
    <span class="key">${dot("key-winter")} winter</span> <span class="key">${dot("key-other")} other days</span>
    <span class="key">${dot("key-ring")} longest day.</span> Above the line the pack new, below it at ten years. Bar: what is
    not known.${isLate ? " Calculating the year: the dots are those of before the change." : nothing}`;
}
