import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { createNoteReader } from "../../../web/notebook/readNote.ts";

const { window } = new JSDOM("<!doctype html>");
const read = createNoteReader(window);

/** The note as the text of a page. */
function shown(text: string): string {
  const place = window.document.createElement("div");
  place.append(read(text));
  return place.innerHTML;
}

describe("a note", () => {
  it("has its Markdown set out, headings below those of the page", () => {
    expect(shown("# Brakes\n\n**Rear** drums drag:\n\n- left\n- right")).toMatch(
      /<h4>Brakes<\/h4>\s*<p><strong>Rear<\/strong> drums drag:<\/p>\s*<ul>\s*<li>left<\/li>\s*<li>right<\/li>/,
    );
  });

  it("links the figures it names, but not inside code or another link", () => {
    expect(shown("See Figure 5.")).toContain('See <a href="#figure-5">Figure 5</a>.');
    expect(shown("`Figure 5`")).not.toContain("<a");
    expect(shown("[Figure 5](https://somewhere.example/)").match(/<a/g)).toHaveLength(1);
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
