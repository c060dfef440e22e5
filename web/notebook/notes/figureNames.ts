import type { Figure } from "../../sections/parts/section.ts";

/** A figure by the name that stays while its number moves with what stands above it. */
export interface NamedFigure {
  /** `energyPerKm`, or `roadLoad.forces` where a section has several. */
  readonly id: string;
  readonly caption: string;
}

export interface NumberedFigure extends NamedFigure {
  readonly number: number;
  /** Its section is hidden from the client. */
  readonly isHidden: boolean;
}

/** The figures of a section by name; a second one of the same name says so, so that every name is there once. */
export function namedFigures(section: string, figures: readonly Pick<Figure, "name" | "caption">[]): NamedFigure[] {
  const taken = new Map<string, number>();
  return figures.map(({ name, caption }) => {
    const id = name === undefined ? section : `${section}.${name}`;
    const before = taken.get(id) ?? 0;
    taken.set(id, before + 1);
    return { id: before === 0 ? id : `${id}.${before + 1}`, caption };
  });
}

/** The figures of the page with their numbers, section by section from the top. */
export function numberedFigures(
  bySection: readonly { readonly figures: readonly NamedFigure[]; readonly isHidden: boolean }[],
): NumberedFigure[] {
  return bySection
    .flatMap(({ figures, isHidden }) => figures.map((figure) => ({ ...figure, isHidden })))
    .map((figure, i) => ({ ...figure, number: i + 1 }));
}

// What a note says of a figure, in the job file and to its writer. Code is left alone: it shows what was typed.
const named = /(`+)[^`][\s\S]*?\1(?!`)|\{(figure) ([A-Za-z0-9.]+)\}/gi;
const numbered = /(`+)[^`][\s\S]*?\1(?!`)|\b(figure)[ \u00a0](\d+)\b/gi;

/**
 * A note as it is kept in the job: "Figure 5" becomes `{Figure roadLoad.forces}`, which holds when figures are added or
 * go. A number that no figure has stays as it was typed.
 */
export function withNames(text: string, figures: readonly NumberedFigure[]): string {
  return text.replace(numbered, (all, _code, word: string | undefined, digits: string | undefined) => {
    const figure = figures.find(({ number }) => number === Number(digits));
    return word && figure ? `{${word} ${figure.id}}` : all;
  });
}

/** A note as its writer sees it: names become the present numbers; a name of no figure on the page stays. */
export function withNumbers(text: string, figures: readonly NumberedFigure[]): string {
  return text.replace(named, (all, _code, word: string | undefined, id: string | undefined) => {
    const figure = figures.find((each) => each.id === id);
    return word && figure ? `${word} ${figure.number}` : all;
  });
}

/** A piece of a note's text: words, or a figure that is meant, with its number or with none where it is not on the page. */
export type NotePiece = string | { readonly words: string; readonly number?: number };

/**
 * The text of a note in pieces, for linking. A figure hidden from the client, or one that is not on the page (its section cannot be
 * worked, its road is not the one driven), is said to be so.
 */
export function notePieces(text: string, figures: readonly NumberedFigure[]): NotePiece[] {
  const pieces: NotePiece[] = [];
  let from = 0;
  for (const found of text.matchAll(/\{(figure) ([A-Za-z0-9.]+)\}|\b(figure)\s(\d+)\b/gi)) {
    const [all, word, id, plainWord, digits] = found;
    const figure = figures.find((each) => (id === undefined ? each.number === Number(digits) : each.id === id));
    const before = text.slice(from, found.index);
    from = found.index + all.length;
    if (before !== "") pieces.push(before);
    const name = word ?? plainWord ?? "";
    if (figure) {
      const hidden = figure.isHidden ? " (hidden from client)" : "";
      pieces.push({ words: `${name} ${figure.number}${hidden}`, number: figure.number });
    } else pieces.push(id === undefined ? all : { words: `a figure that is not on the page now (${id})` });
  }
  const rest = text.slice(from);
  return rest === "" ? pieces : [...pieces, rest];
}
