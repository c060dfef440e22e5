import type { ChannelName } from "../../../../shared/job/schema/chart.ts";
import type { FigureUnits } from "./figureUnits.ts";

/** What a chart is drawn on. `width_px` between 320 and 1200; units default to metric. */
export interface Drawing {
  readonly document: Document;
  readonly width_px: number;
  readonly units?: FigureUnits;
  /** Place in the job's list of the pack in the highlight; the others are grey. */
  readonly chosen?: number;
}

/** A drawn figure with everything a reader may want of it. */
export interface Chart {
  /** One picture for a screen reader: role img, and `alt` as its label. */
  readonly svg: SVGSVGElement;
  /** What the figure shows, with its numbers, in a sentence or more. */
  readonly alt: string;
  /** The data as drawn, in the units shown. */
  readonly table: Table;
  /** Where along the figure values can be read; none where nothing was drawn. */
  readonly position?: Position;
  /** Values at a position (in `position.quantity`'s base unit), nearest within the figure. */
  read(at: number): Reading;
}

export interface Table {
  /** `name` is the column's key in a CSV, with its unit; `label` is for people. */
  readonly columns: readonly { readonly name: string; readonly label: string }[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** What a position means, and its base unit: two figures share a position where they share its quantity. */
export type PositionQuantity =
  | "time_s"
  | "distance_m"
  | "speed_mps"
  | "motorSpeed_rpm"
  | "pack" // place in the list of packs
  | "day_m" // length of a day
  | "packDifference" // the chosen pack, then the others in the order of the list
  | "ledgerPart" // place among the parts of one pack's energy, from left to right
  | "hour_h" // since the midnight before a day
  | "week_h" // since Monday 0:00
  | "supply" // place in the list of supplies
  | "logDuration" // logarithm, to the base of ten, of a duration in seconds
  | "again_s" // of a road driven again and again without a rest
  | "startTime_s" // time from rest at full throttle
  | "year" // from the day it is paid for
  | "way" // place in the list of packs and alternatives
  | "place_m" // behind the front axle of a car seen from the side
  | "unknown" // place in the list of unknown values
  | `channel ${ChannelName}`; // value of any other channel of a run, in the unit shown

/** The horizontal (or, where `isVertical`, the vertical) scale of a figure, in pixels of its own view box. */
export interface Position {
  readonly quantity: PositionQuantity;
  readonly first: number;
  readonly last: number;
  /** How far an arrow key goes. */
  readonly step: number;
  readonly isVertical: boolean;
  /** The ends of the reading line across the figure. */
  readonly from_px: number;
  readonly to_px: number;
  toPixel(at: number): number;
  /** Where a position is a place in the plane (a track) and not a line across the figure. */
  toPoint?(at: number): readonly [number, number];
  /** The pixel along the scale; a track asks for the other one too. */
  fromPixel(pixel: number, across: number): number;
}

export interface Reading {
  /** The position in words: "12.3 km". Empty where there is nothing to read. */
  readonly where: string;
  readonly values: readonly { readonly label: string; readonly text: string }[];
}

export const NOTHING_READ: Reading = { where: "", values: [] };
