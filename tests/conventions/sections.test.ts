import { basename } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { sourceFiles, textOf } from "../support/sourceFiles.ts";

const listFile = "web/sections/index.ts";
const sectionFiles = sourceFiles("web/sections").filter((file) => file !== listFile && !file.includes("/parts/"));

/** The object handed to `export default defineSection({...})`, or undefined where a file has another shape. */
function sectionObject(file: string): ts.ObjectLiteralExpression | undefined {
  const source = ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, true);
  for (const statement of source.statements) {
    if (!ts.isExportAssignment(statement) || !ts.isCallExpression(statement.expression)) continue;
    const { expression, arguments: args } = statement.expression;
    const [given] = args;
    if (expression.getText(source) === "defineSection" && given && ts.isObjectLiteralExpression(given)) return given;
  }
  return undefined;
}

function keysOf(section: ts.ObjectLiteralExpression): readonly string[] {
  return section.properties.map((property) => property.name?.getText() ?? "");
}

describe("a section of the notebook", () => {
  it("is there at all", () => {
    expect(sectionFiles.length).toBeGreaterThan(0);
  });

  it.each(sectionFiles)("%s is one defineSection with inputs, compute, plot and sentence, in this order", (file) => {
    const section = sectionObject(file);
    const parts = section ? keysOf(section).filter((key) => /^(inputs|compute|plot|sentence)$/.test(key)) : [];
    expect(parts).toEqual(["inputs", "compute", "plot", "sentence"]);
  });

  it.each(sectionFiles)("%s bears the name of its file", (file) => {
    const name = sectionObject(file)?.properties.find((property) => property.name?.getText() === "name");
    const text =
      name && ts.isPropertyAssignment(name) && ts.isStringLiteral(name.initializer) ? name.initializer.text : "";
    expect(text).toBe(basename(file, ".ts"));
  });

  it.each(sectionFiles)("%s is listed once in web/sections/index.ts", (file) => {
    expect(textOf(listFile).split(`"./${basename(file)}"`)).toHaveLength(2);
  });

  it.each(sectionFiles)("%s touches the page by what it is given only", (file) => {
    // `document` is an argument there; the page's own would make the drawing impossible to test.
    expect(textOf(file)).not.toMatch(
      /\b(window|globalThis|localStorage|indexedDB)\.|[^.\w]document\.(querySelector|getElement|body)/,
    );
  });
});
