import { hasInventedMonths } from "../../shared/job/inventedYear.ts";
import { message, messageIn, quantity as q, whole } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { drivenDaysWords } from "../../sim/index.ts";
import { yearForm } from "../forms/car/yearForm.ts";
import { defineSection } from "./parts/section.ts";

/** Rows of the table of days that fail, the worst first. */
const NAMED = 10;

/** Which days of a year would not get home? */
export default defineSection({
  name: "theYear",
  title: "Year",
  question: "What is left on every evening of a year, and which days would not get home?",
  given: yearForm,
  fields: ["year"],
  inputs: ["job", "year", "packIndex", "units"],
  compute: ({ job, year, packIndex, units }) => {
    const { days, packs, driven_degC, largestError_km, confirmedDays } = year;
    const name = job.packs[Math.min(packIndex, job.packs.length - 1)].name;
    const [fresh, old] = packs.filter((pack) => pack.name === name);
    const isDriving = (day: number) => days[day].kind !== "off";
    const driving = days.filter((_, day) => isDriving(day)).length;
    const left = (km: number) =>
      km < 0
        ? messageIn(message`${whole("distance", -km, "up")} short`, units)
        : messageIn(message`${whole("distance", km, "down")}`, units);
    const rows = packs.map(({ name: each, age_years, evenings_km, failingDays }) => {
      const driven = evenings_km.filter((_, day) => isDriving(day)).sort((a, b) => a - b);
      const at = (share: number) => left(driven[Math.round(share * (driven.length - 1))]);
      return [
        each,
        age_years === 0 ? "new" : "ten years",
        at(0),
        at(0.5),
        at(1),
        `${failingDays.length} of ${driving}`,
      ];
    });
    const worst = old ? [...old.failingDays].sort((a, b) => b.short_km - a.short_km) : [];
    const failing = (count: number) =>
      count === 0 ? "gets home on every driving day" : `would not get home on ${dayCount(count)}`;
    const worstWords = worst[0]
      ? message`, the worst ${worst[0].date} by ${whole("distance", worst[0].short_km, "up")}`
      : message``;
    return {
      name,
      rows,
      worst: worst
        .slice(0, NAMED)
        .map(({ date, distance_km, temperature_degC, kind, short_km }) => [
          date,
          kind === "longest" ? "longest day" : job.year?.daysDriven_km ? "driven day" : "usual day",
          writeQuantity("distance", distance_km, units),
          writeQuantity("temperature", temperature_degC, units, 2),
          left(-short_km),
        ]),
      isInvented: hasInventedMonths(job.year),
      drawnFrom: drivenDaysWords(job).map((each) => messageIn(each, units)),
      note: messageIn(
        message`Driven at ${driven_degC.length} temperatures from ${q("temperature", driven_degC[0], 2)} to ${q("temperature", driven_degC[driven_degC.length - 1], 2)}, days between them on straight lines: ${confirmedDays} days driven to confirm that differ by ${q("distance", largestError_km, 2)} at most. Every day begins charged. The longest days are spread evenly over the year.`,
        units,
      ),
      sentence: messageIn(
        message`New, ${name} ${failing(fresh?.failingDays.length ?? 0)}; at ten years it ${failing(worst.length)}${worstWords}.`,
        units,
      ),
      inShort: `${name} not home on ${dayCount(fresh?.failingDays.length ?? 0)} new, ${dayCount(worst.length)} at ten years`,
    };
  },
  plot: ({ name, rows, worst, note }) => [
    {
      caption: "What is left on the driving days of a year",
      columns: [
        { title: "Pack" },
        { title: "Age" },
        { title: "Worst evening" },
        { title: "Middle" },
        { title: "Best" },
        { title: "Not home" },
      ],
      rows,
      note,
    },
    ...(worst.length === 0
      ? []
      : [
          {
            caption: `The days on which ${name} would not get home at ten years, the worst first`,
            columns: [{ title: "Day" }, { title: "Which" }, { title: "Length" }, { title: "Air" }, { title: "Left" }],
            rows: worst,
          },
        ]),
  ],
  sentence: ({ sentence, drawnFrom, isInvented }) =>
    [
      sentence,
      ...drawnFrom,
      ...(isInvented ? ["The year’s temperatures are invented until they are entered."] : []),
    ].join(" "),
  inShort: ({ inShort }) => inShort,
});

function dayCount(count: number): string {
  return count === 1 ? "one day" : `${count} days`;
}
