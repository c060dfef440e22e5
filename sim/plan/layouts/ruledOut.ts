import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import { layoutName } from "../../battery/layoutName.ts";
import { testMass_kg } from "../../vehicle/masses.ts";
import { packSplit } from "../weight/packSplit.ts";
import { axleLoads } from "../weight/weigh.ts";
import type { LayoutFigures } from "./layoutFigures.ts";

/** Why a layout is not a pack for this car. */
export type Fault =
  | "aboveController"
  | "belowController"
  | "sagsBelowController"
  | "aboveCharger"
  | "belowCharger"
  | "aboveConverter"
  | "belowConverter"
  | "continuousCurrent"
  | "peakCurrent"
  | "untested"
  | "tooHeavy"
  | "aboveGross"
  | "axleAbovePlate";

/** A layout that is ruled out, with the sentence that says why. */
export interface RuledOut {
  readonly fault: Fault;
  readonly reason: Message;
}

/** What of a job a layout must fit. */
export type FitJob = Pick<
  Job,
  "module" | "packs" | "controller" | "charger" | "accessories" | "vehicle" | "weights" | "sizing"
>;

/**
 * Why a layout is ruled out, the first reason in this order, or nothing: full, it may not be above what controller, charger and DC-DC
 * converter take; on average and under load when nearly empty not below what they need; no string may pass more than its modules stand for
 * good and for ten seconds; and the car may not be heavier than its plates, nor the pack than is asked.
 */
export function ruledOut(job: FitJob, pack: Pack, figures: LayoutFigures): RuledOut | undefined {
  return (
    tooManyVolts(job, pack, figures) ??
    tooFewVolts(job, pack, figures) ??
    tooMuchCurrent(job, pack, figures) ??
    tooMuchMass(job, pack, figures)
  );
}

function tooManyVolts(job: FitJob, { seriesModules: series }: Pack, { full_V }: LayoutFigures): RuledOut | undefined {
  const { controller, charger, accessories } = job;
  const each_V = full_V / series;
  const above = (most_V: number | undefined, fault: Fault, who: string): RuledOut | undefined => {
    if (most_V === undefined || full_V <= most_V) return undefined;
    const fitting = Math.floor(most_V / each_V + ROUNDING);
    const most = fitting >= 1 ? `at most ${fitting}` : "not even one module fits";
    return {
      fault,
      reason: message`${series}s: ${q("voltage", full_V)} full, ${who} ${q("voltage", most_V)}: ${most}`,
    };
  };
  return (
    above(controller.max_V, "aboveController", "the controller stops at") ??
    above(charger.max_V, "aboveCharger", "the charger goes to") ??
    above(accessories.dcdcMax_V, "aboveConverter", "the DC-DC converter takes")
  );
}

function tooFewVolts(job: FitJob, pack: Pack, figures: LayoutFigures): RuledOut | undefined {
  const { controller, charger, accessories } = job;
  const { nominal_V, loaded_V, flat_V } = figures;
  const series = pack.seriesModules;
  const below = (have_V: number, least_V: number | undefined, fault: Fault, when: string, who: string) => {
    if (least_V === undefined || have_V >= least_V) return undefined;
    const least = Math.ceil((least_V / have_V) * series - ROUNDING);
    return {
      fault,
      reason: message`${series}s: ${q("voltage", have_V)} ${when}, ${who} ${q("voltage", least_V)}: at least ${least}`,
    };
  };
  return (
    below(nominal_V, controller.min_V, "belowController", "on average", "the controller needs") ??
    below(flat_V, charger.min_V, "belowCharger", "empty", "the charger begins at") ??
    below(flat_V, accessories.dcdcMin_V, "belowConverter", "empty", "the DC-DC converter needs") ??
    sagging(job, pack, loaded_V)
  );
}

