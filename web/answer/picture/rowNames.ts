import { messageIn, whole } from "../../../shared/quantity/message.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Answer } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type Draw, halo } from "./svg.ts";

/** Below this height of a row its three lines of words are set closer. */
const LOW_ROW_px = 60;

interface NamesAt {
  readonly y0: number;
  readonly isNarrow: boolean;
  readonly isChosen: boolean;
  readonly rowHeight_px: number;
  readonly right_px: number;
  readonly units: UnitHabit;
}

/** Name, weight and verdict: beside the row, or on a strip over it. */
export function rowNames(pen: Draw, { packs }: Answer, index: number, at: NamesAt): SVGElement[] {
  const { y0, isNarrow, isChosen, rowHeight_px, right_px, units } = at;
  const { name, mass_kg, verdict, stop } = packs[index];
  const weight = messageIn([whole("mass", mass_kg, "nearest")], units);
  const word = stop ? "stop" : (verdict ?? "…");
  const short = name.length > 15 ? `${name.slice(0, 14)}…` : name;
  const heavy = isChosen ? 700 : 600;
  if (isNarrow) {
    return [
      halo(pen, { x: 4, y: y0 + 16, "font-weight": heavy }, short),
      halo(pen, { x: right_px - 8 * word.length - 8, y: y0 + 16, "text-anchor": "end", fill: look.inkSoft }, weight),
      halo(pen, { x: right_px, y: y0 + 16, "text-anchor": "end", "font-weight": 600 }, word),
    ];
  }
  const middle_px = y0 + rowHeight_px / 2;
  // Three lines inside the row, however low it is.
  const [name_px, up_px, weight_px, word_px] = rowHeight_px < LOW_ROW_px ? [15, 10, 5, 20] : [18, 12, 7, 25];
  return [
    pen("text", { x: 6, y: middle_px - up_px, "font-size": name_px, "font-weight": heavy }, short),
    pen("text", { x: 6, y: middle_px + weight_px, fill: look.inkSoft }, weight),
    pen("text", { x: 6, y: middle_px + word_px, "font-weight": 600 }, word),
  ];
}
