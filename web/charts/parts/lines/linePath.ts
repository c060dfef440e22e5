import type { RenderFunction } from "@observablehq/plot";

const SVG = "http://www.w3.org/2000/svg";

/** How a line is drawn: its stroke, and whatever else an SVG path takes. */
export type LineLook = Readonly<Record<string, string | number | undefined>>;

/**
 * A mark that is one path through points in pixels, broken where either is not a number. Plot's own line looks at every point
 * five times over, and for lines of a thousand points that is most of the drawing.
 */
export function linePath(x: ArrayLike<number>, y: ArrayLike<number>, look: LineLook): RenderFunction {
  return (_index, _scales, _values, _dimensions, { ownerSVGElement }) => {
    const path = ownerSVGElement.ownerDocument.createElementNS(SVG, "path");
    for (const [name, value] of Object.entries({
      fill: "none",
      "stroke-linejoin": "round",
      "stroke-linecap": "round",
      ...look,
    }))
      if (value !== undefined) path.setAttribute(name, String(value));
    path.setAttribute("d", through(x, y));
    return path;
  };
}

function through(x: ArrayLike<number>, y: ArrayLike<number>): string {
  let d = "";
  let isBroken = true;
  for (let i = 0; i < x.length; i++) {
    const [across, down] = [x[i] as number, y[i] as number];
    if (Number.isNaN(across) || Number.isNaN(down)) isBroken = true;
    else {
      d += `${isBroken ? "M" : "L"}${hundredth(across)},${hundredth(down)}`;
      isBroken = false;
    }
  }
  return d;
}

function hundredth(pixel: number): number {
  return Math.round(pixel * 100) / 100;
}
