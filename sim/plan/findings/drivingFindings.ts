import { type Message, type MessageQuantity, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { BEHIND_mps } from "../../step/run.ts";
import type { Candidate, Finding, Stands } from "../driveReport.ts";
import type { Range } from "../going/range.ts";
import { listed, note, roadLength, warning } from "./finding.ts";

const LIMIT_WORDS = {
  grip: "the tyres' grip",
  driveline: "the driveline's torque limit",
  motor: "the motor",
  controller: "the controller's limits",
  pack: "the pack",
  heat: "heat",
} as const;

const BOUND_BY = { ...LIMIT_WORDS, driveline: "what the driveline may carry", controller: "the controller" } as const;

/** Whether findings of a kind say that the car does not drive its road at all, which stands before everything else. */
export function isCannot(kind: string): boolean {
  return kind === "doesNotStart" || kind === "stopsOnRoad";
}

/** Whether the car drives the road at all, and how its range was found: first that it cannot, then why. */
export function drivingFindings(candidate: Candidate, range: Range): Finding[] {
  const found: Finding[] = [];
  if (candidate.reachedFloor) {
    const { distance_km, missed_km } = candidate;
    found.push(
      warning(
        "reachedFloor",
        message`Empty on the way: the pack is empty after ${roadLength(distance_km)}, ${roadLength(missed_km)} of the road are left.`,
      ),
    );
  } else if (candidate.stands) found.push(standing(candidate.stands, candidate.missed_km));
  else found.push(...following(candidate));
  if (candidate.shed_Wh > 0) {
    found.push(
      warning(
        "shedAccessories",
        message`The pack could not feed the accessories all the time; ${candidate.shed_Wh} Wh were shed.`,
      ),
    );
  }
  if (range.end === "endless") {
    found.push(
      warning(
        "noRange",
        message`Driven over and over, this road draws nothing from the pack, so there is no range to give: check the wind, the drag and the rolling resistance.`,
      ),
    );
  }
  if (range.isThereAndBack) {
    const below = range.rise_m < 0 ? "below" : "above";
    const rise = q("elevation", Math.abs(range.rise_m), 2);
    found.push(
      note(
        "thereAndBack",
        message`This road ends ${rise} ${below} its start, so for the range it is driven there and back.`,
      ),
    );
  }
  return found;
}

/** A car that never starts, or that stops on a hill for good. */
function standing(
  { distance_km, grade_ratio, gear, needed_Nm, available_Nm, limit }: Stands,
  missed_km: number,
): Finding {
  const [needs, has] = apart(needed_Nm, available_Nm);
  const by = limit === "none" ? "" : `, limited by ${BOUND_BY[limit]}`;
  const why = message`it needs ${needs} at the motor in ${gear} gear and has ${has}${by}`;
  const slope = Math.abs(grade_ratio) < 0.005 ? message`` : message` on a gradient of ${q("gradient", grade_ratio, 2)}`;
  if (distance_km === 0) return warning("doesNotStart", message`The car does not start on this road${slope}: ${why}.`);
  return warning(
    "stopsOnRoad",
    message`The car stops after ${roadLength(distance_km)}${slope} and does not start again: ${why}. ${roadLength(missed_km)} of the road are left.`,
  );
}

/** Two torques in whole newton metres, or finer where they would read alike. */
function apart(larger_Nm: number, smaller_Nm: number): [MessageQuantity, MessageQuantity] {
  const whole = Math.max(2, Math.ceil(Math.log10(larger_Nm)));
  const digits = [whole, whole + 1, whole + 2].find((n) => larger_Nm.toPrecision(n) !== smaller_Nm.toPrecision(n)) ?? 6;
  return [q("torque", larger_Nm, digits), q("torque", smaller_Nm, digits)];
}

function following({ limited_s, behind_s, missed_km, distance_km, rangeEnd }: Candidate): Finding[] {
  const limits = (Object.keys(LIMIT_WORDS) as (keyof typeof LIMIT_WORDS)[])
    .filter((limit) => limited_s[limit] > 0)
    .sort((a, b) => limited_s[b] - limited_s[a]);
  const found: Finding[] = [];
  if (behind_s > 0) {
    const held = limits.map((limit) => message`${LIMIT_WORDS[limit]} for ${limited_s[limit]} s`);
    found.push(
      warning(
        "traceNotFollowed",
        message`Falls behind for ${behind_s} s (more than ${q("speed", BEHIND_mps / MPS_PER_KMH, 2)} too slow), ${roadLength(missed_km)} missed; held back by ${listed(held)}.`,
      ),
    );
  } else if (limits.length > 0) {
    const held = limits.map((limit) => message`${LIMIT_WORDS[limit]} ${limited_s[limit]} s`);
    found.push(
      note("touchedLimit", message`The car keeps up with the road; limits were met for moments: ${listed(held)}.`),
    );
  }
  if (rangeEnd === "stuck") found.push(warning("stuck", stuck(distance_km, missed_km)));
  return found;
}

function stuck(distance_km: number, missed_km: number): Message {
  return distance_km < missed_km
    ? message`Too slow for this road: in the time it allows, the car covers ${roadLength(distance_km)} of ${roadLength(distance_km + missed_km)}. No range is counted beyond that.`
    : message`Driven over and over, the car later covers less than half of the road in the time it allows; the range ends there, with charge left.`;
}
