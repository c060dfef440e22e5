import { basename, dirname, join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { sourceFiles, textOf } from "../support/sourceFiles.ts";

/** From so many on, what a file's functions decide and calculate is more than putting others together. */
const LEAST = 3;

const { SyntaxKind } = ts;
const branches = new Set([
  SyntaxKind.IfStatement,
  SyntaxKind.ConditionalExpression,
  SyntaxKind.SwitchStatement,
  SyntaxKind.ForStatement,
  SyntaxKind.ForOfStatement,
  SyntaxKind.ForInStatement,
  SyntaxKind.WhileStatement,
  SyntaxKind.DoStatement,
]);
const operators = new Set("+ - * / % ** += -= *= /= < <= > >= === !== && ||".split(" ").map((text) => scanned(text)));

function scanned(operator: string): ts.SyntaxKind {
  return ts.createScanner(ts.ScriptTarget.Latest, true, ts.LanguageVariant.Standard, operator).scan();
}

/** How many branches, loops, comparisons and operations of arithmetic stand in the functions of a file. */
function decisionsIn(file: string, text: string): number {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  let count = 0;
  const visit = (node: ts.Node, isInside: boolean): void => {
    if (ts.isTypeNode(node)) return;
    if (isInside && branches.has(node.kind)) count++;
    if (isInside && ts.isBinaryExpression(node) && operators.has(node.operatorToken.kind)) count++;
    const within = isInside || ts.isFunctionLike(node);
    ts.forEachChild(node, (child) => visit(child, within));
  };
  visit(source, false);
  return count;
}

/** Files that decide or calculate something and have no test by their own name. */
function untested(room: string, tests: ReadonlySet<string>): readonly string[] {
  return sourceFiles(room).filter((file) => {
    const name = join("tests", dirname(file), basename(file, ".ts"));
    const hasTest = tests.has(`${name}.test.ts`) || tests.has(`${name}InDocument.test.ts`);
    return !hasTest && decisionsIn(file, textOf(file)) >= LEAST;
  });
}

const tests = new Set(sourceFiles("tests"));

it("counts what functions decide and calculate, and nothing of tables, types and what stands outside of them", () => {
  const text = "const A = 2 * 3; type B = A extends 1 ? 2 : 3; const f = (x: number) => (x > 0 ? x + A : -x);";
  expect(decisionsIn("a.ts", text)).toBe(3);
});

// The page as a whole and what only a browser has, which tests/browser holds: main.ts, notebook/mount.ts, store/database/databaseStore.ts.
const STILL_WITHOUT = { shared: 0, sim: 0, web: 3 };

it.each(Object.entries(STILL_WITHOUT))(
  "each file of %s that decides or calculates has a test by its name",
  (room, still) => {
    const files = untested(room, tests);
    expect(files.slice(still), `without a test: ${files.join(", ")}`).toEqual([]);
  },
);
