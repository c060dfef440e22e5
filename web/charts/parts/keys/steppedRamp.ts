import { nice, ticks } from "d3-array";
import { ramp } from "../figure/inks.ts";
import { threeFigures } from "../figure/threeFigures.ts";

/** A colour scale of a few even, round steps, dark for much; legible in grey and told in words. */
export interface SteppedRamp {
  readonly steps: readonly {
    readonly from: number;
    readonly to: number;
    readonly colour: string;
    readonly words: string;
  }[];
  colourOf(value: number): string;
}

/** Steps from `low` to `high` in at most six colours; one step where all values are the same. */
export function steppedRamp(low: number, high: number): SteppedRamp {
  const last = ramp.length - 1;
  const edges = high > low ? edgesOver(low, high) : [low, low];
  const steps = edges.slice(1).map((to, i) => ({
    from: edges[i] as number,
    to,
    colour: ramp[edges.length > 2 ? Math.round((i * last) / (edges.length - 2)) : last] as string,
    words: to > (edges[i] as number) ? `${threeFigures(edges[i] as number)} to ${threeFigures(to)}` : threeFigures(to),
  }));
  return {
    steps,
    colourOf: (value) => (steps.find((step) => value < step.to) ?? steps.at(-1))?.colour ?? (ramp[last] as string),
  };
}

/** Round edges that hold all values, as many as there are colours at most. */
function edgesOver(low: number, high: number): number[] {
  for (let count = ramp.length; count > 1; count--) {
    const [from, to] = nice(low, high, count);
    const edges = ticks(from, to, count);
    if (edges.length >= 2 && edges.length <= ramp.length + 1) return edges;
  }
  return [low, high];
}
