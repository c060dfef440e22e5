import { S_PER_H, S_PER_MIN } from "../../units.ts";
import { formatNumber } from "../formatNumber.ts";
import { answer, refuse, type Written } from "./answers.ts";
import type { QuantityReading } from "./reading.ts";

/**
 * A time written with colons; undefined if it is not. Three places are hours, minutes and seconds. Two are hours and
 * minutes in a field of hours; in a field of seconds they could be either, and are asked.
 */
export function readClock(written: Written): QuantityReading | undefined {
  const clock = /^(\d{1,4}):(\d{2})(?::(\d{2}(?:\.\d+)?))?$/.exec(written.text);
  if (!clock) return undefined;
  const [head, middle, tail] = [Number(clock[1]), Number(clock[2]), Number(clock[3] ?? 0)];
  if (middle >= S_PER_MIN || tail >= S_PER_MIN) {
    return refuse(
      written,
      "quantity-unreadable",
      `found ${written.typed}, minutes and seconds behind a colon are below 60`,
    );
  }
  const inHours = head * S_PER_H + middle * S_PER_MIN + tail;
  if (written.kind === "hours") return answer(written, inHours / S_PER_H);
  if (clock[3] !== undefined) return answer(written, inHours, { digits: 12 });
  const texts = [`${formatNumber(head, 12)} min ${middle} s`, `${formatNumber(head, 12)} h ${middle} min`];
  return refuse(
    written,
    "quantity-ambiguous",
    `found ${written.typed}, wanted with its units: ${texts.join(" or ")}`,
    undefined,
    {
      id: "clock",
      text: `is ${written.typed} minutes and seconds, or hours and minutes?`,
      choices: texts.map((text) => ({ label: text, text })),
    },
  );
}
