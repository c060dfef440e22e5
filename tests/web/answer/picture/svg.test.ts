import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { halo, penOf } from "../../../../web/answer/picture/svg.ts";
import { paper } from "../../../../web/look/tokens.ts";

const pen = penOf(new JSDOM("").window.document);

it("draws elements of SVG with numbers to a hundredth, words as they are, and children in order", () => {
  const drawn = pen("g", { x: 1.23456, y: -0.5, class: "1.23456" }, pen("path", { d: "M0,0" }), "words");
  expect(drawn.namespaceURI).toBe("http://www.w3.org/2000/svg");
  expect(drawn.outerHTML).toBe('<g x="1.23" y="-0.5" class="1.23456"><path d="M0,0"></path>words</g>');
});

it("puts words on a ground of paper, or of another colour", () => {
  const words = halo(pen, { x: 3 }, "40 km");
  expect(words.textContent).toBe("40 km");
  expect(words.getAttribute("paint-order")).toBe("stroke");
  expect(words.getAttribute("stroke")).toBe(paper);
  expect(halo(pen, { x: 3 }, "40 km", "#123456").getAttribute("stroke")).toBe("#123456");
});
