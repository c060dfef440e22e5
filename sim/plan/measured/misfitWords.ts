import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { CarFit } from "./describeFit.ts";

/** Twice its energy, or half of it, is no car of this kind. */
const ANOTHER_ratio = 2;
/** Differences that are left over so many times what they may be are of something that no value here is. */
const MISFIT_ratio = 3;

/** What a log that hardly fits its job, or a fit that leaves much over, says of itself; nothing where both are well. */
export function misfitWords(
  { misfit_ratio }: Pick<CarFit, "misfit_ratio">,
  measured: number,
  predicted: number,
  isClockCoarse = false,
): Message[] {
  const ratio = measured / predicted;
  if (ratio > ANOTHER_ratio || ratio < 1 / ANOTHER_ratio)
    return [
      message`This log hardly fits the job: ${q("fraction", ratio, 2)} of the predicted energy. Is it of this car, with this load and in this gear, and are the amps those of the whole pack?`,
    ];
  if (misfit_ratio > MISFIT_ratio)
    return [
      isClockCoarse
        ? message`What is left of the differences is ${q("coefficient", misfit_ratio, 2)} times what heights and noise explain: several rows of volts and amps share a time of their clock, so that it is known only roughly when they were drawn. The bands are wider for it; a clock with seconds tells more.`
        : message`What is left of the differences is ${q("coefficient", misfit_ratio, 2)} times what clocks, heights and noise explain: something differs that is not among the values looked at, such as another gear. The bands are wider for it.`,
    ];
  return [];
}
