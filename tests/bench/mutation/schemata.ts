import ts from "typescript";

/** A mutant and the number it is switched on by. */
interface Switched {
  readonly id: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/**
 * A source with all its mutants compiled in: each expression becomes `(__on(id) ? mutated : original)`, and each loop counts its turns by
 * `__turn()`, so that a mutant that never ends is noticed. The result is still TypeScript.
 */
export function withMutants(file: string, source: string, mutants: readonly Switched[]): string {
  // Outer expressions first, so that what lies within one is rendered inside its original.
  const wraps = mutants.toSorted((a, b) => a.from - b.from || b.to - a.to || a.id - b.id);
  const turns = loopBodies(file, source);
  let nextWrap = 0;
  let nextTurn = 0;
  const render = (from: number, to: number): string => {
    let text = "";
    let at = from;
    for (;;) {
      const wrap = wraps[nextWrap];
      const wrapAt = wrap && wrap.from < to && wrap.to <= to ? wrap.from : Number.POSITIVE_INFINITY;
      const turnAt = turns[nextTurn]?.at ?? Number.POSITIVE_INFINITY;
      if (wrapAt === Number.POSITIVE_INFINITY && turnAt > to) return text + source.slice(at, to);
      if (wrap && wrapAt < turnAt) {
        nextWrap++;
        text += `${source.slice(at, wrap.from)}(__on(${wrap.id}) ? (${wrap.text}) : (${render(wrap.from, wrap.to)}))`;
        at = wrap.to;
      } else {
        text += source.slice(at, turnAt) + (turns[nextTurn]?.text ?? "");
        nextTurn++;
        at = turnAt;
      }
    }
  };
  return render(0, source.length);
}

/** What is put where so that each turn of a loop is counted. */
function loopBodies(file: string, source: string): { at: number; text: string }[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: { at: number; text: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIterationStatement(node, false)) {
      const { statement } = node;
      const start = statement.getStart(tree);
      if (ts.isBlock(statement)) found.push({ at: start + 1, text: " __turn();" });
      else found.push({ at: start, text: "{ __turn(); " }, { at: statement.end, text: " }" });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found.toSorted((a, b) => a.at - b.at);
}
