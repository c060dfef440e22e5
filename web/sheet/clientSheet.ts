import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { Answer } from "../../sim/index.ts";
import { drawAnswer } from "../answer/picture/drawAnswer.ts";
import { assumptionsPage } from "./assumptionsPage.ts";
import { factsOf, makerOf, tableOf } from "./element.ts";
import { labelLine } from "./originGroups.ts";
import type { SheetContent } from "./sheetContent.ts";

const PICTURE_px = 680;
const ROW_px = 46;
/** Where a line more stands above the picture. */
const CLOSE_ROW_px = 38;
/** Columns that the table of packs has room for with their usual space between. */
const MOST_WIDE = 8;
/** Words of use beyond this many letters go on in full on the second page. */
const LONG_USE = 180;

/** The client sheet: one page with the answer, and a second with what it assumes. Nothing of the user interface is in it, and no positions. */
export function clientSheet(document: Document, content: SheetContent, answer: Answer, units: UnitHabit): HTMLElement {
  const make = makerOf(document);
  const { facts, factsTitle, origins, settles } = content;
  const picture =
    content.isStop || answer.cannot
      ? undefined
      : drawAnswer(answer, {
          document,
          width_px: PICTURE_px,
          rowHeight_px: content.isLonger ? CLOSE_ROW_px : ROW_px,
          units,
          rows: content.rows,
          chosen: content.chosen,
        });
  const page = make(
    "section",
    "page",
    headOf(document, content),
    content.use === ""
      ? undefined
      : make("p", content.use.length > LONG_USE ? "use is-long" : "use", `“${content.use}”`),
    make("p", "verdict", content.headline),
    make("p", "say", content.sentence),
    picture && make("div", "picture", picture.svg),
    picture &&
      make(
        "p",
        "caption",
        `Left on coming home from a usual day: above the line new, on it winter, below it at ten years in winter. A bar is what is not known${
          (answer.longestDay_km ?? 0) > answer.day_km ? ", a ringed dot the longest day" : ""
        }.`,
      ),
    tableOf(
      make,
      content.table.head,
      content.table.rows,
      content.table.head.length > MOST_WIDE ? "packs is-tight" : "packs",
    ),
    make("p", "remark", `${content.tableRemark} ${content.standing}`),
    make(
      "div",
      "columns",
      make("div", "", make("h2", "", factsTitle), factsOf(make, facts)),
      make(
        "div",
        "",
        make("h2", "", "Where the numbers come from"),
        factsOf(make, [
          ["Measured", labelLine(origins.measured, 4)],
          ["Handbook", labelLine(origins.handbook, 4)],
          ["Open", labelLine(origins.open, 4)],
        ]),
        settles === "" ? undefined : make("p", "", settles),
        make("h2", "", "Not promised"),
        make(
          "p",
          "",
          "Anything at ten years, which assumes a share of the first capacity; any distance with a roof rack, a trailer or soft tyres, or driven faster than this road.",
        ),
      ),
    ),
    make("div", "sign", make("p", "", "Workshop, date"), make("p", "", "Client, date")),
    make("p", "foot", `${CAUTION} Page 1 of 2`),
  );
  return make(
    "article",
    "sheet",
    page,
    assumptionsPage(make, content, content.use.length > LONG_USE ? content.use : ""),
  );
}

const CAUTION =
  "High voltage: a traction pack can kill. Inspection, registration and the mains socket: ask the authority and a licensed electrician.";

/** Title, date and names, the same on every paper of a job. */
function headOf(document: Document, { title, date, client, workshop, isInvented }: SheetContent): HTMLElement {
  const make = makerOf(document);
  return make(
    "header",
    "",
    make("div", "top", make("h1", "", title), make("p", "", date)),
    make(
      "p",
      "who",
      make("span", "", `For: ${client === "" ? "____________________" : client}`),
      make("span", "", `Workshop: ${workshop === "" ? "____________________" : workshop}`),
      isInvented ? make("span", "invented", "Invented example: nobody’s car.") : undefined,
    ),
  );
}
