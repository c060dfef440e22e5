import { dot, line } from "@observablehq/plot";
import { bisectLeft, ticks } from "d3-array";
import { heed, ink, paper } from "../look/tokens.ts";
import { reach } from "./parts/axes/domain.ts";
import { roadAxis } from "./parts/axes/roadAxis.ts";
import { drawDots, drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing, Position } from "./parts/figure/chart.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { type FigureUnit, fromUnit, inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { drawFrame, type Frame, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { drawRampKey, rampKeyHeight_px } from "./parts/keys/rampKey.ts";
import { steppedRamp } from "./parts/keys/steppedRamp.ts";
import { apart, drawnTrack, fitted, INSET_PX } from "./parts/track/trackLegs.ts";
import { onPlane, type Track } from "./parts/track/trackOnPlane.ts";

/**
 * Where a road goes: its track, north up, no map beneath; darker where more energy leaves the pack, or, of a log that no pack has driven,
 * where faster. Repaired spans have a wide rim, and the place is marked where the car falls behind longest.
 */
export function routeMap(track: Track, drawing: Drawing): Chart {
  const n = track.longitude_deg.length;
  if (n === 0) return emptyFigure(drawing, "The log holds no position, so there is no track to show.");
  const units = drawing.units ?? METRIC;
  const { time_s } = track;
  const speeds = track.speed_mps.map((speed_mps) => inUnit(units.speed, speed_mps));
  const [slowest, fastest] = reach(speeds, n);
  const uses = track.use_Whpkm?.map((use_Whpkm) => inUnit(units.consumption, use_Whpkm));
  const shown = uses ?? speeds;
  const colours = steppedRamp(...reach(shown, n));
  let samples = 0;
  for (const flag of track.isRepaired ?? []) samples += flag;
  const what = uses ? `Energy from the pack (${units.consumption.sign})` : `Speed (${units.speed.sign})`;
  const title = `${what}${samples > 0 ? ", wide rim: repaired" : ""}`;
  const space_px = drawing.width_px - 20;
  const plane = onPlane(track);
  const frame = fitted(plane, drawing.width_px, 10 + rampKeyHeight_px(colours, title, space_px));
  const kept = apart(plane, frame, track.partRows);
  const { rows, legs, outline } = drawnTrack(kept, track, shown, colours, plane, frame);
  const place = { x: (i: number) => plane.east_m[i], y: (i: number) => plane.north_m[i] };
  const round = { ...place, strokeLinejoin: "round", strokeLinecap: "round" } as const;
  const svg = drawFrame(drawing, frame, [
    ...together(legs.filter((leg) => leg.isRepaired).map(({ points }) => points)).map(({ points, z }) =>
      line(points, { ...round, z, stroke: heed, strokeWidth: 12, strokeOpacity: 0.55 }),
    ),
    ...together(outline).map(({ points, z }) => line(points, { ...round, z, stroke: ink, strokeWidth: 4.6 })),
    // One mark for each colour: a week has thousands of legs, and a mark costs far more than a line of it.
    ...colours.steps.flatMap(({ colour }) =>
      together(legs.filter((leg) => leg.colour === colour).map(({ points }) => points)).map(({ points, z }) =>
        line(points, { ...round, z, stroke: colour, strokeWidth: 3.2 }),
      ),
    ),
    dot([...new Set([0, n - 1])], { ...place, r: 4.5, fill: paper, stroke: ink, strokeWidth: 1.5 }),
  ]);
  drawRampKey(svg, colours, title, 10, 4, space_px);
  const pixels = (i: number): [number, number] => [
    xPixel(frame, plane.east_m[i] as number),
    yPixel(frame, plane.north_m[i] as number),
  ];
  nameEnds(svg, frame, pixels(0), pixels(n - 1));
  const behind = longestBehind(track.isBehind, time_s);
  if (behind !== undefined) markBehind(svg, frame, pixels(behind));
  drawScaleBar(svg, frame, units.distance);

  const [west_m, east_m] = reach(plane.east_m, n);
  const [south_m, north_m] = reach(plane.north_m, n);
  const far = (length_m: number) => `${threeFigures(inUnit(units.distance, length_m))} ${units.distance.sign}`;
  const alt =
    `Track of ${far(plane.length_m)}, ${far(east_m - west_m)} from west to east and ${far(north_m - south_m)} from south to north, ` +
    `driven at ${threeFigures(slowest)} to ${threeFigures(fastest)} ${units.speed.sign}. ` +
    (uses
      ? `The pack gives ${reach(uses, n).map(threeFigures).join(" to ")} ${units.consumption.sign} along it. `
      : "") +
    (behind === undefined
      ? ""
      : `The car falls behind, longest ${roadAxis("time", time_s[n - 1] as number, units).format(time_s[behind] as number)} after the start. `) +
    (samples === 0 ? "Nothing was repaired." : `${samples} of ${n} samples were repaired and stand in a wide rim.`);
  nameFigure(svg, alt);

  const axis = roadAxis("time", time_s[n - 1] as number, units);
  const position: Position = {
    quantity: "time_s",
    first: time_s[0] as number,
    last: time_s[n - 1] as number,
    step: ((time_s[n - 1] as number) - (time_s[0] as number)) / 100,
    isVertical: false,
    from_px: frame.top,
    to_px: frame.bottom,
    toPixel: (at) => pixels(sampleAt(at))[0],
    toPoint: (at) => pixels(sampleAt(at)),
    fromPixel(x, y) {
      const away = (i: number) => Math.hypot(pixels(i)[0] - x, pixels(i)[1] - y);
      return time_s[rows.reduce((a, b) => (away(b) < away(a) ? b : a), 0)] as number;
    },
  };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "time_s", label: "Time (s)" },
        { name: "longitude_deg", label: "Longitude (deg)" },
        { name: "latitude_deg", label: "Latitude (deg)" },
        { name: `speed_${units.speed.suffix}`, label: `Speed (${units.speed.sign})` },
        ...(uses
          ? [{ name: `use_${units.consumption.suffix}`, label: `Energy from the pack (${units.consumption.sign})` }]
          : []),
        { name: "repaired", label: "Repaired" },
      ],
      // Every sample, not only those that stand apart on the drawing, or the highest speed might be missing.
      get rows() {
        return Array.from(time_s, (at_s, i) => [
          at_s,
          track.longitude_deg[i] as number,
          track.latitude_deg[i] as number,
          speeds[i] as number,
          ...(uses ? [uses[i] as number] : []),
          track.isRepaired?.[i] ? "yes" : "no",
        ]);
      },
    },
    position,
    read(at) {
      const inside = within(position, at);
      const i = sampleAt(inside);
      const repaired = track.isRepaired?.[i] ? ", repaired" : "";
      return {
        where: axis.format(inside),
        values: [
          ...(uses ? [{ label: "energy", text: `${threeFigures(uses[i] as number)} ${units.consumption.sign}` }] : []),
          { label: "speed", text: `${threeFigures(speeds[i] as number)} ${units.speed.sign}${repaired}` },
        ],
      };
    },
  };

  function sampleAt(at_s: number): number {
    return Math.min(n - 1, bisectLeft(time_s, at_s));
  }
}

