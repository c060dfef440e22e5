import { join } from "node:path";
import ts from "typescript";

/** Answers whether a source file with another text still passes the type check; unused names and unreachable code are left alone. */
export function createTypeCheck(root: string, files: readonly string[], sourceOf: (file: string) => string) {
  const config = ts.parseJsonConfigFileContent(
    ts.readConfigFile(join(root, "sim/tsconfig.json"), ts.sys.readFile).config,
    ts.sys,
    join(root, "sim"),
  );
  const options = { ...config.options, noUnusedLocals: false, noUnusedParameters: false, allowUnreachableCode: true };
  const changed = new Map<string, { text: string; version: number }>();
  let version = 0;
  const host: ts.LanguageServiceHost = {
    getScriptFileNames: () => files.map((file) => join(root, file)),
    getScriptVersion: (path) => String(changed.get(path)?.version ?? 0),
    getScriptSnapshot: (path) => {
      const text = changed.get(path)?.text ?? ts.sys.readFile(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => root,
    getCompilationSettings: () => options,
    getDefaultLibFileName: (of) => ts.getDefaultLibFilePath(of),
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    readDirectory: ts.sys.readDirectory,
  };
  const service = ts.createLanguageService(host);
  return (file: string, text: string): boolean => {
    const path = join(root, file);
    changed.set(path, { text, version: ++version });
    const isCorrect =
      service.getSemanticDiagnostics(path).length === 0 && service.getSyntacticDiagnostics(path).length === 0;
    changed.set(path, { text: sourceOf(file), version: ++version });
    return isCorrect;
  };
}
