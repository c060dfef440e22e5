import ts from "typescript";
import { describe, expect, it } from "vitest";
import { unitSuffixes } from "../../shared/units.ts";
import { rooms, sourceFiles, textOf } from "../support/sourceFiles.ts";

/** Every name that a file declares: variables, parameters, functions, members, keys of objects. */
function declaredNames(file: string): readonly { readonly name: string; readonly line: number }[] {
  const source = ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, true);
  const found: { name: string; line: number }[] = [];
  const visit = (node: ts.Node): void => {
    if (isDeclaration(node) && node.name && (ts.isIdentifier(node.name) || ts.isStringLiteral(node.name))) {
      const { line } = source.getLineAndCharacterOfPosition(node.name.getStart(source));
      found.push({ name: node.name.text, line: line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isDeclaration(node: ts.Node): node is ts.Node & { readonly name?: ts.Node } {
  return (
    ts.isVariableDeclaration(node) ||
    ts.isBindingElement(node) ||
    ts.isParameter(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isMethodDeclaration(node) ||
    ts.isMethodSignature(node) ||
    ts.isPropertyDeclaration(node) ||
    ts.isPropertySignature(node) ||
    ts.isPropertyAssignment(node) ||
    ts.isShorthandPropertyAssignment(node) ||
    ts.isGetAccessorDeclaration(node)
  );
}

/**
 * An underscore in a name stands before a unit and nowhere else. Free are conversion factors and other constants all in upper
 * case (`J_PER_WH`; `GRAVITY_mps2` still ends in a unit), names that begin with an underscore (a parameter that is not used),
 * and keys that are no names of the language (headings of files from outside).
 */
function isWellNamed(name: string): boolean {
  if (!name.includes("_") || name.startsWith("_") || !/^\w+$/.test(name)) return true;
  if (/^[A-Z][A-Z0-9_]*$/.test(name)) return true;
  return unitSuffixes.some((suffix) => {
    if (!name.endsWith(`_${suffix}`)) return false;
    const quantity = name.slice(0, -suffix.length - 1);
    return /^[a-z][A-Za-z0-9]*$/.test(quantity) || /^[A-Z][A-Z0-9_]*$/.test(quantity);
  });
}

describe("the rule itself", () => {
  it.each([
    "speed_mps",
    "motorTorque_Nm",
    "GRAVITY_mps2",
    "STANDARD_GRAVITY_mps2",
    "J_PER_WH",
    "_event",
    "seriesCount",
  ])("takes %s", (name) => expect(isWellNamed(name)).toBe(true));
  it.each(["speed_mph2", "motor_torque", "motor_torque_Nm", "Speed_mps", "power_w", "time_S", "soc_"])(
    "refuses %s",
    (name) => expect(isWellNamed(name)).toBe(false),
  );
});

it.each(rooms)("every underscore in a name of %s stands before a unit of shared/units.ts", (room) => {
  const names = sourceFiles(room).flatMap((file) => declaredNames(file).map((found) => ({ file, ...found })));
  expect(names.filter(({ name }) => name.includes("_")).length).toBeGreaterThan(10);
  const strays = names.filter(({ name }) => !isWellNamed(name));
  expect(strays.map(({ file, line, name }) => `${file} line ${line}: ${name}`)).toEqual([]);
});
