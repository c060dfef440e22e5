import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { namedFigures, numberedFigures } from "../../../../web/notebook/notes/figureNames.ts";
import { createNoteReader } from "../../../../web/notebook/notes/readNote.ts";

const { window } = new JSDOM("<!doctype html>");
const read = createNoteReader(window);

const figures = numberedFigures([
  { figures: namedFigures("roadLoad", [{ caption: "Forces" }]), isHidden: false },
  { figures: namedFigures("energyPerKm", [{ caption: "Where it goes" }]), isHidden: true },
]);

/** The note as the text of a page. */
function shown(text: string): string {
  const place = window.document.createElement("div");
  place.append(read(text, figures));
  return place.innerHTML;
}

describe("a note", () => {
  it("has its Markdown set out, headings below those of the page", () => {
    expect(shown("# Brakes\n\n**Rear** drums drag:\n\n- left\n- right")).toMatch(
      /<h4>Brakes<\/h4>\s*<p><strong>Rear<\/strong> drums drag:<\/p>\s*<ul>\s*<li>left<\/li>\s*<li>right<\/li>/,
    );
  });

  it("links the figures it names, but not inside code or another link", () => {
    expect(shown("See {Figure roadLoad}.")).toContain('See <a href="#figure-1">Figure 1</a>.');
    expect(shown("See Figure 1.")).toContain('See <a href="#figure-1">Figure 1</a>.');
    expect(shown("`{Figure roadLoad}` and `Figure 1`")).not.toContain("<a");
    const within = shown("[{Figure roadLoad}](https://somewhere.example/)");
    expect(within.match(/<a/g)).toHaveLength(1);
    expect(within).toContain(">Figure 1</a>");
  });

  it("says in words where a figure is hidden from the client or not on the page", () => {
    expect(shown("{figure energyPerKm}")).toContain('<a href="#figure-2">figure 2 (hidden from client)</a>');
    const gone = shown("See {Figure theRoad.log} and Figure 40.");
    expect(gone).toContain("See a figure that is not on the page now (theRoad.log) and Figure 40.");
    expect(gone).not.toContain("<a");
  });

  it("opens links elsewhere in a page that knows nothing of this one", () => {
    expect(shown("[code](https://somewhere.example/)")).toContain('rel="noopener noreferrer"');
  });

  it.each([
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "![picture](https://somewhere.example/picture.png)",
    "[press](javascript:alert(1))",
    "[press](JaVaScRiPt&colon;alert(1))",
    "[press](data:text/html;base64,PHNjcmlwdD4=)",
    '<a href="https://somewhere.example/" onclick="alert(1)">x</a>',
    "<svg><a xlink:href='javascript:alert(1)'>x</a></svg>",
    "<iframe src='https://somewhere.example/'></iframe>",
    "<form action='https://somewhere.example/'><input name=a></form>",
    "<p style='position:fixed' id='figure-5' class='answer'>x</p>",
    "{Figure <img src=x onerror=alert(1)>}",
    "<a href='#figure-1' onmouseover=alert(1)>x</a>",
    "<a href='vbscript:x'>x</a><a href=' javascript:alert(1)'>y</a><a href='//somewhere.example/data:x'>z</a>",
    "<math><mtext><table><mglyph><style><img src=x onerror=alert(1)>",
  ])("lets nothing act, be fetched or pose as the page: %s", (text) => {
    expect(shown(text)).not.toMatch(
      /<script|<img|<svg|<iframe|<form|<input|<style|<math|\son\w+=|javascript:|data:|style=|\sid=|class=/i,
    );
  });

  it("takes any text, also none", () => {
    expect(shown("")).toBe("");
    expect(shown("5 < 6 & 7 > 3")).toContain("5 &lt; 6 &amp; 7 &gt; 3");
  });
});
