import type { Position, Reading } from "./chart.ts";
import { lineAt } from "./columnAt.ts";
import type { FigureUnit } from "./figureUnits.ts";
import { ledgerNames, middle, type Segment } from "./ledgerStack.ts";
import { threeFigures } from "./threeFigures.ts";

/** Reading a single bar part by part, from left to right: `across` gives the pixel of a value, `under_px` is below the bar. */
export function partsAlong(parts: readonly Segment[], across: (value: number) => number, under_px: number): Position {
  const places = parts.map((_, i) => i);
  const at_px = parts.map((each) => across(middle(each)));
  return {
    quantity: "ledgerPart",
    first: 0,
    last: Math.max(1, parts.length - 1),
    step: 1,
    isVertical: false,
    from_px: under_px - 40,
    to_px: under_px,
    toPixel: (place) => lineAt(places, at_px, places.length, place),
    fromPixel: (pixel) => lineAt(at_px, places, places.length, pixel),
  };
}

/** What the part at a place takes, and how much of the whole that is. */
export function readPart(
  parts: readonly Segment[],
  { name, total }: { readonly name: string; readonly total: number },
  at: number,
  unit: FigureUnit,
): Reading {
  const part = parts[Math.min(parts.length - 1, Math.max(0, Math.round(at)))];
  if (!part) return { where: name, values: [{ label: "total", text: `${threeFigures(total)} ${unit.sign}` }] };
  return {
    where: ledgerNames[part.entry],
    values: [
      { label: name, text: `${threeFigures(part.value)} ${unit.sign}` },
      { label: "share", text: `${Math.round((100 * part.value) / total)} %` },
    ],
  };
}
