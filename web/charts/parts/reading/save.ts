import Papa from "papaparse";
import { ink, paper } from "../../../look/tokens.ts";
import type { Chart, Table } from "../figure/chart.ts";
import { CURSOR_CLASS } from "./cursor.ts";

/**
 * A figure as the text of an SVG file that stands alone: its size, its words as a title, paper behind it, no reading line.
 * `fontFace` is an @font-face rule with the face inside it (a data address); without one the fall-back faces named in the
 * figure take over.
 */
export function svgText(chart: Pick<Chart, "svg" | "alt">, fontFace = ""): string {
  const copy = chart.svg.cloneNode(true) as SVGSVGElement;
  for (const cursor of copy.querySelectorAll(`.${CURSOR_CLASS}`)) cursor.remove();
  // Ink by its own name: not every drawing program follows a colour that is handed down.
  for (const part of [copy, ...copy.querySelectorAll("[fill=currentColor],[stroke=currentColor]")]) {
    for (const name of ["fill", "stroke"]) if (part.getAttribute(name) === "currentColor") part.setAttribute(name, ink);
  }
  const { ownerDocument } = chart.svg;
  const width = copy.getAttribute("width") ?? "";
  const height = copy.getAttribute("height") ?? "";
  const element = (name: string) => ownerDocument.createElementNS("http://www.w3.org/2000/svg", name);
  const title = element("title");
  title.textContent = chart.alt;
  const ground = element("rect");
  for (const [name, value] of Object.entries({ width, height, fill: paper })) ground.setAttribute(name, value);
  copy.prepend(title, ground);
  if (fontFace) {
    const style = element("style");
    style.textContent = fontFace;
    copy.prepend(style);
  }
  const view = ownerDocument.defaultView;
  if (!view) throw new Error("a figure can only be saved from a page that is shown");
  return new view.XMLSerializer().serializeToString(copy);
}

/** A figure as a PNG of `scale` pixels to each of its own. Refused with an Error where the browser cannot draw it. */
export async function pngBlob(chart: Pick<Chart, "svg" | "alt">, fontFace = "", scale = 2): Promise<Blob> {
  const document = chart.svg.ownerDocument;
  const image = document.createElement("img");
  const address = URL.createObjectURL(new Blob([svgText(chart, fontFace)], { type: "image/svg+xml" }));
  try {
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(Number(chart.svg.getAttribute("width")) * scale);
    canvas.height = Math.round(Number(chart.svg.getAttribute("height")) * scale);
    const context = canvas.getContext("2d");
    if (!context) throw new Error("this browser gives no canvas to draw the picture on");
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("this browser made no picture"))), "image/png");
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** A figure's data as CSV: keys with units in the first line, full numbers, and no text that a spreadsheet would run. */
export function csvText(table: Table): string {
  return Papa.unparse(
    { fields: table.columns.map((column) => column.name), data: table.rows.map((row) => [...row]) },
    { escapeFormulae: true, newline: "\r\n" },
  );
}

/** Hands a file to the reader as a download. */
export function download(document: Document, content: Blob, fileName: string): void {
  const link = document.createElement("a");
  const address = URL.createObjectURL(content);
  link.href = address;
  link.download = fileName;
  link.click();
  // Long enough for a slow browser to have taken the file: one whose address is gone by then saves nothing, and says nothing.
  setTimeout(() => URL.revokeObjectURL(address), 40_000);
}

export type FileKind = "svg" | "png" | "csv";

/** Saves a figure in one of its three forms; `name` goes into the file's name. */
export async function saveFigure(chart: Chart, kind: FileKind, name: string, fontFace = ""): Promise<void> {
  const content =
    kind === "png"
      ? await pngBlob(chart, fontFace)
      : kind === "svg"
        ? new Blob([svgText(chart, fontFace)], { type: "image/svg+xml" })
        : // The mark in front tells a spreadsheet that the text is UTF-8.
          new Blob(["\ufeff", csvText(chart.table)], { type: "text/csv;charset=utf-8" });
  const plain = name.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "") || "figure";
  download(chart.svg.ownerDocument, content, `${plain}.${kind}`);
}
