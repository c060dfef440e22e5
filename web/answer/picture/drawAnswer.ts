import { messageIn, whole } from "../../../shared/quantity/message.ts";
import { inUnits, type UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { type Answer, type Band, type ConditionId, conditionNames, largestWords } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type LeftAxis, leftAxis } from "./axis.ts";
import { drawEvenings } from "./drawEvenings.ts";
import type { Evenings } from "./eveningDots.ts";
import { inReaders, type Mark, marksOf } from "./marks.ts";
import { type Draw, penOf } from "./svg.ts";

/** What the picture is drawn on and from. Nothing of the page is in it: the client sheet draws it too. */
export interface AnswerDrawing {
  readonly document: Document;
  readonly width_px: number;
  readonly rowHeight_px: number;
  readonly units: UnitHabit;
  /** Packs from the top down, and the one whose band is drawn in full. */
  readonly rows: readonly number[];
  readonly chosen: number | undefined;
  /** Every evening of the year by pack's name: dots in place of the marks. */
  readonly evenings?: ReadonlyMap<string, Evenings>;
  /** What was left by pack in a pinned state, by the pack's name. */
  readonly pinned?: ReadonlyMap<string, Partial<Record<ConditionId, Band>>>;
  readonly pinnedWords?: string;
}

/** The picture, and where things stand in it. */
export interface AnswerPicture {
  readonly svg: SVGSVGElement;
  readonly axis: LeftAxis;
  /** Pixels of a number of kilometres or miles left, and back. */
  readonly toPixel: (left: number) => number;
  readonly fromPixel: (x_px: number) => number;
  readonly top_px: number;
  readonly bottom_px: number;
  /** The row at a height, as a place in `rows`. */
  readonly rowAt: (y_px: number) => number;
}

/** Below this width the names stand over their rows. */
const NARROW_px = 600;
const HEAD_px = 26;
const FOOT_px = 26;
const TEXT_px = 14;
/** Below this height of a row its three lines of words are set closer. */
const LOW_ROW_px = 60;
/** How far below its row's line a mark stands, in heights of the row: words beside the marks are as far apart as lines of text in the lowest. */
const MARK_ratio: Readonly<Record<ConditionId, number>> = { new: -0.34, winter: -0.05, tenYearsWinter: 0.25 };
/** Taken as the width of a letter where room for words is looked for. */
const LETTER_px = 7;
/** Share of a row that lies below its line. */
const BELOW_ratio = 0.46;

/**
 * Every pack's evening on coming home: a row a pack, along it what is left of the day. New above the row's line, winter next to it, at
 * ten years in winter below: where each day's dot will stand. Each mark is a band, with the value as taken on it.
 */
export function drawAnswer(answer: Answer, drawing: AnswerDrawing): AnswerPicture {
  const { width_px, rowHeight_px, units, rows, document } = drawing;
  const pen = penOf(document);
  const isNarrow = width_px < NARROW_px;
  const left_px = isNarrow ? 2 : 138;
  const right_px = width_px - (isNarrow ? 10 : 14);
  const axis = leftAxis(
    rows.flatMap((i) => [
      ...marksOf(answer.packs[i], units).flatMap(({ band }) => [band.low, band.high]),
      ...extremesOf(drawing.evenings?.get(answer.packs[i].name)),
    ]),
    isNarrow ? 5 : 9,
  );
  const toPixel = (left: number) => left_px + ((left - axis.from) / (axis.to - axis.from)) * (right_px - left_px);
  const fromPixel = (x_px: number) => axis.from + ((x_px - left_px) / (right_px - left_px)) * (axis.to - axis.from);
  const bottom_px = HEAD_px + rows.length * rowHeight_px;
  const frame = { axis, toPixel, fromPixel, top_px: HEAD_px, bottom_px };
  const svg = pen("svg", {
    class: "answer-picture",
    viewBox: `0 0 ${width_px} ${bottom_px + FOOT_px}`,
    width: width_px,
    height: bottom_px + FOOT_px,
    role: "img",
    "aria-label": altOf(answer, drawing),
    "font-family": look.face,
    "font-size": TEXT_px,
    fill: look.ink,
  }) as SVGSVGElement;
  svg.append(...ground(pen, frame, { left_px, right_px, isNarrow, units }));
  // Before the rows, so that it runs through no word of theirs.
  const home_px = toPixel(0);
  svg.append(
    pen("line", {
      class: "home",
      x1: home_px,
      x2: home_px,
      y1: 2,
      y2: bottom_px + 4,
      stroke: look.ink,
      "stroke-width": 2,
    }),
  );
  rows.forEach((index, place) => {
    svg.append(row(pen, answer, drawing, { ...frame, index, place, left_px, right_px, isNarrow }));
  });
  const rowAt = (y_px: number) => Math.max(0, Math.min(rows.length - 1, Math.floor((y_px - HEAD_px) / rowHeight_px)));
  return { svg, ...frame, rowAt };
}

