import { type Circuit, type PreCharge, preCharge } from "./preCharge.ts";

/** Resistors that any shop has: two decades of the series E6 [IEC60063, table 1], from memory. */
const SHELF_ohm = [10, 15, 22, 33, 47, 68, 100, 150, 220, 330, 470, 680, 1000];
/** The contactor should close neither at once nor after a wait. Common practice, no source. */
const SOONEST_s = 0.5;
const LATEST_s = 2;
/** A wire-wound resistor stands ten times its rating for a few seconds. Common practice, no source: its maker's curve decides. */
const OVERLOAD_ratio = 10;
/** Ratings such resistors are made in, common practice. */
const RATINGS_W = [5, 10, 15, 25, 50, 100, 150, 200, 300, 500];
/** The controller gives up after so many times as long as it should take, and no sooner than this. Common practice, no source. */
const TIMEOUT_ratio = 3;
const TIMEOUT_s = 1;
/** Where nobody has looked at the controller's sheet: 300 to 3000 µF, and up to 20 000 in systems below 144 V. Assumed. */
const USUAL_uF = 1500;

export interface ShelfRow extends PreCharge {
  readonly resistance_ohm: number;
  /** The smallest usual rating whose tenfold is the peak. */
  readonly rating_W: number;
}

/** Each value of the shelf, and the one to take. */
export interface PreChargeChoice {
  readonly capacitance_uF: number;
  readonly isCapacitanceAssumed: boolean;
  readonly load_W: number;
  readonly loadWakes_V: number;
  readonly rows: readonly ShelfRow[];
  /** The one that is fitted, or else the one whose time lies best between half a second and two; absent where none gets there. */
  readonly chosen?: ShelfRow;
  readonly isFitted: boolean;
  /** The same without the load: what wiring it before the contactor would make of it. */
  readonly withoutLoad?: ShelfRow;
  readonly timeout_s?: number;
}

/** What is known of a pre-charge. */
export interface PreChargeTask {
  readonly source_V: number;
  readonly capacitance_uF?: number | undefined;
  readonly fitted_ohm?: number | undefined;
  readonly load_W?: number | undefined;
  readonly loadWakes_V?: number | undefined;
}

/** The shelf tried out. */
export function preChargeShelf(task: PreChargeTask): PreChargeChoice {
  const { source_V, fitted_ohm, load_W = 0, loadWakes_V = 0 } = task;
  const capacitance_uF = task.capacitance_uF ?? USUAL_uF;
  const row = (resistance_ohm: number, power_W = load_W): ShelfRow => {
    const circuit: Circuit = {
      source_V,
      resistance_ohm,
      capacitance_F: capacitance_uF * 1e-6,
      load_W: power_W,
      loadWakes_V,
    };
    const found = preCharge(circuit);
    return { resistance_ohm, ...found, rating_W: ratingFor(found.peak_W / OVERLOAD_ratio) };
  };
  const rows = SHELF_ohm.map((each) => row(each));
  const chosen = fitted_ohm === undefined ? best(rows) : row(fitted_ohm);
  const alone = fitted_ohm === undefined ? best(SHELF_ohm.map((each) => row(each, 0))) : row(fitted_ohm, 0);
  return {
    capacitance_uF,
    isCapacitanceAssumed: task.capacitance_uF === undefined,
    load_W,
    loadWakes_V,
    rows,
    ...(chosen && { chosen }),
    isFitted: fitted_ohm !== undefined,
    ...(load_W > 0 && alone && { withoutLoad: alone }),
    ...(chosen?.time_s !== undefined && { timeout_s: Math.max(TIMEOUT_s, TIMEOUT_ratio * chosen.time_s) }),
  };
}

/** Of those that get there, the one whose time is, as a ratio, nearest to the middle of what is wanted. */
function best(rows: readonly ShelfRow[]): ShelfRow | undefined {
  const middle_s = Math.sqrt(SOONEST_s * LATEST_s);
  const away = ({ time_s }: ShelfRow) => Math.abs(Math.log((time_s ?? Number.POSITIVE_INFINITY) / middle_s));
  const able = rows.filter(({ time_s }) => time_s !== undefined);
  return able.reduce<ShelfRow | undefined>((a, b) => (a === undefined || away(b) < away(a) ? b : a), undefined);
}

function ratingFor(least_W: number): number {
  return RATINGS_W.find((rating_W) => rating_W >= least_W) ?? Math.ceil(least_W / 100) * 100;
}
