import ts from "typescript";

/** One small change to a source file: the text between two places becomes another. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** What changed, for a person: `a + b -> a - b`. */
  readonly change: string;
}

const swapped: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.PlusToken]: "-",
  [ts.SyntaxKind.MinusToken]: "+",
  [ts.SyntaxKind.AsteriskToken]: "/",
  [ts.SyntaxKind.SlashToken]: "*",
  [ts.SyntaxKind.LessThanToken]: ">=",
  [ts.SyntaxKind.LessThanEqualsToken]: ">",
  [ts.SyntaxKind.GreaterThanToken]: "<=",
  [ts.SyntaxKind.GreaterThanEqualsToken]: "<",
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: "!==",
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: "===",
  [ts.SyntaxKind.AmpersandAmpersandToken]: "||",
  [ts.SyntaxKind.BarBarToken]: "&&",
  [ts.SyntaxKind.PlusEqualsToken]: "-=",
  [ts.SyntaxKind.MinusEqualsToken]: "+=",
};

/**
 * Functions whose numbers are placeholders: memory that is filled before it is read, so that another number there changes nothing.
 * Totals, states and gears begin at these numbers and are not among them.
 */
const placeholders = /^create(Interval|Row|PackLimits|HeatFactors|RunContext|Channels)$/;

/**
 * Every mutant of a source text: operators and comparisons turned round, numbers doubled (nought becomes one), conditions held to one
 * side, the lesser and the greater taken for each other, signs and assignments dropped.
 */
export function mutantsOf(file: string, source: string): Mutant[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const put = (node: ts.Node, text: string) => {
    const from = node.getStart(tree);
    const { line } = tree.getLineAndCharacterOfPosition(from);
    const around = short(node.parent.getText(tree));
    found.push({
      file,
      line: line + 1,
      from,
      to: node.end,
      text,
      change: `${short(node.getText(tree))} -> ${text} in ${around}`,
    });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    if (ts.isImportDeclaration(node) || ts.isThrowStatement(node)) return;
    if (ts.isFunctionDeclaration(node) && placeholders.test(node.name?.text ?? "")) return;
    if (ts.isBinaryExpression(node)) {
      const other = swapped[node.operatorToken.kind];
      if (other !== undefined && !isText(node)) put(node.operatorToken, other);
    }
    if (ts.isNumericLiteral(node)) put(node, Number(node.text) === 0 ? "1" : String(2 * Number(node.text)));
    if (ts.isIfStatement(node)) for (const side of ["true", "false"]) put(node.expression, side);
    if (ts.isConditionalExpression(node)) for (const side of ["true", "false"]) put(node.condition, side);
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken)
      put(node, node.operand.getText(tree));
    if (ts.isPropertyAccessExpression(node) && node.expression.getText(tree) === "Math") {
      if (node.name.text === "min") put(node.name, "max");
      if (node.name.text === "max") put(node.name, "min");
    }
    if (ts.isExpressionStatement(node) && ts.isBinaryExpression(node.expression)) put(node, ";");
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** The source with one mutant in it. */
export function mutated(source: string, mutant: Mutant): string {
  return source.slice(0, mutant.from) + mutant.text + source.slice(mutant.to);
}

/** A seeded choice of so many, in an order of its own. */
export function sampleOf<T>(all: readonly T[], count: number, seed: number): T[] {
  // A linear congruence is random enough to choose by.
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return all
    .map((one) => ({ one, key: next() }))
    .toSorted((a, b) => a.key - b.key)
    .slice(0, count)
    .map(({ one }) => one);
}

function isText(node: ts.BinaryExpression): boolean {
  return [node.left, node.right].some((side) => ts.isStringLiteral(side) || ts.isTemplateExpression(side));
}

function short(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
