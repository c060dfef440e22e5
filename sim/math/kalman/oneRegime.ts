import type { MotionModel } from "./motionModel.ts";
import type { SwitchingModel } from "./switchingModel.ts";

/** A model that does not switch, of one axis, as the sampler wants it: draws from the posterior that `smooth` gives the mean of. */
export function oneRegime(model: MotionModel): SwitchingModel {
  return {
    states: model.states,
    regimes: 1,
    events: model.events,
    startWeight: Float64Array.of(1),
    startMean: model.startMean,
    startCovariance: model.startCovariance,
    positiveState: () => -1,
    // From the only regime to the only regime.
    passage(k, ...[, , { transition, noise }]) {
      model.transition(k, transition, noise);
      return 1;
    },
    measure(k, observe) {
      model.measure(k, (row, variance, values) => observe(row, variance, values[0]));
    },
  };
}
