import { type AboveZero, aboveZero } from "./aboveZero.ts";
import { throughGate } from "./gate.ts";
import { predictCovariance, predictMeans } from "./predict.ts";
import { scalarUpdate, setMoments } from "./scalarUpdate.ts";
import type { Observe, Passage, SwitchingModel } from "./switchingModel.ts";

/** Below this weight a regime is as good as impossible. */
const NONE = 1e-12;

/** One Gaussian for each regime with its weight, event after event: `mean[(k * regimes + regime) * states + state]`. */
export interface Mixtures {
  readonly weight: Float64Array;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

export function emptyMixtures(model: SwitchingModel, events: number): Mixtures {
  const each = events * model.regimes;
  return {
    weight: new Float64Array(each),
    mean: new Float64Array(each * model.states),
    covariance: new Float64Array(each * model.states ** 2),
  };
}

/**
 * The filter for a model that switches: one Kalman filter for each regime, whose Gaussians are brought together at every event by
 * their first two moments [Kim1994, eq. 2.5 to 2.16]. Exact with a single regime; with more, as good as one Gaussian a regime can be.
 */
export class SwitchingFilter {
  /** Sum of the logarithms of the measurements' densities so far. */
  logLikelihood = 0;
  readonly now: Mixtures;
  private readonly next: Mixtures;
  private readonly ways: Passages;
  private readonly gain: Float64Array;
  private readonly tail: AboveZero = { share: 1, mean: 0, variance: 0 };
  /** Mean and covariance of each regime in `now`, as views made once. */
  private readonly means: readonly Float64Array[];
  private readonly covariances: readonly Float64Array[];
  /** The regime that is being measured, and its density so far. */
  private measured = 0;
  private log = 0;
  private readonly observe: Observe;

  private readonly model: SwitchingModel;

  constructor(model: SwitchingModel) {
    this.model = model;
    this.now = emptyMixtures(model, 1);
    this.next = emptyMixtures(model, 1);
    this.ways = new Passages(model);
    this.gain = new Float64Array(model.states);
    const { states: n, regimes } = model;
    this.means = views(this.now.mean, regimes, n);
    this.covariances = views(this.now.covariance, regimes, n * n);
    this.observe = (row, variance, value) => {
      const at = this.measured;
      this.log += scalarUpdate(n, this.means[at], this.covariances[at], row, variance, value, this.gain);
    };
  }

  /** Takes the filter to event k, from event k - 1. */
  step(k: number): void {
    const { model, now } = this;
    if (k === 0) {
      this.logLikelihood = 0;
      for (let regime = 0; regime < model.regimes; regime++) {
        now.weight[regime] = model.startWeight[regime];
        now.mean.set(model.startMean, regime * model.states);
        now.covariance.set(model.startCovariance, regime * model.states ** 2);
      }
    } else {
      this.predict(k);
    }
    this.measure(k);
  }

  private predict(k: number): void {
    const { model, now, next, ways } = this;
    const { states: n, regimes } = model;
    next.weight.fill(0);
    next.mean.fill(0);
    next.covariance.fill(0);
    for (let to = 0; to < regimes; to++) {
      for (let from = 0; from < regimes; from++) {
        ways.fill(k, from, to, now, 0);
        const weight = ways.weight[from];
        next.weight[to] += weight;
        for (let i = 0; i < n; i++) next.mean[to * n + i] += weight * ways.mean[from * n + i];
      }
      const total = next.weight[to];
      if (total < NONE) {
        // Impossible: some Gaussian must stand there all the same.
        next.weight[to] = 0;
        next.mean.set(now.mean.subarray(to * n, (to + 1) * n), to * n);
        next.covariance.set(now.covariance.subarray(to * n * n, (to + 1) * n * n), to * n * n);
        continue;
      }
      for (let i = 0; i < n; i++) next.mean[to * n + i] /= total;
      for (let from = 0; from < regimes; from++) {
        const share = ways.weight[from] / total;
        if (share === 0) continue;
        for (let i = 0; i < n; i++) {
          const di = ways.mean[from * n + i] - next.mean[to * n + i];
          for (let j = 0; j < n; j++) {
            const dj = ways.mean[from * n + j] - next.mean[to * n + j];
            next.covariance[(to * n + i) * n + j] += share * (ways.covariance[(from * n + i) * n + j] + di * dj);
          }
        }
      }
    }
    now.weight.set(next.weight);
    now.mean.set(next.mean);
    now.covariance.set(next.covariance);
  }

