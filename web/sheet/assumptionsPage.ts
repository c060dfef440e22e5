import { type Make, tableOf } from "./element.ts";
import type { SheetContent } from "./sheetContent.ts";

const MOST_ROWS = 30;
/** Letters of the client's words that take the place of one row. */
const LETTERS_A_ROW = 90;

/** The second page: every value that the answer rests on, with where it came from, those that nobody measured first. */
export function assumptionsPage(make: Make, { title, date, assumptions }: SheetContent, use: string): HTMLElement {
  const most = MOST_ROWS - Math.ceil(use.length / LETTERS_A_ROW);
  const rest = assumptions.length - most;
  return make(
    "section",
    "page",
    make("div", "top", make("h1", "", `${title}: what the answer assumes`), make("p", "", date)),
    tableOf(
      make,
      ["Value", "Taken as", "May be off by", "From"],
      assumptions.slice(0, most).map((cells) => ({ cells })),
    ),
    use === "" ? undefined : make("p", "remark", `The use in the client’s own words: “${use}”`),
    rest > 0 ? make("p", "remark", `And ${rest} more values, listed in the workshop’s own workings.`) : undefined,
    make(
      "p",
      "foot",
      "Worked out by stepping the car second by second over the road named on page 1. A time-step simulation is no measurement: the finished car is checked against it on its first drives. Page 2 of 2",
    ),
  );
}
