import { drawPath, writeWords } from "../figure/annotate.ts";
import { FONT_PX, LINE_PX } from "../figure/drawPlot.ts";
import { textWidth_px, wrapped } from "../figure/textWidth.ts";

export interface PlacedLabel {
  readonly words: string;
  readonly colour: string;
  /** Where it may stand, best first: the middle of its line, in pixels. */
  readonly places: readonly { readonly x: number; readonly y: number; readonly anchor: "start" | "middle" | "end" }[];
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Writes labels at their lines, each at the first of its places that is inside `space`, clear of those before it and of `taken`; where
 * none is, clear of other labels only; where that fails too, elsewhere in the space, with a line that leads to its first place.
 */
export function placeLabels(
  svg: SVGSVGElement,
  labels: readonly PlacedLabel[],
  space: Box,
  taken: readonly Box[] = [],
): readonly Box[] {
  const boxes: Box[] = [];
  for (const { words: whole, colour, places } of labels) {
    const words = wrapped(whole, space.right - space.left, FONT_PX, 1).join("");
    const width = textWidth_px(words, FONT_PX);
    const boxAt = ({ x, y, anchor }: Place): Box => {
      const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
      return { left, right: left + width, top: y - LINE_PX / 2, bottom: y + LINE_PX / 2 };
    };
    const isApart = (place: Place) =>
      isInside(boxAt(place), space) && !boxes.some((other) => meets(boxAt(place), other));
    const isFree = (place: Place) => isApart(place) && !taken.some((other) => meets(boxAt(place), other));
    const atLine = places.find(isFree) ?? places.find(isApart);
    const place = atLine ?? elsewhere(space).find(isApart);
    if (!place) continue;
    boxes.push(boxAt(place));
    const [first] = places;
    if (!atLine && first) drawPath(svg, [[place.x - 2, place.y], [first.x, first.y]], colour, 0.75); // biome-ignore format: one line of points
    writeWords(svg, { x: place.x, y: place.y, lines: [words], anchor: place.anchor, fill: colour, isHaloed: true });
  }
  return boxes;
}

type Place = PlacedLabel["places"][number];

/** Places all over a space, from its right end and its top. */
function elsewhere(space: Box): Place[] {
  const found: Place[] = [];
  for (let y = space.top + LINE_PX / 2; y <= space.bottom; y += LINE_PX) {
    found.push({ x: space.right, y, anchor: "end" }, { x: space.left, y, anchor: "start" });
  }
  return found;
}

function isInside(box: Box, space: Box): boolean {
  return box.left >= space.left && box.right <= space.right && box.top >= space.top && box.bottom <= space.bottom;
}

function meets(a: Box, b: Box): boolean {
  return a.left < b.right + 4 && b.left < a.right + 4 && a.top < b.bottom && b.top < a.bottom;
}
