import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { CarFit } from "./describeFit.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import { type FitSetting, fitCar } from "./fitCar.ts";

/** Differences that are left over so many times what they may be off ask for another mass. Assumed. */
const ODD_ratio = 2.2;
/** A mass is another one where it is off by so much, and by so many of its own standard deviations, and explains so much of what is left. Assumed. */
const OTHER_MASS_frac = 0.15;
const OTHER_MASS_ratio = 3;
const EXPLAINED_ratio = 0.7;
/** What tyres, brakes and bearings, and what bodies of one kind differ by at most. Assumed. */
const ROLLING = { low: 0.5, high: 2.5 };
const DRAG = { low: 0.6, high: 1.8 };
/** A car that is so much faster than its model for so long has another motor, gear or limit. Assumed. */
const FASTER_mps = 1.5;
const FASTER_s = 15;
/** No controller lets more through than its limit and what meters are off. Assumed. */
const BEYOND_ratio = 1.15;

/** Why a log can hardly be of the job's car, a sentence each by what physics shows of it; none where it may well be. */
export function anotherCarWords(setting: FitSetting, fit: CarFit, drive: DrivenAsMeasured, peak_A: number): Message[] {
  const mass = massWords(setting, fit);
  return [...mass, ...(mass.length > 0 ? [] : valueWords(fit)), ...fasterWords(drive), ...ampsWords(setting, peak_A)];
}

/** Starts and climbs ask for as much as the mass does: a log of a heavier or lighter car fits once its mass is free. */
function massWords(setting: FitSetting, fit: CarFit): Message[] {
  if (fit.misfit_ratio < ODD_ratio && fit.fitted.every(isUsual)) return [];
  const known = setting.parameters.find(({ id }) => id === "mass");
  if (!known) return [];
  const parameters = setting.parameters.map((each) =>
    each === known ? { ...each, before: 0.5, low: 0.3, high: 3 } : each,
  );
  const free = fitCar({ ...setting, parameters });
  const mass = free.fitted.find(({ id }) => id === "mass");
  const least_frac = Math.max(OTHER_MASS_frac, OTHER_MASS_ratio * known.before);
  if (!mass || Math.abs(mass.value - 1) < least_frac || free.misfit_ratio > EXPLAINED_ratio * fit.misfit_ratio)
    return [];
  const { testMass_kg } = setting.model;
  const kg = (ratio: number) => q("mass", ratio * testMass_kg, 3);
  return [
    message`This log does not fit the job: its starts and climbs are those of a car of ${kg(mass.value)} as driven (${kg(mass.low)} to ${kg(mass.high)}), and the job’s has ${kg(1)}. Is it the log of another car, or of another load?`,
  ];
}

function isUsual({ id, value }: CarFit["fitted"][number]): boolean {
  const bounds = id === "rolling" ? ROLLING : id === "drag" ? DRAG : undefined;
  return bounds === undefined || (value >= bounds.low && value <= bounds.high);
}

function valueWords({ fitted }: CarFit): Message[] {
  return fitted
    .filter((one) => !isUsual(one))
    .map(({ id, value }) => {
      const name = id === "rolling" ? "rolling resistance" : "air drag";
      const of = id === "rolling" ? "tyres and brakes" : "wind and what stands open";
      return message`This log does not fit the job: it asks for ${q("fraction", value, 2)} of the job’s ${name}, which is beyond what ${of} make. Is it the log of another car, or are mass, gear or the amps’ scale others than in the job?`;
    });
}

function fasterWords({ target_mps, speed_mps }: DrivenAsMeasured): Message[] {
  let [seconds, most_mps, at_mps] = [0, 0, 0];
  target_mps.forEach((target, i) => {
    const by_mps = target - speed_mps[i];
    if (by_mps < FASTER_mps) return;
    seconds++;
    if (by_mps > most_mps) [most_mps, at_mps] = [by_mps, target];
  });
  if (seconds < FASTER_s) return [];
  return [
    message`This log does not fit the job: for ${q("duration", seconds, 2)} the car was faster than the job’s motor, gear and pack can make it, at ${q("speed", at_mps / MPS_PER_KMH)} by ${q("speed", most_mps / MPS_PER_KMH, 2)}. Is another motor or gear fitted, is its limit set higher, or is it the log of another car?`,
  ];
}

function ampsWords({ model }: FitSetting, peak_A: number): Message[] {
  const { current_A } = model.controller;
  if (!(peak_A > BEYOND_ratio * current_A)) return [];
  return [
    message`This log does not fit the job: amps up to ${q("current", peak_A, 3)} were logged, and the job’s controller lets ${q("current", current_A, 3)} through. Are the amps’ scale and the controller those of this car?`,
  ];
}
