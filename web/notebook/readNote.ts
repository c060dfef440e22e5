import createPurifier, { type WindowLike } from "dompurify";
import { Marked } from "marked";
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
  return (text) => {
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
    linkFigures(piece, window.document);
    return piece;
  };
}

/** Turns every "Figure 5" outside links and code into a link to that figure. */
function linkFigures(piece: DocumentFragment, document: Document): void {
  const walker = document.createTreeWalker(piece, 4 /* text */);
  const texts: Text[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const text of texts) {
    if (text.parentElement?.closest("a, code")) continue;
    const parts = text.data.split(/(\bfigure\s+\d+\b)/i);
    if (parts.length === 1) continue;
    text.replaceWith(
      ...parts.map((part, i) => {
        if (i % 2 === 0) return part;
        const link = document.createElement("a");
        link.href = `#figure-${/\d+/.exec(part)?.[0]}`;
        link.textContent = part;
        return link;
      }),
    );
  }
}
