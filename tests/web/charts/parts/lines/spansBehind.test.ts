import { describe, expect, it } from "vitest";
import { createChannels } from "../../../../../sim/index.ts";
import { spansBehind } from "../../../../../web/charts/parts/lines/spansBehind.ts";

function runBehind(rows: readonly number[]) {
  const channels = createChannels(30);
  channels.length = 30;
  for (let i = 0; i < 30; i++) {
    channels.time_s[i] = 2 * i;
    channels.target_mps[i] = 20;
    channels.speed_mps[i] = rows.includes(i) ? 19 : 19.6; // 3.6 and 1.4 km/h behind; 2 km/h is the bound
  }
  return channels;
}

describe("spansBehind", () => {
  it("finds the intervals more than 2 km/h below the target, from the start of the first to the end of the last", () => {
    const channels = runBehind([5, 6, 20]);
    expect(spansBehind(channels, 0, channels.time_s)).toEqual([
      { from: 8, to: 12, time_s: 4 },
      { from: 38, to: 40, time_s: 2 },
    ]);
  });
  it("tells near ones as one, with only the seconds behind", () => {
    const channels = runBehind([5, 8]);
    expect(spansBehind(channels, 5, channels.time_s)).toEqual([{ from: 8, to: 16, time_s: 4 }]);
  });
  it("finds none where the trace is followed", () => {
    const channels = runBehind([]);
    expect(spansBehind(channels, 0, channels.time_s)).toEqual([]);
  });
});
