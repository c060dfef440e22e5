import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { inUnits } from "../../../shared/quantity/writeQuantity.ts";
import type { YearReport } from "../../../sim/index.ts";

/** One driving day's evening, in the reader's unit. */
export interface Evening {
  readonly left: number;
  readonly isWinter: boolean;
  readonly isLongest: boolean;
}

/** The driving days of a pack: new, and at ten years. */
export interface Evenings {
  readonly new: readonly Evening[];
  readonly old: readonly Evening[];
}

/** The evenings of every pack by its name; days on which the car stands are left out. */
export function eveningsByPack({ days, packs }: YearReport, units: UnitHabit): ReadonlyMap<string, Evenings> {
  const { number: perKm } = inUnits("distance", 1, units);
  const of = (name: string, isOld: boolean) => {
    const pack = packs.find((each) => each.name === name && each.age_years > 0 === isOld);
    return days.flatMap(({ kind, isWinter }, day): Evening[] =>
      kind === "off" || !pack ? [] : [{ left: pack.evenings_km[day] * perKm, isWinter, isLongest: kind === "longest" }],
    );
  };
  return new Map(packs.map(({ name }) => [name, { new: of(name, false), old: of(name, true) }]));
}

/** Where a dot stands: along the picture, and its place in its pile from the row's line on. */
export interface Dot {
  readonly x_px: number;
  readonly place: number;
  readonly isWinter: boolean;
}

export interface Piles {
  /** From dot to dot; dots as wide as that stand in columns as wide. */
  readonly pitch_px: number;
  readonly dots: readonly Dot[];
  readonly tallest: number;
}

const LARGEST_px = 5;
const FINER_px = 0.25;
/** Below this a dot is no dot: the pile is drawn as an outline. */
export const LEAST_px = 2;

/**
 * Usual days as dots in piles, those of winter next to the line; the pitch from the tallest pile, so that every pile has room in
 * `height_px` and no day is moved from its place. With `leftEdge_px`, from the picture's left edge on.
 */
export function pilesOf(
  evenings: readonly Evening[],
  toPixel: (left: number) => number,
  height_px: number,
  leftEdge_px: number,
): Piles {
  const days = evenings
    .filter(({ isLongest }) => !isLongest)
    .map(({ left, isWinter }) => ({ x_px: toPixel(left), isWinter }))
    .filter(({ x_px }) => x_px >= leftEdge_px)
    .sort((a, b) => Number(b.isWinter) - Number(a.isWinter));
  let pitch_px = LARGEST_px;
  let tallest = tallestOf(days, pitch_px);
  while (tallest * pitch_px > height_px && pitch_px > LEAST_px) {
    pitch_px -= FINER_px;
    tallest = tallestOf(days, pitch_px);
  }
  const counts = new Map<number, number>();
  const dots = days.map(({ x_px, isWinter }): Dot => {
    const column = Math.floor(x_px / pitch_px);
    const place = counts.get(column) ?? 0;
    counts.set(column, place + 1);
    return { x_px: (column + 0.5) * pitch_px, place, isWinter };
  });
  return { pitch_px, dots, tallest };
}

/** How many days the fullest column has. */
function tallestOf(days: readonly { readonly x_px: number }[], pitch_px: number): number {
  const counts = new Map<number, number>();
  let tallest = 0;
  for (const { x_px } of days) {
    const column = Math.floor(x_px / pitch_px);
    const count = (counts.get(column) ?? 0) + 1;
    counts.set(column, count);
    tallest = Math.max(tallest, count);
  }
  return tallest;
}
