import asPredicted from "./asPredicted.ts";
import axleWeights from "./axleWeights.ts";
import charging from "./charging.ts";
import conditions from "./conditions.ts";
import currentsAndFuses from "./currentsAndFuses.ts";
import energyPerKm from "./energyPerKm.ts";
import heat from "./heat.ts";
import hills from "./hills.ts";
import money from "./money.ts";
import motor from "./motor.ts";
import motorAndGears from "./motorAndGears.ts";
import operatingPoints from "./operatingPoints.ts";
import ownCharts from "./ownCharts.ts";
import pace from "./pace.ts";
import packs from "./packs.ts";
import type { AnySection } from "./parts/section.ts";
import promisedAndDriven from "./promisedAndDriven.ts";
import regen from "./regen.ts";
import roadLoad from "./roadLoad.ts";
import settings from "./settings.ts";
import smallestPack from "./smallestPack.ts";
import stateOfCharge from "./stateOfCharge.ts";
import theCar from "./theCar.ts";
import theJob from "./theJob.ts";
import theRoad from "./theRoad.ts";
import theWeek from "./theWeek.ts";
import theYear from "./theYear.ts";
import torqueLimit from "./torqueLimit.ts";
import whatIsOpen from "./whatIsOpen.ts";
import whichIsEnough from "./whichIsEnough.ts";

/** The sections of the notebook, in the order of the job. */
export const sections: readonly AnySection[] = [
  theJob,
  theCar,
  axleWeights,
  roadLoad,
  theRoad,
  motor,
  motorAndGears,
  torqueLimit,
  pace,
  hills,
  heat,
  regen,
  packs,
  smallestPack,
  conditions,
  theYear,
  charging,
  theWeek,
  currentsAndFuses,
  settings,
  energyPerKm,
  operatingPoints,
  stateOfCharge,
  ownCharts,
  whatIsOpen,
  whichIsEnough,
  promisedAndDriven,
  asPredicted,
  money,
];
