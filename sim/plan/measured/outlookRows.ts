import { type Message, message, quantity, whole } from "../../../shared/quantity/message.ts";
import type { BothLines, Outlook } from "./bothLines.ts";

/** One thing that a pack does, by the prediction and as corrected. */
export interface OutlookRow {
  readonly what: Message;
  readonly predicted: Message;
  readonly corrected: Message;
}

/** Range, year and week of a pack by either line, side by side. */
export function outlookRows({ predicted, corrected }: BothLines): OutlookRow[] {
  const row = (what: Message, of: (outlook: Outlook) => Message): OutlookRow => ({
    what,
    predicted: of(predicted),
    corrected: of(corrected),
  });
  return [
    row(message`Range on the job’s road`, ({ range_km }) => message`${whole("distance", range_km)}`),
    ...predicted.year.map(({ age_years }, i) =>
      row(
        age_years === 0
          ? message`Days of the year not home, pack new`
          : message`Days of the year not home, at ${age_years} years`,
        ({ year, drivenDays }) => message`${year[i].failingDays} of ${drivenDays}`,
      ),
    ),
    ...predicted.week.map(({ condition }, i) =>
      row(message`Lowest charge in the week, ${condition}`, ({ week }) =>
        week[i].failingDays === 0
          ? message`${quantity("fraction", week[i].lowest_frac, 2)}`
          : message`${week[i].failingDays === 1 ? "1 day" : `${week[i].failingDays} days`} not done`,
      ),
    ),
  ];
}
