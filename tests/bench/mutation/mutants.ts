import ts from "typescript";

/** One small fault: the expression between two places of a source file becomes another. */
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
const swappedNames: Readonly<Record<string, string>> = { min: "max", max: "min", some: "every", every: "some" };

/**
 * Functions whose numbers are placeholders: memory that is filled before it is read, so that another number there changes nothing.
 * Totals, states and gears begin at these numbers and are not among them.
 */
const placeholders = /^create(Interval|Row|PackLimits|HeatFactors|RunContext|Channels)$/;
/** Smaller numbers guard a division or end an iteration: twice as much is as good. */
const GUARD = 1e-6;

/**
 * Every mutant of a source text: operators and comparisons turned round, numbers doubled (nought becomes one), conditions held to one
 * side, the lesser and the greater, some and every, true and false taken for each other, signs, assignments and bare calls dropped.
 */
export function mutantsOf(file: string, source: string): Mutant[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  /** `node` is replaced as a whole; `at` is what a person should look at. */
  const put = (node: ts.Node, text: string, at: ts.Node = node) => {
    const from = node.getStart(tree);
    const { line } = tree.getLineAndCharacterOfPosition(at.getStart(tree));
    const change = `${short(node.getText(tree))} -> ${short(text)} in ${short(node.parent.getText(tree))}`;
    found.push({ file, line: line + 1, from, to: node.end, text, change });
  };
  /** Replaces `part` inside `whole`. */
  const putPart = (whole: ts.Node, part: ts.Node, text: string) => {
    const start = whole.getStart(tree);
    const before = source.slice(start, part.getStart(tree));
    put(whole, `${before}${text}${source.slice(part.end, whole.end)}`, part);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    if (ts.isImportDeclaration(node) || ts.isThrowStatement(node)) return;
    if (ts.isFunctionDeclaration(node) && placeholders.test(node.name?.text ?? "")) return;
    if (ts.isBinaryExpression(node)) {
      const other = swapped[node.operatorToken.kind];
      if (other !== undefined) putPart(node, node.operatorToken, other);
    }
    if (ts.isNumericLiteral(node) && isCounted(node) && !isName(node)) put(node, doubled(node));
    if (ts.isIfStatement(node)) for (const side of ["true", "false"]) put(node.expression, side);
    if (ts.isConditionalExpression(node)) for (const side of ["true", "false"]) put(node.condition, side);
    if (ts.isPrefixUnaryExpression(node) && isSign(node)) put(node, `(${node.operand.getText(tree)})`);
    if (node.kind === ts.SyntaxKind.TrueKeyword) put(node, "false");
    if (node.kind === ts.SyntaxKind.FalseKeyword) put(node, "true");
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name } = node.expression;
      const other = Object.hasOwn(swappedNames, name.text) ? swappedNames[name.text] : undefined;
      if (other !== undefined) putPart(node, name, other);
    }
    if (ts.isExpressionStatement(node)) put(node.expression, "undefined");
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** The source with one mutant in it. */
export function mutated(source: string, mutant: Mutant): string {
  return source.slice(0, mutant.from) + mutant.text + source.slice(mutant.to);
}

/** A seeded order of mutants in which every line has one before any has its second. */
export function shuffled(all: readonly Mutant[], seed: number): Mutant[] {
  // A linear congruence is random enough to choose by; its first few numbers still tell the seed, and are left out.
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  for (let i = 0; i < 10; i++) next();
  const drawn = all.map((mutant) => ({ mutant, key: next() })).toSorted((a, b) => a.key - b.key);
  const timesOfLine = new Map<string, number>();
  return drawn
    .map(({ mutant, key }) => {
      const line = `${mutant.file}:${mutant.line}`;
      const turn = timesOfLine.get(line) ?? 0;
      timesOfLine.set(line, turn + 1);
      return { mutant, key: key + turn };
    })
    .toSorted((a, b) => a.key - b.key)
    .map(({ mutant }) => mutant);
}

function isCounted(node: ts.NumericLiteral): boolean {
  return Number(node.text) === 0 || Number(node.text) >= GUARD;
}

/** Whether it is the key of an object and not a value. */
function isName(node: ts.NumericLiteral): boolean {
  return ts.isPropertyAssignment(node.parent) && node.parent.name === node;
}

function doubled(node: ts.NumericLiteral): string {
  return Number(node.text) === 0 ? "1" : String(2 * Number(node.text));
}

function isSign({ operator }: ts.PrefixUnaryExpression): boolean {
  return operator === ts.SyntaxKind.MinusToken || operator === ts.SyntaxKind.ExclamationToken;
}

function short(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return line.length > 70 ? `${line.slice(0, 67)}...` : line;
}
