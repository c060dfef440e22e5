import type { Job } from "../../shared/job/job.ts";
import { makerOf } from "./element.ts";

const checks = [
  "Every lug of the traction circuit re-torqued (isolated, proved dead, locked off)",
  "Insulation, ohm per volt of the pack",
  "Capacity of the weakest module, Ah",
  "Cell spread full; cell spread empty, mV",
  "Brakes free, pads and drums, brake lamps with regen",
  "Boots, mounts, torque link",
  "Gearbox and axle oil",
  "Fans, pumps, cooling; box vents clear",
  "12 V charging, everything on, V",
  "Wh over distance on the client’s road, beside the sheet’s",
];

/** A card of the yearly checks, a column a visit. The list is common practice, no source. */
export function serviceCard(document: Document, job: Pick<Job, "title">): HTMLElement {
  const make = makerOf(document);
  const visits = ["first, 3 months", "year 1", "year 2", "year 3", "year 4"];
  return make(
    "article",
    "sheet",
    make(
      "section",
      "page",
      make("div", "top", make("h1", "", `${job.title}: service card`), make("p", "", "")),
      make(
        "table",
        "boxes is-card",
        make(
          "thead",
          "",
          make("tr", "", make("th", "is-text", "Check"), ...visits.map((each) => make("th", "is-text", each))),
        ),
        make(
          "tbody",
          "",
          ...["Date, km, hand", ...checks].map((each) =>
            make("tr", "", make("th", "is-text", each), ...visits.map(() => make("td", ""))),
          ),
        ),
      ),
      make(
        "p",
        "foot",
        "Work on a traction circuit is for people whom local rules allow to do it: above 60 V DC can kill.",
      ),
    ),
  );
}
