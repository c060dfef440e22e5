import type { CurrentPoint } from "./currentCurve.ts";

/** Rated currents that fuses are made for. [IEC60269-1, 5.3], from memory. */
const RATINGS_A = [32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250];
/** A fuse carries this share of its rating for hours in a warm box. Common practice, no source: 0.7 to 0.8. */
const STEADY_frac = 0.75;
/** For ten seconds, again and again, no more than twice its rating: peaks age the link. Assumed. */
const TEN_SECONDS_ratio = 2;

/** A fuse to begin with, and what is to be compared with its maker's curve. */
export interface Fuse {
  readonly rating_A: number;
  /** What asked for that rating: hours, a minute, or ten seconds. */
  readonly because: "steady" | "minute" | "tenSeconds";
  /** Beyond the largest listed: the rating is what is asked, rounded to no size. */
  readonly isBeyondList: boolean;
  /** Times the rating at ten seconds, two seconds and the peak. */
  readonly tenSeconds_ratio: number;
  readonly twoSeconds_ratio: number;
  readonly peak_ratio: number;
}

/** The smallest listed rating that carries the currents: ten minutes within three quarters of it, a minute within it, ten seconds within twice. */
export function fuseFor(points: readonly CurrentPoint[]): Fuse {
  const at = (duration_s: number) => points.find((point) => point.duration_s === duration_s)?.battery_A ?? 0;
  const asked = [
    { because: "steady" as const, least_A: at(600) / STEADY_frac },
    { because: "minute" as const, least_A: at(60) },
    { because: "tenSeconds" as const, least_A: at(10) / TEN_SECONDS_ratio },
  ];
  const most = asked.reduce((a, b) => (b.least_A > a.least_A ? b : a));
  const listed_A = RATINGS_A.find((rating_A) => rating_A >= most.least_A);
  const rating_A = listed_A ?? most.least_A;
  return {
    rating_A,
    because: most.because,
    isBeyondList: listed_A === undefined,
    tenSeconds_ratio: at(10) / rating_A,
    twoSeconds_ratio: at(2) / rating_A,
    peak_ratio: at(0) / rating_A,
  };
}
