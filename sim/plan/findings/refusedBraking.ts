import { J_PER_WH, M_PER_KM } from "../../../shared/units.ts";
import { type PackModel, packWith } from "../../battery/packModel.ts";
import { firstWhere } from "../../math/halving.ts";
import { type ControllerModel, controllerWith } from "../../motor/motorModel.ts";
import { type Model, modelWith } from "../../step/model.ts";
import { recorded, run } from "../../step/run.ts";
import type { Totals } from "../../step/totals.ts";
import type { Trace } from "../../trace/trace.ts";
import type { RefusedBraking } from "../driveReport.ts";

/** A step counts as refused where the pack takes less than this share of what it would take otherwise. */
const TAKEN_frac = 0.9;
/** Less than this, in watt-hours on one pass, nobody would notice. */
const WORTH_Wh = 5;
/** Charge to begin with is found to this. */
const CHARGE_frac = 0.01;

interface Unbounded {
  readonly pack: Partial<PackModel>;
  readonly controller: Partial<ControllerModel>;
}

/** What a full pack bounds, its voltage included, and what a cold one does. */
const NO_BOUND = Number.POSITIVE_INFINITY;
const neverFull: Unbounded = {
  pack: { regenTo_frac: NO_BOUND, max_V: NO_BOUND },
  controller: { max_V: NO_BOUND, rollBackAbove_V: NO_BOUND },
};
const neverCold: Unbounded = { pack: { coldChargeNone_K: -NO_BOUND, coldChargeFull_K: -NO_BOUND }, controller: {} };

/**
 * Braking that the pack refused on one pass, `driven`, because it was full or its cells were cold: the same pass driven with a pack
 * that never is, and what that one took more. Nothing where it is not worth a word.
 */
export function refusedBraking(
  model: Model,
  trace: Trace,
  driven: Totals,
): { readonly full?: RefusedBraking; readonly cold?: RefusedBraking } {
  if (model.controller.regen_Nm === 0) return {};
  const full = refused(model, trace, driven, neverFull);
  const isCold = model.packStart_K < model.pack.coldChargeFull_K;
  const cold = isCold ? refused(model, trace, driven, neverCold) : undefined;
  const start_frac = full && chargeThatTakesAll(model, trace);
  return {
    ...(full && { full: { ...full, ...(start_frac !== undefined && { start_frac }) } }),
    ...(cold && { cold }),
  };
}

function refused(model: Model, trace: Trace, driven: Totals, without: Unbounded): RefusedBraking | undefined {
  const willing = unbounded(model, without);
  const { totals } = run(willing, trace);
  if (totals.regen_J - driven.regen_J < WORTH_Wh * J_PER_WH) return undefined;
  const ours = recorded(model, trace);
  const theirs = recorded(willing, trace);
  let refused_m = 0;
  for (let i = 1; i < Math.min(ours.length, theirs.length); i++) {
    if (theirs.controller_W[i] < 0 && ours.controller_W[i] > TAKEN_frac * theirs.controller_W[i])
      refused_m += theirs.distance_m[i] - theirs.distance_m[i - 1];
  }
  return { energy_Wh: (totals.regen_J - driven.regen_J) / J_PER_WH, distance_km: refused_m / M_PER_KM };
}

/** The highest charge to begin with from which the pack takes all of the braking; nothing where there is none above the floor. */
function chargeThatTakesAll(model: Model, trace: Trace): number | undefined {
  const { ceiling_frac, floor_frac } = model.pack;
  const willing = unbounded(model, neverFull);
  const takesAll = (start_frac: number) =>
    run(willing, trace, undefined, start_frac).totals.regen_J -
      run(model, trace, undefined, start_frac).totals.regen_J <
    WORTH_Wh * J_PER_WH;
  const steps = Math.floor((ceiling_frac - floor_frac) / CHARGE_frac);
  const takesAllBelow = (hundredths: number) => takesAll(ceiling_frac - hundredths * CHARGE_frac);
  if (!takesAllBelow(steps)) return undefined;
  // The fewest hundredths below the ceiling that are enough; at the ceiling itself braking is refused, or nobody would ask.
  return ceiling_frac - firstWhere(1, steps, takesAllBelow) * CHARGE_frac;
}

function unbounded(model: Model, without: Unbounded): Model {
  return modelWith(model, {
    pack: packWith(model.pack, without.pack),
    controller: controllerWith(model.controller, without.controller),
  });
}
