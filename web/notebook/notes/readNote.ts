import createPurifier, { type WindowLike } from "dompurify";
import { Marked } from "marked";
import { unbroken } from "../../look/unbroken.ts";
import { type NumberedFigure, notePieces } from "./figureNames.ts";
import type { NoteReader } from "./noteReader.ts";

/** A note stands below a section's heading of the second level, so its own begin at the fourth. */
const HEADINGS_BELOW = 3;

/** Words, lists, tables and links: no picture, since a picture would be asked of a host, and nothing that acts. */
const allowed = {
  ALLOWED_TAGS: "p br strong em del ul ol li blockquote code pre h4 h5 h6 hr a table thead tbody tr th td".split(" "),
  ALLOWED_ATTR: ["href"],
  ALLOWED_URI_REGEXP: /^(https?:|mailto:|#)/i,
  RETURN_DOM_FRAGMENT: true,
} as const;

/** The reader of notes for a window: its own, or a stand-in for one in tests. */
export function createNoteReader(window: WindowLike & { readonly document: Document }): NoteReader {
  const purifier = createPurifier(window);
  const marked = new Marked({
    gfm: true,
    breaks: true,
    walkTokens: (token) => {
      if (token.type === "heading") token.depth = Math.min(6, token.depth + HEADINGS_BELOW);
    },
  });
  return (text, figures) => {
    const piece = purifier.sanitize(marked.parse(text, { async: false }), {
      ...allowed,
      ALLOWED_TAGS: [...allowed.ALLOWED_TAGS],
      ALLOWED_ATTR: [...allowed.ALLOWED_ATTR],
    });
    for (const link of piece.querySelectorAll("a[href]")) {
      if (link.getAttribute("href")?.startsWith("#")) continue;
      // Followed by the person only, into a page of its own that knows nothing of this one.
      link.setAttribute("target", "_blank");
      link.setAttribute("rel", "noopener noreferrer");
    }
    linkFigures(piece, window.document, figures);
    return piece;
  };
}

/** Keeps quantities in one piece, turns every figure that is named outside links and code into a link to it, and says where one is not on the page. */
function linkFigures(piece: DocumentFragment, document: Document, figures: readonly NumberedFigure[]): void {
  const walker = document.createTreeWalker(piece, 4 /* text */);
  const texts: Text[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const text of texts) {
    if (text.parentElement?.closest("code")) continue;
    const isInLink = text.parentElement?.closest("a") !== null;
    const pieces = notePieces(text.data, figures);
    text.replaceWith(
      ...pieces.map((each) => {
        if (typeof each === "string") return unbroken(each);
        if (each.number === undefined || isInLink) return each.words;
        const link = document.createElement("a");
        link.href = `#figure-${each.number}`;
        link.textContent = each.words;
        return link;
      }),
    );
  }
}
