import { bare, type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import type { Fitted } from "./describeFit.ts";
import type { ParameterId } from "./parameters.ts";

/** Within this share a prediction is good; up to the next it is to be explained; beyond it something is wrong. Common practice, no source. */
const GOOD_frac = 0.1;
const EXPLAINED_frac = 0.2;

export type Verdict = "good" | "find out" | "wrong";

/** The trade's rule on what was used over what was predicted. */
export function verdictOf(measured: number, predicted: number): Verdict {
  const off_frac = Math.abs(measured / predicted - 1);
  if (off_frac <= GOOD_frac) return "good";
  return off_frac <= EXPLAINED_frac ? "find out" : "wrong";
}

const verdictSentences: Readonly<Record<Verdict, string>> = {
  good: "Within 10 %: a good prediction.",
  "find out": "Between 10 and 20 %: there is a reason; find it.",
  wrong: "Above 20 %: something is wrong with the car or with an input.",
};

/** What the whole drive used against what was predicted of it, and what that means. */
export function verdictWords(measured_Whpkm: number, predicted_Whpkm: number, predictedAs: string): Message {
  const off_frac = measured_Whpkm / predicted_Whpkm - 1;
  const more = off_frac >= 0 ? "more" : "less";
  const compared =
    Math.abs(off_frac) < 0.005 ? message`the same` : message`${q("fraction", Math.abs(off_frac), 2)} ${more}`;
  const sentence = verdictSentences[verdictOf(measured_Whpkm, predicted_Whpkm)];
  return message`Logged ${q("energyUse", measured_Whpkm)}, ${predictedAs} ${q("energyUse", predicted_Whpkm)}: ${compared}. ${sentence}`;
}

/** What each value is called, and what to look at on a car where it came out higher, or lower, than in the job. */
const named: Readonly<Record<ParameterId, { readonly name: string; readonly higher: string; readonly lower: string }>> =
  {
    rolling: {
      name: "Rolling resistance",
      higher: "jack each wheel up and spin it, since a brake may drag; tyre pressures, wheel alignment, wheel bearings",
      lower: "other tyres than in the job, or a warmer day",
    },
    drag: {
      name: "Air drag",
      higher: "windows, hood, roof rack; wind on the day",
      lower: "wind from behind on the day, or a frontal area taken too large",
    },
    accessories: {
      name: "Draw of the accessories",
      higher: "what stays on? Switch the heater, lights and DC-DC converter off one at a time and watch the amps",
      lower: "less was on than the job has",
    },
    regen: {
      name: "Limit on braking by the motor",
      higher: "the controller’s regen setting against the job’s",
      lower: "the controller’s regen setting, and whether the pack was too full or too cold to take it",
    },
    motorLoss: {
      name: "Losses of motor and controller",
      higher: "motor temperature after a drive, the motor’s timing or slip settings",
      lower: "losses in the job taken too high",
    },
    meshLoss: {
      name: "Losses of gearbox and axle",
      higher: "oil level and grade, a warm hub or axle after a drive",
      lower: "efficiencies in the job taken too low",
    },
    mass: { name: "Mass", higher: "put the car on the scales", lower: "put the car on the scales" },
    zero: { name: "The ammeter’s zero", higher: "switch the car off and see", lower: "switch the car off and see" },
    gain: { name: "The ammeter", higher: "check it against a second clamp", lower: "check it against a second clamp" },
  };

/**
 * Whether the log shows a value to differ from the job's, all that looks like it in a log counted in: its whole band lies on one side. What
 * looks like accessories is the ammeter's zero, which is none of the car's: they differ where they do by themselves.
 */
export function differs({ id, start, value, ownHalf, low, high }: Fitted): boolean {
  return id === "accessories" ? start < low || start > high : Math.abs(value - start) > ownHalf;
}

const WIDER_ratio = 1.3;

/** Whether what looks like a value in a log leaves much more open of it than the log itself. */
export function isMixed({ low, high, ownHalf }: Fitted): boolean {
  return high - low > WIDER_ratio * 2 * ownHalf;
}

/** A band of ratios as people say it: "5 to 16 % more", "3 % less to 9 % more". */
function between(from: number, to: number): Message {
  const percent = (ratio: number) => Math.abs(Math.round(100 * (ratio - 1)));
  const [low, high] = [percent(from), percent(to)];
  if (from >= 1) return message`${low} to ${high} % more`;
  if (to <= 1) return message`${high} to ${low} % less`;
  return message`${low} % less to ${high} % more`;
}

/** One corrected value in words, with what to look at where it differs. `accessories_W` is what the job has them draw. */
export function fittedWords(fitted: Fitted, accessories_W: number): Message {
  const { id, value, low, high, start, ownHalf } = fitted;
  const { name, higher, lower } = named[id];
  const look = value > start ? higher : lower;
  if (id === "accessories") {
    const at = (added_W: number) => whole("accessoryPower", Math.max(0, accessories_W + added_W), "nearest");
    const measured = message`${name}: ${at(value)} (${bare(at(low))} to ${at(high)}) against ${at(0)} in the job`;
    return differs(fitted) ? message`${measured}: ${look}.` : message`${measured}: as in the job.`;
  }
  const percent = (ratio: number) => q("fraction", Math.abs(Math.round(100 * (ratio - 1))) / 100);
  const side = (ratio: number) => (ratio >= 1 ? "more" : "less");
  const band = isMixed(fitted)
    ? message`${between(value - ownHalf, value + ownHalf)} with all that looks like it in a log, ${between(low, high)} by itself`
    : between(low, high);
  return differs(fitted)
    ? message`${name}: ${percent(value)} ${side(value)} than in the job (${band}): ${look}.`
    : message`${name}: this log does not show that it differs from the job (${band}).`;
}
