import type { QuantityKind } from "../../../../shared/quantity/kinds/kinds.ts";
import type { Written } from "../../../../shared/quantity/reading/answers.ts";
import type {
  QuantityOptions,
  QuantityReading,
  Refused,
  Understood,
} from "../../../../shared/quantity/reading/reading.ts";
import { tidyText } from "../../../../shared/quantity/tidyText.ts";

/** A text as the readers of quantities get it. */
export function written(kind: QuantityKind, typed: string, options: QuantityOptions = {}): Written {
  return { kind, typed, text: tidyText(typed), options };
}

/** What was understood, or a fault that says what came instead. */
export function understood(reading: QuantityReading | undefined): Understood {
  if (!reading?.ok || reading.unknown) throw new Error(`not understood: ${JSON.stringify(reading)}`);
  return reading;
}

/** A refusal, or a fault that says what came instead. */
export function refusal(reading: QuantityReading | undefined): Refused {
  if (!reading || reading.ok) throw new Error(`not refused: ${JSON.stringify(reading)}`);
  return reading;
}