type Frame = Pick<AnswerPicture, "axis" | "toPixel" | "top_px" | "bottom_px">;

interface Sides {
  readonly left_px: number;
  readonly right_px: number;
  readonly isNarrow: boolean;
}

/** Tint where it would not get home, lines at round distances, and what they mean. */
function ground(
  pen: Draw,
  { axis, toPixel, top_px, bottom_px }: Frame,
  { left_px, right_px, isNarrow, units }: Sides & { readonly units: UnitHabit },
): SVGElement[] {
  const home_px = toPixel(0);
  const unit = units === "metric" ? "km" : "miles";
  const out: SVGElement[] = [
    pen("rect", {
      class: "tint",
      x: left_px,
      y: top_px,
      width: home_px - left_px,
      height: bottom_px - top_px,
      fill: look.tint,
    }),
  ];
  for (const tick of axis.ticks) {
    const x_px = toPixel(tick);
    if (tick !== 0) {
      out.push(
        pen("line", {
          class: "grid",
          x1: x_px,
          x2: x_px,
          y1: top_px,
          y2: bottom_px,
          stroke: look.rule,
          "stroke-width": 1,
        }),
      );
    }
    const words = tick === 0 ? "home" : tick < 0 ? `${-tick} short` : `${tick}`;
    const isCut = x_px < left_px + 22 || x_px > right_px - 8;
    const isBesideHome = tick < 0 && home_px - x_px < 56;
    if (tick === 0 || !(isCut || isBesideHome)) {
      out.push(
        pen(
          "text",
          { x: x_px, y: bottom_px + 18, "text-anchor": "middle", ...(tick === 0 && { "font-weight": 700 }) },
          words,
        ),
      );
    }
  }
  const before = isNarrow ? "not home" : "would not get home";
  if (home_px - left_px > (isNarrow ? 66 : 134) || !isNarrow) {
    out.push(pen("text", { x: home_px - 8, y: 17, "text-anchor": "end" }, before));
  }
  const after = isNarrow ? `home, with … ${unit} left` : `home, with this many ${unit} left`;
  out.push(pen("text", { x: home_px + 8, y: 17 }, after));
  return out;
}

interface RowFrame extends Frame, Sides {
  readonly index: number;
  readonly place: number;
}

