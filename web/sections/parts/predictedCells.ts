import { messageIn, whole } from "../../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { type Beside, rangeWords } from "../../../sim/index.ts";

type Side = Beside["packs"][number]["now"];

/** The table of packs, as predicted and now. */
export function predictedCells({ packs }: Beside, units: UnitHabit): string[][] {
  const both = (then: Side, now: Side, write: (side: NonNullable<Side>) => string) =>
    [then, now].map((side) => (side ? write(side) : "–"));
  const range = (condition: string) => (side: NonNullable<Side>) => {
    const words = rangeWords(side, condition);
    return words ? messageIn(words, units) : "–";
  };
  return packs.map(({ name, then, now }) => [
    name,
    ...both(then, now, range("new")),
    ...both(then, now, range("tenYearsWinter")),
    ...both(then, now, ({ battery_Whpkm }) => writeQuantity("energyUse", battery_Whpkm, units)),
    ...both(then, now, ({ testMass_kg }) => messageIn([whole("mass", testMass_kg, "nearest")], units)),
    ...both(then, now, ({ verdict }) => verdict ?? "–"),
  ]);
}
