import { cellNumber } from "./mapRows.ts";

/** What the words beside an axis say it is; nothing where they do not say. */
type AxisWords = "speed" | "torque" | undefined;

/** What words say of the two axes: what runs down, as far as they say so, and the words themselves. */
export interface NamedAxes {
  readonly downIs: AxisWords;
  readonly down: string;
  readonly across: string;
}

/** The words for each axis: a corner such as `rpm \ Nm`, a remark such as `rpm down`, a line above, a column beside. */
export function namedAxes(corner: string, beside: string, above: string, headWords: string): NamedAxes {
  const parts = plainUnits(corner).split(/[\\/|]/);
  const isPair = parts.length === 2 && parts.every((part) => axisOf(part) !== undefined);
  const named = /(?<![a-z])([a-z]+)[^a-z]+(?:goes |going )?down/i.exec(plainUnits(above))?.[1] ?? "";
  const down = isPair ? parts[0] : (axisOf(named) ?? axisOf(beside)) ? `${named} ${beside}` : corner;
  const across = isPair ? parts[1] : axisOf(headWords) ? headWords : above;
  return { downIs: axisOf(down) ?? otherThan(axisOf(across)), down, across };
}

function otherThan(axis: AxisWords): AxisWords {
  return axis && (axis === "speed" ? "torque" : "speed");
}

/** The columns of a long table's header; nothing if the line is no such header. */
export function longColumns(texts: readonly string[]): { speed: number; torque: number; value: number } | undefined {
  if (texts.some((cell) => cellNumber(cell) !== undefined)) return undefined;
  const speed = texts.findIndex((cell) => axisOf(cell) === "speed");
  const torque = texts.findIndex((cell) => axisOf(cell) === "torque");
  const value = texts.findIndex((cell, i) => i !== speed && i !== torque && /eff|eta|η|loss|%/i.test(cell));
  return speed >= 0 && torque >= 0 && value >= 0 ? { speed, torque, value } : undefined;
}

function axisOf(text: string): AxisWords {
  const plain = plainUnits(text);
  const isSpeed = /rpm|radps|speed|turns/i.test(plain);
  const isTorque = /nm\b|torque|lb ?f? ?ft|ft ?lb/i.test(plain);
  return isSpeed === isTorque ? undefined : isSpeed ? "speed" : "torque";
}

/** Slashes within a unit taken out, so that the others part two axes. */
function plainUnits(text: string): string {
  return text
    .replace(/rad ?\/ ?s(ec)?/gi, "radps")
    .replace(/rev(s|olutions)? ?\/ ?min|r ?\/ ?min|1 ?\/ ?min|min\^?[-−]1/gi, "rpm")
    .replace(/n ?[.·]? ?m\b/gi, "Nm");
}
