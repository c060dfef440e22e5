import * as look from "../../look/tokens.ts";

type Attributes = Readonly<Record<string, string | number>>;

/** Draws into one document: an element with its attributes, and its children or its text. */
export type Draw = (name: string, attributes: Attributes, ...children: readonly (SVGElement | string)[]) => SVGElement;

/** The pen of a document. */
export function penOf(document: Document): Draw {
  return (name, attributes, ...children) => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, typeof value === "number" ? String(Math.round(100 * value) / 100) : value);
    }
    element.append(...children);
    return element;
  };
}

/** Text on a ground of its own, so that lines do not run through it. */
export function halo(
  pen: Draw,
  attributes: Readonly<Record<string, string | number>>,
  words: string,
  ground = look.paper,
): SVGElement {
  return pen(
    "text",
    { ...attributes, stroke: ground, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke" },
    words,
  );
}
