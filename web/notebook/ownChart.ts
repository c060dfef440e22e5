import type { ChannelKey } from "../charts/channelQuantities.ts";

/** A chart that the workshop made for itself: a channel against another, perhaps coloured by a third. */
export interface OwnChart {
  readonly x: ChannelKey;
  readonly y: ChannelKey;
  readonly colour?: ChannelKey;
  /** Names of the packs shown; all where it is empty. */
  readonly packs: readonly string[];
  readonly caption: string;
}

/** What a new one begins with. */
export const firstChart: OwnChart = { x: "time", y: "batteryCurrent", packs: [], caption: "" };
