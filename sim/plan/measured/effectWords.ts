import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { Model } from "../../step/model.ts";
import { accessories_W } from "../../step/prepare.ts";
import { adjustModel } from "./adjustModel.ts";
import type { CarFit } from "./describeFit.ts";
import { driveAsMeasured } from "./driveAsMeasured.ts";
import { differs, fittedWords } from "./measureWords.ts";
import type { PackSamples } from "./packSamples.ts";
import { quantitiesOf } from "./quantities.ts";
import type { DrivePart } from "./recording.ts";

/** Corrected values in words, those first that move the energy of this drive most. */
export function effectWords(
  job: Job,
  model: Model,
  fit: CarFit,
  { parts, samples, start_frac }: { parts: readonly DrivePart[]; samples: PackSamples; start_frac: number },
): Message[] {
  const net = (change: CarFit["change"]) =>
    quantitiesOf(driveAsMeasured(adjustModel(model, change), parts, start_frac), samples, "model").use_Whpkm;
  const whole = net(fit.change);
  const without = {
    rolling: { rolling_ratio: 1 },
    drag: { drag_ratio: 1 },
    accessories: { accessories_W: 0 },
    regen: { regen_ratio: 1 },
    motorLoss: { motorLoss_ratio: 1 },
    meshLoss: { meshLoss_ratio: 1 },
    mass: { mass_ratio: 1 },
    gain: {},
    zero: {},
  };
  const effects = fit.fitted.map((fitted) => ({
    fitted,
    effect_Whpkm: whole - net({ ...fit.change, ...without[fitted.id] }),
  }));
  const rank = (entry: (typeof effects)[number]) => (differs(entry.fitted) ? Math.abs(entry.effect_Whpkm) : 0);
  return effects
    .sort((a, b) => rank(b) - rank(a))
    .map(({ fitted, effect_Whpkm }) => {
      const words = fittedWords(fitted, accessories_W(job));
      if (!differs(fitted) || Math.abs(effect_Whpkm) < 0.5) return words;
      const way = effect_Whpkm > 0 ? "more" : "less";
      return message`${words} It makes ${q("energyUse", Math.abs(effect_Whpkm), 2)} ${way}.`;
    });
}
