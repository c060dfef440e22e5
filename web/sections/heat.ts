import { type Message, message, messageIn, quantity } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { ZERO_CELSIUS_K } from "../../shared/units.ts";
import type { GearboxStudy, HeatLine } from "../../sim/index.ts";
import { heatAlong, ratedAlong } from "../charts/heatAlong.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection, type Table } from "./parts/section.ts";
import type { Values } from "./parts/values.ts";

/** Do motor and pack stand a hot day? */
export default defineSection({
  name: "heat",
  title: "Heat",
  question: "Do motor and pack stay cool enough on this road, and on the long hill again and again, on a hot day?",
  given: (form) => form.fields(packChoice(form, "view-pack-heat"), "requirement.hotDay_degC"),
  fields: ["requirement.hotDay_degC"],
  inputs: ["job", "gearbox", "heatLines", "units"],
  compute: ({ job, gearbox, heatLines, units }) => {
    const { study, words, faults } = gearbox.heat;
    const hottest = study.courses.flatMap(({ motor_degC }) => (motor_degC === undefined ? [] : [motor_degC]));
    return {
      table: heatTable(job, gearbox, units),
      words: words.map((each) => messageIn(each, units)),
      faults: faults.map((each) => messageIn(each, units)),
      day: writeQuantity("temperature", study.hot_degC, units),
      lines: heatLines,
      again: messageIn(againWords(heatLines), units),
      from: {
        ...(job.motor.heat && { motor_K: job.motor.heat.derateFrom_degC + ZERO_CELSIUS_K }),
        ...(job.module.heat && { pack_K: job.module.heat.derateFrom_degC + ZERO_CELSIUS_K }),
      },
      motor: hottest.length > 0 ? writeQuantity("temperature", Math.round(Math.max(...hottest)), units) : undefined,
    };
  },
  plot: ({ lines, from, day, table }, drawing) => [
    ...(lines.some(({ motor_K, pack_K }) => motor_K || pack_K)
      ? [
          {
            name: "temperatures",
            caption: `How warm do motor and pack get, the road and the long hill driven again and again on a day of ${day}?`,
            chart: heatAlong(lines, from, drawing),
          },
        ]
      : []),
    ...(lines.some(({ rated_frac }) => rated_frac)
      ? [
          {
            name: "rating",
            caption: "How much of the maker’s continuous power does the half hour before each moment take?",
            chart: ratedAlong(lines, drawing),
          },
        ]
      : []),
    table,
  ],
  sentence: ({ words, again }) => [...words, again].join(" ").trim(),
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

/** How warm the road makes the motor when it is driven on and on; nothing where the table has it, or nothing is known. */
function againWords(lines: readonly HeatLine[]): Message {
  const [road] = lines;
  if (!road?.motor_K || (road.isEmpty && road.times === 1)) return message``;
  const warm = message`takes the motor to ${quantity("temperature", Math.round(Math.max(...road.motor_K) - ZERO_CELSIUS_K))}`;
  return road.isEmpty
    ? message`Driven on until the pack is empty, in its ${road.times} passes this road ${warm}.`
    : message`Driven ${road.times} times on end this road ${warm}.`;
}

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
