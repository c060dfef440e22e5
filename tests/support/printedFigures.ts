/** A figure of a tagged PDF: a picture, or a picture with its caption. */
export interface PrintedFigure {
  /** What a picture says in words; none for the whole of picture and caption. */
  readonly words: string | undefined;
  /** Objects of the pages that it has ink on. */
  readonly pages: readonly string[];
  /** Pieces of content that were drawn for it: none for a blank one. */
  readonly pieces: number;
}

interface Piece {
  readonly page: string | undefined;
  readonly kids: string;
}

/**
 * The figures of a tagged PDF, by its structure tree (ISO 32000-1, 14.7): which pages each has marked content
 * on. Chromium writes the tree uncompressed, so that it can be read without a library.
 */
export function printedFigures(pdf: Buffer): PrintedFigure[] {
  const objects = new Map<string, string>();
  for (const [, id, body] of pdf.toString("latin1").matchAll(/(?:^|\n)(\d+) 0 obj\s([\s\S]*?)\nendobj/g)) {
    if (id !== undefined && body?.includes("/StructElem")) objects.set(id, body);
  }
  const pieceOf = (body: string): Piece => ({
    page: /\/Pg (\d+) 0 R/.exec(body)?.[1],
    kids: /\/K\s*(\[[\s\S]*?\]|\d+ 0 R|\d+|<<[\s\S]*?>>)/.exec(body)?.[1] ?? "",
  });
  const found: PrintedFigure[] = [];
  for (const body of objects.values()) {
    const words = /\/S\s*\/Figure\s*\/Alt\s*(\((?:[^\\)]|\\[\s\S])*\)|<[0-9A-Fa-f\s]*>)/.exec(body)?.[1];
    if (!/\/S\s*\/Figure/.test(body)) continue;
    const pages = new Set<string>();
    let pieces = 0;
    const walk = (element: string) => {
      const { page, kids } = pieceOf(element);
      const bare = kids.replace(/<<([\s\S]*?)>>/g, (content) => {
        const its = /\/Pg (\d+) 0 R/.exec(content)?.[1] ?? page;
        if (its !== undefined) pages.add(its);
        pieces += 1;
        return "";
      });
      const rest = bare.replace(/(\d+) 0 R/g, (_, id: string) => {
        const kid = objects.get(id);
        if (kid !== undefined) walk(kid);
        return "";
      });
      const marks = rest.match(/\d+/g)?.length ?? 0;
      pieces += marks;
      if (marks > 0 && page !== undefined) pages.add(page);
    };
    walk(words === undefined ? body : body.replace(words, ""));
    found.push({ words, pages: [...pages], pieces });
  }
  return found;
}

/** How many pages a PDF has. */
export function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** Headings in the outline of a PDF: those of a page that was lost are not in it. */
export function printedHeadings(pdf: Buffer): string[] {
  return [...pdf.toString("latin1").matchAll(/\/Title \(((?:[^\\)]|\\.)*)\)/g)].map(([, title = ""]) => title);
}

/** Fonts of a PDF whose letters are not in it, by name: a font of type 3 holds each as a drawing, any other needs its file. */
export function fontsLeftOut(pdf: Buffer): string[] {
  const objects = new Map<string, string>();
  for (const [, id = "", body = ""] of pdf.toString("latin1").matchAll(/(?:^|\n)(\d+) 0 obj\s([\s\S]*?)\nendobj/g)) {
    objects.set(id, body);
  }
  const fonts = [...objects.values()].filter((body) => /\/Type\s*\/Font\b/.test(body));
  if (fonts.length === 0) throw new Error("a PDF without any font");
  return fonts
    .filter((body) => !/\/Subtype\s*\/Type[03]\b/.test(body))
    .filter((body) => !/\/FontFile/.test(objects.get(/\/FontDescriptor (\d+) 0 R/.exec(body)?.[1] ?? "") ?? ""))
    .map((body) => /\/BaseFont\s*\/(\S+)/.exec(body)?.[1] ?? body.slice(0, 80));
}
