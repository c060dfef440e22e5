import { effect, signal } from "@preact/signals-core";
import type { Chart, Position, Reading } from "../figure/chart.ts";
import { atPointer, atStep, type CommonPosition, readAt, stepNear, stepsOf } from "./commonPosition.ts";
import { drawCursor } from "./cursor.ts";

/** A figure that can be read, to put into the page; `end` stops it when the figure goes. */
export interface ReadableFigure {
  readonly element: HTMLElement;
  /** What stands in it now. */
  chart(): Chart;
  /** Puts the figure drawn anew in its place. A line that stands, and the keyboard on the slider, stay. */
  show(chart: Chart, name: string): void;
  end(): void;
}

/**
 * Lets a figure be read: where the pointer or a finger is over it, or by arrow keys, page keys, home and end once it has the focus
 * (an unseen slider takes it), a line stands at the same position in every figure of that quantity, and each says its values there in words. A finger's
 * stays where it tapped; Escape takes any away.
 *
 * The slider speaks for itself through aria-valuetext, so the words beneath are not a live region: fifteen figures that
 * follow one slider would all talk at once.
 */
export function readableFigure(chart: Chart, name: string, common: CommonPosition): ReadableFigure {
  const document = chart.svg.ownerDocument;
  const element = document.createElement("div");
  element.className = "figure-reader";
  const slider = document.createElement("input");
  slider.type = "range";
  slider.className = "figure-slider";
  slider.min = "0";
  slider.step = "1";
  const words = document.createElement("p");
  words.className = "figure-reading";

  const shown = signal(chart);
  const read = (position: Position, at: number) => {
    common.value = { quantity: position.quantity, at };
  };
  const readSlider = () => {
    const { position } = shown.value;
    if (position) read(position, atStep(position, Number(slider.value)));
  };
  slider.addEventListener("input", readSlider);
  slider.addEventListener("focus", readSlider);
  slider.addEventListener("blur", () => leave());
  const leave = () => {
    common.value = undefined;
  };
  const follow = ({ svg, position }: Chart) => {
    if (!position) return;
    const readPointer = (event: PointerEvent) => {
      const box = svg.getBoundingClientRect();
      if (box.width === 0) return;
      const perPixel = Number(svg.getAttribute("width")) / box.width;
      read(position, atPointer(position, (event.clientX - box.left) * perPixel, (event.clientY - box.top) * perPixel));
    };
    svg.addEventListener("pointermove", readPointer);
    svg.addEventListener("pointerdown", readPointer); // a finger that only taps does not move
    svg.addEventListener("pointerleave", ({ pointerType }) => {
      // A reader at the keyboard keeps the line when the mouse strays across any figure, or the page moves under it; and a finger
      // lifted has left nothing.
      if (pointerType !== "touch" && !document.activeElement?.classList.contains(slider.className)) leave();
    });
  };
  // Of the whole page: what the mouse reads goes by the same key, wherever the keyboard is.
  const onKey = ({ key }: KeyboardEvent) => {
    if (key === "Escape") leave();
  };
  document.addEventListener("keydown", onKey);
  const put = (now: Chart, itsName: string) => {
    slider.setAttribute("aria-label", `Read values in ${itsName}`);
    if (now.position) {
      slider.max = String(stepsOf(now.position));
      if (!slider.parentNode) element.append(slider, words);
    } else {
      slider.remove();
      words.remove();
    }
  };
  element.append(chart.svg);
  follow(chart);
  put(chart, name);
  slider.value = "0";

  const stop = effect(() => {
    const now = shown.value;
    const { position } = now;
    if (!position) return;
    const at = readAt(position, common.value);
    drawCursor(now.svg, position, at);
    const reading = at === undefined ? undefined : now.read(at);
    words.textContent = reading ? inWords(reading) : "";
    if (at !== undefined) slider.value = String(stepNear(position, at));
    slider.setAttribute("aria-valuetext", inWords(reading ?? now.read(atStep(position, Number(slider.value)))));
  });
  return {
    element,
    chart: () => shown.peek(),
    show(next, itsName) {
      const before = shown.peek();
      put(next, itsName);
      if (next === before) return;
      before.svg.replaceWith(next.svg);
      follow(next);
      shown.value = next;
    },
    end() {
      stop();
      document.removeEventListener("keydown", onKey);
    },
  };
}

/** "4.1 km: Six modules 91.7 %; Four modules 89.4 %." */
export function inWords({ where, values }: Reading): string {
  return where === "" ? "" : `${where}: ${values.map(({ label, text }) => `${label} ${text}`).join("; ")}.`;
}
