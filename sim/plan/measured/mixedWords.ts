import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { listed } from "../findings/finding.ts";
import type { CarFit, Fitted, Mixed } from "./describeFit.ts";
import { isMixed } from "./measureWords.ts";
import type { ParameterId } from "./parameters.ts";

/** What a value is called within a sentence. */
const within: Readonly<Record<ParameterId, string>> = {
  rolling: "rolling resistance",
  drag: "air drag",
  accessories: "the accessories",
  regen: "the limit on braking by the motor",
  motorLoss: "the losses of motor and controller",
  meshLoss: "the losses of gearbox and axle",
  mass: "the mass",
  gain: "the ammeter’s gain",
  zero: "the ammeter’s zero",
};

/** What of a drive says how wind, zero and a dragging brake would show. */
export interface MixedFacts {
  /** Share by which drag would seem larger for each m/s of head wind. */
  readonly dragPerMps_frac: number;
  readonly voltage_V: number;
  readonly isZeroKnown: boolean;
  /** What the job has the tyres resist with, in newtons. */
  readonly rolling_N: number;
}

/** What of the fit cannot be told apart, a sentence each. */
export function mixedWords({ mixed, fitted, left }: CarFit, meets: MixedFacts): Message[] {
  const rolling = fitted.find(({ id }) => id === "rolling");
  const has = (id: ParameterId) => fitted.some((each) => each.id === id);
  return [
    ...(rolling
      ? [
          message`Soft tyres, a brake that drags and stiff bearings are one constant force: the log shows their sum, ${q("force", rolling.value * meets.rolling_N, 2)} against ${q("force", meets.rolling_N, 2)} of the tyres in the job, and a spin of each wheel which of them it is.`,
        ]
      : []),
    ...fitted.flatMap(alikeWords),
    ...mixed.filter((pair) => pair.ids.every(has) && isTold(pair)).map(pairWords),
    ...(has("drag") && meets.dragPerMps_frac > 0
      ? [
          message`Wind cannot be told from air drag: a head wind of ${q("speed", 5)} all the way would look like ${q("fraction", meets.dragPerMps_frac * 5 * MPS_PER_KMH, 2)} more drag.`,
        ]
      : []),
    ...(has("accessories") && !meets.isZeroKnown
      ? [
          message`The ammeter’s zero cannot be told from the accessories: 0.2 A of it would be ${q("accessoryPower", 0.2 * meets.voltage_V, 2)}. With the car switched off it should show 0.`,
        ]
      : []),
    ...(left.length > 0
      ? [message`Left as in the job, since this log does not show them: ${left.map((id) => within[id]).join(", ")}.`]
      : []),
  ];
}

/** Less than this is nothing to speak of. */
const LEAST_frac = 0.005;

/** From here on a single digit would be off by half as much as it says. */
const TWO_DIGITS_frac = 0.095;

/** What looks like a value, and how much each leaves open of it; none where the log tells them apart well. */
function alikeWords(fitted: Fitted): Message[] {
  const { id, alike, low, high } = fitted;
  const shown = alike.filter(({ half }) => half >= LEAST_frac);
  if (id === "accessories" || shown.length === 0 || !isMixed(fitted)) return [];
  const each = shown.map(
    (one) => message`${within[one.id]} (±${q("fraction", one.half, one.half < TWO_DIGITS_frac ? 1 : 2)})`,
  );
  return [
    message`Which of what looks like ${within[id]} it is, a log cannot tell: by itself it is open to ±${q("fraction", (high - low) / 2, 2)}, since these may be off too: ${withAnd(each)}.`,
  ];
}

/** Of something so many per cent more, the other comes out so many less. */
const TOLD_frac = 0.1;

function isTold({ ids: [a, b] }: Mixed): boolean {
  return a !== "accessories" && b !== "accessories" && a !== "regen" && b !== "regen";
}

function pairWords({ ids: [first, second], slope_ratio }: Mixed): Message {
  const moved_frac = Math.abs(slope_ratio) * TOLD_frac;
  const way = slope_ratio < 0 ? "less" : "more";
  return message`Told apart only in part: were ${within[second]} ${q("fraction", TOLD_frac)} more than taken, ${within[first]} would come out ${q("fraction", moved_frac, 2)} ${way}.`;
}

function withAnd(parts: readonly Message[]): Message {
  const last = parts[parts.length - 1];
  return parts.length < 2 ? last : message`${listed(parts.slice(0, -1))} and ${last}`;
}
