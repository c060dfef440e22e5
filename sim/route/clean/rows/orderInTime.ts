import { inputError } from "../../../../shared/problems.ts";
import { S_PER_DAY, S_PER_H } from "../../../../shared/units.ts";
import { countOf } from "../../log/countOf.ts";
import { writeClock, writeDuration } from "../../log/writeTime.ts";
import type { CleanInput } from "../report/cleanedLog.ts";
import type { RepairList } from "../report/repairList.ts";

/** Rows of a log in rising time: `rows[i]` is the row of the fixes, `time_s[i]` its time after clock changes are undone. */
export interface Ordered {
  readonly rows: Uint32Array;
  readonly time_s: Float64Array;
}

/** Two rows nearer than this are one moment: no receiver reports more than 100 times a second. */
const SAME_s = 0.005;
/** A single time this far from both its neighbours in the file is a receiver's clock before lock, not a day. */
const LOST_CLOCK_s = S_PER_DAY;

/**
 * The rows in rising time, each moment once. Where times without a zone step back or forward by an hour while the
 * file goes on, the clocks were changed and the step is undone; a single time days off its neighbours is dropped;
 * what is still out of order is sorted; of rows with one time the first with a position stays.
 */
export function orderInTime(log: CleanInput, repairs: RepairList, utcOffset_s: number): Ordered {
  const { fixes } = log;
  const time_s = Float64Array.from(fixes.time_s);
  const usable: number[] = [];
  for (let i = 0; i < fixes.count; i++) {
    if (!Number.isNaN(time_s[i])) {
      usable.push(i);
    }
  }
  if (usable.length < 2) {
    throw inputError(
      "tooFewFixes",
      log.file,
      `found ${countOf(usable.length, "fix", "fixes")} with a time, wanted at least 2`,
    );
  }
  if (!log.hasZone && repairs.does("clockChange")) {
    undoClockChange(usable, time_s, repairs, utcOffset_s);
  }
  const sane = withoutLostClocks(usable, time_s, repairs);
  let backward = 0;
  for (let k = 1; k < sane.length; k++) {
    backward += time_s[sane[k]] < time_s[sane[k - 1]] - SAME_s ? 1 : 0;
  }
  if (backward > 0) {
    sane.sort((a, b) => time_s[a] - time_s[b] || a - b);
    const often = backward === 1 ? "once" : `${backward} times`;
    const detail = `the log steps back in time ${often}; put in order`;
    repairs.add("backwardTime", backward, time_s[sane[0]], time_s[sane[sane.length - 1]], detail);
  }
  return withoutRepeats(log, sane, time_s, repairs, utcOffset_s);
}

/** Undoes a step of just an hour between rows that follow one another within seconds otherwise. */
function undoClockChange(
  usable: readonly number[],
  time_s: Float64Array,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  let shift_s = 0;
  let last_s = time_s[usable[0]];
  for (let k = 1; k < usable.length; k++) {
    const i = usable[k];
    const written_s = time_s[i];
    const step_s = written_s - last_s;
    last_s = written_s;
    const beyond_s = Math.abs(step_s) - S_PER_H;
    // Backward by an hour less a moment; forward only where the next row is still moving on by seconds.
    if (step_s < 0 && beyond_s <= 0 && beyond_s > -30) {
      shift_s += S_PER_H;
      const at = writeClock(written_s, utcOffset_s);
      repairs.add("clockChange", 1, written_s, written_s, `the clock was put back an hour at ${at}; undone`);
    } else if (step_s > 0 && beyond_s > 0 && beyond_s < 5 && isChangeHour(written_s)) {
      shift_s -= S_PER_H;
      const at = writeClock(written_s, utcOffset_s);
      repairs.add("clockChange", 1, written_s, written_s, `the clock was put on an hour at ${at}; undone`);
    }
    time_s[i] = written_s + shift_s;
  }
}

/** Clocks are put on between one and three in the morning; a pause of an hour at another time of day is a pause. */
function isChangeHour(time_s: number): boolean {
  const hour = (((time_s % S_PER_DAY) + S_PER_DAY) % S_PER_DAY) / S_PER_H;
  return hour >= 1.99 && hour < 3.1;
}

function withoutLostClocks(usable: readonly number[], time_s: Float64Array, repairs: RepairList): number[] {
  const lost: number[] = [];
  const sane = usable.filter((i, k) => {
    const before = k > 0 ? Math.abs(time_s[i] - time_s[usable[k - 1]]) : Number.POSITIVE_INFINITY;
    const after = k + 1 < usable.length ? Math.abs(time_s[i] - time_s[usable[k + 1]]) : Number.POSITIVE_INFINITY;
    const isLost = usable.length > 2 && before > LOST_CLOCK_s && after > LOST_CLOCK_s && isBackAmong(k, usable, time_s);
    if (isLost) {
      lost.push(i);
    }
    return !isLost;
  });
  if (lost.length > 0) {
    const at_s = time_s[sane[0]];
    const detail = `${countOf(lost.length, "fix", "fixes")} with a date days off the others dropped`;
    repairs.add("backwardTime", lost.length, at_s, at_s, detail);
  }
  return sane;
}

/**
 * True where the two rows nearest to row k are near to one another in time: those beside it, or the next two where it is at an end. Where
 * they are not, one of them may be the wild one.
 */
function isBackAmong(k: number, usable: readonly number[], time_s: Float64Array): boolean {
  const middle = Math.min(Math.max(k, 1), usable.length - 2);
  const [first, second] = [middle - 1, middle, middle + 1].filter((each) => each !== k);
  return Math.abs(time_s[usable[second]] - time_s[usable[first]]) < LOST_CLOCK_s;
}

function withoutRepeats(
  log: CleanInput,
  sorted: readonly number[],
  time_s: Float64Array,
  repairs: RepairList,
  utcOffset_s: number,
): Ordered {
  const { fixes } = log;
  const rows = new Uint32Array(sorted.length);
  const times_s = new Float64Array(sorted.length);
  let kept = 0;
  let dropped = 0;
  let firstDrop_s = Number.NaN;
  let lastDrop_s = Number.NaN;
  for (const i of sorted) {
    const isRepeat = kept > 0 && time_s[i] - times_s[kept - 1] < SAME_s;
    if (!isRepeat) {
      rows[kept] = i;
      times_s[kept] = time_s[i];
      kept++;
      continue;
    }
    if (Number.isNaN(fixes.latitude_deg[rows[kept - 1]]) && !Number.isNaN(fixes.latitude_deg[i])) {
      rows[kept - 1] = i;
    }
    dropped++;
    firstDrop_s = Number.isNaN(firstDrop_s) ? time_s[i] : firstDrop_s;
    lastDrop_s = time_s[i];
  }
  if (dropped > 0) {
    const from = writeClock(firstDrop_s, utcOffset_s);
    const over =
      lastDrop_s > firstDrop_s ? ` between ${from} and ${writeClock(lastDrop_s, utcOffset_s)}` : ` at ${from}`;
    const detail = `${countOf(dropped, "fix", "fixes")} with the time of the one before dropped${over}`;
    repairs.add("duplicate", dropped, firstDrop_s, lastDrop_s, detail);
  }
  if (kept < 2) {
    throw inputError(
      "tooFewFixes",
      log.file,
      `found all fixes at one moment, ${writeDuration(0)} long, wanted at least 2`,
    );
  }
  return { rows: rows.slice(0, kept), time_s: times_s.slice(0, kept) };
}
