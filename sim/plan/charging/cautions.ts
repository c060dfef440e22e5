import type { Supply } from "../../../shared/job/schema/supply.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { circuit_A } from "./pilot.ts";

/** A load of three hours and more is a continuous one  [NEC2017, article 100]: from memory. */
const LONG_h = 3;

/**
 * What a person must heed at a supply where a charge lasts so many hours. Usual figures, not permission: every one of them leaves the
 * decision to local codes and a licensed electrician.
 */
export function cautionsAt(supply: Supply, longest_h: number): readonly Message[] {
  const decide = "Local codes and a licensed electrician decide.";
  const current = q("current", supply.current_A);
  if (supply.kind === "household") {
    const long =
      longest_h >= LONG_h
        ? message`${supply.name}: up to ${q("hours", longest_h, 2)} at ${current}. A household socket is not made for hours at full current: old contacts and wiring heat. Use a dedicated circuit, and feel plug and socket after an hour: if they are warm, stop. ${decide}`
        : message`${supply.name}: a household socket heats at ${current} where contacts or wiring are old: feel the plug after an hour. ${decide}`;
    return [long, ...modeOne(supply)];
  }
  return [
    message`${supply.name}: ${current} for hours needs a circuit of its own with its own protection (${q("current", circuit_A(supply.current_A))} where the American code holds), and a main fuse that stands it beside everything else. ${decide}`,
    ...modeOne(supply),
  ];
}

function modeOne({ mode, name }: Supply): Message[] {
  if (mode !== "mode1") return [];
  return [
    message`${name}: mode 1 has nothing in the lead that watches the earth; it is discouraged or forbidden in places. Use mode 2 or 3.`,
  ];
}
