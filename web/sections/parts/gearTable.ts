import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { type GearboxStudy, type GearRow, gearName } from "../../../sim/index.ts";
import type { Table } from "./section.ts";

type HillOfGear = NonNullable<GearRow["hill"]>;

/**
 * What the car does in each gear left alone, a row a gear; below them changing as set, where the job changes. What it does on the hill
 * stands in a table of its own, so that both fit a sheet of paper.
 */
export function gearTables(study: GearboxStudy, isHillAsked: boolean, units: UnitHabit): readonly Table[] {
  const { gears, demand, changing, gearAdvice, pack } = study;
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number | undefined, digits?: number) =>
    value === undefined ? "-" : writeQuantity(kind, value, units, digits);
  const { hill_ratio, top_kmh } = demand;
  const hill = hill_ratio === undefined ? undefined : q("gradient", hill_ratio, 3);
  const recommended = gearAdvice.recommended && gearName(gearAdvice.recommended);
  const nameOf = (row: GearRow) => (gearName(row) === recommended ? `${gearName(row)}, recommended` : gearName(row));
  const rows = gears.map((row) => [
    nameOf(row),
    q("speed", row.top_kmh),
    q("speed", row.easy_kmh),
    row.top_kmh < top_kmh ? `${q("rotation", row.motorAtTop_rpm)}: no` : q("rotation", row.motorAtTop_rpm),
    row.steepestStart_percent === 0 ? "none" : q("gradient", row.steepestStart_percent / 100, 2),
    row.to50kmh_s === undefined ? "not reached" : `${row.to50kmh_s.toFixed(1)} s`,
    q("energyUse", row.battery_Whpkm),
    missed(row.missed_frac, units),
  ]);
  const changed = changing && [
    `changing ${changing.gears.join(", ")}`,
    "",
    "",
    "",
    "",
    changing.to50kmh_s === undefined ? "not reached" : `${changing.to50kmh_s.toFixed(1)} s`,
    q("energyUse", changing.battery_Whpkm),
    missed(changing.missed_frac, units),
  ];
  const from = isHillAsked ? "the client's hill" : "the steepest stretch of the road";
  const driven: Table = {
    caption: `What the car does in each gear, left in it, with ${pack}`,
    columns: [
      { title: "Gear" },
      { title: "Motor at its limit" },
      { title: "A tenth in hand" },
      { title: `Motor at ${q("speed", top_kmh)}` },
      { title: "Starts on up to" },
      { title: `0 to ${q("speed", 50)}` },
      { title: "From the pack" },
      { title: "Road missed" },
    ],
    rows: changed ? [...rows, changed] : rows,
    ...(hill === undefined && { note: "The road is level and no hill is asked for: type one under Hills." }),
  };
  const isRated = gears.some(({ rated }) => rated !== undefined);
  if (hill === undefined && !isRated) return [driven];
  const onHill = (row: GearRow) =>
    row.hill ? [q("torque", row.hill.needed_Nm), startOf(row.hill, units), climbOf(row.hill, units)] : [];
  return [
    driven,
    {
      caption:
        hill === undefined ? "What each gear climbs within the maker's rating" : `What each gear does on ${hill}`,
      columns: [
        { title: "Gear" },
        ...(hill === undefined
          ? []
          : [{ title: `${hill}: needs` }, { title: "Has, to spare" }, { title: "Climbs, held for" }]),
        ...(isRated ? [{ title: "Rated to climb", isText: true }] : []),
      ],
      rows: gears.map((row) => [nameOf(row), ...onHill(row), ...(row.rated ? [ratedOf(row.rated, units)] : [])]),
      note: [
        ...(hill === undefined ? [] : [`Starts with everybody aboard and the pack charged; ${hill} is ${from}.`]),
        ...(isRated ? ["Rated to climb: the steepest at that speed within what the motor's maker rates it for."] : []),
      ].join(" "),
    },
  ];
}

function ratedOf(
  { climb_kmh, continuous_percent, peak_percent, peak_s }: NonNullable<GearRow["rated"]>,
  units: UnitHabit,
): string {
  const slope = (percent: number) => (percent > 0 ? writeQuantity("gradient", percent / 100, units, 2) : "nothing");
  const always = `${slope(continuous_percent)} continuous`;
  const peak =
    peak_percent === undefined || peak_s === undefined
      ? ""
      : `, ${slope(peak_percent)} for ${writeQuantity("duration", peak_s, units, 2)}`;
  return `${writeQuantity("speed", climb_kmh, units, 2)}: ${always}${peak}`;
}

function startOf({ available_Nm, spare_frac, starts }: HillOfGear, units: UnitHabit): string {
  const has = writeQuantity("torque", available_Nm, units);
  return starts ? `${has}, ${writeQuantity("fraction", spare_frac, units, 2)}` : `${has}: does not start`;
}

function climbOf({ climb_kmh, held_s, isHeldToEmpty }: HillOfGear, units: UnitHabit): string {
  const speed = writeQuantity("speed", climb_kmh, units, 2);
  if (isHeldToEmpty) return `${speed}, until empty`;
  if (held_s < 1) return `${speed}: not held`;
  return `${speed}, ${Math.round(held_s) < 60 ? `${Math.round(held_s)} s` : `${Math.round(held_s / 60)} min`}`;
}

function missed(missed_frac: number, units: UnitHabit): string {
  return missed_frac < 0.0005 ? "none" : writeQuantity("fraction", missed_frac, units, 2);
}
