import { common_h, isWithin, span_h } from "../../../shared/job/hoursOfDay.ts";
import type { Hours } from "../../../shared/job/schema/clock.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { J_PER_KWH, S_PER_H } from "../../../shared/units.ts";
import { straightAt } from "../../math/straightAt.ts";
import type { Charge } from "./chargePack.ts";

/** The hours that a night's charge has: those that are cheap while the car stands there, else all in which it stands there. */
export interface Night {
  readonly span: Hours;
  readonly hours_h: number;
  readonly isCheap: boolean;
}

/** The night at a supply; nothing where neither its hours nor cheap ones are known. */
export function nightAt({ hours, cheap }: Supply): Night | undefined {
  if (cheap) return { span: cheap, hours_h: hours ? common_h(hours, cheap) : span_h(cheap), isCheap: true };
  return hours && { span: hours, hours_h: span_h(hours), isCheap: false };
}

/** Price of a kilowatt-hour at a time of day, in hours since midnight, in the job's currency; nothing where no price is known. */
export function priceAt_perkWh({ price_perkWh, cheap }: Supply, time_h: number): number | undefined {
  return cheap?.price_perkWh !== undefined && (price_perkWh === undefined || isWithin(cheap, time_h))
    ? cheap.price_perkWh
    : price_perkWh;
}

/**
 * What a charge costs that begins with the cheap hours and goes on without a pause, in the job's currency; nothing where no price is
 * known. What does not fit into the cheap hours costs the other price.
 */
export function costOf({ course, wall_J }: Pick<Charge, "course" | "wall_J">, supply: Supply): number | undefined {
  const { price_perkWh, cheap } = supply;
  const night = nightAt(supply);
  const whole_kWh = wall_J / J_PER_KWH;
  if (cheap?.price_perkWh === undefined || night === undefined)
    return price_perkWh === undefined ? undefined : price_perkWh * whole_kWh;
  const cheap_kWh = straightAt(course.time_s, course.wall_J, night.hours_h * S_PER_H) / J_PER_KWH;
  const rest_kWh = whole_kWh - cheap_kWh;
  return cheap.price_perkWh * cheap_kWh + (price_perkWh ?? cheap.price_perkWh) * rest_kWh;
}
