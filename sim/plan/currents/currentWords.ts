import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { OHM_PER_MOHM } from "../../../shared/units.ts";
import type { CurrentsPlan } from "./currentsPlan.ts";
import { preChargeWords } from "./preChargeWords.ts";

/** Above this a direct voltage is dangerous to touch: class B, strictly above. [ISO6469-3, 3], from memory. */
export const CLASS_B_V = 60;

/** One thing to choose, where to begin, and on what that rests. */
export interface StartingPoint {
  readonly part: "fuse" | "contactor" | "cable" | "lug" | "pre-charge";
  readonly sentence: Message;
  /** Where the figure comes from. */
  readonly basis: string;
}

/** The currents in a sentence. */
export function currentsSentence({ pack, greatest, isBehind }: CurrentsPlan): Message {
  const [peak, , ten, minute, steady] = greatest.map(({ battery_A }) => q("current", battery_A, 2));
  const limp = isBehind ? message` The car does not keep up with this road: one that did would draw more.` : message``;
  return message`Over the road and the long hill ${pack} gives ${peak} at most, ${ten} over ten seconds, ${minute} over a minute and ${steady} over ten minutes.${limp}`;
}

/** Where to begin with everything that carries the current. Starting points, each with its basis. */
export function startingPoints(plan: CurrentsPlan): StartingPoint[] {
  const { fuse, cable, full_V, shortCircuit_A, greatest, conductor_degC, cable_m } = plan;
  const rating = q("current", fuse.rating_A);
  const full = q("voltage", full_V);
  const [peak_A, steady_A] = [greatest[0].battery_A, greatest[greatest.length - 1].battery_A];
  const asked = { steady: "ten minutes", minute: "a minute", tenSeconds: "ten seconds" }[fuse.because];
  const length = q("cableLength", cable_m);
  return [
    {
      part: "fuse",
      sentence: message`Fuse: ${rating}${fuse.isBeyondList ? " (no usual size)" : ""}, for direct current of ${full} or more, breaking more than ${q("current", shortCircuit_A, 2)}; what ${asked} ask for decides. Ten seconds are ${times(fuse.tenSeconds_ratio)} its rating, two ${times(fuse.twoSeconds_ratio)}: see that both lie below the maker's melting curve.`,
      basis:
        "three quarters of a rating for hours, its rating for a minute, twice for ten seconds: common practice, no source; sizes by IEC 60269-1, from memory",
    },
    {
      part: "contactor",
      sentence: message`Contactors: ${rating} or more carried for hours with the cable below, and ${q("current", peak_A, 2)} broken at ${full} of direct current at least once; mind the polarity some of them have.`,
      basis: "carries what its fuse lets through: common practice, no source",
    },
    {
      part: "cable",
      sentence: message`Cable: ${cable.parallel === 1 ? "" : `${cable.parallel} of `}${q("section", cable.section_mm2)} copper${plan.isCableFitted ? ", as fitted" : ""}, which carries ${q("current", cable.parallel * cable.carries_A)} in free air. At ${q("temperature", conductor_degC)} it has ${q("resistance", cable.resistance_ohmpm / OHM_PER_MOHM, 2)} a metre: over ${length} there and back ${q("voltage", cable.drop_V, 2)} are lost at ${q("current", steady_A, 2)}, ${q("voltage", cable.peakDrop_V, 2)} at the peak, and each metre gives off ${q("accessoryPower", cable.heat_Wpm, 2)}.${tooSmall(plan)}`,
      basis:
        "resistance by IEC 60028 at the conductor's temperature, an eighth more for strands (IEC 60228, from memory); current in free air from memory, no source: less in a conduit, bundled or hot",
    },
    {
      part: "lug",
      sentence: message`Lugs: tube lugs of ${q("section", cable.section_mm2)} for ${cable.stud} or what the terminal has, crimped with the die of that lug, torque by the terminal's maker, marked, and tightened again after the first drives.`,
      basis: "common practice, no source",
    },
    {
      part: "pre-charge",
      sentence: preChargeWords(plan.preCharge),
      basis: "V = U (1 − e^(−t/RC)); 95 % and half a second to two: common practice, no source",
    },
  ];
}

function tooSmall({ cable, fuse }: CurrentsPlan): Message {
  if (cable.parallel * cable.carries_A >= fuse.rating_A) return message``;
  return message` That is less than the fuse lets through: take a thicker cable, or a smaller fuse that this cable stands.`;
}

function times(ratio: number): string {
  return `${ratio.toFixed(1)} times`;
}

/** What the figures leave out, and where the work can hurt. */
export function currentCautions(plan: CurrentsPlan): Message[] {
  const { full_V, strings, controller_A, greatest, hasMotorCurrent, longHill } = plan;
  const peak_A = greatest[0].battery_A;
  return [
    message`These are starting points. The makers' curves and the local code decide; a fuse protects the cable behind it, and no fuse is larger than that cable stands.`,
    ...(full_V > CLASS_B_V
      ? [
          message`${q("voltage", full_V)} of direct current can kill: above ${q("voltage", CLASS_B_V)} it is a dangerous voltage (ISO 6469-3). Who may work on it is a local rule; isolate, prove dead, lock off.`,
        ]
      : [
          message`${q("voltage", full_V)} is not above ${q("voltage", CLASS_B_V)}, yet a short circuit gives ${q("current", plan.shortCircuit_A, 2)}: it burns, sprays metal and starts fires.`,
        ]),
    ...(strings > 1
      ? [
          message`${strings} strings lie in parallel: each needs a fuse of its own, or a fault in one is fed by all others.`,
        ]
      : []),
    ...(controller_A !== undefined && controller_A > 1.1 * peak_A
      ? [
          message`The controller lets ${q("current", controller_A)} through, ${q("current", peak_A, 2)} are asked here: lower its limit, or check the fuse for that current as well.`,
        ]
      : []),
    ...(longHill.isAssumed
      ? [
          message`The long hill is assumed: ${q("distance", longHill.length_km)} at ${q("gradient", longHill.grade_ratio)}, climbed at ${q("speed", longHill.speed_kmh)}. Enter the client's own.`,
        ]
      : []),
    ...(hasMotorCurrent
      ? []
      : [
          message`Currents of the motor's phases are not known: enter the current at peak torque from the sheet of motor or controller. At low speed they are several times the battery's.`,
        ]),
  ];
}
