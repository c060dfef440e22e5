import { choleskyFactor, choleskySolve } from "../cholesky.ts";
import { type Mixtures, Passages } from "./switchingFilter.ts";
import type { SwitchingModel } from "./switchingModel.ts";

/** So often a draw that falls below zero where it must not is drawn again before it is put to zero. */
const TRIES = 12;

/** Where the draws' chance comes from. */
export interface Chance {
  /** From 0 to 1. */
  uniform(): number;
  /** Of the standard normal distribution. */
  normal(): number;
}

/** Takes all draws together from event k + 1 to event k. */
export class BackwardSampler {
  readonly states: Float64Array;
  readonly regimes: Uint8Array;
  private readonly ways: Passages;
  /** For each way into a regime (`from`): factor of the predicted covariance, the gain, factor of what is left, log of its weight. */
  private readonly factor: Float64Array;
  private readonly gain: Float64Array;
  private readonly left: Float64Array;
  private readonly logWeight: Float64Array;
  private readonly scratch: Float64Array;
  private readonly drawn: Float64Array;
  private readonly log: Float64Array;
  private readonly isReady: Uint8Array;
  private readonly through: Float64Array;
  private readonly wayMean: Float64Array;
  private readonly wayGated: Float64Array;

  private readonly model: SwitchingModel;
  private readonly draws: number;
  private readonly chance: Chance;

  constructor(model: SwitchingModel, draws: number, chance: Chance) {
    this.model = model;
    this.draws = draws;
    this.chance = chance;
    const { states: n, regimes } = model;
    this.states = new Float64Array(draws * n);
    this.regimes = new Uint8Array(draws);
    this.ways = new Passages(model);
    const ways = regimes * regimes;
    this.factor = new Float64Array(ways * n * n);
    this.gain = new Float64Array(ways * n * n);
    this.left = new Float64Array(ways * n * n);
    this.logWeight = new Float64Array(ways);
    this.wayMean = new Float64Array(ways * n);
    this.wayGated = new Float64Array(ways * n);
    this.scratch = new Float64Array(n);
    this.drawn = new Float64Array(n);
    this.log = new Float64Array(regimes);
    this.isReady = new Uint8Array(regimes);
    this.through = new Float64Array(n * n);
  }

  /** `kept` holds the filtered mixtures, that of event k at place `at`. */
  step(k: number, kept: Mixtures, at: number): void {
    if (k === this.model.events - 1) {
      this.drawLast(kept, at);
      return;
    }
    this.isReady.fill(0);
    for (let draw = 0; draw < this.draws; draw++) {
      const to = this.regimes[draw];
      if (!this.isReady[to]) {
        this.prepare(k + 1, to, kept, at);
        this.isReady[to] = 1;
      }
      this.drawOne(draw, to);
    }
  }

  private drawLast({ weight, mean, covariance }: Mixtures, at: number): void {
    const { states: n, regimes } = this.model;
    for (let regime = 0; regime < regimes; regime++) {
      this.logWeight[regime] = Math.log(weight[at * regimes + regime]);
      for (let i = 0; i < n * n; i++) this.left[regime * n * n + i] = covariance[(at * regimes + regime) * n * n + i];
      choleskyFactor(n, this.left.subarray(regime * n * n, (regime + 1) * n * n));
    }
    for (let draw = 0; draw < this.draws; draw++) {
      for (let regime = 0; regime < regimes; regime++) this.log[regime] = this.logWeight[regime];
      const regime = this.pick();
      this.regimes[draw] = regime;
      for (let i = 0; i < n; i++) this.drawn[i] = mean[(at * regimes + regime) * n + i];
      this.scatter(draw, regime, regime);
    }
  }

