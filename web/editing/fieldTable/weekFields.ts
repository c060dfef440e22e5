import { type Weekday, weekdayNames, weekdays } from "../../../shared/job/weekdays.ts";
import type { Field } from "./fieldList.ts";
import { chosen, optional, quantity } from "./quantityFieldOf.ts";

const days: Readonly<Record<Weekday, string>> = weekdayNames;
const time = "By a clock of 24 hours: 7:40.";

/** What each way of driving a road is called. */
export const wayWords: Readonly<Record<"once" | "back" | "thereAndBack", string>> = {
  once: "out",
  back: "back",
  thereAndBack: "there and back",
};

/** Fields of the week by the clock. Roads and places are chosen from the job's own where they stand on the page. */
export const weekFields: Readonly<Record<string, Field>> = {
  "week.days.*.from": { type: "choice", label: "From", choices: days },
  "week.days.*.to": {
    type: "choice",
    label: "To",
    choices: days,
    help: `The same as “From” for one day; ${weekdayNames[weekdays[0]]} begins the week.`,
  },
  "week.days.*.name": { type: "line", label: "Called", help: "In the client’s words, if at all.", isOptional: true },
  "week.days.*.trips.*.leaves": { type: "line", label: "Leaves", help: time },
  "week.days.*.trips.*.arrives": { type: "line", label: "Arrives", help: time },
  "week.days.*.trips.*.road": { type: "line", label: "Road" },
  "week.days.*.trips.*.way": { type: "choice", label: "Way", choices: wayWords },
  "week.days.*.trips.*.distance_km": quantity("distance", "Distance in all", {
    ...chosen,
    ...optional,
    help: "Left empty: the whole road. Driven over and over where it is longer than the road.",
  }),
  "week.days.*.trips.*.parkedAt": { type: "line", label: "Then charged at", isOptional: true },
  "week.days.*.trips.*.plugged.from": {
    type: "line",
    label: "Charged from",
    help: "The first such time after it has arrived.",
  },
  "week.days.*.trips.*.plugged.to": { type: "line", label: "Charged until", help: time },
};
