import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { type Make, makerOf } from "./element.ts";

/** What is asked and measured on a visit before anything is undone, with the unit to write it in. Common practice, no source. */
function partsOf(units: UnitHabit): readonly (readonly [string, readonly (readonly [string, string])[]])[] {
  const isMetric = units === "metric";
  const [mass, length, speed] = isMetric ? ["kg", "mm", "km/h"] : ["lb", "in", "mph"];
  const distance = isMetric ? "km" : "miles";
  return [
    [
      "The use, in the client’s words",
      [
        ["Usual day", distance],
        ["Longest day, and how often", distance],
        ["Steepest hill; must it start there?", "1 in"],
        ["Top speed wanted", speed],
        ["People aboard; load", mass],
        ["Where it sleeps; socket there", "A"],
      ],
    ],
    [
      "Weights, full of people and empty, fuel level noted",
      [
        ["Front left, front right", mass],
        ["Rear left, rear right", mass],
        ["Plated: front, rear, gross", mass],
        ["Ride height at the four arches", length],
        ["Wheelbase; track", length],
      ],
    ],
    [
      "Driveline",
      [
        ["Rolling circumference, one turn, loaded", length],
        ["Final drive, teeth of pinion and crown wheel", "teeth"],
        ["Gear ratios, and where they are from", "ratio"],
        ["Gear used in town; on the hill", "gear"],
        ["Does a gear jump out, slip, whine or leak?", "words"],
        ["Gearbox input limit; the engine’s peak torque", isMetric ? "Nm" : "lb ft"],
      ],
    ],
    [
      "Coast-down, level, still, warm, both directions, three runs each",
      [
        [isMetric ? "80 to 64 km/h" : "50 to 40 mph", "s"],
        [isMetric ? "32 to 16 km/h" : "20 to 10 mph", "s"],
        ["Wind; air temperature", isMetric ? "°C" : "°F"],
        ["Width × height over the body", length],
        ["Do the brakes drag? Jack up and spin", "words"],
      ],
    ],
    [
      "12 V and fuel",
      [
        ["Lamps, wipers, heater, by clamp meter", "A"],
        ["Fuel used, over several fills", isMetric ? "l/100 km" : "mpg"],
        ["Log of the usual drive taken? Device, days", "words"],
      ],
    ],
  ];
}

/** A blank form for the visit, in the workshop's units: what can never be measured again once the engine is out. */
export function visitForm(document: Document, units: UnitHabit): HTMLElement {
  const make = makerOf(document);
  return make(
    "article",
    "sheet",
    make(
      "section",
      "page",
      make("div", "top", make("h1", "", "Visit: measured while it still drives"), make("p", "", "Date ____________")),
      make(
        "p",
        "who",
        make("span", "", "Client ______________________"),
        make("span", "", "Car ______________________"),
      ),
      ...partsOf(units).flatMap(([title, rows]) => [make("h2", "part", title), boxes(make, rows)]),
      make("p", "foot", "Photograph the scales and the stopwatch. Chock the wheels before anything is jacked up."),
    ),
  );
}

function boxes(make: Make, rows: readonly (readonly [string, string])[]): HTMLElement {
  return make(
    "table",
    "boxes",
    make(
      "tbody",
      "",
      ...rows.map(([what, unit]) => make("tr", "", make("th", "is-text", what), make("td", "is-number", unit))),
    ),
  );
}
