import type { Field } from "./fieldList.ts";
import { chosen, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the days that the packs are judged by, and of words. */
export const jobFields: Readonly<Record<string, Field>> = {
  title: { type: "line", label: "Name of the job" },
  client: { type: "line", label: "Client, for the sheet", isOptional: true },
  workshop: { type: "line", label: "Workshop, for the sheet", isOptional: true },
  use: { type: "text", label: "What the car is for, in the client's own words" },
  usualDay_km: quantity("distance", "Usual day", {
    help: "What the car does on an ordinary day. Not the longest day of the year.",
  }),
  longestDay_km: quantity("distance", "Longest day of the year", {
    ...optional,
    help: "Kept apart from the usual day, so that one trip a year does not size the pack.",
  }),
  longestDaysAYear: quantity("count", "Times a year", { ...optional, ...chosen }),
  "requirement.topSpeed_kmh": quantity("speed", "Top speed wanted", {
    ...optional,
    ...chosen,
    help: "The fastest the client really drives. Left empty, only the road is asked for.",
  }),
  "requirement.startHill_ratio": quantity("gradient", "Steepest hill to start on", {
    ...optional,
    ...chosen,
    help: "From rest, with everybody aboard: 1 in 6, 17 % or 9.5 deg. Left empty, only the road is asked for.",
  }),
  "requirement.hillLength_km": quantity("distance", "Length of that hill", {
    ...optional,
    ...chosen,
    help: "Left empty: 1 km of it, or what the road has.",
  }),
  "requirement.hotDay_degC": quantity("temperature", "A hot day", {
    ...optional,
    ...chosen,
    help: "Of the air, in the shade. Left empty: 35 °C.",
  }),
  "sizing.day": {
    type: "choice",
    label: "Day on one charge",
    choices: { usual: "the usual day", longest: "the longest day" },
  },
  "sizing.condition": {
    type: "choice",
    label: "In which state",
    choices: { new: "new", winter: "winter", tenYearsWinter: "ten years, winter" },
  },
  "sizing.reserve_km": quantity("distance", "Left on coming home", {
    ...optional,
    ...chosen,
    help: "What the client wants to have left. Left empty: none.",
  }),
  "sizing.sure": {
    type: "choice",
    label: "How sure",
    choices: { asTaken: "with the values as taken", wholeBand: "with all that is not known" },
  },
  "sizing.modulesMost": quantity("count", "Modules at most", {
    ...optional,
    ...chosen,
    help: "How far is looked, up to 400. Left empty: twice the largest pack of the job, and at least 24.",
  }),
  "sizing.packMost_kg": quantity("mass", "Pack at most, with boxes", { ...optional, ...chosen }),
  "notes.*.text": {
    type: "text",
    label: "Note",
    help: "Markdown: **bold**, - lists, and Figure 3 becomes a link that follows that figure, whatever number it has later.",
  },
  "allowance.winter_ratio": quantity("coefficient", "Energy in winter, times today's", {
    ...chosen,
    ...usual(1.33, "a third more: heater, cold tyres, cold pack"),
  }),
  "allowance.aged_frac": quantity("fraction", "Capacity at ten years", {
    ...chosen,
    ...usual(0.75, "0.70 to 0.85 after ten years; nobody can promise it"),
  }),
};
