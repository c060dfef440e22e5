import { line } from "@observablehq/plot";
import type { Profile } from "../../sim/index.ts";
import { accent, ink } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { thin } from "./parts/lines/thin.ts";

export interface HeightProfileInput {
  readonly title: string;
  readonly profile: Profile;
  /** How much of the profile the road takes, from its beginning. */
  readonly length_m: number;
  /** The steepest climb, and what it is called. */
  readonly pitch?: { readonly from_m: number; readonly to_m: number; readonly words: string };
}

const LEFT_PX = 48;
const HEIGHT_PX = 190;

/** Height along a road, its steepest climb in the highlight. */
export function heightProfile({ title, profile, length_m, pitch }: HeightProfileInput, drawing: Drawing): Chart {
  const units = drawing.units ?? METRIC;
  const { distance_m, elevation_m } = profile;
  const found = distance_m.findIndex((at_m) => at_m >= length_m);
  const count = found < 0 ? distance_m.length : found + 1;
  const heightOf = (i: number) => inUnit(units.height, elevation_m[i] as number);
  const alongOf = (i: number) => inUnit(units.distance, distance_m[i] as number);
  const rows = thin(distance_m, elevation_m, count, Math.max(1, drawing.width_px - LEFT_PX));
  const heights = rows.map(heightOf);
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 18,
    top: 34,
    bottom: HEIGHT_PX - BELOW_PX,
    height: HEIGHT_PX,
    x: [0, inUnit(units.distance, Math.min(length_m, distance_m[count - 1] as number))],
    y: domain(Math.min(...heights), Math.max(...heights)),
  };
  const at = (distance: number) => heightAt(profile, distance);
  const marked = pitch && thinned(piece(profile, pitch.from_m, pitch.to_m), drawing.width_px);
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Along the road (${units.distance.sign})`, ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: `Height (${units.height.sign})`, ticks: 4 }, LEFT_PX),
    line(rows, { x: alongOf, y: heightOf, stroke: ink, strokeWidth: 1.4 }),
    marked
      ? line(marked, {
          x: ([distance]) => inUnit(units.distance, distance),
          y: ([, height]) => inUnit(units.height, height),
          stroke: accent,
          strokeWidth: 4,
        })
      : null,
  ]);
  if (pitch) {
    const middle_m = (pitch.from_m + pitch.to_m) / 2;
    const x = xPixel(frame, inUnit(units.distance, middle_m));
    const isRight = x > (frame.left + frame.right) / 2;
    writeWords(svg, {
      lines: [`steepest, ${pitch.words}`],
      x: isRight ? x - 10 : x + 10,
      y: yPixel(frame, inUnit(units.height, at(middle_m))),
      anchor: isRight ? "end" : "start",
      fill: accent,
      isHaloed: true,
    });
  }
  const format = (elevation_m: number) => `${threeFigures(inUnit(units.height, elevation_m))} ${units.height.sign}`;
  const [lowest_m, highest_m] = [Math.min(...rows.map(rowElevation_m)), Math.max(...rows.map(rowElevation_m))];
  function rowElevation_m(i: number): number {
    return elevation_m[i] as number;
  }
  const steep = pitch
    ? `; its steepest climb, ${pitch.words}, is ${threeFigures(inUnit(units.distance, pitch.from_m))} ${units.distance.sign} along`
    : "";
  const alt = `Height along ${title}: from ${format(lowest_m)} to ${format(highest_m)}${steep}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "distance_m", 1 / units.distance.perBase);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: `distance_${units.distance.suffix}`, label: `Along the road (${units.distance.sign})` },
        { name: `elevation_${units.height.suffix}`, label: `Height (${units.height.sign})` },
      ],
      rows: Array.from({ length: count }, (_, i) => [alongOf(i), heightOf(i)]),
    },
    position,
    read(place) {
      const along_m = within(position, place);
      return {
        where: `${threeFigures(inUnit(units.distance, along_m))} ${units.distance.sign}`,
        values: [{ label: "height", text: format(at(along_m)) }],
      };
    },
  };
}

/** Height at a distance along the profile; that of its end beyond it. */
function heightAt({ distance_m, elevation_m }: Profile, at_m: number): number {
  const k = distance_m.findIndex((each) => each >= at_m);
  if (k < 0) return elevation_m[elevation_m.length - 1] as number;
  if (k === 0) return elevation_m[0] as number;
  const [from_m, to_m] = [distance_m[k - 1] as number, distance_m[k] as number];
  const [low_m, high_m] = [elevation_m[k - 1] as number, elevation_m[k] as number];
  return low_m + ((at_m - from_m) / (to_m - from_m)) * (high_m - low_m);
}

/** Points along a line, no more of them than so many pixels can show. */
function thinned(points: readonly [number, number][], wide_px: number): [number, number][] {
  const across = points.map(([at]) => at);
  const up = points.map(([, height]) => height);
  return thin(across, up, points.length, wide_px).map((i) => points[i] as [number, number]);
}

/** The points of the profile from one distance to another, the ends among them. */
function piece(profile: Profile, from_m: number, to_m: number): [number, number][] {
  const points: [number, number][] = [[from_m, heightAt(profile, from_m)]];
  profile.distance_m.forEach((at_m, i) => {
    if (at_m > from_m && at_m < to_m) points.push([at_m, profile.elevation_m[i] as number]);
  });
  return [...points, [to_m, heightAt(profile, to_m)]];
}