/** More in series hold it up, and so do more strings, where the voltage does not rise too far by the former. */
function sagging(
  { controller }: FitJob,
  { seriesModules, parallelModules }: Pack,
  loaded_V: number,
): RuledOut | undefined {
  if (loaded_V >= controller.min_V) return undefined;
  const layout = layoutName(seriesModules, parallelModules);
  const why =
    loaded_V > 0
      ? message`${q("voltage", loaded_V)} under this road’s load when nearly empty, the controller stops at ${q("voltage", controller.min_V)}`
      : message`nearly empty, it does not give what this road asks for ten seconds`;
  return { fault: "sagsBelowController", reason: message`${layout}: ${why}` };
}

/** Counts that are whole but for rounding errors stay. */
const ROUNDING = 1e-9;

function tooMuchCurrent({ module }: FitJob, pack: Pack, { string_A }: LayoutFigures): RuledOut | undefined {
  const { seriesModules: series, parallelModules: parallel } = pack;
  const { continuous_A, peak_A, peak_s } = module.discharge;
  const layout = layoutName(series, parallel);
  const needs = (each_A: number, most_A: number) => `at least ${Math.ceil((each_A / most_A) * parallel)} strings`;
  if (string_A.rms > continuous_A)
    return {
      fault: "continuousCurrent",
      reason: message`${layout}: ${q("current", string_A.rms)} in each string over this road, its modules give ${q("current", continuous_A)} for good: ${needs(string_A.rms, continuous_A)}`,
    };
  // A peak that may last for less than ten seconds counts for nothing here.
  const tenSeconds_A = peak_s >= 10 ? peak_A : continuous_A;
  if (string_A.tenSeconds > tenSeconds_A)
    return {
      fault: "peakCurrent",
      reason: message`${layout}: ${q("current", string_A.tenSeconds)} in each string for ten seconds of this road, its modules give ${q("current", tenSeconds_A)}: ${needs(string_A.tenSeconds, tenSeconds_A)}`,
    };
  return undefined;
}

/** Too many modules or too much mass: what is left of the checks for a pack that is given whole. */
export function tooMuchMass(
  job: FitJob,
  pack: Pack,
  { mass_kg }: Pick<LayoutFigures, "mass_kg">,
): RuledOut | undefined {
  const { vehicle, module, weights, sizing } = job;
  const { seriesModules, parallelModules } = pack;
  const layout = layoutName(seriesModules, parallelModules);
  const modules = seriesModules * parallelModules;
  const tested = module.tested?.length;
  if (tested !== undefined && modules > tested)
    return { fault: "untested", reason: message`${layout}: ${modules} modules, and ${tested} were tested` };
  const { packMost_kg } = sizing;
  if (packMost_kg !== undefined && mass_kg > packMost_kg)
    return {
      fault: "tooHeavy",
      reason: message`${layout}: ${whole("mass", mass_kg, "up")} with its boxes, and at most ${whole("mass", packMost_kg)} are asked for`,
    };
  const driven_kg = testMass_kg(vehicle, mass_kg);
  if (vehicle.gross_kg !== undefined && driven_kg > vehicle.gross_kg)
    return {
      fault: "aboveGross",
      reason: message`${layout}: the car weighs ${whole("mass", driven_kg, "up")} as driven, ${whole("mass", driven_kg - vehicle.gross_kg, "up")} more than its plate allows`,
    };
  if (weights === undefined) return undefined;
  const over = axleLoads({ module, packs: [pack] }, weights).find(
    (load) => load.pack !== undefined && load.over.length > 0,
  );
  // Where another division between the boxes meets every plate, the boxes are to be moved, not the modules.
  if (over === undefined || packSplit(weights, mass_kg)?.low_frac !== undefined) return undefined;
  const [{ what, by_kg }] = over.over;
  return {
    fault: "axleAbovePlate",
    reason: message`${layout}: ${what}, ${over.name}, ${whole("mass", by_kg, "up")} above what it may carry`,
  };
}
