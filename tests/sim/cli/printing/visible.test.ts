import { expect, it } from "vitest";
import { visible, visibleJson, visibleLine } from "../../../../sim/cli/printing/visible.ts";

it("shows control characters as pictures of themselves, and leaves line ends and tabs", () => {
  // The block of pictures begins at U+2400: escape is 0x1b, delete has one of its own, C1 controls have none.
  expect(visible("a\u001b[31mb\tc\nd\u007f\u0085")).toBe("a\u241b[31mb\tc\nd\u2421<0085>");
});

it("shows line ends and tabs of a single line too", () => {
  expect(visibleLine("a\tb\nc")).toBe("a\u2409b\u240ac");
});

it("shows marks that turn the direction of writing", () => {
  expect(visible("gpj\u202e.exe")).toBe("gpj<202e>.exe");
});

it("escapes them in JSON so that a program reads the same text back", () => {
  const json = JSON.stringify({ name: "a\u202eb\u009b" });
  expect(visibleJson(json)).toBe('{"name":"a\\u202eb\\u009b"}');
  expect(JSON.parse(visibleJson(json))).toEqual(JSON.parse(json));
});
