import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import type { GearboxStudy } from "../../sim/index.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection, type Table } from "./parts/section.ts";
import type { Values } from "./parts/values.ts";

/** Do motor and pack stand a hot day? */
export default defineSection({
  name: "heat",
  title: "Heat",
  question: "Do motor and pack stand the road, and the long hill again and again, on a hot day?",
  given: (form) => form.fields(packChoice(form, "view-pack-heat"), "requirement.hotDay_degC"),
  fields: ["requirement.hotDay_degC"],
  inputs: ["job", "gearbox", "units"],
  compute: ({ job, gearbox, units }) => {
    const { study, words, faults } = gearbox.heat;
    const hottest = study.courses.flatMap(({ motor_degC }) => (motor_degC === undefined ? [] : [motor_degC]));
    return {
      table: heatTable(job, gearbox, units),
      words: words.map((each) => messageIn(each, units)),
      faults: faults.map((each) => messageIn(each, units)),
      day: writeQuantity("temperature", study.hot_degC, units),
      motor: hottest.length > 0 ? writeQuantity("temperature", Math.round(Math.max(...hottest)), units) : undefined,
    };
  },
  plot: ({ table }) => [table],
  sentence: ({ words }) => words.join(" "),
  summary: ({ motor, day, faults }) =>
    faults.length > 0
      ? faults[0].replace(/\.$/, "")
      : motor === undefined
        ? `nothing is known of how the motor warms`
        : `the motor gets to ${motor} at most on a day of ${day}`,
  attention: ({ faults }) => faults,
  caution:
    "Each part is worked out as one lump: its windings, and single cells, get hotter than the mean. Read the temperatures on the first drives, with the limits of controller and battery management set.",
});

function heatTable({ motor, module }: Values["job"], { heat, pack }: GearboxStudy, units: UnitHabit): Table {
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number, digits?: number) =>
    writeQuantity(kind, value, units, digits);
  const degrees = (value_degC: number | undefined) =>
    value_degC === undefined ? "not known" : q("temperature", Math.round(value_degC));
  const { courses, hot_degC } = heat.study;
  const byCourse = (cell: (course: (typeof courses)[number]) => string) => courses.map(cell);
  const { rating } = motor;
  return {
    caption: `Motor and pack on a day of ${q("temperature", hot_degC)}, with ${pack}`,
    columns: [
      { title: "At most" },
      ...byCourse(({ name }) => (name === "road" ? "This road" : "Long hill, again and again")).map((title) => ({
        title,
      })),
      { title: "May be" },
    ],
    rows: [
      ["Motor", ...byCourse(({ motor_degC }) => degrees(motor_degC)), degrees(motor.heat?.derateFrom_degC)],
      ["Pack", ...byCourse(({ pack_degC }) => degrees(pack_degC)), degrees(module.heat?.derateFrom_degC)],
      [
        "Power over half an hour",
        ...byCourse(({ continuous_kW }) => q("power", continuous_kW)),
        rating ? q("power", rating.continuous_kW) : "not known",
      ],
      ...(rating?.peak_kW === undefined || rating.peak_s === undefined
        ? []
        : [
            [
              `Power over ${q("duration", rating.peak_s, 2)}`,
              ...byCourse(({ peak_kW }) => q("power", peak_kW ?? Number.NaN)),
              q("power", rating.peak_kW),
            ],
          ]),
      [
        "Held back by heat",
        ...byCourse(({ heldBack_s }) => (heldBack_s < 1 ? "no" : q("duration", heldBack_s, 2))),
        "not at all",
      ],
    ],
    note: "From a charged pack, motor and pack as warm as the air. The long hill is typed under Currents and fuses; the maker's rating under Motor.",
  };
}
