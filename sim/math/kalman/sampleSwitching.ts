import { BackwardSampler, type Chance } from "./backwardSampler.ts";
import { emptyMixtures, type Mixtures, SwitchingFilter } from "./switchingFilter.ts";
import type { SwitchingModel } from "./switchingModel.ts";

/** Events kept at once: of a long series only the filter's state at the start of each piece is kept. */
const PIECE = 4096;
/** The draws at one event, from the last event to the first: `states[draw * n + state]` and `regimes[draw]`. */
export type TakeDraws = (k: number, states: Float64Array, regimes: Uint8Array) => void;

/**
 * Draws from the posterior of a switching model, all events together: filter forward, sample backward [CarterKohn1994, sec. 2;
 * Kim1994]. Given the draw at event k + 1, regime and states at event k are drawn from
 *
 *   p(s_k | ...) ~ w_k(s) p(s_k+1 | s) N(x_k+1; F m, F P F' + Q),    x_k ~ N(m + G (x_k+1 - F m), P - G F P),  G = P F' (F P F' + Q)^-1
 *
 * Memory does not grow with the number of events but for the filter's state at every 4,096th. Yields the share done.
 */
export function* sampleSwitching(
  model: SwitchingModel,
  draws: number,
  chance: Chance,
  take: TakeDraws,
): Generator<number, void> {
  const pieces = Math.ceil(model.events / PIECE);
  const starts = emptyMixtures(model, pieces);
  const filter = new SwitchingFilter(model);
  for (let k = 0; k < model.events; k++) {
    filter.step(k);
    if (k % PIECE === 0) store(filter.now, starts, k / PIECE);
    if (k % PIECE === PIECE - 1) yield (0.4 * k) / model.events;
  }
  const sampler = new BackwardSampler(model, draws, chance);
  const kept = emptyMixtures(model, Math.min(PIECE, model.events));
  for (let piece = pieces - 1; piece >= 0; piece--) {
    const first = piece * PIECE;
    const last = Math.min(model.events, first + PIECE);
    restore(starts, piece, filter.now);
    store(filter.now, kept, 0);
    for (let k = first + 1; k < last; k++) {
      filter.step(k);
      store(filter.now, kept, k - first);
    }
    for (let k = last - 1; k >= first; k--) {
      sampler.step(k, kept, k - first);
      take(k, sampler.states, sampler.regimes);
    }
    yield 1 - (0.6 * first) / model.events;
  }
}

function store(now: Mixtures, list: Mixtures, at: number): void {
  list.weight.set(now.weight, at * now.weight.length);
  list.mean.set(now.mean, at * now.mean.length);
  list.covariance.set(now.covariance, at * now.covariance.length);
}

function restore(list: Mixtures, at: number, now: Mixtures): void {
  const part = (from: Float64Array, to: Float64Array) => to.set(from.subarray(at * to.length, (at + 1) * to.length));
  part(list.weight, now.weight);
  part(list.mean, now.mean);
  part(list.covariance, now.covariance);
}
