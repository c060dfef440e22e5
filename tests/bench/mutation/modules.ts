import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { compileFunction } from "node:vm";
import ts from "typescript";

type Body = (
  exports: object,
  require: (name: string) => unknown,
  here: { dirname: string; url: string; filename: string },
  on: (id: number) => boolean,
  turn: () => void,
) => void;

/** A source of the project, compiled once; run anew for each mutant. */
interface Compiled {
  readonly run: Body;
  readonly path: string;
}

/** What a mutant's switch and the count of loops are asked of. */
export interface Switches {
  on(id: number): boolean;
  turn(): void;
}

/**
 * Loads the project's sources as modules of their own, each compiled once and run again after `forget`; packages are loaded by Node and
 * stay. `sourceOf` gives a file's text, with mutants compiled in where there are some; `standIn` replaces packages.
 */
export function createModules(
  root: string,
  sourceOf: (file: string) => string,
  standIn: Readonly<Record<string, unknown>>,
  switches: Switches,
) {
  const compiled = new Map<string, Compiled>();
  const loaded = new Map<string, { exports: object }>();
  const compile = (path: string): Compiled => {
    const source = sourceOf(relative(root, path)).replaceAll("import.meta", "__here");
    const { outputText } = ts.transpileModule(source, {
      compilerOptions: {
        target: ts.ScriptTarget.ES2023,
        module: ts.ModuleKind.CommonJS,
        esModuleInterop: true,
      },
      fileName: path,
    });
    const names = ["exports", "require", "__here", "__on", "__turn"];
    return { path, run: compileFunction(outputText, names, { filename: path }) as Body };
  };
  const load = (path: string): unknown => {
    if (path.endsWith(".json")) return JSON.parse(readFileSync(path, "utf8"));
    const before = loaded.get(path);
    if (before) return before.exports;
    let code = compiled.get(path);
    if (!code) {
      code = compile(path);
      compiled.set(path, code);
    }
    const module = { exports: {} };
    loaded.set(path, module);
    const here = { dirname: dirname(path), url: pathToFileURL(path).href, filename: path };
    const outside = createRequire(path);
    const within = (name: string): unknown => {
      if (name.startsWith(".")) return load(join(dirname(path), name));
      return Object.hasOwn(standIn, name) ? standIn[name] : outside(name);
    };
    code.run(module.exports, within, here, switches.on, switches.turn);
    return module.exports;
  };
  return {
    load: (file: string) => load(join(root, file)),
    /** The next load runs every module again. */
    forget: () => loaded.clear(),
  };
}

/** The project's files that a file imports by a relative path, types left out. */
export function importsOf(file: string, source: string): string[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, false);
  const found: string[] = [];
  for (const statement of tree.statements) {
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) continue;
    const { moduleSpecifier } = statement;
    if (!moduleSpecifier || !ts.isStringLiteral(moduleSpecifier) || !moduleSpecifier.text.startsWith(".")) continue;
    const isTypeOnly = ts.isImportDeclaration(statement) ? statement.importClause?.isTypeOnly : statement.isTypeOnly;
    if (isTypeOnly !== true) found.push(join(dirname(file), moduleSpecifier.text));
  }
  return found;
}
