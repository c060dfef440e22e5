import { effect } from "@preact/signals-core";
import type { Chart, Reading } from "./chart.ts";
import { atPointer, atStep, type CommonPosition, readAt, stepNear, stepsOf } from "./commonPosition.ts";
import { drawCursor } from "./cursor.ts";

/** A figure that can be read, to put into the page; `end` stops it when the figure is replaced. */
export interface ReadableFigure {
  readonly element: HTMLElement;
  end(): void;
}

/**
 * Lets a figure be read: where the pointer is over it, or by the slider under it (arrow keys, page keys, home, end, a finger),
 * a line stands at the same position in every figure of that quantity, and each says its values there in words.
 *
 * The slider speaks for itself through aria-valuetext, so the words beneath are not a live region: fifteen figures that
 * follow one slider would all talk at once.
 */
export function readableFigure(chart: Chart, name: string, common: CommonPosition): ReadableFigure {
  const document = chart.svg.ownerDocument;
  const element = document.createElement("div");
  element.className = "figure-reader";
  element.append(chart.svg);
  const { position } = chart;
  if (!position) return { element, end: () => {} };

  const slider = document.createElement("input");
  slider.type = "range";
  slider.className = "figure-slider";
  slider.min = "0";
  slider.max = String(stepsOf(position));
  slider.step = "1";
  slider.value = "0";
  slider.setAttribute("aria-label", `Read values in ${name}`);
  const words = document.createElement("p");
  words.className = "figure-reading";
  element.append(slider, words);

  const read = (at: number) => {
    common.value = { quantity: position.quantity, at };
  };
  slider.addEventListener("input", () => read(atStep(position, Number(slider.value))));
  slider.addEventListener("focus", () => read(atStep(position, Number(slider.value))));
  const leave = () => {
    // A reader at the keyboard keeps the line when the mouse strays across.
    if (document.activeElement !== slider) common.value = undefined;
  };
  slider.addEventListener("blur", () => {
    common.value = undefined;
  });
  chart.svg.addEventListener("pointermove", (event) => {
    const box = chart.svg.getBoundingClientRect();
    if (box.width === 0) return;
    const perPixel = Number(chart.svg.getAttribute("width")) / box.width;
    read(atPointer(position, (event.clientX - box.left) * perPixel, (event.clientY - box.top) * perPixel));
  });
  chart.svg.addEventListener("pointerleave", leave);

  const end = effect(() => {
    const at = readAt(position, common.value);
    drawCursor(chart.svg, position, at);
    const reading = at === undefined ? undefined : chart.read(at);
    words.textContent = reading ? inWords(reading) : "";
    if (at !== undefined) slider.value = String(stepNear(position, at));
    slider.setAttribute("aria-valuetext", inWords(reading ?? chart.read(atStep(position, Number(slider.value)))));
  });
  return { element, end };
}

/** "4.1 km: Six modules 91.7 %; Four modules 89.4 %." */
export function inWords({ where, values }: Reading): string {
  return where === "" ? "" : `${where}: ${values.map(({ label, text }) => `${label} ${text}`).join("; ")}.`;
}
