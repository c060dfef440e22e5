import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { bayFits, clearanceOf_mm, POSTURES } from "../../../sim/index.ts";
import type { Table } from "./section.ts";
import type { Values } from "./values.ts";

/** How many modules go into each box, by how they stand; nothing where no box has its room typed. */
export function bayTable(
  { module }: Values["job"],
  weights: NonNullable<Values["job"]["weights"]>,
  { seriesModules, parallelModules }: Values["job"]["packs"][number],
  units: UnitHabit,
): Table[] {
  const fits = bayFits(weights, module);
  if (fits.length === 0) return [];
  const modules = seriesModules * parallelModules;
  const size = (value_mm: number) => writeQuantity("length", value_mm, units);
  return [
    {
      caption: `What fits into each box, of ${modulesIn(modules)}`,
      columns: [
        { title: "Box" },
        ...POSTURES.map((posture) => ({ title: posture.charAt(0).toUpperCase() + posture.slice(1) })),
        { title: "By its share" },
      ],
      rows: fits.map(({ box, counts, share_frac }) => [
        box,
        ...POSTURES.map((posture) => modulesIn(counts[posture])),
        modulesIn(Math.round(share_frac * modules)),
      ]),
      note: `A module is ${size(module.length_mm)} by ${size(module.width_mm)} by ${size(module.height_mm)} high, ${size(clearanceOf_mm(weights))} kept free on all sides, all of one box standing alike. A first look, no promise: brackets, bars, cooling and room for hands come on top, and the maker says which ways a module may stand.`,
    },
  ];
}

function modulesIn(count: number): string {
  return count === 0 ? "none" : `${count} module${count === 1 ? "" : "s"}`;
}
