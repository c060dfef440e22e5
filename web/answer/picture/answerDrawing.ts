import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Band, ConditionId } from "../../../sim/index.ts";
import type { LeftAxis } from "./axis.ts";
import type { Evenings } from "./eveningDots.ts";

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

/** Where the picture stands on its drawing. */
export type Frame = Pick<AnswerPicture, "axis" | "toPixel" | "top_px" | "bottom_px">;

/** Its edges, and whether names stand over their rows. */
export interface Sides {
  readonly left_px: number;
  readonly right_px: number;
  readonly isNarrow: boolean;
}

/** One row of it: a pack, and its place from the top. */
export interface RowFrame extends Frame, Sides {
  readonly index: number;
  readonly place: number;
}

/** Where within its row a pack's line stands, and how much room is round it. */
export interface RowLine {
  readonly middle_px: number;
  readonly space_px: number;
  readonly isChosen: boolean;
}

/** How far below its row's line a mark stands, in heights of the row: words beside the marks are as far apart as lines of text in the lowest. */
export const MARK_ratio: Readonly<Record<ConditionId, number>> = { new: -0.34, winter: -0.05, tenYearsWinter: 0.25 };
/** Share of a row that lies below its line. */
export const BELOW_ratio = 0.46;
/** Taken as the width of a letter where room for words is looked for. */
export const LETTER_px = 7;
