import { html } from "lit-html";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { type GearboxStudy, paceRows, paceWords } from "../../sim/index.ts";
import { standingStarts } from "../charts/standingStarts.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection, type Table } from "./parts/section.ts";

/** Does it go as it went with its engine? */
export default defineSection({
  name: "pace",
  title: "Pace",
  question: "Does it get away, overtake and run as fast as it did with the old engine?",
  given: (form) => html`
    ${form.fields(packChoice(form, "view-pack-pace"))}
    ${form.fields("driveline.coupling", "driveline.change_s")}
  `,
  fields: ["driveline.coupling", "driveline.change_s"],
  inputs: ["gearbox", "units"],
  compute: ({ gearbox, units }) => {
    const { pace, pack } = gearbox;
    const { motor, engine } = pace;
    const words = paceWords(pace, units);
    return {
      table: paceTable(gearbox, units),
      words,
      short: words[0].replace(/\.$/, ""),
      pack,
      starts: [{ name: "motor", ...motor.start }, ...(engine ? [{ name: "old engine", ...engine.start }] : [])],
    };
  },
  plot: ({ table, starts, pack }, drawing) => [
    {
      caption: `How fast does it get away? Speed from rest at full throttle on the level, with ${pack}`,
      chart: standingStarts(starts, drawing),
    },
    table,
  ],
  sentence: ({ words }) => words.join(" "),
  summary: ({ short }) => short.charAt(0).toLowerCase() + short.slice(1),
});

function paceTable({ pace, pack }: GearboxStudy, units: UnitHabit): Table {
  const { motor, engine, known } = pace;
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number) => writeQuantity(kind, value, units);
  const speed = (value_kmh: number) => q("speed", value_kmh);
  const seconds = (value_s: number | undefined, digits: number) =>
    value_s === undefined ? "not reached" : `${value_s.toFixed(digits)} s`;
  const old = (cell: () => string) => (engine ? [cell()] : []);
  return {
    caption: `Starts, overtaking and top speed, with ${pack}${engine ? ", beside the old engine" : ""}`,
    columns: [
      { title: "On the level" },
      { title: "Motor, as set" },
      ...old(() => "Old engine").map((title) => ({ title })),
    ],
    rows: [
      ...paceRows(pace, units).map(({ from_kmh, to_kmh, motor_s, engine_s }) => [
        `${from_kmh === 0 ? "0" : speed(from_kmh)} to ${speed(to_kmh)}`,
        seconds(motor_s, 1),
        ...old(() => (engine_s === undefined ? "not reached" : `about ${seconds(engine_s, 0)}`)),
      ]),
      [
        "Top speed",
        speed(motor.top.speed_mps / MPS_PER_KMH),
        ...old(() => `about ${speed((engine?.top.speed_mps ?? 0) / MPS_PER_KMH)}`),
      ],
      ["All in all it weighs", q("mass", motor.mass_kg), ...old(() => q("mass", engine?.mass_kg ?? 0))],
    ],
    note: engine
      ? `From a speed means on the way up from rest. The engine's curve is ${known.engine?.isTyped ? "as typed" : "drawn through its two rated points"}; its clutch is taken up at the speed of best torque, 0.8 s is lost at each change, and all gears are used: common practice, no source.${known.engine?.isTyped ? "" : " Rated power was often that of the bare engine: with fan, dynamo and exhaust a tenth to a fifth less (common practice, no source)."}`
      : "From a speed means on the way up from rest, pack charged and motor cool.",
  };
}
