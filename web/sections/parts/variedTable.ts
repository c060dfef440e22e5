import { messageIn } from "../../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { type VariedPack, varyWords } from "../../../sim/index.ts";
import { labelOf } from "../../editing/fieldTable/fieldAt.ts";
import type { Table } from "./section.ts";

/** Less than this is not worth a line, nor known more finely. */
const LEAST_km = 0.1;

/** What measuring each open value would gain, from many variants in which all of them are off at once; nothing where nothing is open. */
export function variedTable(varied: VariedPack, units: UnitHabit): Table | undefined {
  const { inputs, pack, variants } = varied;
  const [first] = inputs;
  if (first === undefined || first.gain_km < LEAST_km) return undefined;
  const shown = inputs.filter(({ gain_km }) => gain_km >= LEAST_km).slice(0, 8);
  return {
    caption: `What measuring would gain: ${pack} in ${variants} variants, all that is open drawn from its band at once`,
    columns: [{ title: "Value" }, { title: "Of the spread, left once known" }, { title: "Known, narrower by" }],
    rows: shown.map(({ open, left_frac, gain_km }) => [
      open ? labelOf(open.path) : "The road, beyond this log",
      writeQuantity("fraction", left_frac, units, 2),
      writeQuantity("distance", Math.round(gain_km / LEAST_km) * LEAST_km, units, 2),
    ]),
    note: varyWords(varied)
      .map((sentence) => messageIn(sentence, units))
      .join(" "),
  };
}
