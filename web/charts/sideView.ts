import { greys, highlight, ink, inkSoft, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawBox, drawDots, drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing, Reading } from "./parts/figure/chart.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";

/** A mass in or out of the car, by where it sits behind the centre of the front axle. */
export interface PlacedItem {
  readonly name: string;
  readonly mass_kg: number;
  readonly place_m: number;
  readonly kind: "out" | "in" | "box" | "load";
}

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
/** Masses nearer to one another than this stand on top of each other. */
const STACKED_m = 0.25;

/**
 * The car from the side: wheels where they are, and every mass as a column at its place, its height in proportion to the mass, what
 * comes out hanging below the line. Masses at one place stand on one another.
 */
export function sideView(input: SideViewInput, drawing: Drawing): Chart {
  const { wheelbase_m, wheelRadius_m, items, front_kg, rear_kg, gravityPlace_m } = input;
  const units = drawing.units ?? METRIC;
  const kg = (mass_kg: number) => `${threeFigures(inUnit(units.mass, mass_kg))} ${units.mass.sign}`;
  const along = (place_m: number) => inUnit(units.height, place_m);
  const places = [-wheelRadius_m, wheelbase_m + wheelRadius_m, ...items.map(({ place_m }) => place_m)];
  const margin_m = 0.2;
  const stacks = stacked(items);
  const most_kg = Math.max(1, ...stacks.map(({ above_kg }) => above_kg));
  const under_kg = Math.max(0, ...stacks.map(({ below_kg }) => below_kg));
  const px = TALLEST_PX / Math.max(most_kg, under_kg);
  const top = 40;
  const base = top + most_kg * px;
  const bottom = base + under_kg * px + (under_kg > 0 ? 26 : 10) + 2 * WHEEL_PX;
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - LEFT_PX,
    top,
    bottom,
    height: Math.ceil(bottom + BELOW_PX),
    x: [along(Math.min(...places) - margin_m), along(Math.max(...places) + margin_m)],
    y: [bottom - top, 0],
  };
  const at = (place_m: number) => xPixel(frame, along(place_m));
  const label = `Behind the front axle (${units.height.sign})`;
  const svg = drawFrame(drawing, frame, [bottomAxis({ label, ticks: ticksFor(frame.right - frame.left) })]);
  drawPath(
    svg,
    [
      [frame.left, base],
      [frame.right, base],
    ],
    ink,
    1.4,
  );
  const wheel_px = Math.min(WHEEL_PX, Math.abs(at(wheelRadius_m) - at(0)));
  drawDots(
    svg,
    [0, wheelbase_m].map((place_m) => ({ x: at(place_m), y: bottom - wheel_px - 2, r: wheel_px })),
    {
      fill: "none",
      stroke: inkSoft,
      "stroke-width": 2,
    },
  );
  for (const { place_m, above, below } of stacks) {
    let y = base;
    for (const item of above) {
      y -= item.mass_kg * px;
      drawBox(svg, at(place_m) - BAR_PX / 2, y, BAR_PX, item.mass_kg * px - 1, inkOf(item.kind));
    }
    let down = base + 1;
    for (const item of below) {
      const height = item.mass_kg * px;
      outline(svg, at(place_m) - BAR_PX / 2, down, BAR_PX, height);
      down += height;
    }
    const letters = above.length + below.length;
    if (letters === 0) continue;
    const words = stackWords(above, below, kg);
    const half = Math.max(...words.map((line) => textWidth_px(line, 12))) / 2;
    const x = Math.min(frame.right - half, Math.max(frame.left + half, at(place_m)));
    if (above.length > 0)
      writeWords(svg, { x, y: y - 10, lines: [words[0]], anchor: "middle", isHaloed: true, fontSize_px: 12 });
    if (below.length > 0)
      writeWords(svg, {
        x,
        y: down + 10,
        lines: [words[1]],
        anchor: "middle",
        fill: inkSoft,
        isHaloed: true,
        fontSize_px: 12,
      });
  }
  drawPath(
    svg,
    [
      [at(gravityPlace_m), base - 6],
      [at(gravityPlace_m), base + 6],
    ],
    ink,
    3,
  );
  for (const [place_m, load_kg] of [
    [0, front_kg],
    [wheelbase_m, rear_kg],
  ] as const)
    writeWords(svg, {
      x: at(place_m),
      y: bottom - wheel_px - 2,
      lines: [kg(load_kg)],
      anchor: "middle",
      isHaloed: true,
    });
  writeWords(svg, {
    x: frame.left,
    y: 14,
    lines: ["coloured: pack; dark: goes in; lighter: aboard; outlined: out; | centre of gravity"],
    fill: inkSoft,
    isItalic: true,
    fontSize_px: 12,
  });
  const named = items.map(
    ({ name, mass_kg, place_m, kind }) => `${name} (${kinds[kind]}) ${kg(mass_kg)} at ${metres(place_m)}`,
  );
  const alt = `The car from the side, front to the left: ${named.join("; ")}. With all aboard the front axle carries ${kg(front_kg)}, the rear axle ${kg(rear_kg)}; the centre of gravity is ${metres(gravityPlace_m)} behind the front axle.`;
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
      rows: [
        ...items.map(({ name, mass_kg, place_m, kind }) => [
          name,
          kinds[kind],
          inUnit(units.mass, mass_kg),
          along(place_m),
        ]),
        ["front axle", "carries", inUnit(units.mass, front_kg), 0],
        ["rear axle", "carries", inUnit(units.mass, rear_kg), along(wheelbase_m)],
        ["centre of gravity", "all", inUnit(units.mass, front_kg + rear_kg), along(gravityPlace_m)],
      ],
    },
    position: {
      quantity: "place_m",
      first: Math.min(...places),
      last: Math.max(...places),
      step: 0.1,
      isVertical: false,
      from_px: frame.top,
      to_px: frame.bottom,
      toPixel: at,
      fromPixel: (pixel) => {
        const [first, last] = frame.x;
        return (first + ((pixel - frame.left) / (frame.right - frame.left)) * (last - first)) / along(1);
      },
    },
    read: readAt,
  };

  /** What sits at the place nearest to one, or what an axle there carries. */
  function readAt(place_m: number): Reading {
    const all = [
      ...items.map((item) => ({ place_m: item.place_m, label: item.name, text: kg(item.mass_kg) })),
      { place_m: 0, label: "front axle", text: kg(front_kg) },
      { place_m: wheelbase_m, label: "rear axle", text: kg(rear_kg) },
    ];
    const away = (each: { place_m: number }) => Math.abs(each.place_m - place_m);
    const nearest = all.reduce((a, b) => (away(b) < away(a) ? b : a));
    const values = all.filter((each) => Math.abs(each.place_m - nearest.place_m) < 0.05);
    return { where: metres(nearest.place_m), values: values.map(({ label: name, text }) => ({ label: name, text })) };
  }

  function metres(place_m: number): string {
    return `${threeFigures(along(place_m))} ${units.height.sign}`;
  }
}

interface Stack {
  readonly place_m: number;
  readonly above: PlacedItem[];
  readonly below: PlacedItem[];
  above_kg: number;
  below_kg: number;
}

/** Items that sit at about one place, in one column there. */
function stacked(items: readonly PlacedItem[]): Stack[] {
  const stacks: Stack[] = [];
  for (const item of items.toSorted((a, b) => a.place_m - b.place_m)) {
    const last = stacks.at(-1);
    const isNear = last !== undefined && item.place_m - last.place_m < STACKED_m;
    const stack = isNear ? last : { place_m: item.place_m, above: [], below: [], above_kg: 0, below_kg: 0 };
    if (!isNear) stacks.push(stack);
    if (item.kind === "out") {
      stack.below.push(item);
      stack.below_kg += item.mass_kg;
    } else {
      stack.above.push(item);
      stack.above_kg += item.mass_kg;
    }
  }
  return stacks;
}

/** What a column is of: its only item, or how many, with their mass. */
function stackWords(above: readonly PlacedItem[], below: readonly PlacedItem[], kg: (mass_kg: number) => string) {
  const words = (list: readonly PlacedItem[]) => kg(list.reduce((sum, { mass_kg }) => sum + mass_kg, 0));
  return [words(above), words(below)] as const;
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
