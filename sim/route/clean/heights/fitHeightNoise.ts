import { refined } from "../../../math/kalman/refined.ts";
import { smooth } from "../../../math/kalman/smooth.ts";
import { countValues } from "../rows/countValues.ts";
import { type HeightNoise, heightModel } from "./heightModel.ts";

/** Fewer heights than this are few. */
const SCARCE = 300;
/** Moments looked at. */
const LONGEST_FIT = 1800;
/** Slopes last about this long: what a log of half an hour shows of it is little. Assumed. */
const SLOPE_LASTS_m = 150;
/** What is searched: noise by what it does in a second, which heights show, and not by how far it goes in the end, which they hardly do. */
interface Searched {
  readonly slope_ratio: number;
  readonly slopeLasts_m: number;
  readonly white_m: number;
  readonly change_m: number;
  readonly correlation_s: number;
}

/**
 * What is usual, and by what factor it varies (a standard deviation, as a logarithm): rolling country, and noise of some metres. Assumed. At an
 * even speed nothing else tells hills from the drift of a receiver that filters its heights.
 */
const usual = {
  slope_ratio: [0.02, 1],
  slopeLasts_m: [SLOPE_LASTS_m, 0.4],
  white_m: [0.5, 1.5],
  correlated_m: [4, 0.7],
} as const;
/** How long noise lasts that is new in every moment, and that of a receiver that filters. Assumed. */
const USUALLY_LASTS_s = { unfiltered: 60, filtered: 20 };
const LASTS_LOG = 1;

/** The search begins both where the noise is usual and where hills make most of what is seen: in between neither may be likelier. */
const START = { slope_ratio: 0.02, slopeLasts_m: SLOPE_LASTS_m, white_m: 0.3 };
const HILLY = { slope_ratio: 0.04, slopeLasts_m: SLOPE_LASTS_m, white_m: 1 };
const starts = [
  { isFiltered: false, from: { ...START, change_m: 0.6, correlation_s: USUALLY_LASTS_s.unfiltered } },
  { isFiltered: false, from: { ...HILLY, change_m: 0.15, correlation_s: USUALLY_LASTS_s.unfiltered } },
  { isFiltered: true, from: { ...START, change_m: 0.3, correlation_s: USUALLY_LASTS_s.filtered } },
  { isFiltered: true, from: { ...HILLY, change_m: 0.08, correlation_s: USUALLY_LASTS_s.filtered } },
];
/** Factors of the search from each start, and of that from the best place it found. */
const COARSE = [3, 1.7];
const FINE = [1.3, 1.12];
const bounds = {
  change_m: [0.005, 5],
  slope_ratio: [0.0005, 0.12],
  white_m: [0.03, 12],
  slopeLasts_m: [40, 600],
  correlation_s: [5, 1500],
} as const;

/** So few heights cannot show that a road is flat, or over which length a slope lasts; then it is not taken to be. */
const scarce = { slope_ratio: [0.012, 0.12], slopeLasts_m: [SLOPE_LASTS_m, SLOPE_LASTS_m] } as const;
/** A planned route has no times, so that hardly a drift is told from a slope; then it is none. */
const untimed = { change_m: [0.005, 0.2], correlation_s: [60, 60] } as const;

/**
 * The noise under which the heights are likeliest, by the innovations of the filter [Kalman1960] over up to half an hour of
 * moments, and by what is usual. So a flat road stays flat under a noisy receiver, and hills stay hills; and the slow drift of a barometer
 * is told from the fidgeting of satellites. What a receiver's own filter leaves is tried beside noise that is new in every moment.
 */
export function fitHeightNoise(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  hasTimes = true,
): HeightNoise {
  const first = Math.max(0, Math.floor((time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(time_s.length, first + LONGEST_FIT);
  const isScarce = countValues(elevation_m, first, last) < SCARCE;
  const within = { ...bounds, ...(isScarce ? scarce : {}), ...(hasTimes ? {} : untimed) };
  const likelihoodOf = (isFiltered: boolean) => (searched: Searched) => {
    const noise = noiseOf(searched, isFiltered);
    const model = heightModel(time_s, distance_m, elevation_m, noise, first, last);
    return smooth(model, false).logLikelihood - unusual(noise);
  };
  const found = starts.map(({ isFiltered, from }) => {
    const likelihood = likelihoodOf(isFiltered);
    const at = refined<Searched>(from, within, likelihood, COARSE);
    return { isFiltered, at, value: likelihood(at) };
  });
  const { isFiltered, at } = found.reduce((best, each) => (each.value > best.value ? each : best));
  return noiseOf(refined(at, within, likelihoodOf(isFiltered), FINE), isFiltered);
}

function noiseOf({ change_m, ...rest }: Searched, isFiltered: boolean): HeightNoise {
  const { correlation_s } = rest;
  // First order: variance of a second's change 2 s^2 / T; with a rate: s / T.
  return { ...rest, isFiltered, correlated_m: change_m * (isFiltered ? correlation_s : Math.sqrt(correlation_s / 2)) };
}

/** Half the sum of squares of how far a noise is from what is usual, in standard deviations. */
function unusual(noise: HeightNoise): number {
  const off = (value: number, [middle, log]: readonly [number, number]) => 0.5 * (Math.log(value / middle) / log) ** 2;
  const lasts_s = noise.isFiltered ? USUALLY_LASTS_s.filtered : USUALLY_LASTS_s.unfiltered;
  let sum = off(noise.correlation_s, [lasts_s, LASTS_LOG]);
  for (const key of Object.keys(usual) as (keyof typeof usual)[]) sum += off(noise[key], usual[key]);
  return sum;
}