function row(pen: Draw, answer: Answer, drawing: AnswerDrawing, frame: RowFrame): SVGElement {
  const { index, place, left_px, right_px, isNarrow, toPixel, top_px } = frame;
  const { rowHeight_px, units, chosen } = drawing;
  const pack = answer.packs[index];
  const isChosen = index === chosen;
  const y0 = top_px + place * rowHeight_px;
  const strip_px = isNarrow ? 20 : 0;
  const space_px = rowHeight_px - strip_px;
  const middle_px = y0 + strip_px + (1 - BELOW_ratio) * space_px;
  const group = pen("g", { class: isChosen ? "row is-chosen" : "row", "data-row": place });
  const edge = (y_px: number) =>
    pen("line", {
      class: isChosen ? "edge-chosen" : "edge",
      x1: 0,
      x2: right_px + 8,
      y1: y_px,
      y2: y_px,
      stroke: isChosen ? look.accent : look.rule,
      "stroke-width": isChosen ? 2 : 1,
    });
  const isBelowChosen = place > 0 && drawing.rows[place - 1] === chosen;
  if (isChosen || (place > 0 && !isBelowChosen)) group.append(edge(y0));
  if (isChosen) group.append(edge(y0 + rowHeight_px));
  group.append(...names(pen, answer, index, { y0, isNarrow, isChosen, rowHeight_px, right_px, units }));
  if (pack.stop || !pack.left) {
    const words = pack.stop ? messageIn(pack.stop.sentence, units) : "The car does not drive this road with it.";
    group.append(
      pen("text", { x: Math.max(left_px, toPixel(0)) + 10, y: middle_px + 5, "font-style": "italic" }, words),
    );
    return group;
  }
  group.append(
    pen("line", { class: "middle", x1: left_px, x2: right_px, y1: middle_px, y2: middle_px, stroke: look.pinned }),
  );
  const evenings = drawing.evenings?.get(pack.name);
  if (evenings) {
    group.append(...yearRow(pen, answer, evenings, drawing, { middle_px, space_px, isChosen }, frame));
    group.append(...pinnedSpans(pen, pack.name, drawing, { y0: y0 + strip_px, space_px, isChosen }, frame));
    return group;
  }
  for (const mark of marksOf(pack, units)) {
    const y_px = middle_px + MARK_ratio[mark.condition] * space_px;
    group.append(markShape(pen, mark, y_px, toPixel, isChosen, left_px));
    if (isChosen) group.append(markLabel(pen, mark, y_px, frame));
  }
  group.append(...pinnedSpans(pen, pack.name, drawing, { y0: y0 + strip_px, space_px, isChosen }, frame));
  group.append(...rings(pen, answer, index, drawing, { middle_px, space_px, isChosen }, frame));
  const waste = answer.largest?.index === index && !isNarrow ? largestWords(answer) : undefined;
  if (waste && !isChosen) group.append(...wasteNote(pen, messageIn(waste, units), y0, space_px, frame, pack, units));
  return group;
}

/** Every evening of a pack as dots; for the chosen one also its band, and the name of its longest day. */
function yearRow(
  pen: Draw,
  answer: Answer,
  evenings: Evenings,
  { units }: AnswerDrawing,
  { middle_px, space_px, isChosen }: RingsAt,
  frame: RowFrame,
): SVGElement[] {
  const { index, left_px, right_px, isNarrow, toPixel } = frame;
  const pack = answer.packs[index];
  const room = { above_px: 0.5 * space_px, below_px: 0.42 * space_px };
  const out = drawEvenings(pen, evenings, { middle_px, ...room, left_px, right_px, toPixel });
  const short = (side: Evenings["new"]) => side.filter(({ left }) => toPixel(left) < left_px).length;
  for (const [count, y_px] of [
    [short(evenings.new), middle_px - 8],
    [short(evenings.old), middle_px + 17],
  ] as const) {
    if (count > 0)
      out.push(
        halo(
          pen,
          { x: left_px + 4, y: y_px, fill: look.inkSoft },
          `‹ ${count === 1 ? "1 day" : `${count} days`}`,
          look.tint,
        ),
      );
  }
  if (!isChosen) {
    const waste = answer.largest?.index === index && !isNarrow ? largestWords(answer) : undefined;
    if (waste) {
      const from_px = toPixel(0) + 10;
      const lines = messageIn(waste, units).split("; ");
      const free_px = toPixel(Math.min(...evenings.new.map(({ left }) => left))) - 10 - from_px;
      if (free_px > 6.6 * Math.max(...lines.map(({ length }) => length)))
        out.push(
          ...lines.map((line, i) =>
            pen("text", { class: "waste", x: from_px, y: middle_px - 22 + 16 * i, fill: look.inkSoft }, line),
          ),
        );
    }
    return out;
  }
  const old = marksOf(pack, units).find(({ condition }) => condition === "tenYearsWinter");
  if (old) {
    const y_px = middle_px + BELOW_ratio * space_px - 11; // its letters stay over the row's edge
    out.push(markShape(pen, old, y_px, toPixel, true, left_px));
    const words = isNarrow ? "winter, ten years" : "usual winter day, ten years";
    const low_px = Math.max(left_px, toPixel(old.band.low));
    const isLeft = low_px - 10 - LETTER_px * words.length > left_px;
    const x = isLeft ? low_px - 10 : Math.min(right_px - LETTER_px * words.length, toPixel(old.band.high) + 10);
    out.push(
      halo(
        pen,
        { class: "mark-label", x, y: y_px + 5, "text-anchor": isLeft ? "end" : "start", "font-weight": 600 },
        words,
      ),
    );
  }
  const longest = evenings.new.filter(({ isLongest }) => isLongest).map(({ left }) => left);
  if (longest.length > 0 && answer.longestDay_km !== undefined && !isNarrow) {
    const day = inUnits("distance", answer.longestDay_km, units);
    const words = `longest day, ${Math.round(day.number)} ${day.unit}`;
    const ring_px = toPixel(Math.min(...longest));
    const width_px = LETTER_px * words.length;
    const isLeft = ring_px - 12 - width_px > left_px;
    const x = isLeft ? ring_px - 12 : Math.max(left_px + 4, ring_px) + 12;
    out.push(
      halo(
        pen,
        { x, y: middle_px - 0.3 * space_px, "text-anchor": isLeft ? "end" : "start", "font-style": "italic" },
        words,
      ),
    );
  }
  return out;
}

