import { bisector } from "d3-array";
import { inputError } from "../../../shared/problems.ts";
import { countOf } from "./countOf.ts";
import type { Fixes } from "./fixes.ts";
import { geodesicLeg } from "./geodesicLeg.ts";
import type { Question } from "./logFile.ts";
import { writeDuration } from "./writeTime.ts";

/** Tracks that share less time than this touch and are of one car: a recorder may begin anew a moment before it ends. */
const TOUCH_s = 60;
/** Two recorders in one car are never so far apart, whatever their receivers do. */
const APART_m = 1000;

/** One piece of a log as its recorder divided it. */
interface Piece {
  readonly segment: number;
  readonly rows: readonly number[];
  readonly from_s: number;
  readonly to_s: number;
}

/** Pieces of one car, none of which is at two places at once. */
interface Car {
  readonly pieces: Piece[];
  readonly segments: Set<number>;
}

/** The car of each piece, and the question that chooses among them. */
interface ParallelTracks {
  readonly isOf: (i: number) => boolean;
  readonly question: Question;
}

/**
 * Cars of a log whose tracks run at the same time in different places: no car drives both. Undefined where it is one car. The choice given
 * is a track's name, or its number where the names do not tell the cars apart. Throws `InputError` where it is none of them.
 */
export function parallelTracks(
  fixes: Fixes,
  names: readonly string[],
  given: string | undefined,
  file: string,
): ParallelTracks | undefined {
  const cars: Car[] = [];
  let shared_s = 0;
  for (const piece of piecesOf(fixes)) {
    const car = cars.find(({ pieces }) => {
      const clashes = pieces.map((other) => clash_s(fixes, other, piece));
      shared_s = Math.max(shared_s, ...clashes);
      return clashes.every((each_s) => each_s === 0);
    });
    if (car) {
      car.pieces.push(piece);
      car.segments.add(piece.segment);
    } else cars.push({ pieces: [piece], segments: new Set([piece.segment]) });
  }
  if (cars.length < 2) return undefined;
  const choices = namesOf(cars, names);
  if (given !== undefined && !choices.includes(given)) {
    throw inputError("badOption", "--vehicle", `found "${given}", ${file} holds ${choices.join(", ")}`);
  }
  const counted = cars.map(({ pieces }, c) => {
    const points = pieces.reduce((sum, { rows }) => sum + rows.length, 0);
    return `${choices[c]} with ${countOf(points, "point")}`;
  });
  const why = `${cars.length} drives at the same time for ${writeDuration(shared_s)}, too far apart for one car: ${counted.join(", ")}`;
  const guess = given ?? choices[0];
  const chosen = cars[choices.indexOf(guess)].segments;
  return {
    isOf: (i) => chosen.has(fixes.segment[i]),
    question: {
      name: "vehicle",
      option: "--vehicle",
      choices,
      guess,
      evidence: given === undefined ? why : "given",
      decided: given !== undefined,
    },
  };
}

function piecesOf(fixes: Fixes): readonly Piece[] {
  const rows = new Map<number, number[]>();
  for (let i = 0; i < fixes.count; i++) {
    if (Number.isNaN(fixes.time_s[i] + fixes.latitude_deg[i])) continue;
    const list = rows.get(fixes.segment[i]) ?? [];
    list.push(i);
    rows.set(fixes.segment[i], list);
  }
  return [...rows].map(([segment, list]) => {
    const sorted = [...list].sort((a, b) => fixes.time_s[a] - fixes.time_s[b]);
    const [from_s, to_s] = [fixes.time_s[sorted[0]], fixes.time_s[sorted[sorted.length - 1]]];
    return { segment, rows: sorted, from_s, to_s };
  });
}

/** Time that two pieces share in different places; 0 where they could be of one car. */
function clash_s(fixes: Fixes, a: Piece, b: Piece): number {
  const [from_s, to_s] = [Math.max(a.from_s, b.from_s), Math.min(a.to_s, b.to_s)];
  if (to_s - from_s < TOUCH_s) return 0;
  const places = [0.25, 0.5, 0.75].map((share) => {
    const at_s = from_s + share * (to_s - from_s);
    const [one, other] = [nearest(fixes, a, at_s), nearest(fixes, b, at_s)];
    return geodesicLeg(
      fixes.latitude_deg[one],
      fixes.longitude_deg[one],
      fixes.latitude_deg[other],
      fixes.longitude_deg[other],
    ).length_m;
  });
  return places.some((apart_m) => apart_m > APART_m) ? to_s - from_s : 0;
}

/** Row of a piece nearest in time. */
function nearest(fixes: Fixes, { rows }: Piece, at_s: number): number {
  return rows[bisector((row: number) => fixes.time_s[row]).center(rows, at_s)];
}

/** What each car's first track is called or, where that does not tell all apart, `track 1`, `track 2`. */
function namesOf(cars: readonly Car[], names: readonly string[]): readonly string[] {
  const found = cars.map(({ pieces }) => (names[pieces[0].segment] ?? "").trim().slice(0, 40));
  const areTold = found.every((name) => name !== "") && new Set(found).size === cars.length;
  return areTold ? found : cars.map((_, c) => `track ${c + 1}`);
}
