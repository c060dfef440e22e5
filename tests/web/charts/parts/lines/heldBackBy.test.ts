import { describe, expect, it } from "vitest";
import { createChannels, LIMITS } from "../../../../../sim/index.ts";
import { heldBackBy, heldSpans } from "../../../../../web/charts/parts/lines/heldBackBy.ts";

/** Thirty seconds at 20 m/s wanted; behind by 5 m/s in the rows given, each with its limit. */
function run(rows: Readonly<Record<number, (typeof LIMITS)[number]>>) {
  const channels = createChannels(30);
  channels.length = 30;
  for (let i = 0; i < 30; i++) {
    channels.time_s[i] = i;
    channels.target_mps[i] = 20;
    channels.speed_mps[i] = rows[i] ? 15 : 20;
    channels.limit[i] = LIMITS.indexOf(rows[i] ?? "none");
  }
  return channels;
}

describe("what held the car back", () => {
  it("is the limit that held it longest within the span", () => {
    const channels = run({ 5: "motor", 6: "pack", 7: "pack", 20: "heat" });
    expect(heldBackBy(channels, { from: 4, to: 7, time_s: 3 }, channels.time_s)).toBe("pack limit");
    expect(heldBackBy(channels, { from: 19, to: 20, time_s: 1 }, channels.time_s)).toBe("too hot");
  });

  it("is nothing where no limit was met", () => {
    const channels = run({});
    expect(heldBackBy(channels, { from: 0, to: 29, time_s: 0 }, channels.time_s)).toBe("");
  });

  it("is counted by span and by limit", () => {
    const channels = run({ 5: "pack", 6: "pack", 8: "pack", 9: "motor" });
    expect(heldSpans(channels, channels.time_s, 1)).toEqual([
      { from: 4, to: 8, time_s: 3, limit: "pack limit" },
      { from: 8, to: 9, time_s: 1, limit: "motor at its limit" },
    ]);
  });
});
