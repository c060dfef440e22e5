import type { Field } from "./fieldList.ts";
import { chosen, quantity } from "./quantityFieldOf.ts";

/** Fields of the year that the packs are judged over. */
export const yearFields: Readonly<Record<string, Field>> = {
  "year.months_degC.*": quantity("temperature", "Mean temperature of the month", { ...chosen }),
  "year.scatter_K": quantity("coefficient", "Days about their month, K", {
    ...chosen,
    help: "How far single days lie from their month's mean, as a standard deviation: 2 to 4 K. Assumed.",
  }),
  "year.daysAWeek": quantity("count", "Driving days a week", { ...chosen }),
  "year.holidayWeeks": quantity("count", "Weeks without driving", { ...chosen }),
  "year.spread_frac": quantity("fraction", "Usual days differ by", {
    ...chosen,
    help: "At most, up or down: 20 % makes days of 32 to 48 of a usual day of 40.",
  }),
  "year.daysDriven_km.*": quantity("distance", "Driven day", { ...chosen }),
};