  private measure(k: number): void {
    const { model, now, gain, tail } = this;
    const { states: n, regimes } = model;
    let most = Number.NEGATIVE_INFINITY;
    for (let regime = 0; regime < regimes; regime++) {
      if (now.weight[regime] < NONE) {
        now.weight[regime] = Number.NEGATIVE_INFINITY;
        continue;
      }
      const mean = this.means[regime];
      const covariance = this.covariances[regime];
      this.measured = regime;
      this.log = Math.log(now.weight[regime]);
      model.measure(k, this.observe);
      let { log } = this;
      const positive = model.positiveState(regime);
      if (positive >= 0 && mean[positive] < 3.5 * Math.sqrt(covariance[positive * n + positive])) {
        aboveZero(mean[positive], covariance[positive * n + positive], tail);
        setMoments(n, mean, covariance, positive, tail.mean, tail.variance, gain);
        log += Math.log(Math.max(tail.share, 1e-30));
      }
      now.weight[regime] = log;
      most = Math.max(most, log);
    }
    if (most === Number.NEGATIVE_INFINITY) throw new Error(`no regime is possible at event ${k}`);
    let total = 0;
    for (let regime = 0; regime < regimes; regime++) {
      now.weight[regime] = Math.exp(now.weight[regime] - most);
      total += now.weight[regime];
    }
    for (let regime = 0; regime < regimes; regime++) now.weight[regime] /= total;
    this.logLikelihood += most + Math.log(total);
  }
}

/** Views of equal width on an array, so that none is made at every event. */
function views(array: Float64Array, count: number, width: number): readonly Float64Array[] {
  return Array.from({ length: count }, (_, i) => array.subarray(i * width, (i + 1) * width));
}

/** What comes into one regime from each of the others: gated, weighted and predicted. */
export class Passages {
  /** Weight at the event before times the probability of the way, by the regime it comes from. */
  readonly weight: Float64Array;
  /** Predicted Gaussians, by the regime they come from. */
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** The Gaussians before, after their gate. */
  readonly gatedMean: Float64Array;
  readonly gatedCovariance: Float64Array;
  readonly passage: Passage;
  private readonly gatedMeans: readonly Float64Array[];
  private readonly gatedCovariances: readonly Float64Array[];
  private readonly means: readonly Float64Array[];
  private readonly covariances: readonly Float64Array[];
  private readonly work: Float64Array;
  private readonly gain: Float64Array;

  private readonly model: SwitchingModel;

  constructor(model: SwitchingModel) {
    this.model = model;
    const { states: n, regimes } = model;
    this.weight = new Float64Array(regimes);
    this.mean = new Float64Array(regimes * n);
    this.covariance = new Float64Array(regimes * n * n);
    this.gatedMean = new Float64Array(regimes * n);
    this.gatedCovariance = new Float64Array(regimes * n * n);
    this.passage = {
      transition: new Float64Array(n * n),
      shift: new Float64Array(n),
      noise: new Float64Array(n * n),
      gateSide: 0,
      gateRow: new Float64Array(n),
      gateLevel: 0,
      gateSpread: 0,
    };
    this.work = new Float64Array(n * n);
    this.gain = new Float64Array(n);
    this.gatedMeans = views(this.gatedMean, regimes, n);
    this.gatedCovariances = views(this.gatedCovariance, regimes, n * n);
    this.means = views(this.mean, regimes, n);
    this.covariances = views(this.covariance, regimes, n * n);
  }

  /** Works the way `from` -> `to` out, from the mixture at place `at` of `before`; its matrices are in `passage` afterwards. */
  fill(k: number, from: number, to: number, before: Mixtures, at: number): void {
    const { model, passage } = this;
    const { states: n, regimes } = model;
    const weightBefore = before.weight[at * regimes + from];
    this.weight[from] = 0;
    if (weightBefore < NONE) return;
    passage.transition.fill(0);
    passage.shift.fill(0);
    passage.noise.fill(0);
    passage.gateRow.fill(0);
    passage.gateSide = 0;
    let weight = weightBefore * model.passage(k, from, to, passage);
    if (weight < NONE) return;
    const mean = this.gatedMeans[from];
    const covariance = this.gatedCovariances[from];
    const place = at * regimes + from;
    for (let i = 0; i < n; i++) mean[i] = before.mean[place * n + i];
    for (let i = 0; i < n * n; i++) covariance[i] = before.covariance[place * n * n + i];
    if (passage.gateSide !== 0) {
      weight *= throughGate(n, mean, covariance, passage, this.gain);
      if (weight < NONE) return;
    }
    this.weight[from] = weight;
    const predicted = this.means[from];
    predictMeans(n, 1, passage.transition, mean, predicted);
    for (let i = 0; i < n; i++) predicted[i] += passage.shift[i];
    const spread = this.covariances[from];
    spread.set(covariance);
    predictCovariance(n, passage.transition, passage.noise, spread, this.work);
  }
}
