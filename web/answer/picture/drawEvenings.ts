import * as look from "../../look/tokens.ts";
import { LETTER_px } from "./answerDrawing.ts";
import { type Dot, type Evening, type Evenings, LEAST_px, pilesOf } from "./eveningDots.ts";
import { type Draw, halo } from "./svg.ts";

/** Where the evenings of a row stand. */
export interface EveningsAt {
  readonly middle_px: number;
  /** Room above the row's line and below it. */
  readonly above_px: number;
  readonly below_px: number;
  /** Evenings left of these are not drawn: beyond the picture's left edge, or where words count those that are. */
  readonly aboveFrom_px: number;
  readonly belowFrom_px: number;
  readonly right_px: number;
  readonly toPixel: (left: number) => number;
}

/** More longest days than this stand as small rings, so that they have room. */
const FEW_RINGS = 6;
const RING_px = { few: 4.5, many: 2.5 };
/** Where words stand free of the lowest ring. */
const OVER_RINGS_px = 16;

/** The last drawing of each pack's evenings, and where it was for. */
const lastDrawn = new WeakMap<Evenings, { readonly place: string; readonly shapes: readonly SVGElement[] }>();

/**
 * Every evening of a pack's year: above the row's line new, below it at ten years; the longest days as rings. A picture is drawn anew
 * several times a change, with the year of before until the new one is driven: the same evenings in the same place are copied.
 */
export function drawEvenings(pen: Draw, evenings: Evenings, at: EveningsAt): SVGElement[] {
  const { toPixel, ...fixed } = at;
  const place = [...Object.values(fixed), toPixel(0), toPixel(1)].join(" ");
  const last = lastDrawn.get(evenings);
  if (last?.place === place) return last.shapes.map((shape) => shape.cloneNode(true) as SVGElement);
  const above = { middle_px: at.middle_px, height_px: at.above_px, from_px: at.aboveFrom_px, toPixel };
  const below = { ...above, height_px: at.below_px, from_px: at.belowFrom_px };
  const shapes = [
    ...side(pen, evenings.new, -1, above, at.right_px),
    ...side(pen, evenings.old, 1, below, at.right_px),
  ];
  lastDrawn.set(evenings, { place, shapes });
  return shapes.map((shape) => shape.cloneNode(true) as SVGElement);
}

/** One side of a row's line. */
export interface RowSide {
  readonly middle_px: number;
  readonly height_px: number;
  readonly from_px: number;
  readonly toPixel: (left: number) => number;
}

function side(pen: Draw, evenings: readonly Evening[], direction: 1 | -1, on: RowSide, right_px: number): SVGElement[] {
  const { middle_px, height_px } = on;
  const { dots, pitch_px, tallest } = pilesOf(evenings, on.toPixel, height_px - 2, on.from_px);
  const y_px = (place: number) => middle_px + direction * (2 + (place + 0.5) * pitch_px);
  const isOutline = tallest * pitch_px > height_px && pitch_px <= LEAST_px;
  const out: SVGElement[] = isOutline
    ? outline(pen, dots, pitch_px, direction, { middle_px, height_px, tallest, right_px })
    : [true, false].map((isWinter) =>
        // A line of no length with round ends is a dot: one path for hundreds of days.
        pen("path", {
          class: isWinter ? "days is-winter" : "days",
          d: dots
            .filter((dot) => dot.isWinter === isWinter)
            .map(({ x_px, place }) => `M${round(x_px)} ${round(y_px(place))}h0`)
            .join(""),
          stroke: isWinter ? look.dayWinter : look.dayOther,
          "stroke-width": pitch_px - 0.6,
          "stroke-linecap": "round",
          fill: "none",
        }),
      );
  const rings = ringsOf(evenings, direction, on).map(({ x_px, y_px: cy, r }) =>
    pen("circle", { class: "longest", cx: x_px, cy, r, fill: look.paper, stroke: look.ink, "stroke-width": 1.6 }),
  );
  return [...out, ...rings];
}

/** Piles that are too tall for dots, as outlines, winter next to the line; beside it how many days the tallest column has. */
function outline(
  pen: Draw,
  dots: readonly Dot[],
  pitch_px: number,
  direction: 1 | -1,
  {
    middle_px,
    height_px,
    tallest,
    right_px,
  }: { middle_px: number; height_px: number; tallest: number; right_px: number },
): SVGElement[] {
  const columns = (of: readonly Dot[]) => {
    const tops = new Map<number, number>();
    for (const { x_px, place } of of) tops.set(x_px, Math.max(tops.get(x_px) ?? 0, place + 1));
    return [...tops].sort(([a], [b]) => a - b);
  };
  const drawn = (of: readonly Dot[], colour: string, name: string) => {
    const d = columns(of)
      .map(([x_px, count]) => {
        const y_px = middle_px + (direction * count * height_px) / tallest;
        return `M${round(x_px - pitch_px / 2)} ${round(middle_px)}V${round(y_px)}h${pitch_px}V${round(middle_px)}`;
      })
      .join("");
    return pen("path", { class: name, d, fill: colour, stroke: "none" });
  };
  const winter = dots.filter(({ isWinter }) => isWinter);
  const [from_px = 0, to_px = 0] = [columns(dots)[0]?.[0], columns(dots).at(-1)?.[0]];
  const words = `tallest: ${tallest} days`;
  const isRight = to_px + 6 + LETTER_px * words.length < right_px;
  // Beside the piles, and higher than a ring, so that it lies on nothing.
  const label = {
    x: isRight ? to_px + 6 : from_px - 6,
    y: middle_px - OVER_RINGS_px,
    fill: look.inkSoft,
    "text-anchor": isRight ? "start" : "end",
  };
  return [
    drawn(dots, look.dayOther, "days"),
    drawn(winter, look.dayWinter, "days is-winter"),
    ...(direction < 0 ? [halo(pen, label, words)] : []),
  ];
}

/** A ring of a longest day. */
export interface Ring {
  readonly x_px: number;
  readonly y_px: number;
  readonly r: number;
}

/** The longest days, ringed, from `from_px` on. A pile too tall for its row is pressed together. */
export function ringsOf(
  evenings: readonly Evening[],
  direction: 1 | -1,
  { middle_px, height_px, from_px, toPixel }: RowSide,
): Ring[] {
  const longest = evenings.filter(({ isLongest }) => isLongest).sort((a, b) => a.left - b.left);
  const r = longest.length <= FEW_RINGS ? RING_px.few : RING_px.many;
  const piles = new Map<number, number>();
  const placed = longest.flatMap(({ left }) => {
    const x_px = toPixel(left);
    if (x_px < from_px) return [];
    const column = Math.floor(x_px / (2 * r));
    const place = piles.get(column) ?? 0;
    piles.set(column, place + 1);
    return [{ x_px, place }];
  });
  const most = Math.max(0, ...piles.values());
  const pitch_px = Math.min(2 * r + 2, most > 1 ? Math.max(0, height_px - 3 - 2 * r) / (most - 1) : 0);
  return placed.map(({ x_px, place }) => ({ x_px, y_px: middle_px + direction * (3 + r + place * pitch_px), r }));
}

function round(px: number): number {
  return Math.round(100 * px) / 100;
}
