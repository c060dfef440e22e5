import type { Candidate } from "../driveReport.ts";
import type { Unknown } from "../unknowns.ts";
import { type Band, bandOf, type Ends } from "./band.ts";
import { type Measurement, measurementOf } from "./measurements.ts";
import { endsIn, type PackAnswer, roadEnds, type Use } from "./packAnswer.ts";

/** The one measurement that would do most to settle a verdict of *only just*. */
export interface Settlement {
  readonly measurement: Measurement;
  /** The value that matters most of those it makes known, as taken. */
  readonly path: string;
  readonly value: number;
  /** What is left of the usual day at ten years in winter for what this measurement may find, all else as taken. */
  readonly worth: Band;
  /** The band that remains with everything this measurement finds as taken now. */
  readonly rest: Band;
  /** From which value on, and to which side, the verdict is *enough*; absent where this measurement alone cannot make it so. */
  readonly enough?: Threshold;
  /** From which value on it is *not enough*; absent where no value within its band makes it so. */
  readonly notEnough?: Threshold;
  /** What to measure next where this one alone cannot settle it. */
  readonly next?: Measurement;
}

interface Threshold {
  readonly side: "below" | "above";
  readonly value: number;
}

/**
 * What would settle the verdict on a pack that is *only just* enough. Unknowns are taken together by the measurement that makes them
 * known; the one that may cost most is named, one for which the car may not drive the road at all before all others.
 * Thresholds lie on straight lines between the value as taken and either end of its band.
 */
export function settlementOf(
  use: Use,
  pack: Pick<PackAnswer, "left" | "mayFail">,
  candidate: Candidate,
  unknowns: readonly Unknown[],
): Settlement | undefined {
  if (!pack.left) return undefined;
  const ends = leftAtEnds(use, candidate, unknowns);
  // No measurement of the car makes the road better known: it stays in what remains.
  const ofRoad = leftOf(use, roadEnds("tenYearsWinter", use, candidate));
  const { value } = pack.left.tenYearsWinter;
  const ranked = groupsByCost(value, unknowns, ends, pack.mayFail);
  const [first, second] = ranked;
  if (!first) return undefined;
  const rest = bandOf(value, [...ends.filter((_, i) => !first.members.includes(i)), ...ofRoad]);
  const lead = first.members.reduce((a, b) => (costOf(value, ends[b]) > costOf(value, ends[a]) ? b : a));
  const thresholds = pack.mayFail.length > 0 ? {} : thresholdsOf(unknowns[lead], ends[lead], value, value - rest.low);
  return {
    measurement: first.measurement,
    path: unknowns[lead].path,
    value: unknowns[lead].value,
    worth: bandOf(
      value,
      first.members.map((i) => ends[i]),
    ),
    rest,
    ...thresholds,
    ...(rest.low < 0 && second && { next: second.measurement }),
  };
}

/** A measurement, and by how many kilometres what it makes known may shorten a winter's day at ten years; infinite where the car may not drive. */
export interface WorthMeasuring {
  readonly measurement: Measurement;
  readonly cost_km: number;
}

/** What to measure first, the dearest unknown first: for every verdict, where `settlementOf` is for one that is *only just*. */
export function worthMeasuring(
  use: Use,
  pack: Pick<PackAnswer, "left" | "mayFail">,
  candidate: Candidate,
  unknowns: readonly Unknown[],
): WorthMeasuring[] {
  if (!pack.left) return [];
  const ends = leftAtEnds(use, candidate, unknowns);
  return groupsByCost(pack.left.tenYearsWinter.value, unknowns, ends, pack.mayFail).map(({ measurement, cost_km }) => ({
    measurement,
    cost_km,
  }));
}

interface Group {
  readonly measurement: Measurement;
  readonly members: number[];
  readonly cost_km: number;
}

function groupsByCost(
  value: number,
  unknowns: readonly Unknown[],
  ends: readonly Ends[],
  mayFail: PackAnswer["mayFail"],
): Group[] {
  const groups = new Map<string, Pick<Group, "measurement" | "members">>();
  unknowns.forEach(({ path }, i) => {
    const measurement = measurementOf(path);
    const group = groups.get(measurement.id) ?? { measurement, members: [] };
    group.members.push(i);
    groups.set(measurement.id, group);
  });
  const cost = (members: readonly number[]) =>
    members.some((i) => mayFail.some(({ path }) => path === unknowns[i].path))
      ? Number.POSITIVE_INFINITY
      : Math.hypot(...members.map((i) => costOf(value, ends[i])));
  return [...groups.values()]
    .map((group): Group => ({ ...group, cost_km: cost(group.members) }))
    .filter(({ cost_km }) => cost_km > 0)
    .sort((a, b) => b.cost_km - a.cost_km);
}

/** Kilometres left of the usual day at ten years in winter, at either end of each unknown. */
function leftAtEnds(use: Use, candidate: Candidate, unknowns: readonly Unknown[]): Ends[] {
  return leftOf(use, endsIn("tenYearsWinter", use, candidate, unknowns));
}

/** Ranges as what is left of them after the usual day. */
function leftOf({ usualDay_km }: Pick<Use, "usualDay_km">, ends: readonly Ends[]): Ends[] {
  return ends.map(({ atLow, atHigh }) => ({ atLow: atLow - usualDay_km, atHigh: atHigh - usualDay_km }));
}

/** By how many kilometres an unknown may make it worse. */
function costOf(value: number, { atLow, atHigh }: Ends): number {
  return Math.max(0, value - Math.min(atLow, atHigh));
}

function thresholdsOf(
  unknown: Unknown,
  ends: Ends,
  left: number,
  restDrop: number,
): Pick<Settlement, "enough" | "notEnough"> {
  const better = ends.atHigh > ends.atLow ? "above" : "below";
  const worse = better === "above" ? "below" : "above";
  const enough = valueWhere(unknown, ends, left, restDrop);
  const notEnough = valueWhere(unknown, ends, left, 0);
  return {
    ...(enough !== undefined && { enough: { side: better, value: enough } as const }),
    ...(notEnough !== undefined && { notEnough: { side: worse, value: notEnough } as const }),
  };
}

/** The value within its band at which so many kilometres are left, or nothing. */
function valueWhere({ low, value, high }: Unknown, { atLow, atHigh }: Ends, left: number, wanted: number) {
  const pieces = [
    { from: low, to: value, atFrom: atLow, atTo: left },
    { from: value, to: high, atFrom: left, atTo: atHigh },
  ];
  for (const { from, to, atFrom, atTo } of pieces) {
    const isWithin = (atFrom - wanted) * (atTo - wanted) <= 0 && atFrom !== atTo;
    if (isWithin) return from + ((wanted - atFrom) / (atTo - atFrom)) * (to - from);
  }
  return undefined;
}
