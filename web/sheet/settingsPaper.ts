import type { Job } from "../../shared/job/job.ts";
import { type Message, messageIn } from "../../shared/quantity/message.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { SettingsSheet } from "../../sim/index.ts";
import { type Make, makerOf } from "./element.ts";

/** What the paper is made from. */
export interface SettingsPaperInput {
  readonly job: Pick<Job, "title" | "client" | "workshop" | "isInvented">;
  readonly sheet: SettingsSheet;
  /** Why the pack may not be used at all; nothing is to be set then. */
  readonly stop?: Message | undefined;
  readonly units: UnitHabit;
}

/** The settings with boxes for what was set, when and by whom: a page for the controller, one for the rest. Rows are never cut; a long job takes a page more. */
export function settingsPaper(document: Document, { job, sheet, stop, units }: SettingsPaperInput): HTMLElement {
  const make = makerOf(document);
  const inWords = (sentence: Message) => messageIn(sentence, units);
  const [controller, ...others] = sheet.groups;
  const table = (groups: readonly (typeof controller | undefined)[]) =>
    make(
      "table",
      "settings",
      make(
        "thead",
        "",
        make(
          "tr",
          "",
          ...["Setting", "Value, and where it comes from", "As set", "Date", "Hand"].map((each) =>
            make("th", "is-text", each),
          ),
        ),
      ),
      ...groups.map((group) => (group ? body(make, group, inWords) : undefined)),
    );
  const head = make(
    "header",
    "",
    make("div", "top", make("h1", "", `${job.title}: settings`), make("p", "", "Date ____________")),
    make(
      "p",
      "who",
      make("span", "", `With ${sheet.pack}`),
      make("span", "", `For: ${job.client || "____________________"}`),
      make("span", "", `Workshop: ${job.workshop || "____________________"}`),
      job.isInvented ? make("span", "invented", "Invented example: nobody’s car.") : undefined,
    ),
  );
  const cautions = make("ul", "cautions", ...sheet.cautions.map((each) => make("li", "", inWords(each))));
  return make(
    "article",
    "sheet",
    make(
      "section",
      "page is-flowing",
      head,
      stop === undefined ? undefined : make("p", "verdict", `Stop. ${inWords(stop)}`),
      make("h2", "part", "Before first power"),
      cautions,
      table([controller]),
      make("p", "foot", FOOT),
    ),
    make(
      "section",
      "page is-flowing",
      make("div", "top", make("h1", "", `${job.title}: settings, continued`), make("p", "", `With ${sheet.pack}`)),
      table(others),
      make("p", "remark", CHANGES),
      make("div", "sign", make("p", "", "Workshop, date"), make("p", "", "Checked by, date")),
      make("p", "foot", FOOT),
    ),
  );
}

/** Said once at the foot, since it stands beside half of the rows. */
const USUAL = "common practice, no source";
const FOOT = `Starting points. Makers’ data, local codes and licensed practice come before anything on this page. “Usual”: ${USUAL}.`;
const CHANGES = "Write every later change beside its row: what it was, what it is, date and hand.";

function body(
  make: Make,
  { where, settings }: SettingsSheet["groups"][number],
  inWords: (sentence: Message) => string,
) {
  return make(
    "tbody",
    "",
    make("tr", "is-group", make("th", "is-text", where), ...["", "", "", ""].map((each) => make("td", "", each))),
    ...settings.map(({ name, value, from, caution }) =>
      make(
        "tr",
        "",
        make("th", "is-text", name),
        make(
          "td",
          "is-text",
          make("b", "", inWords(value)),
          make("span", "from", ` ${inWords(from).replaceAll(USUAL, "usual")}`),
          caution ? make("span", "beware", `! ${inWords(caution)}`) : undefined,
        ),
        ...["", "", ""].map(() => make("td", "box")),
      ),
    ),
  );
}