  /** Works out all ways from event k - 1 into regime `to` at event k. */
  private prepare(k: number, to: number, kept: Mixtures, at: number): void {
    const { model, ways } = this;
    const { states: n, regimes } = model;
    const nn = n * n;
    for (let from = 0; from < regimes; from++) {
      const way = to * regimes + from;
      ways.fill(k, from, to, kept, at);
      this.logWeight[way] = Number.NEGATIVE_INFINITY;
      if (ways.weight[from] === 0) continue;
      const factor = this.factor.subarray(way * nn, (way + 1) * nn);
      const gain = this.gain.subarray(way * nn, (way + 1) * nn);
      const left = this.left.subarray(way * nn, (way + 1) * nn);
      factor.set(ways.covariance.subarray(from * nn, (from + 1) * nn));
      choleskyFactor(n, factor);
      let log = Math.log(ways.weight[from]);
      for (let i = 0; i < n; i++) log -= Math.log(factor[i * n + i]);
      this.logWeight[way] = log;
      // Row i of P F' solved by the predicted covariance is row i of the gain.
      const gated = ways.gatedCovariance.subarray(from * nn, (from + 1) * nn);
      const { transition } = ways.passage;
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          let sum = 0;
          for (let l = 0; l < n; l++) sum += gated[i * n + l] * transition[j * n + l];
          left[i * n + j] = sum;
          this.scratch[j] = sum;
        }
        choleskySolve(n, factor, this.scratch);
        for (let j = 0; j < n; j++) gain[i * n + j] = this.scratch[j];
      }
      this.setLeft(left, gain, gated);
      for (let i = 0; i < n; i++) {
        this.wayMean[way * n + i] = ways.mean[from * n + i];
        this.wayGated[way * n + i] = ways.gatedMean[from * n + i];
      }
    }
  }

  /** P - G (P F')', factored; `left` holds P F' on entry. */
  private setLeft(left: Float64Array, gain: Float64Array, gated: Float64Array): void {
    const n = this.model.states;
    const { through } = this;
    through.set(left);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) {
        let sum = gated[i * n + j];
        for (let l = 0; l < n; l++) sum -= gain[i * n + l] * through[j * n + l];
        left[i * n + j] = sum;
        left[j * n + i] = sum;
      }
    }
    factorOfRest(n, left, gated);
  }

  private drawOne(draw: number, to: number): void {
    const { states: n, regimes } = this.model;
    const { scratch, states } = this;
    for (let from = 0; from < regimes; from++) {
      const way = to * regimes + from;
      let log = this.logWeight[way];
      if (log > Number.NEGATIVE_INFINITY) {
        // Density of the draw under the predicted Gaussian, by forward substitution.
        const base = way * n * n;
        for (let i = 0; i < n; i++) {
          let sum = states[draw * n + i] - this.wayMean[way * n + i];
          for (let j = 0; j < i; j++) sum -= this.factor[base + i * n + j] * scratch[j];
          scratch[i] = sum / this.factor[base + i * n + i];
          log -= 0.5 * scratch[i] * scratch[i];
        }
      }
      this.log[from] = log;
    }
    const from = this.pick();
    const way = to * regimes + from;
    for (let i = 0; i < n; i++) scratch[i] = states[draw * n + i] - this.wayMean[way * n + i];
    for (let i = 0; i < n; i++) {
      let sum = this.wayGated[way * n + i];
      for (let j = 0; j < n; j++) sum += this.gain[(way * n + i) * n + j] * scratch[j];
      this.drawn[i] = sum;
    }
    this.regimes[draw] = from;
    this.scatter(draw, way, from);
  }

  /** The states of a draw: `drawn` is their mean, `left` of the way given the factor of their covariance. */
  private scatter(draw: number, way: number, regime: number): void {
    const { states: n } = this.model;
    const positive = this.model.positiveState(regime);
    const base = way * n * n;
    for (let attempt = 0; ; attempt++) {
      for (let i = 0; i < n; i++) this.scratch[i] = this.chance.normal();
      for (let i = 0; i < n; i++) {
        let sum = this.drawn[i];
        for (let j = 0; j <= i; j++) sum += this.left[base + i * n + j] * this.scratch[j];
        this.states[draw * n + i] = sum;
      }
      if (positive < 0 || this.states[draw * n + positive] >= 0) return;
      if (attempt === TRIES) {
        this.states[draw * n + positive] = 0;
        return;
      }
    }
  }

  /** A regime drawn by the logarithms of the weights in `log`. */
  private pick(): number {
    const { log } = this;
    const { regimes } = this.model;
    let most = Number.NEGATIVE_INFINITY;
    for (let regime = 0; regime < regimes; regime++) most = Math.max(most, log[regime]);
    let total = 0;
    for (let regime = 0; regime < regimes; regime++) {
      log[regime] = Math.exp(log[regime] - most);
      total += log[regime];
    }
    let left = this.chance.uniform() * total;
    for (let regime = 0; regime < regimes - 1; regime++) {
      left -= log[regime];
      if (left < 0) return regime;
    }
    return regimes - 1;
  }
}

/**
 * Cholesky factor of a covariance left after conditioning, in place. What is known almost for certain is lost to rounding; a
 * variance below 1e-10 of what it was before (`before`) is taken as none.
 */
function factorOfRest(n: number, left: Float64Array, before: Float64Array): void {
  for (let j = 0; j < n; j++) {
    let pivot = left[j * n + j];
    for (let l = 0; l < j; l++) pivot -= left[j * n + l] * left[j * n + l];
    const root = pivot > 1e-10 * before[j * n + j] ? Math.sqrt(pivot) : 0;
    left[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = left[i * n + j];
      for (let l = 0; l < j; l++) sum -= left[i * n + l] * left[j * n + l];
      left[i * n + j] = root > 0 ? sum / root : 0;
    }
  }
}
