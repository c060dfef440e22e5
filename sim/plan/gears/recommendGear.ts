import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { SPARE_frac } from "../findings/requirementFindings.ts";
import { EASY_frac, type GearDemand, type GearRow } from "./gearTable.ts";
import { gearName } from "./oneGear.ts";

/** Share of a road that a gear may miss and still be said to drive it. */
const MISSED_frac = 0.02;

/** Which gear to live in, and why each other one is not it. */
export interface GearAdvice {
  readonly recommended: GearRow | undefined;
  /** In a sentence: which it is, or that there is none. */
  readonly head: Message;
  /** Why each of the others is not it. */
  readonly others: readonly { readonly gear: string; readonly why: Message }[];
  /** All of it as sentences, the head first. */
  readonly reasons: readonly Message[];
}

/**
 * The gear to leave the car in: of those in high range that keep the motor below nine tenths of its speed at the top speed asked for,
 * start on the steepest hill with a fifth of torque to spare and keep up with the road, the one that takes the least energy. Common
 * practice, no source. Where none does all of that, what each of them fails at.
 */
export function recommendGear(rows: readonly GearRow[], demand: GearDemand): GearAdvice {
  const faults = rows.map((row) => faultsOf(row, demand));
  const able = rows.filter((row, i) => faults[i].length === 0 && row.range !== "low");
  const recommended = able.reduce<GearRow | undefined>(
    (best, row) => (best === undefined || use(row) < use(best) ? row : best),
    undefined,
  );
  const others = rows.flatMap((row, i) => {
    if (row === recommended) return [];
    return [{ gear: gearName(row), why: faults[i].length > 0 ? joined(faults[i]) : aside(row, recommended) }];
  });
  const head = headWords(rows, faults, recommended, demand);
  const reasons = [head, ...others.map(({ gear, why }) => message`${capital(gear)}: ${why}.`)];
  return { recommended, head, others, reasons };
}

function headWords(
  rows: readonly GearRow[],
  faults: readonly (readonly Message[])[],
  recommended: GearRow | undefined,
  { hill_ratio, top_kmh }: GearDemand,
): Message {
  const hill = hill_ratio === undefined ? message`` : message`, starts on ${q("gradient", hill_ratio, 3)}`;
  if (recommended)
    return message`Live in ${gearName(recommended)}: it reaches ${q("speed", top_kmh)} with the motor in hand${hill}${hill_ratio === undefined ? "" : " with a fifth of torque to spare"}, and keeps up with the road.`;
  const starter = rows.find((row, i) => row.range !== "low" && row.hill?.starts === true && faults[i].length > 0);
  const runner = rows.find((row) => row.range !== "low" && row.easy_kmh >= top_kmh);
  const change =
    starter && runner && starter !== runner
      ? message` ${capital(gearName(starter))} starts on the hill and ${gearName(runner)} reaches the speed: the car has to be changed between them.`
      : message``;
  return message`No single gear does it all.${change}`;
}

function faultsOf(row: GearRow, { top_kmh }: GearDemand): Message[] {
  const found: Message[] = [];
  const { hill, missed_frac } = row;
  if (row.top_kmh < top_kmh)
    found.push(
      message`${q("rotation", row.motorAtTop_rpm)} at ${q("speed", top_kmh)} is beyond the motor, which ends at ${q("speed", row.top_kmh)}`,
    );
  else if (row.easy_kmh < top_kmh)
    found.push(
      message`${q("rotation", row.motorAtTop_rpm)} at ${q("speed", top_kmh)} is above ${q("fraction", EASY_frac)} of the motor's limit`,
    );
  if (hill && !hill.starts)
    found.push(
      message`does not start on ${q("gradient", hill.grade_percent / 100, 3)}: needs ${q("torque", hill.needed_Nm)}, has ${q("torque", hill.available_Nm)}`,
    );
  else if (hill && hill.spare_frac < SPARE_frac)
    found.push(
      message`starts on ${q("gradient", hill.grade_percent / 100, 3)} with only ${q("fraction", hill.spare_frac, 2)} of torque to spare`,
    );
  if (!hill && row.steepestStart_percent === 0) found.push(message`does not start even on the level`);
  if (missed_frac > MISSED_frac)
    found.push(message`does not keep up with the road: misses ${q("fraction", missed_frac, 2)} of it`);
  return found;
}

/** Why a gear that could do it is not the one. */
function aside(row: GearRow, recommended: GearRow | undefined): Message {
  if (row.range === "low" || recommended === undefined) return message`would do, but low range is for the rough`;
  const more_frac = use(row) / use(recommended) - 1;
  return message`would do too, and takes ${q("fraction", Math.max(0, more_frac), 2)} more energy on this road`;
}

function use({ battery_Whpkm }: GearRow): number {
  return battery_Whpkm ?? Number.POSITIVE_INFINITY;
}

function joined(parts: readonly Message[]): Message {
  return parts.flatMap((part, i) => (i === 0 ? part : ["; ", ...part]));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