/** The least and the most that is left of a pack's evenings. */
function extremesOf(evenings: Evenings | undefined): number[] {
  if (!evenings) return [];
  const all = [...evenings.new, ...evenings.old].map(({ left }) => left);
  return all.length === 0 ? [] : [Math.min(...all), Math.max(...all)];
}

interface NamesAt {
  readonly y0: number;
  readonly isNarrow: boolean;
  readonly isChosen: boolean;
  readonly rowHeight_px: number;
  readonly right_px: number;
  readonly units: UnitHabit;
}

/** Name, weight and verdict: beside the row, or on a strip over it. */
function names(pen: Draw, { packs }: Answer, index: number, at: NamesAt): SVGElement[] {
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

/** A band with its ends, and on it the value: a ring when new, a dot in winter, a square at ten years in winter. */
function markShape(
  pen: Draw,
  { condition, band }: Mark,
  y_px: number,
  toPixel: (left: number) => number,
  isChosen: boolean,
  left_px: number,
): SVGElement {
  const isNew = condition === "new";
  const colour = isNew ? look.dayOther : look.dayWinter;
  const isBlack = isChosen && condition === "tenYearsWinter";
  const stroke = isBlack ? look.ink : colour;
  const group = pen("g", { class: `mark mark-${condition}${isBlack ? " is-band" : ""}`, stroke, fill: stroke });
  const [low, high, value] = [band.low, band.high, band.value].map((left) => Math.max(left_px, toPixel(left)));
  if (high <= left_px) {
    if (isChosen) return group; // its words say where it is
    const words = `‹ ${Math.ceil(-band.value)} short`;
    group.append(halo(pen, { x: left_px + 4, y: y_px + 5, fill: look.inkSoft }, words, look.tint));
    return group;
  }
  group.append(pen("line", { x1: low, x2: high, y1: y_px, y2: y_px, "stroke-width": isBlack ? 4 : 3 }));
  for (const end of [low, high]) {
    group.append(pen("line", { x1: end, x2: end, y1: y_px - 5, y2: y_px + 5, "stroke-width": isBlack ? 3 : 2 }));
  }
  if (isNew) group.append(pen("circle", { cx: value, cy: y_px, r: 5, fill: look.paper, "stroke-width": 2.5 }));
  else if (condition === "winter") group.append(pen("circle", { cx: value, cy: y_px, r: 5, stroke: "none" }));
  else group.append(pen("rect", { x: value - 5, y: y_px - 5, width: 10, height: 10, stroke: "none" }));
  return group;
}

/** Which mark it is, beside it on the side that has room. */
function markLabel(pen: Draw, mark: Mark, y_px: number, frame: RowFrame): SVGElement {
  const { words, from_px, to_px, isRight } = labelPlace(mark, frame);
  const attributes = {
    class: "mark-label",
    y: y_px + 5,
    ...(mark.condition === "tenYearsWinter" && { "font-weight": 600 }),
    ...(isRight ? { x: from_px, "text-anchor": "start" } : { x: to_px, "text-anchor": "end" }),
  };
  return halo(pen, attributes, words);
}

/** The words beside a mark, and the pixels that they take at most. */
function labelPlace(mark: Mark, { toPixel, right_px, left_px, isNarrow }: RowFrame) {
  const name = conditionNames[mark.condition];
  const isBeyond = toPixel(mark.band.high) <= left_px;
  const full = `${name}: ${mark.words}`;
  const words = isBeyond ? `‹ ${full}` : isNarrow ? name : full;
  const width_px = LETTER_px * words.length;
  const end_px = isBeyond ? left_px + 4 : toPixel(mark.band.high) + 10;
  const isRight = end_px + width_px < right_px;
  const to_px = isRight ? end_px + width_px : Math.max(left_px + width_px, toPixel(mark.band.low) - 10);
  return { words, from_px: to_px - width_px, to_px, isRight };
}

/** Text on a ground of its own, so that lines do not run through it. */
function halo(
  pen: Draw,
  attributes: Readonly<Record<string, string | number>>,
  words: string,
  ground = look.paper,
): SVGElement {
  return pen(
    "text",
    { ...attributes, stroke: ground, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke" },
    words,
  );
}

interface SpansAt {
  readonly y0: number;
  readonly space_px: number;
  readonly isChosen: boolean;
}

/** What was pinned: a thin grey span at the row's top for new, at its bottom for ten years in winter. */
function pinnedSpans(
  pen: Draw,
  name: string,
  { pinned, pinnedWords, units }: AnswerDrawing,
  { y0, space_px, isChosen }: SpansAt,
  { toPixel, left_px, right_px }: RowFrame,
): SVGElement[] {
  const before = pinned?.get(name);
  if (!before) return [];
  const inside = (left: number) => Math.max(left_px, Math.min(right_px, toPixel(left)));
  const spans = (["new", "tenYearsWinter"] as const).flatMap((condition) => {
    const band = before[condition];
    if (!band) return [];
    const { low, high, value } = inReaders(band, units);
    const y_px = condition === "new" ? y0 + 5 : y0 + space_px - 6;
    const group = pen("g", { class: "pinned", stroke: look.pinned, "stroke-width": 1.5 });
    group.append(pen("line", { x1: inside(low), x2: inside(high), y1: y_px, y2: y_px }));
    for (const at of [low, high, value]) {
      group.append(pen("line", { x1: inside(at), x2: inside(at), y1: y_px - 3, y2: y_px + 3 }));
    }
    if (condition === "new" && isChosen && pinnedWords) {
      const x = Math.min(inside(high) + 8, right_px - 6.4 * pinnedWords.length);
      group.append(
        pen("text", { x, y: y_px + 5, stroke: "none", fill: look.inkSoft, "font-style": "italic" }, pinnedWords),
      );
    }
    return [group];
  });
  return spans;
}

interface RingsAt {
  readonly middle_px: number;
  readonly space_px: number;
  readonly isChosen: boolean;
}

/** The longest day, as a ring: new above the line, at ten years in winter below it; an arrow where it lies beyond the picture. */
function rings(
  pen: Draw,
  answer: Answer,
  index: number,
  { units }: AnswerDrawing,
  { middle_px, space_px, isChosen }: RingsAt,
  frame: RowFrame,
): SVGElement[] {
  const { toPixel, left_px, isNarrow } = frame;
  const { longest } = answer.packs[index];
  if (!longest || answer.longestDay_km === undefined || answer.longestDay_km <= answer.day_km) return [];
  const out: SVGElement[] = [];
  for (const condition of ["new", "tenYearsWinter"] as const) {
    const { value } = inReaders(longest[condition], units);
    const x_px = toPixel(value);
    const y_px = middle_px + (condition === "new" ? MARK_ratio.new : 0.36) * space_px;
    if (x_px < left_px + 8) continue;
    const group = pen("g", { class: "longest", stroke: look.ink, fill: "none", "stroke-width": 2 });
    group.append(pen("circle", { cx: x_px, cy: y_px, r: 4.5 }), pen("circle", { cx: x_px, cy: y_px, r: 1 }));
    if (isChosen && condition === "new" && !isNarrow) {
      const day = inUnits("distance", answer.longestDay_km, units);
      const words = [`longest day, ${Math.round(day.number)} ${day.unit}`, "longest day"];
      const beside = freeBeside(x_px, words, marksOf(answer.packs[index], units)[0], frame);
      if (beside) {
        const attributes = { x: beside.x_px, y: y_px + 5, "text-anchor": beside.anchor, "font-style": "italic" };
        group.append(halo(pen, { ...attributes, fill: look.ink }, beside.words));
      }
    }
    out.push(group);
  }
  return out;
}

/** The first of some words that have room at the left or at the right of a ring, where they meet neither the mark at its height nor that mark's words. */
function freeBeside(ring_px: number, words: readonly string[], mark: Mark, frame: RowFrame) {
  const { toPixel, left_px, right_px } = frame;
  const label = labelPlace(mark, frame);
  const taken = [
    [toPixel(mark.band.low) - 8, toPixel(mark.band.high) + 8] as const,
    [label.from_px, label.to_px] as const,
  ];
  const isFree = (from_px: number, to_px: number) =>
    from_px >= left_px && to_px <= right_px && taken.every(([from, to]) => to_px < from || from_px > to);
  for (const each of words) {
    const width_px = LETTER_px * each.length;
    if (isFree(ring_px - 10 - width_px, ring_px - 10)) return { words: each, x_px: ring_px - 10, anchor: "end" };
    if (isFree(ring_px + 10, ring_px + 10 + width_px)) return { words: each, x_px: ring_px + 10, anchor: "start" };
  }
  return undefined;
}

/** What the largest pack carries for nothing, where its row has room: between home and its first mark. */
function wasteNote(
  pen: Draw,
  words: string,
  y0: number,
  space_px: number,
  { toPixel }: RowFrame,
  pack: Answer["packs"][number],
  units: UnitHabit,
): SVGElement[] {
  const [first, second = ""] = words.split("; ");
  const from_px = toPixel(0) + 10;
  const upper = marksOf(pack, units).filter(({ condition }) => condition !== "tenYearsWinter");
  const ring = pack.longest ? [inReaders(pack.longest.new, units).value].filter((value) => value > 0) : [];
  const free_px = toPixel(Math.min(...ring, ...upper.map(({ band }) => band.low))) - 10 - from_px;
  if (free_px < 6.6 * Math.max(first.length, second.length)) return [];
  return [first + (second ? ";" : ""), second].map((line, i) =>
    pen("text", { class: "waste", x: from_px, y: y0 + 0.54 * space_px - 21 + 16 * i, fill: look.inkSoft }, line),
  );
}

/** The picture in words. */
function altOf({ packs }: Answer, { rows, units, evenings }: AnswerDrawing): string {
  const unit = units === "metric" ? "Kilometres" : "Miles";
  const each = rows.map((i) => {
    const { name, verdict, stop } = packs[i];
    if (stop) return `${name}: stop`;
    const year = evenings?.get(name);
    const home = (days: Evenings["new"]) => `${days.filter(({ left }) => left >= 0).length} of ${days.length}`;
    const days = year ? [`new, home on ${home(year.new)} driving days, at ten years on ${home(year.old)}`] : [];
    const marks = marksOf(packs[i], units).map(({ condition, words }) => `${conditionNames[condition]} ${words}`);
    return `${name}: ${[...marks, ...days, ...(verdict ? [verdict] : [])].join(", ")}`;
  });
  return `${unit} left on coming home from a usual day. ${each.join(". ")}.`;
}
