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
 * Writes labels at their lines, each at the first of its places that is inside `room`, clear of those before it and of `taken`; where
 * none is, clear of other labels only; where that fails too, elsewhere in the room, with a line that leads to its first place.
 */
export function placeLabels(
  svg: SVGSVGElement,
  labels: readonly PlacedLabel[],
  room: Box,
  taken: readonly Box[] = [],
): readonly Box[] {
  const boxes: Box[] = [];
  for (const { words: whole, colour, places } of labels) {
    const words = wrapped(whole, room.right - room.left, FONT_PX, 1).join("");
    const width = textWidth_px(words, FONT_PX);
    const boxAt = ({ x, y, anchor }: Place): Box => {
      const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
      return { left, right: left + width, top: y - LINE_PX / 2, bottom: y + LINE_PX / 2 };
    };
    const isApart = (place: Place) =>
      isInside(boxAt(place), room) && !boxes.some((other) => meets(boxAt(place), other));
    const isFree = (place: Place) => isApart(place) && !taken.some((other) => meets(boxAt(place), other));
    const atLine = places.find(isFree) ?? places.find(isApart);
    const place = atLine ?? elsewhere(room).find(isApart);
    if (!place) continue;
    boxes.push(boxAt(place));
    const [first] = places;
    if (!atLine && first) drawPath(svg, [[place.x - 2, place.y], [first.x, first.y]], colour, 0.75); // biome-ignore format: one line of points
    writeWords(svg, { x: place.x, y: place.y, lines: [words], anchor: place.anchor, fill: colour, isHaloed: true });
  }
  return boxes;
}

type Place = PlacedLabel["places"][number];

/** Places all over a room, from its right end and its top. */
function elsewhere(room: Box): Place[] {
  const found: Place[] = [];
  for (let y = room.top + LINE_PX / 2; y <= room.bottom; y += LINE_PX) {
    found.push({ x: room.right, y, anchor: "end" }, { x: room.left, y, anchor: "start" });
  }
  return found;
}

function isInside(box: Box, room: Box): boolean {
  return box.left >= room.left && box.right <= room.right && box.top >= room.top && box.bottom <= room.bottom;
}

function meets(a: Box, b: Box): boolean {
  return a.left < b.right + 4 && b.left < a.right + 4 && a.top < b.bottom && b.top < a.bottom;
}
