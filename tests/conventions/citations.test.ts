import ts from "typescript";
import { expect, it } from "vitest";
import { filesUnder, rooms, sourceFiles, textOf } from "../support/sourceFiles.ts";

const entries = [...textOf("sim/REFERENCES.md").matchAll(/^- \*\*([^*]+)\*\*: (.*)$/gm)].map(
  ([, key = "", text = ""]) => ({
    key,
    text,
  }),
);

/** What is written for people in a file: its comments and its texts. Code itself has brackets of another kind. */
function proseOf(file: string): string {
  const text = textOf(file);
  if (!file.endsWith(".ts")) return text;
  const scanner = ts.createScanner(ts.ScriptTarget.Latest, false, ts.LanguageVariant.Standard, text);
  const pieces: string[] = [];
  for (let kind = scanner.scan(); kind !== ts.SyntaxKind.EndOfFileToken; kind = scanner.scan()) {
    const isProse =
      kind === ts.SyntaxKind.SingleLineCommentTrivia ||
      kind === ts.SyntaxKind.MultiLineCommentTrivia ||
      kind === ts.SyntaxKind.StringLiteral ||
      kind === ts.SyntaxKind.NoSubstitutionTemplateLiteral;
    if (isProse) pieces.push(scanner.getTokenText());
  }
  return pieces.join("\n");
}

/** Keys of `[Key, place]`, several parted by semicolons. A key is a name and a year or number, or else one of the list. */
function keysIn(prose: string): readonly string[] {
  const unstarred = prose.replace(/\n\s*(\*|\/\/) ?/g, " ");
  return [...unstarred.matchAll(/\[([A-Z][^[\]]*)\]/g)]
    .flatMap(([, inner = ""]) => inner.split(";"))
    .map((part) => /^\s*([A-Z][A-Za-z0-9-]*)(?=,|\s*$)/.exec(part)?.[1] ?? "")
    .filter((key) => /^[A-Za-z]{2,}\d+[a-z]?(-\d+)*$/.test(key) || entries.some((entry) => entry.key === key));
}

const data = [...filesUnder("tests", /\.json$/), ...filesUnder("shared", /\.json$/)];
const uses = [...sourceFiles(...rooms), ...data].flatMap((file) => keysIn(proseOf(file)).map((key) => ({ file, key })));

it("finds keys with a place, without one, and several at once, and leaves other brackets alone", () => {
  expect(keysIn("[ISO2533, 2.1] and [GTR15] and [GTR15, Annex 4;\n * ISO2533, table 1]")).toEqual([
    "ISO2533",
    "GTR15",
    "GTR15",
    "ISO2533",
  ]);
  expect(keysIn("[Key, place] rows[I2] [A4] [0, 1] [Nm]")).toEqual([]);
});

it("names each source once, in alphabetical order, with author, title and year", () => {
  const keys = entries.map(({ key }) => key);
  expect(keys.length).toBeGreaterThan(5);
  expect(keys).toEqual([...new Set(keys)].sort((a, b) => a.toLowerCase().localeCompare(b.toLowerCase(), "en")));
  expect(entries.filter(({ text }) => text.length < 20).map(({ key }) => key)).toEqual([]);
});

it("has a full entry in sim/REFERENCES.md for every key that is cited", () => {
  const strays = uses.filter(({ key }) => !entries.some((entry) => entry.key === key));
  expect(strays.map(({ file, key }) => `${file}: [${key}]`)).toEqual([]);
});

it("cites every entry of sim/REFERENCES.md somewhere", () => {
  expect(entries.filter(({ key }) => !uses.some((use) => use.key === key)).map(({ key }) => key)).toEqual([]);
});
