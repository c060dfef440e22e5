import { geodesicLeg } from "../../log/geodesicLeg.ts";
import { writeFar } from "../../log/writeFar.ts";
import { writeClock, writeDuration } from "../../log/writeTime.ts";
import type { RepairList } from "../report/repairList.ts";
import { keptRows, type RowColumns } from "./rowColumns.ts";

/** Stands are looked for by blocks of this length, so that the work grows with the log and no faster. */
const BLOCK_s = 600;
/** A shorter stand is not set aside: it may be a stop of the drive, and it costs little. */
const LEAST_STAND_s = 7200;
/** Positions that stay in one place for so many blocks are of a standing car, however its receiver wanders. */
const WANDER_BLOCKS = 3;
/** Positions of a car that stands indoors wander this far from their middle, all together. Assumed. */
const WANDER_m = 150;
/** What is this near to the middle of a stand, just before or after it, belongs to it. Assumed. */
const BESIDE_m = 50;
/** No car that stands shows a recorded speed beyond a fidget of the receiver. */
const MOVING_mps = 2;
/** So much of a stand is left at either end. */
const EDGE_s = 30;

/** Rows of one block of time, or of a run of them, and where they lie on average. */
interface Block {
  readonly from: number;
  readonly to: number;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly isStill: boolean;
  readonly speeds: number;
}

/** The rows that are left, and what was set aside: fixes by the time of the last row before them. */
interface WithoutStands {
  readonly rows: RowColumns;
  readonly setAside: ReadonlyMap<number, number>;
  readonly setAside_s: number;
}

/**
 * The rows without those of stands of two hours and more but for their ends, and how long what was set aside is in all: a car that is
 * parked for days need not be followed second by second. A stand is a run of blocks of ten minutes whose positions lie within 150 m of where
 * it began, and whose recorded speeds are none. Half an hour of that without recorded speeds is held still, in place: an indoor telephone
 * wanders, all its positions together, and no car drives so.
 */
export function withoutLongStands(rows: RowColumns, repairs: RepairList, utcOffset_s: number): WithoutStands {
  const isKept = new Uint8Array(rows.count).fill(1);
  const setAside = new Map<number, number>();
  let setAside_s = 0;
  for (const run of stillRuns(rows)) {
    if (run.blocks >= WANDER_BLOCKS && run.speeds === 0) holdStill(rows, run, repairs, utcOffset_s);
    let [from, to] = [run.from, run.to - 1];
    while (from < to && rows.time_s[from] - rows.time_s[run.from] < EDGE_s) from++;
    while (to > from && rows.time_s[run.to - 1] - rows.time_s[to] < EDGE_s) to--;
    // Rows from `from` to `to`, both included, go, where something of the stand is left on either side.
    if (from === run.from || to === run.to - 1 || to < from || !repairs.does("parked")) continue;
    const long_s = rows.time_s[to + 1] - rows.time_s[from - 1];
    if (long_s < LEAST_STAND_s) continue;
    isKept.fill(0, from, to + 1);
    setAside.set(rows.time_s[from - 1], to + 1 - from);
    setAside_s += long_s;
  }
  return { rows: setAside.size === 0 ? rows : keptRows(rows, isKept), setAside, setAside_s };
}

/** Runs of still blocks in one place, each with the rows beside it that are still there. */
function* stillRuns(rows: RowColumns): Generator<Block & { readonly blocks: number }> {
  let run: Block[] = [];
  let after = 0;
  for (const block of blocksOf(rows)) {
    const goesOn = block.isStill && (run.length === 0 || isNear(run[0], block));
    if (!goesOn && run.length > 0) {
      const found = withBeside(rows, run, after);
      after = found.to;
      yield found;
      run = [];
    }
    if (block.isStill && block.from >= after) run.push(block);
  }
  if (run.length > 0) yield withBeside(rows, run, after);
}

/** A run as one block, its ends moved to where the car comes and leaves; `after` is where the run before ends. */
function withBeside(rows: RowColumns, run: readonly Block[], after: number): Block & { readonly blocks: number } {
  const whole = block(rows, run[0].from, run[run.length - 1].to);
  let { from, to } = whole;
  const isBeside = (i: number) =>
    !(rows.speed_mps[i] > MOVING_mps) && !Number.isNaN(rows.latitude_deg[i]) && distanceTo(whole, rows, i) < BESIDE_m;
  while (from > after && isBeside(from - 1)) from--;
  while (to < rows.count && isBeside(to)) to++;
  return { ...whole, from, to, blocks: run.length };
}

/** Puts the positions of a stand to their middle, in place, and says how far they wandered. */
function holdStill(rows: RowColumns, run: Block, repairs: RepairList, utcOffset_s: number): void {
  if (!repairs.does("standingDrift") || Number.isNaN(run.latitude_deg)) return;
  let furthest_m = 0;
  for (let i = run.from; i < run.to; i++) {
    if (Number.isNaN(rows.latitude_deg[i])) continue;
    furthest_m = Math.max(furthest_m, distanceTo(run, rows, i));
    rows.latitude_deg[i] = run.latitude_deg;
    rows.longitude_deg[i] = run.longitude_deg;
  }
  const [from_s, to_s] = [rows.time_s[run.from], rows.time_s[run.to - 1]];
  const words = `positions wander within ${writeFar(furthest_m)} of one place for ${writeDuration(to_s - from_s)}`;
  repairs.add("standingDrift", 1, from_s, to_s, `${words} at ${writeClock(from_s, utcOffset_s)}: taken as standing`);
}

/** True where the positions of two blocks are of one place, or one of them has none. */
function isNear(a: Block, b: Block): boolean {
  if (Number.isNaN(a.latitude_deg + b.latitude_deg)) return true;
  return geodesicLeg(a.latitude_deg, a.longitude_deg, b.latitude_deg, b.longitude_deg).length_m < WANDER_m;
}

function* blocksOf(rows: RowColumns): Generator<Block> {
  const numberOf = (i: number) => Math.floor((rows.time_s[i] - rows.time_s[0]) / BLOCK_s);
  let from = 0;
  while (from < rows.count) {
    const number = numberOf(from);
    let to = from;
    while (to < rows.count && numberOf(to) === number) to++;
    yield block(rows, from, to);
    from = to;
  }
}

function block(rows: RowColumns, from: number, to: number): Block {
  let places = 0;
  let latitude_deg = 0;
  let longitude_deg = 0;
  let speeds = 0;
  let moving = 0;
  for (let i = from; i < to; i++) {
    if (!Number.isNaN(rows.speed_mps[i])) speeds++;
    if (rows.speed_mps[i] > MOVING_mps) moving++;
    if (Number.isNaN(rows.latitude_deg[i])) continue;
    places++;
    latitude_deg += rows.latitude_deg[i];
    longitude_deg += rows.longitude_deg[i];
  }
  latitude_deg /= places; // NaN where there is none
  longitude_deg /= places;
  const middle = { from, to, latitude_deg, longitude_deg, speeds };
  let isStill = moving === 0 && places + speeds > 0;
  for (let i = from; isStill && i < to; i++) {
    isStill = Number.isNaN(rows.latitude_deg[i]) || distanceTo(middle, rows, i) < WANDER_m;
  }
  return { ...middle, isStill };
}

function distanceTo(place: Pick<Block, "latitude_deg" | "longitude_deg">, rows: RowColumns, i: number): number {
  return geodesicLeg(place.latitude_deg, place.longitude_deg, rows.latitude_deg[i], rows.longitude_deg[i]).length_m;
}
