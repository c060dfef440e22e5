import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { currentCautions, currentsSentence, startingPoints } from "../../sim/index.ts";
import { currentDuration } from "../charts/currentDuration.ts";
import { durationCells, shelfCells } from "./parts/currentCells.ts";
import { defineSection } from "./parts/section.ts";

/** What currents flow, for how long, and what has to carry them? */
export default defineSection({
  name: "currentsAndFuses",
  title: "Currents",
  question: "What currents flow, for how long, and what has to carry them?",
  given: (form) =>
    html`${form.fields("requirement.longHill_km", "requirement.longHill_ratio", "motor.fullCurrent_A")}
    ${form.fields("wiring.cable_m", "wiring.cable_mm2", "wiring.conductor_degC")}
    ${form.fields("wiring.capacitance_uF", "wiring.precharge_ohm", "wiring.prechargeLoad_W", "wiring.loadWakes_V")}`,
  fields: ["requirement.longHill_km", "requirement.longHill_ratio", "motor.fullCurrent_A", "wiring"],
  inputs: ["currentsPlan", "units"],
  compute: ({ currentsPlan: currents, units }) => {
    const inWords = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, units);
    const { fuse, cable, road, hill, packContinuous_A, pack, greatest, preCharge } = currents;
    const amperes = (current_A: number) => writeQuantity("current", current_A, units, 2);
    return {
      pack,
      lines: [
        { name: "this road", points: road.drawn },
        { name: "the long hill", points: hill.drawn },
      ],
      packContinuous_A,
      fuse_A: fuse.rating_A,
      durations: durationCells(currents, units),
      hasMotorCurrent: currents.hasMotorCurrent,
      shelf: shelfCells(preCharge, units),
      source: writeQuantity("voltage", currents.full_V, units),
      points: startingPoints(currents).map(({ sentence, basis }) => [inWords(sentence), basis] as const),
      sentence: inWords(currentsSentence(currents)),
      cautions: currentCautions(currents).map(inWords),
      peak: amperes(greatest[0].battery_A),
      steady: amperes(greatest[greatest.length - 1].battery_A),
      fuse: amperes(fuse.rating_A),
      section: writeQuantity("section", cable.section_mm2, units),
      never: preCharge.chosen?.time_s === undefined,
      isThin: cable.parallel * cable.carries_A < fuse.rating_A,
    };
  },
  plot: (
    { pack, lines, packContinuous_A, fuse_A, durations, hasMotorCurrent, points, shelf, source, cautions },
    drawing,
  ) => [
    {
      name: "durations",
      caption: `How long do the currents of ${pack} last? The greatest root mean square over any time as long, the pack low`,
      chart: currentDuration({ lines, continuous_A: packContinuous_A, fuse_A }, drawing),
    },
    {
      caption: `Currents of ${pack} by how long they last, root mean square`,
      columns: [
        { title: "Over" },
        { title: "Battery, this road" },
        { title: "Battery, long hill" },
        { title: "Motor torque, this road" },
        { title: "Motor torque, long hill" },
        ...(hasMotorCurrent ? [{ title: "Motor, this road" }, { title: "Motor, long hill" }] : []),
      ],
      rows: durations,
      note: "A road shorter than the time counts as driven again and again.",
    },
    {
      caption: "Where to begin: starting points for what carries these currents",
      columns: [{ title: "Part" }, { title: "Begin with", isText: true }, { title: "Rests on", isText: true }],
      rows: points.map(([sentence, basis]) => {
        const [part = "", ...rest] = sentence.split(": ");
        return [part, rest.join(": "), basis];
      }),
      note: cautions.join(" "),
    },
    {
      caption: `Pre-charge from ${source}: a shelf of resistors`,
      columns: [
        { title: "Resistor" },
        { title: "Settles at" },
        { title: "To 95 %" },
        { title: "Heat in it" },
        { title: "Peak" },
        { title: "Rating" },
        { title: "Heed", isText: true },
      ],
      rows: shelf,
    },
  ],
  sentence: ({ sentence }) => sentence,
  summary: ({ pack, peak, steady, fuse, section }) =>
    `${pack}: ${peak} at most, ${steady} over ten minutes; begin with a fuse of ${fuse} and ${section}`,
  attention: ({ never, isThin, points }) => [
    ...(isThin ? ["The cable as fitted carries less than the fuse to begin with lets through."] : []),
    ...(never ? [points[4]?.[0] ?? ""] : []),
  ],
  caution:
    "Starting points, no approval: makers’ data and the local code decide. Work on a traction circuit is for people whom local rules allow to do it: isolate, prove dead, lock off.",
});
