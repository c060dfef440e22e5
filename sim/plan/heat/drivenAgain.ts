import { type Channels, createChannels } from "../../step/channels.ts";
import { LIMITS } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { pass } from "../../step/run.ts";
import { createRunContext } from "../../step/runContext.ts";
import { checkLedger, createTotals, type Totals } from "../../step/totals.ts";
import type { Trace } from "../../trace/trace.ts";

/** A course driven again and again, from a charged pack, until that is empty or `most` times; clock and heat go on from pass to pass. */
export function drivenAgain(model: Model, trace: Trace, most: number): { passes: Channels[]; totals: Totals } {
  const context = createRunContext(model, model.pack.ceiling_frac);
  const totals = createTotals(context.state);
  const passes: Channels[] = [];
  for (let i = 0; i < most && !totals.reachedFloor; i++) {
    const channels = createChannels(trace.time_s.length);
    pass(context, totals, trace, channels);
    passes.push(channels);
  }
  checkLedger(totals.ledger);
  return { passes, totals };
}

/** Power that the shaft gives over all passes, braking as nothing given, and how long heat held the car back. */
export function shaftPower(passes: readonly Channels[]) {
  const heat = LIMITS.indexOf("heat");
  const time_s = [0];
  const shaft_W = [0];
  let heldBack_s = 0;
  for (const channels of passes) {
    // Its clock goes on from pass to pass, but for its row of the start.
    for (let i = 1; i < channels.length; i++) {
      const before_s = time_s[time_s.length - 1];
      time_s.push(channels.time_s[i]);
      shaft_W.push(Math.max(0, channels.motorTorque_Nm[i] * channels.motorSpeed_radps[i]));
      if (channels.limit[i] === heat) heldBack_s += channels.time_s[i] - before_s;
    }
  }
  return { time_s, shaft_W, heldBack_s };
}
