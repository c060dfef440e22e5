import { greys, highlight, ink, inkSoft, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawBox, drawDots, drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing, Reading } from "./parts/figure/chart.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, xPixel } from "./parts/figure/frame.ts";
import { massStacks, type PlacedItem, type Stack } from "./parts/figure/massStacks.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";

export interface SideViewInput {
  readonly wheelbase_m: number;
  readonly wheelRadius_m: number;
  readonly items: readonly PlacedItem[];
  /** Loads of the axles with all of it aboard. */
  readonly front_kg: number;
  readonly rear_kg: number;
  readonly gravityPlace_m: number;
}

const kinds: Readonly<Record<PlacedItem["kind"], string>> = {
  box: "pack",
  in: "goes in",
  load: "aboard",
  out: "comes out",
};
/** Height of the tallest column of masses; the greatest mass that stands at one place has it. */
const TALLEST_PX = 150;
const BAR_PX = 20;
const WHEEL_PX = 24;
const LEFT_PX = 18;
const TOP_PX = 40;
/** Free beyond the outermost place. */
const MARGIN_m = 0.2;
/** What a side view is drawn with: where things are on the picture, and how masses and places read in the reader's units. */
interface Sheet {
  readonly svg: SVGSVGElement;
  readonly frame: Frame;
  /** Pixel of the line that masses stand on. */
  readonly base: number;
  /** Pixels to a kilogram. */
  readonly px: number;
  readonly at: (place_m: number) => number;
  readonly kg: (mass_kg: number) => string;
}

/**
 * The car from the side: wheels where they are, and every mass as a column at its place, its height in proportion to the mass, what
 * comes out hanging below the line. Masses at one place stand on one another.
 */
export function sideView(input: SideViewInput, drawing: Drawing): Chart {
  const { wheelbase_m, wheelRadius_m, items } = input;
  const units = drawing.units ?? METRIC;
  const along = (place_m: number) => inUnit(units.height, place_m);
  const label = `Behind the front axle (${units.height.sign})`;
  const stacks = massStacks(items);
  const px =
    TALLEST_PX / Math.max(1, ...stacks.map(({ above_kg }) => above_kg), ...stacks.map(({ below_kg }) => below_kg));
  const places = [-wheelRadius_m, wheelbase_m + wheelRadius_m, ...items.map(({ place_m }) => place_m)];
  const { frame, base } = frameOf(stacks, places.map(along), along(MARGIN_m), px, drawing.width_px);
  const svg = drawFrame(drawing, frame, [bottomAxis({ label, ticks: ticksFor(frame.right - frame.left) })]);
  const sheet: Sheet = {
    svg,
    frame,
    base,
    px,
    at: (place_m) => xPixel(frame, along(place_m)),
    kg: (mass_kg) => `${threeFigures(inUnit(units.mass, mass_kg))} ${units.mass.sign}`,
  };
  drawLine(svg, [frame.left, base], [frame.right, base], 1.4);
  const wheel_px = drawWheels(sheet, input);
  for (const stack of stacks) drawStack(sheet, stack);
  const gravity_px = sheet.at(input.gravityPlace_m);
  drawLine(svg, [gravity_px, base - 6], [gravity_px, base + 6], 3);
  writeAxleLoads(sheet, input, wheel_px);
  writeWords(svg, {
    x: frame.left,
    y: 14,
    lines: ["coloured: pack; dark: goes in; lighter: aboard; outlined: out; | centre of gravity"],
    fill: inkSoft,
    isItalic: true,
    fontSize_px: 12,
  });
  const metres = (place_m: number) => `${threeFigures(along(place_m))} ${units.height.sign}`;
  const alt = altOf(input, sheet.kg, metres);
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "item", label: "Item" },
        { name: "kind", label: "In or out" },
        { name: `mass_${units.mass.suffix}`, label: `Mass (${units.mass.sign})` },
        { name: `place_${units.height.suffix}`, label },
      ],
      rows: rowsOf(input).map(([item, kind, mass_kg, place_m]) => [
        item,
        kind,
        inUnit(units.mass, mass_kg),
        along(place_m),
      ]),
    },
    position: {
      quantity: "place_m",
      first: Math.min(...places),
      last: Math.max(...places),
      step: 0.1,
      isVertical: false,
      from_px: frame.top,
      to_px: frame.bottom,
      toPixel: sheet.at,
      fromPixel: (pixel) => {
        const [first, last] = frame.x;
        return (first + ((pixel - frame.left) / (frame.right - frame.left)) * (last - first)) / along(1);
      },
    },
    read: (place_m) => readAt(input, place_m, sheet.kg, metres),
  };
}

/** The picture's frame, as high as its columns want, and the line that they stand on. `places` and `margin` are in the reader's unit. */
function frameOf(
  stacks: readonly Stack[],
  places: readonly number[],
  margin: number,
  px: number,
  width_px: number,
): { readonly frame: Frame; readonly base: number } {
  const under_kg = Math.max(0, ...stacks.map(({ below_kg }) => below_kg));
  const base = TOP_PX + Math.max(1, ...stacks.map(({ above_kg }) => above_kg)) * px;
  const bottom = base + under_kg * px + (under_kg > 0 ? 26 : 10) + 2 * WHEEL_PX;
  const frame: Frame = {
    left: LEFT_PX,
    right: width_px - LEFT_PX,
    top: TOP_PX,
    bottom,
    height: Math.ceil(bottom + BELOW_PX),
    x: [Math.min(...places) - margin, Math.max(...places) + margin],
    y: [bottom - TOP_PX, 0],
  };
  return { frame, base };
}

