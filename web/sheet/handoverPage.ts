import type { Job } from "../../shared/job/job.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { factsOf, makerOf } from "./element.ts";
import { gearFacts } from "./gearFacts.ts";

/** The page that goes into the car at handover: how to drive and charge it, and whom to call. `pack` is the one that was built in. */
export function handoverPage(document: Document, job: Job, packIndex: number, units: UnitHabit): HTMLElement {
  const make = makerOf(document);
  const percent = (frac: number) => writeQuantity("fraction", frac, units, 2);
  const { ceiling_frac, floor_frac, name } = job.packs[packIndex] ?? job.packs[0];
  const regen = job.controller.regen.isOn
    ? "Lifting off slows the car and charges the pack. With the pack full, and while it is cold, there is none: use the brakes, and leave room for it."
    : "The motor does not slow the car: the brakes alone do.";
  return make(
    "article",
    "sheet",
    make(
      "section",
      "page",
      make("div", "top", make("h1", "", `${job.title}: in the car`), make("p", "", "Date ____________")),
      make("h2", "part", "Driving"),
      factsOf(make, [...gearFacts(job, units), ["Slowing", regen], ["Pack", name]]),
      make("h2", "part", "Charging"),
      factsOf(make, [
        ["Charge to", `${percent(ceiling_frac)} for every day. Do not leave it full in the heat.`],
        ["Not below", `${percent(floor_frac)}. Do not leave it empty.`],
        [
          "Socket",
          "One that a licensed electrician has looked at; no extension lead on a drum. Feel the plug after an hour: warm is too much.",
        ],
      ]),
      make("h2", "part", "If something is wrong"),
      make(
        "ol",
        "steps",
        ...[
          "Stop, ignition off, everybody out and away from the car.",
          "Service disconnect: it is at ______________________________. Pull it with one hand.",
          "Orange cables and opened boxes: touch nothing. Above 60 V DC can kill.",
          "Smoke or a hiss from a box: away from it, upwind, call the fire service and say that there is a traction battery.",
          "After a crash or water to the sills: do not drive or charge it before the workshop has seen it.",
        ].map((each) => make("li", "", each)),
      ),
      make("h2", "part", "Whom to call"),
      factsOf(make, [
        ["Workshop", `${job.workshop || "______________________"}, telephone ______________________`],
        ["Next look", "after 1,000 km (600 miles) or three months, then every year"],
      ]),
      make("div", "sign", make("p", "", "Workshop, date"), make("p", "", "Client, date: driven together")),
      make("p", "foot", "Local rules and licensed practice come before anything on this page."),
    ),
  );
}
