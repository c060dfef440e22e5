import type { Problem } from "../../../shared/problems.ts";

const most = { speed: 30_000, torque: 10_000 } as const; // rpm, Nm: as in the job file
const mostNodes = 500; // of an axis, as in the job file
const nearby_frac = 0.004; // of an axis: a measured 1998 rpm and 2003 rpm are one node

/** The distinct values, rising, those near each other taken as one; with 0 among them. */
export function gridAxis(
  name: string,
  what: keyof typeof most,
  unit: string,
  values: readonly number[],
  problems: Problem[],
): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const span = sorted.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (span > most[what]) {
    problems.push({
      code: "map-axis",
      where: name,
      message: `found a ${what} of ${span} ${unit}, at most ${most[what]} ${unit} wanted`,
    });
  }
  const nodes: number[] = [];
  for (const value of sorted) {
    const last = nodes[nodes.length - 1];
    if (last === undefined || value - last > nearby_frac * span) nodes.push(value);
  }
  const turning = nodes.filter((value) => value > 0).length;
  if (what === "speed" && nodes[0] < 0) {
    problems.push({ code: "map-axis", where: name, message: `found a speed of ${nodes[0]} rpm, wanted 0 or more` });
  }
  if (turning < 2) {
    const found = turning === 0 ? "no" : "a single";
    problems.push({
      code: "map-axis",
      where: name,
      message: `found ${found} ${what} above 0 ${unit}, at least 2 wanted`,
    });
  }
  if (nodes.length >= mostNodes) {
    problems.push({
      code: "map-axis",
      where: name,
      message: `found ${nodes.length} ${what}s, fewer than ${mostNodes} wanted`,
    });
  }
  return nodes.includes(0) ? nodes : [...nodes, 0].sort((a, b) => a - b);
}

/** Place of the node that is nearest to a value. */
export function nearestNode(nodes: readonly number[], value: number): number {
  let best = 0;
  nodes.forEach((node, i) => {
    if (Math.abs(node - value) < Math.abs(nodes[best] - value)) best = i;
  });
  return best;
}