/** Draws both wheels and returns how large they came out. */
function drawWheels({ svg, frame, at }: Sheet, { wheelRadius_m, wheelbase_m }: SideViewInput): number {
  const wheel_px = Math.min(WHEEL_PX, Math.abs(at(wheelRadius_m) - at(0)));
  const wheels = [0, wheelbase_m].map((place_m) => ({ x: at(place_m), y: frame.bottom - wheel_px - 2, r: wheel_px }));
  drawDots(svg, wheels, { fill: "none", stroke: inkSoft, "stroke-width": 2 });
  return wheel_px;
}

/** Draws one column, what comes out below the line, with the mass of each above and below. */
function drawStack(
  { svg, frame, base, px, at, kg }: Sheet,
  { place_m, above, below, above_kg, below_kg }: Stack,
): void {
  let top = base;
  for (const item of above) {
    top -= item.mass_kg * px;
    drawBox(svg, at(place_m) - BAR_PX / 2, top, BAR_PX, item.mass_kg * px - 1, inkOf(item.kind));
  }
  let down = base + 1;
  for (const item of below) {
    const height = item.mass_kg * px;
    outline(svg, at(place_m) - BAR_PX / 2, down, BAR_PX, height);
    down += height;
  }
  const half = Math.max(...[above_kg, below_kg].map((mass_kg) => textWidth_px(kg(mass_kg), 12))) / 2;
  const x = Math.min(frame.right - half, Math.max(frame.left + half, at(place_m)));
  const words = { x, anchor: "middle", isHaloed: true, fontSize_px: 12 } as const;
  if (above.length > 0) writeWords(svg, { ...words, y: top - 10, lines: [kg(above_kg)] });
  if (below.length > 0) writeWords(svg, { ...words, y: down + 10, lines: [kg(below_kg)], fill: inkSoft });
}

function writeAxleLoads({ svg, frame, at, kg }: Sheet, input: SideViewInput, wheel_px: number): void {
  const loads = [
    [0, input.front_kg],
    [input.wheelbase_m, input.rear_kg],
  ] as const;
  for (const [place_m, load_kg] of loads)
    writeWords(svg, {
      x: at(place_m),
      y: frame.bottom - wheel_px - 2,
      lines: [kg(load_kg)],
      anchor: "middle",
      isHaloed: true,
    });
}

type InWords = (value: number) => string;

function altOf({ items, front_kg, rear_kg, gravityPlace_m }: SideViewInput, kg: InWords, metres: InWords): string {
  const named = items.map(
    ({ name, mass_kg, place_m, kind }) => `${name} (${kinds[kind]}) ${kg(mass_kg)} at ${metres(place_m)}`,
  );
  return `The car from the side, front to the left: ${named.join("; ")}. With all aboard the front axle carries ${kg(front_kg)}, the rear axle ${kg(rear_kg)}; the centre of gravity is ${metres(gravityPlace_m)} behind the front axle.`;
}

/** Every mass, what the axles carry and where the centre of gravity is: name, kind, mass, place. */
function rowsOf({ items, front_kg, rear_kg, wheelbase_m, gravityPlace_m }: SideViewInput) {
  return [
    ...items.map(({ name, mass_kg, place_m, kind }) => [name, kinds[kind], mass_kg, place_m] as const),
    ["front axle", "carries", front_kg, 0] as const,
    ["rear axle", "carries", rear_kg, wheelbase_m] as const,
    ["centre of gravity", "all", front_kg + rear_kg, gravityPlace_m] as const,
  ];
}

/** What sits at the place nearest to one, or what an axle there carries. */
function readAt(input: SideViewInput, place_m: number, kg: InWords, metres: InWords): Reading {
  const all = [
    ...input.items.map((item) => ({ place_m: item.place_m, label: item.name, text: kg(item.mass_kg) })),
    { place_m: 0, label: "front axle", text: kg(input.front_kg) },
    { place_m: input.wheelbase_m, label: "rear axle", text: kg(input.rear_kg) },
  ];
  const away = (each: { place_m: number }) => Math.abs(each.place_m - place_m);
  const nearest = all.reduce((a, b) => (away(b) < away(a) ? b : a));
  const values = all.filter((each) => Math.abs(each.place_m - nearest.place_m) < 0.05);
  return { where: metres(nearest.place_m), values: values.map(({ label, text }) => ({ label, text })) };
}

function inkOf(kind: PlacedItem["kind"]): string {
  if (kind === "box") return highlight;
  return kind === "in" ? (greys[0] ?? ink) : (greys.at(-1) ?? inkSoft);
}

function outline(svg: SVGSVGElement, x: number, y: number, width: number, height: number): void {
  drawBox(svg, x, y, width, height, paper);
  const corners = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
    [x, y],
  ] as const;
  drawPath(svg, corners, inkSoft, 1, "3 2");
}

function drawLine(
  svg: SVGSVGElement,
  from: readonly [number, number],
  to: readonly [number, number],
  width_px: number,
): void {
  drawPath(svg, [from, to], ink, width_px);
}