/** Lines as one list of points with the number of the line beside each; none where there is no line. */
function together(lines: readonly (readonly number[])[]): { points: number[]; z: number[] }[] {
  if (lines.length === 0) return [];
  return [{ points: lines.flat(), z: lines.flatMap((points, k) => points.map(() => k)) }];
}

function nameEnds(svg: SVGSVGElement, frame: Frame, start: [number, number], end: [number, number]): void {
  const isOneWord = Math.hypot(start[0] - end[0], start[1] - end[1]) < 75;
  const word = ([x, y]: [number, number], text: string) => {
    // Away from the middle, where the track is less likely to be.
    const up = y < (frame.top + frame.bottom) / 2;
    const half = textWidth_px(text, FONT_PX) / 2;
    const within_px = Math.min(frame.right - half, Math.max(frame.left + half, x));
    writeWords(svg, { x: within_px, y: y + (up ? -14 : 14), lines: [text], anchor: "middle", isHaloed: true });
  };
  word(start, isOneWord ? "start and end" : "start");
  if (!isOneWord) word(end, "end");
}

/** The sample in the middle of the longest time behind; nothing where the car never is. */
function longestBehind(isBehind: Uint8Array | undefined, time_s: Float64Array): number | undefined {
  let best: { from: number; to: number } | undefined;
  let from: number | undefined;
  for (let i = 0; i <= (isBehind?.length ?? 0); i++) {
    if (isBehind?.[i]) from ??= i;
    else if (from !== undefined) {
      const long_s = (time_s[i - 1] as number) - (time_s[from] as number);
      if (!best || long_s > (time_s[best.to] as number) - (time_s[best.from] as number)) best = { from, to: i - 1 };
      from = undefined;
    }
  }
  return best && Math.round((best.from + best.to) / 2);
}

function markBehind(svg: SVGSVGElement, frame: Frame, [x, y]: [number, number]): void {
  const words = "fell behind here";
  const isLeft = x > (frame.left + frame.right) / 2;
  drawDots(svg, [{ x, y, r: 6 }], { fill: paper, stroke: heed, "stroke-width": 2.5 });
  // On the side with more room, past the ring.
  writeWords(svg, {
    x: x + (isLeft ? -11 : 11),
    y: Math.min(frame.bottom - 8, Math.max(frame.top + 8, y)),
    lines: [words],
    anchor: isLeft ? "end" : "start",
    fill: heed,
    isHaloed: true,
  });
}

/** A round length, a sixth to a third of the width, under the track. */
function drawScaleBar(svg: SVGSVGElement, frame: Frame, unit: FigureUnit): void {
  const third = inUnit(unit, (frame.x[1] - frame.x[0]) / 3);
  const length = ticks(0, third, 2).at(-1) || third;
  const long_px = (fromUnit(unit, length) / (frame.x[1] - frame.x[0])) * (frame.right - frame.left);
  const y = frame.bottom + INSET_PX + 8;
  const left = frame.left;
  drawPath(
    svg,
    [
      [left, y - 4],
      [left, y],
      [left + long_px, y],
      [left + long_px, y - 4],
    ],
    ink,
  );
  writeWords(svg, { x: left + long_px + 6, y: y - 2, lines: [`${threeFigures(length)} ${unit.sign}, north up`] });
}
