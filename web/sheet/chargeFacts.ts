import { message, messageIn, whole } from "../../shared/quantity/message.ts";
import { quarterHours } from "../../shared/quantity/quarterHours.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import type { ChargePlan, ChargeRow } from "../../sim/index.ts";

/** Places beside the usual one that the sheet has room for. */
const MOST_OTHERS = 2;

/** A place to charge and what it gives: "Garage, household socket, 2.2 kW from the wall". */
export function placeWords({ name, wall_kW }: ChargePlan["supplies"][number], units: UnitHabit): string {
  return `${name}, ${writeQuantity("electricPower", wall_kW, units, 2)} from the wall`;
}

/** Charge times of one pack at its places: the night and winter at the usual one, hours at the others. A stop is said in its place. */
export function chargeFact([usual, ...others]: readonly ChargeRow[], units: UnitHabit): string {
  if (usual.stop) return messageIn(usual.stop, units);
  const { winterDay, night } = usual;
  const winter = winterDay ? `usual day in winter ${quarterHours(winterDay.time_h)}` : undefined;
  const gives =
    night?.gives_km === undefined
      ? undefined
      : `${night.span.from} to ${night.span.to} gives ${messageIn(message`${whole("distance", night.gives_km)}`, units)}`;
  const elsewhere = others
    .slice(0, MOST_OTHERS)
    .flatMap(({ supply, usualDay, emptyToFull }) =>
      emptyToFull
        ? [
            `${supply}: ${usualDay ? `${quarterHours(usualDay.time_h)}, ` : ""}empty to full ${quarterHours(emptyToFull.time_h)}`,
          ]
        : [],
    );
  return [[winter, gives].filter((each) => each !== undefined).join("; "), ...elsewhere]
    .filter((each) => each !== "")
    .join(". ");
}
