import { quantityKinds } from "../../shared/quantity/kinds/kinds.ts";

/** All values that a number told in so many figures may stand for. */
type Span = readonly [number, number];

const signs = Object.values(quantityKinds)
  .flatMap(({ unit, spellings }) => [unit, ...spellings])
  .concat(["Wh/mile", "miles", "hp", "N/mph", "lbf/mph", "%"])
  .filter((sign) => /^[^\d:]+$|²/.test(sign) && !/^\d/.test(sign) && sign.trim() !== "")
  .sort((a, b) => b.length - a.length)
  .map((sign) => sign.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&"));
const withUnit = new RegExp(`(\\d) (?:${signs.join("|")})(?![\\w/])`, "g");

/**
 * Both sides of a line such as `38 km × 1.33 / 0.75 = 67.4 km` worked like on a pocket calculator, units and words left out. A number
 * stands for all that would be told like it (38 for 37.95 to 38.05), so each side is a span, and right lines have spans that meet.
 */
export function bothSides(line: string): { left: Span; right: Span } {
  const [left, right, ...more] = line.slice(line.lastIndexOf(": ") + 1).split(" = ");
  if (left === undefined || right === undefined || more.length > 0) throw new Error(`no single = in ${line}`);
  return { left: worked(left), right: worked((right.match(/-?\d[\d.]*/) ?? [""])[0]) };
}

function worked(text: string): Span {
  const bare = text.replaceAll("\u00a0", " ").replace(withUnit, "$1");
  const tokens = bare.match(/\d+(?:\.\d+)?(?:e-?\d+)?|[-+×/()²√]/g) ?? [];
  let at = 0;
  const value = sum();
  if (at < tokens.length) throw new Error(`found ${tokens[at]} too much in ${text}`);
  return value;

  function sum(): Span {
    let total = product();
    while (tokens[at] === "+" || tokens[at] === "-") {
      const isPlus = tokens[at++] === "+";
      const [low, high] = product();
      total = isPlus ? [total[0] + low, total[1] + high] : [total[0] - high, total[1] - low];
    }
    return total;
  }
  function product(): Span {
    let total = power();
    while (tokens[at] === "×" || tokens[at] === "/") {
      const isTimes = tokens[at++] === "×";
      const other = power();
      const ends = total.flatMap((a) => other.map((b) => (isTimes ? a * b : a / b)));
      total = [Math.min(...ends), Math.max(...ends)];
    }
    return total;
  }
  function power(): Span {
    const isRoot = tokens[at] === "√";
    if (isRoot) at++;
    let value = atom();
    if (tokens[at] === "²") {
      at++;
      value = [value[0] * value[0], value[1] * value[1]];
    }
    return isRoot ? [Math.sqrt(value[0]), Math.sqrt(value[1])] : value;
  }
  function atom(): Span {
    const token = tokens[at++] ?? "";
    if (token === "-") {
      const [low, high] = atom();
      return [-high, -low];
    }
    if (token === "(") {
      const inner = sum();
      if (tokens[at++] !== ")") throw new Error(`a bracket stays open in ${text}`);
      return inner;
    }
    const number = Number(token);
    if (!/^\d/.test(token)) throw new Error(`found ${token || "nothing"} in place of a number in ${text}`);
    if (number === 0) return [0, 0];
    const figures = Math.max(3, figuresIn(token));
    const half = 0.5 * 10 ** (Math.floor(Math.log10(number)) + 1 - figures);
    return [number - half, number + half];
  }
}

/** Noughts at the end of a whole number tell nothing: 16900 is told in three figures. */
function figuresIn(token: string): number {
  const digits = token.replace(/e.*/, "").replace(/^0+/, "");
  return digits.includes(".") ? digits.replace(/^\.0*|\./g, "").length : digits.replace(/0+$/, "").length;
}
